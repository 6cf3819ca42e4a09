import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { judgeBody } from "#readiness";
import { strokesOf, writeStrokes, type Stroke } from "./signature.ts";

const point = fc.tuple(fc.double({ min: -50, max: 400, noNaN: true }), fc.double({ min: -50, max: 200, noNaN: true }));
const stroke = fc.tuple(point, fc.array(point, { maxLength: 400 })).map(([first, more]): Stroke => [first, ...more]);

describe("a signature", () => {
  it("comes back as it was drawn, in whole units of the pad", () => {
    const drawn: readonly Stroke[] = [
      [
        [10.4, 40],
        [12, 38.6],
      ],
      [[90, 20]],
    ];
    expect(writeStrokes(drawn)).toBe("10,40 12,39;90,20");
    expect(strokesOf("10,40 12,39;90,20")).toEqual([
      [
        [10, 40],
        [12, 39],
      ],
      [[90, 20]],
    ]);
  });

  it("is nothing where nothing was drawn", () => {
    expect(writeStrokes([])).toBeUndefined();
    expect(strokesOf("")).toEqual([]);
  });

  it("is always short enough for the log, and read back as written", () => {
    fc.assert(
      fc.property(fc.array(stroke, { minLength: 1, maxLength: 30 }), (drawn) => {
        const text = writeStrokes(drawn)!;
        const body = { to: "Tern", method: "passed", sealBroken: false, taken: { name: "A", strokes: text } };
        expect(judgeBody({ kind: "handed-over", body })).toEqual([]);
        expect(writeStrokes(strokesOf(text))).toBe(text);
      }),
      { numRuns: 60, seed: 11 },
    );
  });
});
