import { addSpan } from "#base";
import { allSteps, stageNamed, type Pattern } from "#kit";
import { STATION_PLACE, type Entry } from "#log";
import type { Bodies, Tie } from "#readiness";
import { DAY_MS, HOUR_MS } from "./kit-plan.ts";
import { dayOf, type LogWriter } from "./log-writer.ts";
import { ADMINISTRATOR, CREW, KEEPER, SECOND_CREW } from "./roster.ts";

/** What the story of the people is told with. */
export interface PeopleSetting {
  readonly writer: LogWriter;
  readonly patterns: readonly Pattern[];
  /** Midnight UTC at which today began. */
  readonly today: number;
  /** Days before today on which the first kit was taken on charge. */
  readonly kitDays: number;
}

type Rule = Bodies["qualification-set"];

/** How many days before its first kit the station said who may do what. */
const SET_BEFORE_DAYS = 15;
/** Days before today on which a crew member who turns no kit around did each on a drill evening. */
const DRILLS: Readonly<Record<string, readonly number[]>> = {
  "proof-run": [690, 340, 40],
  "spare-cord": [690, 520, 345, 165],
  "fuel-handling": [690, 340, 40],
  sealing: [690, 340, 40],
  "on-scene-sheet": [690, 530, 350, 170],
};

/**
 * Who may do what: five qualifications with invented spans; the keeper by a course and from then on by doing, one of the
 * crew by drills, the other brought on by the keeper in the first turnarounds that are hers.
 */
export function writePeople(setting: PeopleSetting): void {
  const rules = rulesFor(setting.patterns);
  const { writer, today } = setting;
  const setAgo = setting.kitDays + SET_BEFORE_DAYS;
  const ms = today - setAgo * DAY_MS + 9 * HOUR_MS;
  for (const [id, body] of rules) {
    const line = { place: STATION_PLACE, ms, hand: ADMINISTRATOR, body };
    writer.write({ ...line, kind: "qualification-set", subject: `qualification:${id}` });
  }
  const course = "Course of the makers, two days, with a paper.";
  for (const [id] of rules) tell(setting, KEEPER.by, id, setAgo - 1, { how: course });
  for (const [id, days] of Object.entries(DRILLS)) {
    const seen = { how: "Drill evening in the boathouse.", second: KEEPER.by };
    if (rules.has(id)) for (const ago of days.filter((one) => one < setAgo)) tell(setting, CREW.by, id, ago, seen);
  }
  for (const [id, rule] of rules) bringOn(setting, id, rule);
}

function rulesFor(patterns: readonly Pattern[]): ReadonlyMap<string, Rule> {
  const of = (name: string, ties: readonly Tie[], more: Partial<Rule> = {}): Rule => ({
    name,
    ties,
    every: "12 months",
    seenBy: "keepers",
    alone: "with-note",
    ...more,
  });
  const stage = (id: "run" | "spare-start" | "seal"): readonly Tie[] =>
    patterns.some((pattern) => stageNamed(pattern, id)) ? [{ to: "stage", stage: id }] : [];
  const rules = new Map<string, Rule>([
    ["proof-run", of("Proof run", stage("run"))],
    ["spare-cord", of("Spare-cord drill", stage("spare-start"), { every: "6 months" })],
    ["fuel-handling", of("Fuel handling", fuelSteps(patterns), { seenBy: "holders", alone: "never" })],
    ["sealing", of("Sealing", stage("seal"))],
    ["on-scene-sheet", of("Driving the on-scene sheet", [{ to: "sheet" }], { every: "6 months" })],
  ]);
  return new Map([...rules].filter(([, { ties }]) => ties.length > 0));
}

/** The steps that fill in new fuel. */
function fuelSteps(patterns: readonly Pattern[]): readonly Tie[] {
  return patterns.flatMap((pattern) =>
    allSteps(pattern)
      .filter(({ renews }) => renews.some((item) => item === pattern.engine?.fuelItem))
      .map(({ id: step }): Tie => ({ to: "step", step, pattern: pattern.id })),
  );
}

function tell(
  { writer, today }: PeopleSetting,
  person: string,
  qualification: string,
  ago: number,
  said: Pick<Bodies["practice-told"], "how" | "second">,
): void {
  const ms = today - ago * DAY_MS + 20 * HOUR_MS;
  const subject = `person:${person}`;
  const line = { place: STATION_PLACE, subject, ms, hand: KEEPER, ...inSightOf(writer.entries, subject) };
  writer.write({ ...line, kind: "practice-told", body: { qualification, day: dayOf(ms), ...said } });
}

/** The line that began a subject: what is told of the past was written in sight of it. */
function inSightOf(entries: readonly Entry[], subject: string): { readonly after?: string } {
  const first = entries.find((entry) => entry.subject === subject);
  return first === undefined ? {} : { after: first.id };
}

/** The keeper stands beside at her first turnarounds under a pattern that has such lines, until one is whole. */
function bringOn({ writer, patterns }: PeopleSetting, qualification: string, rule: Rule): void {
  const places = new Set(patterns.filter((pattern) => isTied(rule, pattern)).map(({ id }) => id));
  const hers = writer.entries
    .filter(({ kind, by, pattern = "" }) => {
      return kind === "turnaround-opened" && by === SECOND_CREW.by && places.has(pattern.split("@", 1)[0]!);
    })
    .toSorted((one, other) => (one.at < other.at ? -1 : 1));
  const [first] = hers;
  if (first === undefined || rule.ties.some((tie) => tie.to === "stage" && tie.stage === "seal")) return;
  const until = addSpan(first.at.slice(0, 10), { days: 30 });
  for (const opened of hers.filter(({ at }) => at.slice(0, 10) <= until)) nameKeeper(writer, opened, qualification);
}

function isTied({ ties }: Rule, pattern: Pattern): boolean {
  return ties.some(
    (tie) =>
      (tie.to === "stage" && stageNamed(pattern, tie.stage) !== undefined) ||
      (tie.to === "step" && tie.pattern === pattern.id),
  );
}

function nameKeeper(writer: LogWriter, opened: Entry, qualification: string): void {
  const { subject, place, at, pattern, id, body } = opened;
  const { turnaround } = body as Bodies["turnaround-opened"];
  const line = { subject, place, ms: Date.parse(at) + 1000, hand: SECOND_CREW, after: id };
  const said = { turnaround, qualification, second: KEEPER.by };
  writer.write({ ...line, ...(pattern !== undefined && { pattern }), kind: "second-named", body: said });
}
