import type { Pattern } from "#kit";
import type { Proposal, ReportCard } from "#station";
import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { modeRows, sayMinutes, sayNone, sayNotPossible, sayOneIn, sayProposal, sayWanted } from "./report-words.ts";

const words = await fetchWords("en", "patternReport");

const PATTERN = { modes: [{ id: "seized", name: "Pump seized" }] } as unknown as Pattern;
const check = { id: "turn", ask: "Turn the shaft." };
const step = { id: "c", line: 12, text: "Look along the hose." };
const say = (proposal: object) => sayProposal(proposal as Proposal, PATTERN, words);

describe("a report card in words", () => {
  it("says a bound as once in so many times, and never that nothing will be found", () => {
    const { what, why } = say({ kind: "ask-less", of: { check, looks: 60, found: 0, below: 0.0487 } });
    expect(what).toBe("Ask it less often: Turn the shaft.");
    expect(why).toBe("Never found anything in 60 openings: it may find something up to once in 20 times.");
    expect(sayOneIn(0.05, words)).toBe("once in 20 times");
  });

  it("keeps the only check for what grounds the kit, and names it", () => {
    const { why } = say({ kind: "keep", of: { check, looks: 60, found: 0, below: 0.0487 }, alone: ["seized"] });
    expect(why).toMatch(/Nothing else is there to find what grounds the kit: Pump seized\.$/);
  });

  it("says how it was found, what was told of a line, and what it took", () => {
    const mode = { id: "seized", name: "Pump seized" };
    expect(say({ kind: "find-sooner", of: { mode, once: { byOwn: 0, byAccident: 3 }, checks: 0 } }).what).toMatch(
      /^Add a check/,
    );
    expect(say({ kind: "find-sooner", of: { mode, once: { byOwn: 1, byAccident: 3 }, checks: 2 } }).why).toBe(
      "Found by accident 3 times. Its own checks found it once.",
    );
    const reports = { wrong: 0, impossible: 1, unclear: 2 };
    expect(say({ kind: "reword", of: { step, asked: 9, notPossible: 4, reports, atLeast: 0.2 } }).why).toBe(
      "Not possible in 4 of 9 openings. Reported 3 times: impossible once, unclear 2 times.",
    );
    const minutes = { step, stated: 2, times: 9, median: 7.2, quartiles: [6, 11.4], pauses: 0 };
    expect(say({ kind: "restate", of: minutes })).toEqual({
      what: "State 7\u00a0min at line 12, not 2\u00a0min: Look along the hose.",
      why: "Half of 9 took 6\u00a0min to 11\u00a0min.",
    });
    expect(sayMinutes(0.8)).toBe("1\u00a0min");
  });

  it("lists every finding told, what no mode names last", () => {
    const where = [{ what: "outside an opening", times: 2 }];
    const mode = { id: "seized", name: "Pump seized" } as Pattern["modes"][number];
    const seized = { mode, byOwn: 1, byAccident: 1, once: { byOwn: 1, byAccident: 1 }, where: [], checks: 2 };
    const rows = modeRows([seized], { byAccident: 2, where }, words);
    expect(rows.map(({ name, byOwn, byAccident }) => [name, byOwn, byAccident])).toEqual([
      ["Pump seized", 1, 1],
      ["What the pattern has no name for", 0, 2],
    ]);
    expect(modeRows([seized], { byAccident: 0, where: [] }, words)).toHaveLength(1);
  });

  it("says of a line that was not possible in too few openings how many more it takes", () => {
    expect(sayNotPossible({ notPossible: 1, asked: 1, openingsWanted: 4 }, words)).toBe(
      "1 of 1; too little to tell: it takes 4 openings more",
    );
    expect(sayNotPossible({ notPossible: 4, asked: 9, openingsWanted: 0 }, words)).toBe("4 of 9");
  });

  it("says that nothing was opened yet, and not that nothing was wrong", () => {
    expect(sayNone({ openings: 0 }, words.nothingWrong(), words)).toBe("Nothing was opened yet");
    expect(sayNone({ openings: 1 }, words.nothingWrong(), words)).toBe("Nothing was ever found wrong");
  });

  it("says how many openings it takes where there are too few", () => {
    const card = { proposals: [], openingsWanted: 40 } as unknown as ReportCard;
    expect(sayWanted(card, words)).toBe(
      "The log would change nothing yet. To say of a check that it finds something at most once in 20 times takes 59 openings without a find: about 40 openings more.",
    );
    expect(sayWanted({ ...card, openingsWanted: 0 }, words)).toBe("The log would change nothing yet.");
  });
});
