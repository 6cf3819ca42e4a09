import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { packValue, unpackValue } from "./packing.ts";

const RUNS = { seed: 20_270_314, numRuns: 2000 };

describe("a packed value", () => {
  test("comes back as JSON would bring it, through JSON", () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
        const back = unpackValue(JSON.parse(JSON.stringify(packValue(value))) as ReturnType<typeof packValue>);
        expect(JSON.stringify(back)).toBe(JSON.stringify(value));
      }),
      RUNS,
    );
  });

  test("keeps numbers to the last bit, and texts that look like numbers as texts", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (figure) => {
        const [back, text] = unpackValue(packValue([figure, String(figure)])) as [number, string];
        expect([back === figure, text]).toEqual([true, String(figure)]);
      }),
      RUNS,
    );
  });

  test("leaves out what JSON leaves out", () => {
    expect(unpackValue(packValue({ a: undefined, b: [undefined, Number.NaN], c: 1 }))).toEqual({
      b: [null, null],
      c: 1,
    });
  });

  test("has fields of its own only, whatever they are called", () => {
    const value = JSON.parse('{"__proto__":{"admin":true},"constructor":1,"a":2}') as object;
    const back = unpackValue(packValue(value)) as Record<string, unknown>;
    expect(JSON.stringify(back)).toBe(JSON.stringify(value));
    expect(Object.getPrototypeOf(back)).toBe(Object.prototype);
    expect(back["admin"]).toBeUndefined();
  });

  test("writes a word and a list of fields once, however often they are said", () => {
    const many = Array.from({ length: 1000 }, () => ({ mark: "once and for all", by: "somebody" }));
    const { strings, shapes } = packValue(many);
    expect([strings, shapes]).toEqual([["mark", "by", "once and for all", "somebody"], [[0, 1]]]);
  });
});
