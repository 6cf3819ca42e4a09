import { readPatternFolders } from "#store/patterns";
import { describe, expect, it } from "vitest";
import { allSteps } from "../look-ups.ts";
import { patternAfter, type Begun } from "./pattern-after.ts";

const { patterns } = readPatternFolders(["patterns"]);
const NONE = new Set<string>();

/** Steps that a turnaround begun so leaves out, of those that one on a kit in order asks. */
function leftOut(id: string, begun: Begun, answered: ReadonlySet<string> = NONE): readonly string[] {
  const pattern = patterns.find((one) => one.id === id)!;
  const opened = { sealSeen: "7", sealOnRecord: "7" };
  const [usual, own] = [{ opened }, begun].map((one) => allSteps(patternAfter(pattern, one, answered)));
  return usual!.flatMap((step) => (own!.some(({ id }) => id === step.id) ? [] : [step.id]));
}

describe("a turnaround of a kit whose seal was broken before", () => {
  it.each([
    ["brinnet-450", "read-seal"],
    ["ossel-200", "crate-read-seal"],
    ["tarvock-900", "read-seal"],
  ])("READY-38 of %s asks for no look at the seal, and for all else", (id, step) => {
    expect(leftOut(id, { opened: { sealSeen: "" } })).toEqual([step]);
  });

  it("READY-38 asks for it where a seal is on record and none was found, and where one was read that nobody knew", () => {
    expect(leftOut("ossel-200", { opened: { sealSeen: "", sealOnRecord: "BR 1" } })).toEqual([]);
    expect(leftOut("ossel-200", { opened: { sealSeen: "BR 9" } })).toEqual([]);
  });

  it("keeps a line that was answered already", () => {
    expect(leftOut("ossel-200", { opened: { sealSeen: "" } }, new Set(["crate-read-seal"]))).toEqual([]);
  });
});
