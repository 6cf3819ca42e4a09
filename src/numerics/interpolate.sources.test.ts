import { expect, it } from "vitest";
import { monotoneCubic } from "./interpolate.ts";

it("SciPy PchipInterpolator (an independent program), a falling pump curve", () => {
  const ys = [38, 36.5, 32, 24.5, 13];
  const curve = monotoneCubic([0, 0.004, 0.008, 0.012, 0.016].map((x, i) => ({ x, y: ys[i]! })));
  const printed = [37.87109375, 34.671875, 26.89353464226974, 14.662006578947368];
  [0.001, 0.006, 0.0109, 0.0155].forEach((x, i) => expect(curve.value(x)).toBeCloseTo(printed[i]!, 10));
});

it("SciPy PchipInterpolator (an independent program), a flat and a turning piece", () => {
  const ys = [0, 1, 1, 3, 2.5];
  const curve = monotoneCubic([0, 1, 2, 4, 5].map((x, i) => ({ x, y: ys[i]! })));
  const printed = [0.4365, 1.0, 1.5635, 2.9855, 2.875];
  [0.3, 1.5, 2.7, 3.9, 4.5].forEach((x, i) => expect(curve.value(x)).toBeCloseTo(printed[i]!, 10));
});
