import { checkNamed, checksFinding, modeNamed, patternKey, type Mode, type Pattern } from "#kit";
import { STATION_PLACE, type Entry } from "#log";
import { visitKey, type Bodies, type DrawnLine, type VisitedKit } from "#readiness";
import { createStationFold, planVisit, type VisitPlan } from "#station";
import { createChance } from "./chance.ts";
import type { Hand, LogWriter } from "./log-writer.ts";
import { ASSESSOR, KEEPER } from "./roster.ts";

/** What the story of the visit is told with. */
export interface VisitSetting {
  readonly writer: LogWriter;
  readonly patterns: readonly Pattern[];
}

/** The kit that was opened for the visit, and where it stands. */
const KIT = "br-09";
const PLACE = "outer-pier";
const MINUTE_MS = 60_000;
const MOST_SEEDS = 256;
const RULE = { places: [PLACE], chance: 0.9, share: 0.1, kits: 1 } as const;

/** A line that the assessor found wrong, and what it was. */
interface Wrong {
  readonly line: DrawnLine;
  readonly mode: Mode;
}

/**
 * One past visit: an assessor was there when a kit was opened for its last turnaround, and looked again at lines of the
 * one before. Two that the keeper had written as right were not; both were mended before the kit was sealed.
 */
export function writeVisit({ writer, patterns }: VisitSetting): void {
  const opened = writer.entries.findLast(isAbout(`kit:${KIT}`, "turnaround-opened"));
  const sealed = writer.entries.findLast(isAbout(`kit:${KIT}`, "sealed"));
  if (!opened || !sealed) return;
  const begun = Date.parse(opened.at) - 20 * MINUTE_MS;
  const drawn = draw(writer, patterns, begun);
  if (!drawn) return;
  const own = writer.apart(createChance(28));
  const visit = own.newId(begun);
  const tell = teller(own, visit);
  const { plan, seed } = drawn;
  tell("visit-begun", begun, { ...RULE, seed, of: visitedIn(plan), note: "Yearly visit." });
  const wrong = wrongOnes(plan);
  for (const [at, line] of plan.lines.entries()) {
    const ms = Date.parse(opened.at) + (at + 2) * MINUTE_MS;
    tell("line-reexamined", ms, { ...line, ...seen(own, { opened, line, wrong: wrong.get(visitKey(line)), ms }) });
  }
  mend({ writer: own, sealed, pattern: plan.kits[0]!.pattern }, [...wrong.values()]);
  tell("visit-ended", Date.parse(sealed.at) - 5 * MINUTE_MS, {});
}

function isAbout(subject: string, kind: string) {
  return (entry: Entry) => entry.subject === subject && entry.kind === kind;
}

/** The first seed that draws the kit that was opened: in the story chance chose it. */
function draw(writer: LogWriter, patterns: readonly Pattern[], ms: number) {
  const fold = createStationFold(patterns);
  fold.add(writer.entries.filter(({ at, subject }) => subject.startsWith("kit:") && Date.parse(at) < ms));
  const reading = fold.read();
  for (let at = 0; at < MOST_SEEDS; at += 1) {
    const seed = at.toString(16).padStart(4, "0").repeat(4);
    const plan = planVisit(reading, { ...RULE, seed });
    if (plan.kits[0]?.kit.id === KIT) return { plan, seed };
  }
  return undefined;
}

function visitedIn({ frame, kits, lines }: VisitPlan): readonly VisitedKit[] {
  return frame.kits.map((one) => {
    const of = { kit: one.kit.id, turnaround: one.turnaround.id, pattern: patternKey(one.pattern) };
    return kits.includes(one) ? { ...of, lines: lines.map(({ step, check }) => ({ step, check })) } : of;
  });
}

/** The first two lines drawn at which a look finds something that is no more than noted. */
function wrongOnes({ kits, lines }: VisitPlan): ReadonlyMap<string, Wrong> {
  const pattern = kits[0]!.pattern;
  const mild = lines.flatMap((line): readonly Wrong[] => {
    const check = checkNamed(pattern, line.check);
    const mode = check?.finds.map((id) => modeNamed(pattern, id)).find((one) => one?.effect === "notes");
    return check?.kind === "look" && mode ? [{ line, mode }] : [];
  });
  return new Map(mild.slice(0, 2).map((one) => [visitKey(one.line), one]));
}

interface AtLine {
  readonly opened: Entry;
  readonly line: DrawnLine;
  readonly wrong: Wrong | undefined;
  readonly ms: number;
}

/** What the assessor saw: wrong with its finding, else what the keeper read there an hour later. */
function seen(writer: LogWriter, { opened, line, wrong, ms }: AtLine): Pick<Bodies["line-reexamined"], "answer"> {
  if (wrong) return { answer: "wrong", ...raise(writer, opened, wrong, ms) };
  const { turnaround } = opened.body as Bodies["turnaround-opened"];
  const given = writer.entries.find(({ kind, body }) => {
    const said = body as Bodies["step-answered"];
    const isHere = said.turnaround === turnaround && said.step === line.step && said.check === line.check;
    return kind === "step-answered" && isHere;
  });
  const value = (given?.body as Bodies["step-answered"] | undefined)?.value;
  return { answer: "seen", ...(value && { value }) };
}

function raise(writer: LogWriter, { place, subject, pattern }: Entry, { line, mode }: Wrong, ms: number) {
  const finding = findingOf(mode);
  const { item, id, effect } = mode;
  const body = { finding, item, mode: id, effect, step: line.step, check: line.check, photos: [] };
  const about = { place, subject, ...(pattern !== undefined && { pattern }) };
  writer.write({ ...about, kind: "finding-raised", ms: ms - 10_000, hand: ASSESSOR, body });
  return { finding };
}

function findingOf(mode: Mode): string {
  return `visit-${mode.id}`;
}

interface Mending {
  readonly writer: LogWriter;
  readonly sealed: Entry;
  readonly pattern: Pattern;
}

/** The keeper puts both right, and proves them by every check that finds them. */
function mend({ writer, sealed, pattern }: Mending, wrong: readonly Wrong[]): void {
  const { place, subject } = sealed;
  const about = { place, subject, pattern: patternKey(pattern), hand: KEEPER };
  for (const [at, { mode }] of wrong.entries()) {
    const ms = Date.parse(sealed.at) - (20 - 4 * at) * MINUTE_MS;
    const finding = findingOf(mode);
    const note = "Put right while the assessor looked on.";
    writer.write({ ...about, kind: "remedy-made", ms, body: { finding, how: "mended", note } });
    const checks = checksFinding(pattern, mode.id).map(({ id: check }) => ({ check, answer: "seen" as const }));
    writer.write({ ...about, kind: "finding-proved", ms: ms + MINUTE_MS, body: { finding, checks } });
  }
}

type VisitKind = "visit-begun" | "line-reexamined" | "visit-ended";

function teller(writer: LogWriter, visit: string) {
  const hand: Hand = ASSESSOR;
  return <Kind extends VisitKind>(kind: Kind, ms: number, body: Bodies[Kind]): void => {
    writer.write({ subject: `visit:${visit}`, place: STATION_PLACE, kind, ms, hand, body });
  };
}
