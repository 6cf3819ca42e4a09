import { describe, expect, it } from "vitest";
import type { Entry } from "#log";
import { Desk, SMALL_PATTERN } from "../sample-station.ts";
import { makeRemedy, proveFinding, raiseFinding } from "../acts/finding-acts.ts";
import { enrolKit } from "../acts/kit-acts.ts";
import { answerStep, closeGrounded, fitItem, openTurnaround, readDate } from "../acts/turnaround-acts.ts";
import type { Act } from "../acts/draft.ts";
import { recordOf, type EntryKind } from "#readiness";
import { exceptionsOf } from "./exceptions.ts";
import { linesBehind } from "./lines-behind.ts";
import { said } from "./record-reading.ts";
import { renewalsOf } from "./readings.ts";
import type { RecordRead } from "./record.ts";
import { summaryOf } from "./summary.ts";
import { dateWords, valueWords } from "./value-words.ts";

const CELLS = { item: "cells", fitted: "2026-01-01", printed: "2027-03", quantity: 2 };

const volts = (si: number) => ({ kind: "quantity", si, dimension: "voltage", text: `${si} V` }) as const;

/** A kit under way, and every line that was written of it. */
class Story {
  readonly desk = new Desk();
  readonly entries: Entry[] = [];

  constructor() {
    const body = { name: "Kit 1", serial: "S-1", items: [CELLS] };
    this.do(enrolKit(this.desk.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
    this.do(
      openTurnaround(this.desk.as("ann"), this.desk.kit(), { turnaround: "t1", because: "routine", sealSeen: "" }),
    );
  }

  do<Kind extends EntryKind>(act: Act<Kind>): void {
    this.entries.push(this.desk.do(act));
  }

  read(): RecordRead {
    const kit = this.desk.kit();
    const turnaround = kit.turnaround ?? kit.turnarounds.at(-1)!;
    const entries = linesBehind(this.entries, turnaround.id);
    return { kit, turnaround, pattern: SMALL_PATTERN, people: new Map(), entries, units: "metric" };
  }
}

/** A lot recalled while the kit is open: the finding names no turnaround; another lot is fitted, and it is proved. */
function recalled(): Story {
  const story = new Story();
  const { desk } = story;
  const [ann, at] = [() => desk.as("ann"), { turnaround: "t1", step: "look" }];
  story.do(fitItem(ann(), desk.kit(), { ...at, ...CELLS, fitted: "2026-01-10", batch: "L77" }));
  const finding = {
    finding: "f1",
    item: "cells",
    mode: "other",
    effect: "grounds",
    note: "Lot recalled",
    check: "volts",
  } as const;
  story.do(raiseFinding(ann(), desk.kit(), { ...finding, photos: [] }));
  const fitted = { ...CELLS, fitted: "2026-01-10", printed: "2028-05", batch: "L88" };
  story.do(makeRemedy(ann(), desk.kit(), { finding: "f1", how: "replaced", part: "Cell", quantity: 2, fitted }));
  const value = { kind: "quantity", si: 1.5, dimension: "voltage", text: "1.5 V" } as const;
  const volts = { check: "volts", answer: "seen", value } as const;
  story.do(proveFinding(ann(), desk.kit(), { finding: "f1", checks: [volts] }));
  return story;
}

/** Cells found flat, and this put in for them; nothing was said of its date. */
function replaced(part: string, quantity = 2): Story {
  const story = new Story();
  const { desk } = story;
  const flat = { finding: "f1", item: "cells", mode: "other", effect: "notes", note: "Flat", photos: [] } as const;
  story.do(raiseFinding(desk.as("ann"), desk.kit(), { ...flat, turnaround: "t1" }));
  story.do(makeRemedy(desk.as("ann"), desk.kit(), { finding: "f1", how: "replaced", part, quantity }));
  return story;
}

describe("the record of a turnaround", () => {
  it("names every finding that was raised, mended or closed while the kit was open", () => {
    const { findings } = exceptionsOf(recalled().read());
    expect(findings.rows).toHaveLength(1);
    expect(findings.rows[0]!.cells.join("|")).toContain("Lot recalled");
  });

  it("names a date that could not be read", () => {
    const story = new Story();
    const read = { item: "cells", of: "printed", turnaround: "t1", step: "look" } as const;
    story.do(readDate(story.desk.as("ann"), story.desk.kit(), read));
    const said = exceptionsOf(story.read()).amiss.rows.map(({ cells }) => cells.slice(1, 3).join(": "));
    expect(said).toContain("Date of Cells: NO DATE CAN BE READ");
  });

  it("names the part that is in it now, and what it replaced", () => {
    const rows = renewalsOf(recalled().read()).rows.map(({ cells }) => cells[2]);
    expect(rows).toEqual(["2 new, 10 January 2026, good until May 2028, lot L88; in place of lot L77"]);
  });

  it("counts an item as renewed where a remedy put in its own part, and says that its date is still to be read", () => {
    const story = replaced("  cells, size D");
    expect(story.desk.kit().contents["cells"]).toMatchObject({ fitted: "2026-01-10", quantity: 2 });
    expect(story.desk.kit().contents["cells"]!.printed).toBeUndefined();
    const rows = renewalsOf(story.read()).rows.map(({ cells }) => cells[2]);
    expect(rows).toEqual(["2 new, 10 January 2026, the date printed on it not read yet"]);
  });

  it("says of how many some were replaced, and leaves the dates of those that stayed in", () => {
    const story = replaced("Cells, size D", 1);
    expect(story.desk.kit().contents["cells"]).toMatchObject({ fitted: "2026-01-01", printed: "2027-03", quantity: 2 });
    expect(exceptionsOf(story.read()).findings.rows[0]!.cells[2]).toBe("1 of 2 replaced: Cells, size D");
    expect(renewalsOf(story.read()).rows[0]!.cells[2]).toMatch(/^1 of 2 new, 10 January 2026/);
  });

  it("counts no item as renewed where only a part of it was", () => {
    const story = replaced("Contact spring");
    expect(story.desk.kit().contents["cells"]).toMatchObject({ fitted: "2026-01-01", printed: "2027-03" });
    expect(renewalsOf(story.read()).rows).toEqual([]);
    expect(exceptionsOf(story.read()).findings.rows[0]!.cells[2]).toBe("replaced: 2 x Contact spring");
  });

  it("says in words why it was opened, never by the code of the log", () => {
    const read = recalled().read();
    const opened = (because: typeof read.turnaround.because) =>
      summaryOf({ ...read, turnaround: { ...read.turnaround, because } })[0]!.cells[1];
    expect(opened("lapse")).toMatch(/: something in it runs out$/);
    expect(opened("returned")).toMatch(/: back from a vessel$/);
  });

  it("keeps the time of the first look where a line was found wrong and then right", () => {
    const story = new Story();
    const { desk } = story;
    const at = { turnaround: "t1", step: "look", check: "volts" } as const;
    const answer = (said: "wrong" | "seen", si: number) =>
      story.do(answerStep(desk.as("ann"), desk.kit(), { ...at, answer: said, value: volts(si) }));
    answer("wrong", 1.1);
    const first = story.entries.at(-1)!.at.slice(11, 16);
    answer("seen", 1.5);
    const read = story.read();
    const line = recordOf(read.turnaround, read.pattern).find(({ check }) => check === "volts")!;
    expect(said(read, line)).toMatch(new RegExp(`^FOUND WRONG at ${first}, then .*1\\.1 V, then 1\\.5 V`));
  });

  it("says that it was part of a drill", () => {
    const read = recalled().read();
    const inDrill = { ...read, turnaround: { ...read.turnaround, drill: "d1" } };
    expect(summaryOf(inDrill)[0]!.cells[0]).toBe("Drill");
    const findings = read.kit.findings.map((one) => ({ ...one, remedies: [], drill: "d1" }));
    const { rows } = exceptionsOf({ ...inDrill, kit: { ...read.kit, findings } }).findings;
    expect(rows[0]!.cells[2]).toBe("of the drill, ended with it");
  });

  it("has no new seal where it was closed without one", () => {
    const story = new Story();
    const pattern = {
      ...SMALL_PATTERN,
      checks: SMALL_PATTERN.checks.map((one) => (one.id === "seal-number" ? { ...one, item: "cells" } : one)),
    };
    const { desk } = story;
    story.do(fitItem(desk.as("ann"), desk.kit(), { turnaround: "t1", step: "look", ...CELLS, fitted: "2026-01-10" }));
    story.do(closeGrounded(desk.as("ann"), desk.kit(), { turnaround: "t1", reason: "No hose" }));
    const [row] = renewalsOf({ ...story.read(), pattern }).rows;
    expect(row!.cells[2]).toBe("marked as new, but closed without a seal");
  });

  it("prints one reading once, and a month as a month", () => {
    expect(valueWords({ kind: "match", first: "S-1001", second: "S-1001" })).toBe("S-1001");
    expect(valueWords({ kind: "match", first: "S-1001", second: "S-1002" })).toBe("S-1001 / S-1002");
    expect(dateWords("2024-03")).toBe("March 2024");
    expect(dateWords("2024-03-09")).toBe("9 March 2024");
  });
});
