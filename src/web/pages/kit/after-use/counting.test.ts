import { fetchWords } from "#words";
import type { Pattern } from "#kit";
import type { KitState, Run } from "#readiness";
import { describe, expect, it } from "vitest";
import { shippedPattern } from "#test/patterns/shipped-patterns.ts";
import { allThere, countOf, isCounted, sayMeans, type Said } from "./counting.ts";
import { stoppedAt, stoppedOnSheet } from "./stopped.ts";

const words = await fetchWords("en", "kitLine");

const PATTERN: Pattern = shippedPattern("brinnet-450@2");
const COUNTED = PATTERN.afterUse!.counted;
const NOBODY: Said = new Map();

function ids(): () => string {
  let count = 0;
  return () => `f${(count += 1)}`;
}

describe("the count when a kit comes back", () => {
  it("says in one tap that every item is there, and raises nothing", () => {
    const told = countOf(PATTERN, allThere(COUNTED, NOBODY), ids());
    expect(told.counted).toHaveLength(COUNTED.length);
    expect(new Set(told.counted.map(({ as }) => as))).toEqual(new Set(["there"]));
    expect(told.findings).toEqual([]);
  });

  it("keeps what was said missing when the rest is there, with the mode's own effect and limit", () => {
    const said: Said = new Map([
      ["strainer", { as: "missing" }],
      ["torch", { as: "missing" }],
    ]);
    expect(isCounted(COUNTED, said)).toBe(false);
    const all = allThere(COUNTED, said);
    expect(isCounted(COUNTED, all)).toBe(true);
    expect(countOf(PATTERN, all, ids()).findings).toEqual([
      { finding: "f1", item: "strainer", mode: "strainer-missing", effect: "grounds" },
      {
        finding: "f2",
        item: "torch",
        mode: "torch-missing",
        effect: "limits",
        limit: "Daylight only, or send a torch with it.",
      },
    ]);
  });

  it("says of several how many came back", () => {
    const said: Said = allThere(COUNTED, new Map([["ear-protection", { as: "missing" as const, back: 1 }]]));
    const { counted, findings } = countOf(PATTERN, said, ids());
    expect(counted).toContainEqual({ item: "ear-protection", as: "missing", back: 1 });
    expect(findings).toMatchObject([{ item: "ear-protection", note: "1 of 2 came back." }]);
  });

  it("waits for what is wrong with a damaged item, and grounds for what no mode names", () => {
    const damaged = (of: object): Said => allThere(COUNTED, new Map([["primer", { as: "damaged" as const, ...of }]]));
    expect(isCounted(COUNTED, damaged({}))).toBe(false);
    expect(isCounted(COUNTED, damaged({ mode: "other", note: " " }))).toBe(false);
    expect(isCounted(COUNTED, damaged({ mode: "primer-weak" }))).toBe(true);
    expect(countOf(PATTERN, damaged({ mode: "other", note: "Bent. " }), ids()).findings).toEqual([
      { finding: "f1", item: "primer", mode: "other", effect: "grounds", note: "Bent." },
    ]);
    expect(sayMeans(PATTERN, COUNTED[0]!, { as: "missing" }, words)).toBe("Grounds the kit");
  });
});

describe("when it last pumped", () => {
  const at = "2026-01-10T10:00:00Z";
  const mark = { at, entry: "e", by: "ann", device: "d" };
  const run = (stopped: string): Run => ({ at, casualty: { id: "c", name: "Her" }, stopped });
  const kit = (...runs: readonly Run[]) =>
    ({ runs, custody: { ...mark, kind: "away", to: "Her" } }) as unknown as KitState;

  it("is by the sheet since it was handed over, and never by an older one", () => {
    expect(stoppedOnSheet(kit(run("2026-01-09T12:00:00Z")))).toBeUndefined();
    expect(stoppedOnSheet(kit(run("2026-01-09T12:00:00Z"), run("2026-01-10T11:00:00Z")))).toBe("2026-01-10T11:00:00Z");
  });

  it("is so many minutes ago, or not known", () => {
    const now = Date.parse("2026-01-10T12:00:00Z");
    expect(stoppedAt("30", kit(), now)).toBe("2026-01-10T11:30:00.000Z");
    expect(stoppedAt("unknown", kit(), now)).toBeUndefined();
  });
});
