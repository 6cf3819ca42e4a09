import { describe, expect, it } from "vitest";
import { highestLevel, wrongLevel, wrongMeasures } from "./casualty-limits.ts";

const fieldsOf = (boat: Parameters<typeof wrongMeasures>[0]) => wrongMeasures(boat).map(({ field }) => field);

describe("measures of a boat", () => {
  it.each([
    [{ length: 10 }],
    [{ length: 9.75, beam: 1.5, depth: 0.66, draught: 0.3 }],
    [{ length: 12, beam: 6.8, depth: 1.6, draught: 0.5 }],
    [{ length: 3, beam: 1.4, depth: 0.5, draught: 0.12 }],
    [{ length: 24, beam: 7.2, depth: 4, draught: 3.2 }],
    [{ length: 40, beam: 9, depth: 4.5, draught: 3 }],
    [{ kind: "sailing yacht", length: 7.9, depth: 3, draught: 2.1 } as const],
    [{ kind: "sailing yacht", length: 8, draught: 2.1 } as const],
    [{ kind: "sailing yacht", length: 6.5, draught: 2 } as const],
    [{ kind: "sailing yacht", length: 8, depth: 1.3, draught: 1.6 } as const],
  ])("of boats that there are stand: %j", (boat) => {
    expect(wrongMeasures(boat)).toEqual([]);
  });

  it.each([
    ["a deck edge a hand above the keel", { length: 10, depth: 0.1 }, ["depth"]],
    ["no freeboard", { length: 10, depth: 1.4, draught: 1.4 }, ["draught"]],
    ["a draught above the deck edge", { length: 10, depth: 1.4, draught: 2 }, ["draught"]],
    ["a beam of nearly four lengths", { length: 10, beam: 39 }, ["beam"]],
    ["a beam as narrow as a plank", { length: 10, beam: 0.3 }, ["beam"]],
    [
      "a raft as thin as a sheet, of a metacentric height like a mast's",
      { length: 10, beam: 9, draught: 0.2 },
      ["draught"],
    ],
    ["a length of millimetres, and nothing else is judged by it", { length: 10_000, beam: 3000 }, ["length"]],
    ["a keel of nearly half her length", { kind: "sailing yacht", length: 8, draught: 3 } as const, ["draught"]],
    [
      "a deck edge a mast's height above the keel's foot",
      { kind: "sailing yacht", length: 8, depth: 5, draught: 2.1 } as const,
      ["depth"],
    ],
    ["all at once", { length: 10, beam: 39, depth: 9, draught: 9 }, ["beam", "depth", "draught"]],
  ])("are told where they cannot be: %s", (_, boat, fields) => {
    expect(fieldsOf(boat)).toEqual(fields);
  });

  it("are told in words: what was given, what would do, and what to do", () => {
    expect(wrongMeasures({ length: 10, beam: 39 })).toEqual([
      {
        field: "beam",
        got: "39 m",
        allowed: "0.833 m to 9 m, for a boat 10 m long",
        remedy: "Look at the figure and its unit, or leave it out: what nobody knows is guessed.",
      },
    ]);
    expect(wrongMeasures({ length: 10, depth: 1.4, draught: 2 })[0]!.allowed).toContain(
      "0.2 m to 1.3 m, with her deck edge 1.4 m",
    );
  });
});

describe("a level sounded", () => {
  it("is counted from the hull of a yacht, not from the foot of her keel", () => {
    const yacht = { kind: "sailing yacht", length: 8, depth: 3, draught: 2.1 } as const;
    expect(highestLevel(yacht)).toBeCloseTo(3 - (2.1 - 0.52) + 0.6, 12);
    expect(wrongLevel(yacht, 2.5)!.allowed).toContain("her deck edge at 1.42 m");
  });

  it("stands no higher than the coaming on her deck edge, or on that of the deepest boat of her length", () => {
    expect(highestLevel({ length: 10, depth: 1.4 })).toBeCloseTo(2, 12);
    expect(highestLevel({ length: 10 })).toBeCloseTo(4.1, 12);
    expect(highestLevel({ length: 40 })).toBe(10);
  });

  it("is told where it cannot be, below nothing too", () => {
    expect(wrongLevel({ length: 10, depth: 1.4 }, 1.9)).toBeUndefined();
    expect(wrongLevel({ length: 10, depth: 1.4 }, -0.1)).toMatchObject({ got: "-0.1 m" });
    expect(wrongLevel({ length: 10, depth: 1.4 }, 2.1)).toMatchObject({
      got: "2.1 m",
      allowed: "0 m to 2 m: her deck edge at 1.4 m and 0.6 m of coaming",
    });
  });
});
