import { describe, expect, it } from "vitest";
import { DELIVERY, followLevel, likelyPrior, planSteps, START_LEVEL, uprightSpace, type Pumped } from "../index.ts";
import { casualtyAt, deliveryPlace, deliveryShare, UNKNOWNS } from "./sounding-model.ts";
import { evenPlaceOf, straightenRidge } from "./sounding-ridge.ts";

const SPACE = uprightSpace({ area: 12, outside: 1.2, outsideDoubt: 0.04, sinkage: 0.02 });
const PRIOR = { ...likelyPrior(0.5), holeArea: { median: 0.002, logSpread: 1.45 } };
const TIMES = Array.from({ length: 9 }, (_, k) => 300 * k);
const PUMPING: readonly Pumped[] = [{ from: 300, flow: 0.004 }];
const TRUE = Float64Array.of(0.4, 0, 0, -0.8, 0, 0);

function levelsOf(z: Float64Array, pumping = PUMPING): Float64Array {
  const casualty = new Float64Array(UNKNOWNS);
  casualtyAt(SPACE, PRIOR, z, 0, casualty);
  const levels = new Float64Array(TIMES.length).fill(casualty[START_LEVEL]!);
  followLevel(SPACE, casualty, planSteps(TIMES, pumping, 60), levels[0]!, levels);
  return levels;
}

function bent(straight: Float64Array, levels: ArrayLike<number>, pumping = PUMPING): Float64Array {
  const readings = TIMES.map((at, k) => ({ at, level: levels[k]! }));
  const plain = new Float64Array(UNKNOWNS);
  straightenRidge({ space: SPACE, prior: PRIOR, readings, pumping })(straight, 0, plain);
  return plain;
}

function moved(z: Float64Array, place: number, value: number): Float64Array {
  return z.map((one, i) => (i === place ? value : one));
}

describe("the straightened ridge", () => {
  const levels = levelsOf(TRUE);
  const straight = moved(TRUE, 0, TRUE[0]! - (bent(TRUE, levels)[0]! - TRUE[0]!));

  it("is a shear: only the first coordinate moves, and as far wherever it is", () => {
    const [one, other] = [bent(straight, levels), bent(moved(straight, 0, straight[0]! + 0.7), levels)];
    expect(one.subarray(1)).toEqual(straight.subarray(1));
    expect(other[0]! - one[0]!).toBeCloseTo(0.7, 12);
  });

  it.each([-1.2, -0.6, 0.6])("along it a delivery at z = %s ends where the soundings did, and off it does not", (z) => {
    const end = levels.at(-1)!;
    expect(Math.abs(levelsOf(bent(moved(straight, DELIVERY, z), levels)).at(-1)! - end)).toBeLessThan(0.02);
    expect(Math.abs(levelsOf(moved(TRUE, DELIVERY, z)).at(-1)! - end)).toBeGreaterThan(0.05);
  });

  it("stays finite far out, above the outside level, dry, and with a fall no hole can make", () => {
    const odd = [TIMES.map(() => 3), TIMES.map(() => 0), TIMES.map((_, k) => 40 - 5 * k)];
    for (const seen of odd) {
      for (const far of [-9, 9]) {
        expect(bent(new Float64Array(UNKNOWNS).fill(far), seen).every(Number.isFinite)).toBe(true);
      }
    }
  });
});

describe("the straightened ridge of a level that falls", () => {
  const pumping: readonly Pumped[] = [{ from: 300, flow: 0.0025 }];
  const start = Float64Array.of(-1, 0, 0, -0.8, 0, 0);
  const levels = levelsOf(start, pumping);
  const straightened = (z: Float64Array): Float64Array => {
    let straight = z;
    for (const place of [0, DELIVERY]) {
      const off = bent(straight, levels, pumping)[place]! - z[place]!;
      straight = moved(straight, place, straight[place]! - off);
    }
    return straight;
  };
  const straight = straightened(start);

  it("falls, and the straight point stands for the casualty it was made of", () => {
    expect(levels.at(-1)!).toBeLessThan(levels[0]! - 0.1);
    bent(straight, levels, pumping).forEach((one, i) => expect(one).toBeCloseTo(start[i]!, 9));
  });

  it.each([-3, 0.3, 0.5])("along it a hole moved by %s ends where the soundings did, and off it does not", (by) => {
    const end = levels.at(-1)!;
    const along = levelsOf(bent(moved(straight, 0, straight[0]! + by), levels, pumping), pumping);
    const off = levelsOf(moved(start, 0, start[0]! + by), pumping);
    expect(Math.abs(along.at(-1)! - end)).toBeLessThan(0.03);
    expect(Math.abs(off.at(-1)! - end)).toBeGreaterThan(0.06);
  });
});

describe("the place of a delivery", () => {
  it.each([-3, -1, -0.2, 0, 0.5, 2])("undoes its share at z = %s", (z) => {
    expect(deliveryPlace(PRIOR.delivery, deliveryShare(PRIOR.delivery, z))).toBeCloseTo(z, 9);
  });
});

describe("the even place of a hole", () => {
  it("is the middle for one at half of the outside level, and is held within reach at the ends", () => {
    expect(evenPlaceOf(0.5)).toBe(0);
    expect(evenPlaceOf(0)).toBeCloseTo(-evenPlaceOf(2), 12);
  });
});
