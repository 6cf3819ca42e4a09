import { allSteps, type Hazard, type Pattern, type Trouble, type TroubleTry } from "#kit";
import type { CasualtyPump, Turnaround } from "#readiness";

/** So long after a run an engine starts as a warm one [min]. Common practice. */
const WARM = 30;
/** So long after a run what is near the exhaust may be touched [min]. Common practice; the petrol kit waits as long before it is stowed. */
const COOLING = 15;
/** What is left of a cause that holds for a cold engine. Common practice: in cold weather a warm engine may be cold again sooner. */
const LEFT = 0.1;

/** What meets hot parts: petrol on them burns, and the plug sits beside them. */
const MEETS_HOT: readonly Hazard[] = ["opens-fuel", "fills-fuel", "opens-cylinder", "hot-exhaust"];

/** What knows when a kit ran. */
export interface RunsKnown {
  /** The kit on a casualty's sheet. */
  readonly pump?: Pick<CasualtyPump, "runs" | "running"> | undefined;
  /** Open on the kit, with its clocks. */
  readonly turnaround?: Pick<Turnaround, "timers"> | undefined;
}

/**
 * How long ago an engine ran, where that was lately.
 *
 * @param pattern - of the kit
 * @param known - the sheet's runs and the runner's clocks
 * @param now - instant [ms]
 * @returns [min], 0 while it runs; nothing beyond 30 min, where nobody knows, and for a kit without an engine
 */
export function minutesSinceRun(pattern: Pattern, known: RunsKnown, now: number): number | undefined {
  if (pattern.engine === undefined) return undefined;
  const ends = [...endsOnSheet(known, now), ...endsOfClocks(pattern, known, now)];
  const minutes = Math.max(0, (now - Math.max(...ends)) / 60_000);
  return minutes <= WARM ? minutes : undefined;
}

function endsOnSheet({ pump }: RunsKnown, now: number): readonly number[] {
  if (pump?.running) return [now];
  return (pump?.runs ?? []).map(({ to }) => (to === undefined ? now : Date.parse(to)));
}

/** Ends of clocks that ran with the engine: a run, and pulls after which it started. */
function endsOfClocks(pattern: Pattern, { turnaround }: RunsKnown, now: number): readonly number[] {
  return allSteps(pattern).flatMap(({ id, timer }) => {
    const clock = turnaround?.timers[id];
    if (clock === undefined) return [];
    if (timer?.kind === "pulls") return clock.reached ? [Date.parse(clock.mark.at)] : [];
    if (timer?.kind !== "run") return [];
    if (clock.started !== undefined) return [now];
    return (clock.seconds ?? 0) > 0 ? [Date.parse(clock.mark.at)] : [];
  });
}

/**
 * A trouble of an engine that ran lately: what holds for a cold engine counts a tenth, a try that only a cold engine wants
 * is left out unless it was tried, and one that wants a cool engine takes as much longer as that needs.
 *
 * @param trouble - of the kit's pattern
 * @param minutes - since it ran [min]; nothing where it did not run lately
 * @param tried - ids of what was tried
 */
export function troubleAfterRun(trouble: Trouble, minutes: number | undefined, tried: readonly string[]): Trouble {
  if (minutes === undefined) return trouble;
  const tries = trouble.tries.filter(({ id, engine }) => tried.includes(id) || engine !== "cold");
  return {
    ...trouble,
    causes: trouble.causes.map((one) => (one.engine === "cold" ? { ...one, weight: LEFT * one.weight } : one)),
    tries: tries.map((one) => onHotEngine(one, Math.max(0, COOLING - minutes))),
  };
}

function onHotEngine(one: TroubleTry, wait: number): TroubleTry {
  const isHot = one.hazards.some((hazard) => MEETS_HOT.includes(hazard));
  const waits = one.engine === "cool" || one.hazards.includes("fills-fuel");
  const hazards: readonly Hazard[] =
    isHot && !one.hazards.includes("hot-exhaust") ? [...one.hazards, "hot-exhaust"] : one.hazards;
  return { ...one, hazards, minutes: one.minutes + (waits ? wait : 0) };
}
