import type { CasualtyState } from "#readiness";
import { describe, expect, it } from "vitest";
import { questionsOf, sameOf } from "./suggest-same.ts";

const MARK = { entry: "1", at: "2027-03-14T10:00:00Z", by: "ann", device: "d" };

function sheet(change: Partial<CasualtyState>): CasualtyState {
  const boat = { kind: "motor boat", length: 9 } as const;
  const empty = { opened: MARK, soundings: [], pumps: [], patches: [], stability: {}, notes: [], spaces: [] };
  return { id: "x", name: "X", boat, ...empty, ...change };
}

const ENGINE = { id: "e", name: "Engine room", sort: "engine-room", part: "aft" } as const;
const FORWARD = { id: "f", name: "Forward cabin", sort: "cabin", part: "forward" } as const;
const pump = (id: string, name: string, kit?: string) => ({
  pump: id,
  name,
  space: "e",
  running: true,
  flow: 0.001,
  runs: [],
  ...(kit !== undefined && { kit }),
});

describe("what is the same on two sheets", () => {
  const own = sheet({ spaces: [ENGINE, FORWARD], pumps: [pump("p", "Her own"), pump("k", "Kit 3", "k")] });
  const other = sheet({
    spaces: [
      { ...ENGINE, id: "m", name: "Machinery" },
      { ...FORWARD, id: "n", part: "middle" },
      { ...FORWARD, id: "h", sort: "hold" },
    ],
    pumps: [pump("q", "her own"), pump("k", "Kit 3", "k"), pump("r", "Bucket")],
  });

  it("is asked of spaces and of pumps that are no kits, the likely one first", () => {
    const { spaces, pumps } = questionsOf(own, other);
    expect(spaces.map(({ other: id, likely }) => [id, likely])).toEqual([
      ["m", "e"],
      ["n", "f"],
      ["h", undefined],
    ]);
    expect(pumps.map(({ other: id, likely }) => [id, likely])).toEqual([
      ["q", "p"],
      ["r", undefined],
    ]);
  });

  it("is as it was said, and never one for two", () => {
    const questions = questionsOf(own, other);
    expect(sameOf(questions, new Map())).toEqual({
      spaces: [
        { other: "m", own: "e" },
        { other: "n", own: "f" },
      ],
      pumps: [{ other: "q", own: "p" }],
    });
    const said = new Map([
      ["n", "e"],
      ["h", "f"],
      ["q", undefined],
    ]);
    expect(sameOf(questions, said)).toEqual({
      spaces: [
        { other: "m", own: "e" },
        { other: "h", own: "f" },
      ],
    });
  });
});
