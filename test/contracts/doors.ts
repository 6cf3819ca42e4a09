import type { Check, Pattern, Step } from "#kit";
import type { Entry } from "#log";
import { recordOf, type Answer, type Bodies, type EntryKind, type KitState, type Value } from "#readiness";
import {
  answerStep,
  answerWordsOf,
  createStationFold,
  judgeEntry,
  proveFinding,
  type Act,
  type ActContext,
} from "#station";
import { fetchWords } from "#words";
import { createImportJudge } from "../../src/cli/import/import-judge.ts";
import { assembleReading, type Typed } from "../../src/web/act/typed-reading.ts";
import { SAMPLE, sampleMark } from "../../src/web/kit-view/sample.ts";
import { readCell } from "../../src/web/pages/turnaround/card-entry/card-cell.ts";

/* One kit that stands open, and every door through which a reading of it may come. */

export const NOW = "2026-03-14T12:00:00+00:00";
const TODAY = "2026-03-14";
/** The seal that stood on record when the kit was opened. */
export const RECORDED = "DK0417";

const TIMED: Check = { ...look("timed"), kind: "timed", atLeast: 30, atMost: 60 };
const FINDS: readonly Check[] = [...SAMPLE.checks, TIMED].map((check) => ({ ...check, finds: ["torch-dark"] }));
const STEP: Step = { ...SAMPLE.stages[0]!.steps[0]!, id: "all", line: 9, checks: FINDS.map(({ id }) => id) };
export const WAITING: Step = { ...STEP, id: "drain", line: 10, checks: [], timer: { kind: "wait", atLeast: 120 } };
/** A line at which something is parted until both its checks are answered, and the line that lets fuel flow. */
export const PARTED: Step = { ...STEP, id: "part", line: 11, checks: ["look-a", "look-b"], hazards: ["opens-fuel"] };
export const COCK: Step = { ...STEP, id: "cock", line: 12, checks: [], hazards: ["opens-fuel"] };
export const PATTERN: Pattern = {
  ...SAMPLE,
  checks: [...FINDS, look("look-a"), look("look-b")],
  stages: [{ id: "examine", name: "Examine", steps: [STEP, WAITING, PARTED, COCK] }],
};
const KEY = "trial-pump@1";

function look(id: string): Check & { readonly kind: "look" } {
  return { id, item: "torch", kind: "look", ask: id, expect: id, finds: [] };
}

function line<Kind extends EntryKind>(kind: Kind, body: Bodies[Kind], more: Partial<Entry> = {}): Entry {
  const number = (lines += 1).toString(16).padStart(12, "0");
  const where = { place: "north", subject: "kit:k1", by: "ann", device: "tablet", pattern: KEY };
  return { id: `0190a000-0000-7000-8000-${number}`, kind, at: NOW, ...where, body, ...more } as Entry;
}
let lines = 0;

const ATE = { place: "station", at: "2026-03-01T08:00:00Z" };
const STATION: readonly Entry[] = [
  line("person-joined", { name: "Ann", role: "keeper" }, { ...ATE, subject: "person:ann" }),
  line("place-set", { name: "North", strength: 1, zone: "UTC" }, { ...ATE, subject: "place:north" }),
  line("kit-enrolled", { name: "K", serial: "S", seal: RECORDED, items: [] }, { at: "2026-03-01T09:00:00Z" }),
];
const OPENED = line("turnaround-opened", { turnaround: "t1", because: "routine", sealSeen: RECORDED });

/** A station with one kit, after these lines of it. */
export function stationWith(...more: readonly Entry[]) {
  const fold = createStationFold([PATTERN]);
  fold.add([...STATION, ...more]);
  return fold;
}

/** Who does something there, and when. */
export function doing(fold: ReturnType<typeof stationWith>, now = NOW): ActContext {
  const reading = fold.read();
  return { ...reading, me: reading.people[0]!, today: TODAY, now };
}

export function openKit(...more: readonly Entry[]) {
  const fold = stationWith(OPENED, ...more);
  return { fold, kit: fold.kit("k1")! };
}

export function checkNamed(id: string): Check {
  return FINDS.find((check) => check.id === id)!;
}

/** A reading as each door is given it. */
export interface Row {
  readonly check: string;
  /** What stands in the boxes of the phone. */
  readonly typed: Typed & { readonly seconds?: number };
  /** What is typed in the box of the card. */
  readonly card: string;
  /** What goes into the line. */
  readonly value: Value;
}

/** What a door says of a reading. */
export type Verdict = "right" | "not right";

const WORDS = await fetchWords("en", "act");

const AROUND = { today: TODAY, units: "metric", recorded: RECORDED } as const;

export const DOORS: Readonly<Record<string, (row: Row) => Verdict>> = {
  "the station's rule": ({ check, value }) => allowed(answerStep(...open(), seen(check, value))),
  phone: ({ check, typed: { seconds, ...typed } }) => {
    const timer = seconds === undefined ? {} : { timer: { seconds, mark: sampleMark(0) } };
    const reading = assembleReading(checkNamed(check), typed, { ...AROUND, ...timer }, WORDS);
    return verdict(reading.kind === "read" && reading.judgement.right);
  },
  card: ({ check, card }) => {
    const cell = readCell(checkNamed(check), card, AROUND);
    return verdict(cell.kind === "read" && cell.meaning.answer === "seen");
  },
  "proof of a finding": ({ check, value }) => {
    const { fold, kit } = remedied();
    const checks = FINDS.map(({ id }) => ({ check: id, answer: answerFor(id, check), ...(id === check && { value }) }));
    return allowed(proveFinding(doing(fold), kit, { finding: "f1", checks }));
  },
  server: ({ check, value }) => verdict(arrives(line("step-answered", seen(check, value)))),
  "server, for a proof": ({ check, value }) =>
    verdict(arrives(line("finding-proved", { finding: "f1", checks: [{ check, answer: "seen", value }] }))),
  "shell, at an import": ({ check, value }) => verdict(imports(line("step-answered", seen(check, value)))),
  paper: (row) => {
    const answer: Answer = DOORS["card"]!(row) === "right" ? "seen" : "wrong";
    const { kit } = openKit(line("step-answered", { ...seen(row.check, row.value), answer }));
    const printed = recordOf(kit.turnaround, PATTERN).find((one) => one.check === row.check);
    return verdict(
      printed?.answer !== undefined &&
        !WRONG_ON_PAPER.test(
          answerWordsOf({ pattern: PATTERN, units: "metric" }, { ...printed, answer: printed.answer }),
        ),
    );
  },
};

/** How paper begins an answer that is not "seen". */
const WRONG_ON_PAPER = /^(FOUND WRONG|NOT POSSIBLE)/;

function open(): readonly [ActContext, KitState] {
  const { fold, kit } = openKit();
  return [doing(fold), kit];
}

/** A closed kit with its seal on, and a finding that something was done about. */
function remedied() {
  const raised = {
    finding: "f1",
    item: "torch",
    mode: "torch-dark",
    effect: "limits",
    limit: "daylight only",
  } as const;
  const fold = stationWith(
    line("finding-raised", { ...raised, photos: [] }),
    line("remedy-made", { finding: "f1", how: "mended", note: "Cleaned." }),
  );
  return { fold, kit: fold.kit("k1")! };
}

function answerFor(id: string, asked: string): Answer {
  return id === asked ? "seen" : "wrong";
}

function seen(check: string, value: Value): Bodies["step-answered"] {
  return { turnaround: "t1", step: "all", check, answer: "seen", value };
}

function arrives(entry: Entry): boolean {
  const faults = judgeEntry(entry, {
    person: "ann",
    role: "keeper",
    device: "tablet",
    hasPlace: () => true,
    hasPattern: () => true,
    patternNamed: (version) => (version === KEY ? PATTERN : undefined),
    find: () => undefined,
  });
  return faults.length === 0;
}

function imports(entry: Entry): boolean {
  const judge = createImportJudge({ fold: openKit().fold, heads: new Map() }, NOW, { word: undefined, bringer: "Ann" });
  judge.see({ kind: "unsent", entry } as never);
  try {
    judge.finish();
    return true;
  } catch {
    return false;
  }
}

export function allowed(act: Act): Verdict {
  return verdict(act.kind === "entry");
}

function verdict(isRight: boolean): Verdict {
  return isRight ? "right" : "not right";
}

/** The line that one check of a step was seen. */
export function answered(at: { readonly turnaround: string; readonly step: string; readonly check: string }): Entry {
  return line("step-answered", { ...at, answer: "seen" });
}

/** Lines of the clock at the step that waits. */
export const CLOCK = {
  started: (at: string) => line("timer-started", { turnaround: "t1", step: WAITING.id }, { at }),
  stopped: (seconds: number, at: string) =>
    line("timer-stopped", { turnaround: "t1", step: WAITING.id, started: at, seconds, reached: seconds >= 120 }),
};
