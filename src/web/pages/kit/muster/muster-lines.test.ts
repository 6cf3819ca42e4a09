import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sampleKit, SHED } from "#web/pages/board/sample-kits.ts";
import { sampleMark, sampleTurnaround } from "#web/kit-view/sample.ts";
import { musterLines, musterProgress } from "./muster-lines.ts";

const words = await fetchWords("en", "muster");

const mark = sampleMark(5);
const kits = [
  sampleKit("10"),
  sampleKit("2", { lastMuster: { ...mark, seal: "00417" } }),
  sampleKit("3", { custody: { ...mark, kind: "away", to: "the ketch Oriel" } }),
  sampleKit("4", { turnaround: sampleTurnaround() }),
  sampleKit("5", { place: "boat" }),
];

describe("a muster", () => {
  const lines = musterLines(kits, SHED, "2026-03-14", words);

  it("lists the place's kits by name, those that are not there with the reason", () => {
    expect(lines.map(({ kit, kind }) => [kit.name, kind])).toEqual([
      ["Pump 2", "seen"],
      ["Pump 3", "not-here"],
      ["Pump 4", "not-here"],
      ["Pump 10", "to-see"],
    ]);
  });

  it("counts only what can be seen", () => {
    expect(musterProgress(lines)).toEqual({ seen: 1, of: 2 });
  });

  it("asks for every kit again on another day", () => {
    expect(musterProgress(musterLines(kits, SHED, "2026-03-15", words))).toEqual({ seen: 0, of: 2 });
  });
});
