import { readPatternFolders } from "#store/patterns";
import { describe, expect, it } from "vitest";
import { fetchWords } from "#words";
import { sayMinutes, sayNobodyBeside, sayNote, sayRanLately, sayShare } from "./fault-words.ts";

const words = await fetchWords("en", "fault");
const note = (name: string, does: readonly string[], isEnded: boolean, refused: readonly string[] = []) =>
  sayNote({ name, does, refused, isEnded }, words);
const beside = (nextPumps: readonly string[], refused: readonly string[], otherKits?: string) =>
  sayNobodyBeside({ nextPumps, refused, otherKits }, words);
const { patterns } = readPatternFolders(["patterns"]);
const TROUBLES = patterns.flatMap(({ troubles = [] }) => troubles);
const STEPS = [
  [0.1, "about 1 in 10"],
  [0.2, "about 1 in 5"],
  [0.25, "about 1 in 4"],
  [1 / 3, "about 1 in 3"],
  [0.5, "about as likely as not"],
] as const;

describe("words of fault finding", () => {
  it("tell a chance in words, never as a percentage, and never as sure", () => {
    for (let chance = 0; chance <= 1; chance += 0.01) {
      expect(sayShare(chance, words)).not.toMatch(/%|safe|certain|sure/);
    }
    expect(sayShare(1, words)).toBe("very likely this");
    expect(sayShare(0.2, words)).toBe("about 1 in 5");
  });

  it.each(Array.from({ length: 52 }, (_, i) => (i + 8) / 100))("tell a chance of %f by the nearest step", (chance) => {
    const said = STEPS.find(([, says]) => says === sayShare(chance, words))!;
    for (const [step] of STEPS) expect(Math.abs(said[0] - chance)).toBeLessThanOrEqual(Math.abs(step - chance));
  });

  it("tell 18 % as 1 in 5, 26 % as 1 in 4, and what is rare as rare", () => {
    expect([0.07, 0.18, 0.26, 0.33, 0.59, 0.6, 0.85].map((chance) => sayShare(chance, words))).toEqual([
      "less than 1 in 10",
      "about 1 in 5",
      "about 1 in 4",
      "about 1 in 3",
      "about as likely as not",
      "more likely this than not",
      "very likely this",
    ]);
  });

  it("tell minutes no finer than they are known", () => {
    expect(["under a minute", "about 1 minute", "about 6 minutes"]).toEqual(
      [0.7, 1.2, 6].map((minutes) => sayMinutes(minutes, words)),
    );
  });

  it("say what the chances rest on: judgement first, then how many findings", () => {
    expect(words.basis({ count: 0 })).toMatch(/judgement.*No finding/);
    expect(words.basis({ count: 3 })).toMatch(/judgement.*3 findings of the fleet are counted in/);
  });

  it("give the bench what was tried and what helped, in the order it was done", () => {
    expect(note("Will not start", ["Switch on.", "Fit the spare plug."], true)).toBe(
      "Will not start. Tried without help: Switch on. What helped: Fit the spare plug.",
    );
    expect(note("Will not start", ["Switch on."], false)).toBe("Will not start. Tried without help: Switch on.");
    expect(note("Will not start", [], false)).toBe("Will not start.");
  });

  it("give the bench every try of a shipped pattern whole, and that a pump was refused", () => {
    for (const { name, tries } of TROUBLES) {
      const said = note(
        name,
        tries.map(({ does }) => does),
        false,
        ["Pump 2"],
      );
      for (const { does } of tries) expect(said).toContain(does.replace(/\.$/, ""));
      expect(said).toMatch(/\. Could not be taken in its place: Pump 2\.$/);
    }
  });

  it("count the tries that do not fit, keep what helped, and cut no word", () => {
    const long = Array.from({ length: 90 }, (_, i) => `Do a long thing with part ${i + 1}.`);
    const said = note("Will not start", [...long, "Fit the spare plug."], true);
    expect(said).toMatch(/Do a long thing with part \d+; and \d+ more tries\. What helped: Fit the spare plug\.$/);
    expect(said.length).toBeLessThan(1500);
    const [told, more] = [said.split("; ").length - 1, Number(/and (\d+) more/.exec(said)![1])];
    expect(told + more).toBe(90);
  });

  it("say at once that the next kit has to come, where none stands by or the one that does cannot be taken", () => {
    expect(beside(["Pump 2"], [])).toBeUndefined();
    expect(beside(["Pump 3"], ["Pump 2"])).toBeUndefined();
    expect(beside([], [])).toMatch(/^No other pump stands by.*next kit has to come\. Call for it now/);
    expect(beside([], ["Pump 2"], "Ossel, 40 min")).toMatch(
      /^Cannot be taken: Pump 2\. No other pump.*Call for it now\. Told of other kits: Ossel, 40 min$/,
    );
  });

  it("say that an engine that ran lately is hot", () => {
    expect(sayRanLately(3.2, words)).toMatch(/^The engine ran 3 minutes ago: it is hot/);
    expect(sayRanLately(0, words)).toMatch(/^The engine ran just now/);
  });
});
