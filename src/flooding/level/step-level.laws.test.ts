import { describe, expect, it } from "vitest";
import { uprightSpace } from "../soundings/sounding-space.ts";
import {
  ALL_PLACES,
  AREA_LEAN,
  AREA_SHARE,
  DELIVERY,
  DELIVERY_LEAN,
  HOLE,
  OUTSIDE,
  SEEN_AT,
  STRENGTH,
} from "./places.ts";
import { roomForSteps, stepLevel } from "./step-level.ts";

const AREA = 8;
const SPACE = uprightSpace({ area: AREA, outside: 2, outsideDoubt: 0 });

function wayWith(given: Readonly<Record<number, number>>): Float64Array {
  const way = new Float64Array(ALL_PLACES);
  way[AREA_SHARE] = 1;
  way[DELIVERY] = 1;
  way[OUTSIDE] = 2;
  way[SEEN_AT] = 0.6;
  for (const [place, value] of Object.entries(given)) way[Number(place)] = value;
  return way;
}

function levelAfter(way: Float64Array, from: number, seconds: number, pumped: number): number {
  const room = roomForSteps();
  let level = from;
  for (let t = 0; t < seconds; t += 60) level = stepLevel(SPACE, way, level, 60, pumped, room);
  return level;
}

describe("a pump and a space whose delivery and area go with the level", () => {
  it("closed form, h − r + 1/k decays as e^(−qkt/A): a pump that moves less the lower the water stands", () => {
    const [k, q, t] = [0.3, 0.005, 600];
    const way = wayWith({ [DELIVERY_LEAN]: k });
    const middle = 0.6 - 1 / k;
    const expected = middle + (0.6 - middle) * Math.exp((-q * k * t) / AREA);
    expect(levelAfter(way, 0.6, t, q)).toBeCloseTo(expected, 3);
  });

  it("closed form, x + w·x²/2 = Qt/A: a space that widens, filled by a hole above the water", () => {
    const [w, strength, hole, t] = [0.8, 0.006, 1.5, 600];
    const flow = strength * Math.sqrt(2 - hole);
    const way = wayWith({ [AREA_LEAN]: w, [STRENGTH]: strength, [HOLE]: hole });
    const filled = (flow * t) / AREA;
    const expected = 0.6 + (Math.sqrt(1 + 2 * w * filled) - 1) / w;
    expect(levelAfter(way, 0.6, t, 0)).toBeCloseTo(expected, 3);
  });

  it("Torricelli's law with an upright space, √(H − h) falling evenly in time: neither leans", () => {
    const [strength, t] = [0.02, 300];
    const way = wayWith({ [STRENGTH]: strength });
    const root = Math.sqrt(2 - 0.3) - (strength * t) / (2 * AREA);
    expect(levelAfter(way, 0.3, t, 0)).toBeCloseTo(2 - root * root, 3);
  });
});
