import { addDays, type PlainDate } from "#base";
import type { Begun, Effect, Pattern } from "#kit";
import { metIn } from "../after-use/index.ts";
import { isInForce, type Condition } from "./condition.ts";
import { ageConditions, itemConditions } from "./date-conditions.ts";
import { findingConditions } from "./finding-conditions.ts";
import { lookUp, type Lookup, type Lookups } from "../lookup.ts";
import type { StationPolicy } from "../station/station-state.ts";
import { stateConditions } from "./state-conditions.ts";
import type { KitState, Lapse, Limit, Reason, Standing, StandingKind, Turnaround } from "../state.ts";
import { stepsFor } from "./steps-for.ts";

/** What standings are judged against beside the kit and its pattern. */
export interface StandingOptions {
  /** Other versions of patterns known here: whether the kit's is current, and what old turnarounds were made under. */
  readonly otherPatternVersions?: readonly Pattern[];
  /** Kept by who asks for many kits, so that a pattern is read once. */
  readonly lookups?: Lookups;
}

/** Everything that bears on one kit, so that many questions can be asked of one reading. */
export interface Outlook {
  readonly lookup: Lookup;
  readonly conditions: readonly Condition[];
}

const GRAVITY: Readonly<Record<StandingKind, number>> = {
  away: 4,
  open: 3,
  grounded: 2,
  "ready-with-limits": 1,
  ready: 0,
};
const STANDING_OF: Readonly<Record<Condition["bears"], StandingKind>> = {
  away: "away",
  open: "open",
  grounds: "grounded",
  limits: "ready-with-limits",
  notes: "ready",
};

/** Reads once what bears on a kit; {@link standingOn}, lapses and bands ask it. */
export function outlookOf(
  kit: KitState,
  pattern: Pattern,
  policy: StationPolicy,
  options: StandingOptions = {},
): Outlook {
  const begun: Begun = kit.turnaround ? kit.turnaround : { met: metIn(kit.met) };
  const lookup = options.lookups?.of(pattern, begun) ?? lookUp(pattern, begun);
  const versions = options.otherPatternVersions ?? [];
  const patternOf = (turnaround: Turnaround) =>
    versions.find((version) => `${version.id}@${version.version}` === turnaround.pattern) ?? pattern;
  const conditions = [
    ...stateConditions(kit, lookup, versions),
    ...findingConditions(kit, lookup),
    ...itemConditions(kit, lookup, policy),
    ...ageConditions(kit, lookup, policy, patternOf),
  ];
  return { lookup, conditions };
}

/**
 * What a kit is good for on a day, why, until when, and what would restore it.
 *
 * Ready needs all of: the seal seen is the seal recorded; no open finding that grounds; every dated item in date; fuel,
 * proof run and turnaround younger than the pattern's and the station's policy; nothing to settle; custody here.
 * Limits come from findings that limit or are lived with, items whose lapse limits, lines that could not be examined,
 * a muster overdue and a pattern version that is no longer current.
 *
 * @param kit - the kit as its log tells it
 * @param pattern - the pattern version it is built to
 * @param today - the day asked about, at the kit's place
 * @param policy - the station's own, stricter policy
 * @param options - other pattern versions known here
 * @returns the standing, the deciding reason first
 */
export function standingOf(
  kit: KitState,
  pattern: Pattern,
  today: PlainDate,
  policy: StationPolicy,
  options: StandingOptions = {},
): Standing {
  return standingOn(outlookOf(kit, pattern, policy, options), today);
}

/** The standing of a kit that has been read once, on a day. */
export function standingOn(outlook: Outlook, day: PlainDate): Standing {
  const inForce = outlook.conditions.filter((condition) => isInForce(condition, day));
  const sorted = inForce.toSorted((one, other) => gravityOf(other) - gravityOf(one));
  const standing = gradeOf(inForce);
  const isReady = standing === "ready" || standing === "ready-with-limits";
  const lapse = isReady ? lapseAfter(outlook, day) : undefined;
  const grounding = lapse && lapsesIn(outlook).find((one) => one.day >= day && one.effect === "grounds");
  return {
    standing,
    because: reasonsOf(sorted),
    limits: standing === "ready-with-limits" ? limitsOf(inForce) : [],
    ...(lapse && { lapse }),
    ...(grounding && { grounding }),
    restore: restoring(outlook.lookup, sorted),
  };
}

/** Why it stands as it does. What was lent with it is none of it: page and work due say that by themselves. */
function reasonsOf(inForce: readonly Condition[]): readonly Reason[] {
  const reasons = inForce.map(({ reason }) => reason).filter(({ rule }) => rule !== "lent");
  return reasons.length > 0 ? reasons : [SOUND];
}

const SOUND: Reason = { rule: "sound", said: { say: "sound" } };

/** What the conditions in force add up to. */
export function gradeOf(inForce: readonly Condition[]): StandingKind {
  return inForce
    .map((condition) => STANDING_OF[condition.bears])
    .reduce<StandingKind>((worst, kind) => (GRAVITY[kind] > GRAVITY[worst] ? kind : worst), "ready");
}

/**
 * Everything dated that will end or limit a kit's standing, in order of day, whether past or to come.
 * The day is the last on which it still holds.
 */
export function lapsesOf(
  kit: KitState,
  pattern: Pattern,
  policy: StationPolicy,
  options: StandingOptions = {},
): readonly Lapse[] {
  return lapsesIn(outlookOf(kit, pattern, policy, options));
}

/** The lapses of a kit that has been read once, in order of day. */
export function lapsesIn(outlook: Outlook): readonly Lapse[] {
  return outlook.conditions
    .flatMap((condition) => lapseOf(condition) ?? [])
    .toSorted((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0));
}

/** What a condition with a day will end, and on which day it still holds; undefined where it has none. */
export function lapseOf({ from, ends, bears, reason }: Condition): Lapse | undefined {
  if (from === undefined || bears === "open" || bears === "away") return undefined;
  const item = reason.item === undefined ? {} : { item: reason.item };
  return { day: addDays(from, -1), what: ends ?? reason.said, ...item, effect: bears };
}

/** The first lapse from a day on after which standing or limits are no longer the same; the gravest of its day. */
function lapseAfter(outlook: Outlook, day: PlainDate): Lapse | undefined {
  const now = signature(outlook, day);
  const ahead = lapsesIn(outlook).filter((lapse) => lapse.day >= day);
  const first = ahead.find((lapse) => signature(outlook, addDays(lapse.day, 1)) !== now);
  if (!first) return undefined;
  return ahead.filter((lapse) => lapse.day === first.day).reduce((worst, one) => (isGraver(one, worst) ? one : worst));
}

function signature(outlook: Outlook, day: PlainDate): string {
  const inForce = outlook.conditions.filter((condition) => isInForce(condition, day));
  return JSON.stringify([gradeOf(inForce), limitsOf(inForce)]);
}

function isGraver(one: Lapse, other: Lapse): boolean {
  const order: readonly Effect[] = ["notes", "limits", "grounds"];
  return order.indexOf(one.effect) > order.indexOf(other.effect);
}

function limitsOf(inForce: readonly Condition[]): readonly Limit[] {
  return eachOnce(inForce.flatMap((condition) => condition.limit ?? []));
}

/** Each thing said once, however often it is said. */
function eachOnce<One extends Limit>(said: readonly One[]): readonly One[] {
  return [...new Map(said.map((one) => [JSON.stringify(one), one])).values()];
}

function gravityOf(condition: Condition): number {
  return GRAVITY[STANDING_OF[condition.bears]];
}

/** What would make a kit ready again: each thing once, and the minutes of all steps that takes together. */
function restoring(lookup: Lookup, inForce: readonly Condition[]): Standing["restore"] {
  const needed = inForce.filter((condition) => condition.bears !== "notes").flatMap(({ restore }) => restore ?? []);
  const minutes = [...stepsFor(lookup, needed)].reduce(
    (sum, id) => sum + (lookup.steps.get(id)?.needs.minutes ?? 0),
    0,
  );
  return { what: eachOnce(needed.map((one) => one.what)), minutes };
}
