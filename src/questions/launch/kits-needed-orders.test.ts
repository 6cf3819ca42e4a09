import { describe, expect, it } from "vitest";
import { ordersFor } from "./kits-needed-orders.ts";

const GROUND = { isOpenBoat: false, afloat: 1, isRiseTold: false };
const MINUTE = 60;

function coming(kits: number, from: number, to: number): string | undefined {
  const arrival = { p05: from * MINUTE, p95: to * MINUTE };
  return ordersFor({ ...GROUND, kits, arrival }).find((one) => /no pump|We come/.test(one));
}

describe("the time read to her skipper", () => {
  it.each([
    [2, 36, 57, "We come with 2 pumps. Count on no water over the side for 35 to 55\u00a0minutes, perhaps longer."],
    [1, 0, 1, "We come with one pump. Count on no water over the side for 1\u00a0minute, perhaps longer."],
    [
      1,
      80,
      130,
      "We come with one pump. Count on no water over the side for 80\u00a0minutes to 2\u00a0hours 10\u00a0minutes, perhaps longer.",
    ],
    [0, 36, 57, "Help is being found. Count on no pump for 35 to 55\u00a0minutes, perhaps longer."],
  ])("with %i kits in %i to %i min is the spread that the page tells, spelled out", (kits, from, to, words) => {
    expect(coming(kits, from, to)).toBe(words);
  });
});
