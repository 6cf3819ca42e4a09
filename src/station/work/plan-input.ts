import { addDays, addSpan, dayWritten, daysBetween, shorterSpan, type PlainDate, type Span } from "#base";
import type { Effect, Pattern } from "#kit";
import { lastSealed, outlookOf, type Condition, type KitState, type Person } from "#readiness";
import { ENGLISH, inWords } from "#words";
import { mayWrite } from "../judging/permission.ts";
import { heldOn } from "./plan-qualifications.ts";
import type { WorkStation } from "./able.ts";
import { firstMonday, type FixedWeek } from "./fixed-weeks.ts";

/** Hours a week counted for a person of whom nobody said how many [h]. */
export const ASSUMED_HOURS = 4;
/** Life counted for a printed date of which no earlier one is on record [d]. */
const ASSUMED_LIFE = 365;
/** What is mended stays mended in the plan [d]. */
const MENDED = 3650;

/** What `plan-year` is asked, from a station's own log. */
export interface PlanInput {
  readonly start: PlainDate;
  readonly weeks: number;
  readonly places: readonly { readonly id: string; readonly strength: number }[];
  readonly kits: readonly PlanKit[];
  readonly people: readonly {
    readonly id: string;
    readonly hoursPerWeek: number;
    /** Ids of qualifications held today. */
    readonly may?: readonly string[];
    /** Ids of those that they may see done by somebody else. */
    readonly sees?: readonly string[];
    readonly absent: readonly { readonly from: string; readonly to: string }[];
  }[];
  readonly fixed: readonly FixedWeek[];
}

interface PlanKit {
  readonly id: string;
  readonly place: string;
  readonly daysOut: number;
  readonly minutes: number;
  /** People needed at once. */
  readonly hands: number;
  /** Ids of qualifications that every opening needs, and that somebody holds today or may see done. */
  readonly needs?: readonly string[];
  readonly clocks: readonly PlanClock[];
}

interface PlanClock {
  readonly id: string;
  readonly lastGoodDay: PlainDate;
  readonly renewedFor: number;
  readonly effect: Effect;
}

/** The question, and what stands in it for things that nobody wrote down. */
export interface PlanAsked {
  readonly input: PlanInput;
  /** One sentence each. */
  readonly assumed: readonly string[];
}

/** What is planned, and from when. */
export interface Planning {
  readonly today: PlainDate;
  readonly weeks: number;
  readonly fixed: PlanInput["fixed"];
}

/**
 * The year's question from a station's kits, hours and days away. Kits that are away, or whose pattern is not here, are
 * left out and named.
 *
 * @param station - as its log tells it
 * @param planning - from the Monday of today's week (on a Sunday, the next), so many weeks, round what is fixed
 */
export function planInputOf(station: WorkStation, { today, weeks, fixed }: Planning): PlanAsked {
  const start = firstMonday(today);
  const places = station.places.filter(({ closed }) => !closed);
  const open = station.kits.filter((kit) => !kit.retired && places.some(({ id }) => id === kit.place));
  const here = open.filter((kit) => kit.custody.kind !== "away" && station.patterns.has(kit.pattern));
  const hands = station.people.filter(({ left, role }) => !left && mayWrite(role, "sealed"));
  const held = heldOn(station, hands, today);
  const input = {
    start,
    weeks,
    places: places.map(({ id, strength }) => ({ id, strength })),
    kits: here.map((kit) => ({ ...planKit(station, kit, start), ...held.needs(kit) })),
    people: hands.map((one) => ({
      id: one.id,
      hoursPerWeek: one.hours ?? ASSUMED_HOURS,
      ...held.may(one),
      absent: absences(one),
    })),
    fixed: fixed.filter(({ kit, week }) => week >= 0 && week < weeks && here.some(({ id }) => id === kit)),
  };
  return {
    input,
    assumed: [
      ...held.assumed,
      ...assumptions(
        hands,
        open.filter((kit) => !here.includes(kit)),
      ),
    ],
  };
}

function absences({ away = [] }: Person): { from: string; to: string }[] {
  return away.map(({ from, to }) => ({ from, to }));
}

function assumptions(hands: readonly Person[], out: readonly KitState[]): readonly string[] {
  const unsaid = hands.filter(({ hours }) => hours === undefined).map(({ name }) => name);
  const names = out.map(({ name }) => name).join(", ");
  return [
    ...(unsaid.length > 0 ? [`${ASSUMED_HOURS} hours a week are counted for ${unsaid.join(", ")}.`] : []),
    ...(names === "" ? [] : [`Not planned, because away or without a pattern here: ${names}.`]),
    "Parts are not counted: the plan does not know what lies on the shelf.",
  ];
}

function planKit(station: WorkStation, kit: KitState, start: PlainDate): PlanKit {
  const pattern = station.patterns.get(kit.pattern)!;
  const versions = [...station.patterns.values()];
  const { conditions, lookup } = outlookOf(kit, pattern, station.policy, { otherPatternVersions: versions });
  const steps = [...lookup.steps.values()].filter(({ optional }) => !optional);
  const work = steps.reduce((sum, { needs }) => sum + needs.minutes * needs.people, 0);
  const waits = steps.reduce((sum, { timer }) => sum + (timer?.kind === "wait" ? timer.atLeast : 0), 0);
  const about = { kit, pattern, policy: station.policy, start };
  const clocks = conditions.flatMap((one) => clockOf(one, about) ?? []);
  return {
    id: kit.id,
    place: kit.place,
    daysOut: Math.max(1, Math.ceil((waits / 60 + work) / (24 * 60))),
    minutes: Math.min(10_080, Math.max(1, work)),
    hands: steps.reduce((most, { needs }) => Math.max(most, needs.people), 1),
    clocks: namedOnce([...acceptedClock(about), ...clocks]).slice(0, 50),
  };
}

/**
 * What was accepted for its pattern: kept in date by the plan, and nothing more. The manual's own clock stands beside it. A
 * kit never sealed here is due at once.
 */
function acceptedClock(about: ClockCase): readonly PlanClock[] {
  const { kit, pattern, policy, start } = about;
  const every = policy.openings?.[pattern.id];
  if (every === undefined || shorterSpan(pattern.policy.turnaround, every) !== every) return [];
  const last = lastSealed(kit)?.closed;
  const sealed = last === undefined ? start : dayWritten(last.at);
  const end = addSpan(sealed, every);
  const lastGoodDay = last === undefined ? addDays(start, -1) : end;
  return [{ id: "Opening as accepted", lastGoodDay, renewedFor: daysBetween(sealed, end), effect: "notes" }];
}

interface ClockCase {
  readonly kit: KitState;
  readonly pattern: Pattern;
  readonly policy: WorkStation["policy"];
  readonly start: PlainDate;
}

function clockOf(condition: Condition, about: ClockCase): PlanClock | undefined {
  const { restore, bears, reason, from } = condition;
  if (restore?.opens !== true || bears === "open" || bears === "away") return undefined;
  const lastGoodDay = addDays(from ?? about.start, -1);
  const item = about.pattern.items.find(({ id }) => id === reason.item);
  const name =
    reason.rule === "date" && item ? item.name : (NAMES[reason.rule] ?? inWords(reason.said, ENGLISH.standing));
  return {
    id: name.slice(0, 90).replace(/[.,;:]+$/, ""),
    lastGoodDay,
    renewedFor: renewedFor(condition, about),
    effect: bears,
  };
}

const NAMES: Readonly<Record<string, string>> = { "proof-run": "Proof run", turnaround: "Turnaround" };

function renewedFor({ reason }: Condition, { kit, pattern, policy, start }: ClockCase): number {
  const days = (span: Span | undefined) => (span === undefined ? MENDED : daysBetween(start, addSpan(start, span)));
  if (reason.rule === "proof-run") return days(shorterSpan(pattern.policy.proofRun, policy.proofRun));
  if (reason.rule === "turnaround") return days(shorterSpan(pattern.policy.turnaround, policy.turnaround));
  const item = pattern.items.find(({ id }) => id === reason.item);
  if (reason.rule !== "date" || item === undefined) return MENDED;
  const isFuel = item.id === pattern.engine?.fuelItem;
  const aged = isFuel && policy.fuelAge ? days(policy.fuelAge) : MENDED;
  return Math.min(aged, item.life.kind === "fitted" ? days(item.life.span) : printedLife(kit, item.id));
}

/** How long the one before lasted from fitting to its printed date, where both are on record. */
function printedLife({ contents }: KitState, item: string): number {
  const { fitted, printed } = contents[item] ?? {};
  if (fitted?.length !== 10 || printed === undefined) return ASSUMED_LIFE;
  const last = printed.length === 7 ? `${printed}-28` : printed;
  return Math.max(28, daysBetween(fitted, last));
}

function namedOnce(clocks: readonly PlanClock[]): PlanClock[] {
  const seen = new Map<string, number>();
  return clocks.map((clock) => {
    const count = (seen.get(clock.id) ?? 0) + 1;
    seen.set(clock.id, count);
    return count === 1 ? clock : { ...clock, id: `${clock.id} ${count}` };
  });
}
