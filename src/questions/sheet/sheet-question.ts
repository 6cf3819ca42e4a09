import type { CasualtyState } from "#readiness";
import { asLastSounded } from "../on-scene/on-scene-age.ts";
import type { OnSceneInput } from "../on-scene/on-scene-fields.ts";
import { LEAST_LIFT, USUAL_LIFT } from "./lifts.ts";

/** The clock of a question: seconds from the opening of the sheet. */
export function secondsOn(casualty: CasualtyState, at: string | number): number {
  const ms = typeof at === "number" ? at : Date.parse(at);
  return (ms - Date.parse(casualty.opened.at)) / 1000;
}

/** Back from the question's clock to the wall's [ms]. */
export function instantOn(casualty: CasualtyState, seconds: number): number {
  return Date.parse(casualty.opened.at) + 1000 * seconds;
}

/** The space looked at: the chosen one, else the one sounded last, else the first. */
export function spaceAt(casualty: CasualtyState, chosen?: string): CasualtyState["spaces"][number] | undefined {
  const wanted = chosen ?? casualty.soundings.at(-1)?.space;
  return casualty.spaces.find(({ id }) => id === wanted) ?? casualty.spaces[0];
}

/**
 * What to ask of a sheet.
 *
 * @param casualty - as its entries tell it
 * @param now - [ms]; the answer is computed anew when it changes, so give whole minutes
 * @param chosen - id of the space looked at
 */
export function sheetQuestion(casualty: CasualtyState, now: number, chosen?: string): OnSceneInput | undefined {
  const space = spaceAt(casualty, chosen);
  if (!space) return undefined;
  const { beam, depth, draught, kind, length } = casualty.boat;
  const others = casualty.spaces.filter((one) => one !== space);
  const names = namesApart([space, ...others].map(({ name }) => name));
  return {
    boat: { kind, length, beam, depth, draught },
    spaces: [
      { name: names[0]!, sort: space.sort, part: space.part },
      ...others.map((one, i) => ({
        name: names[i + 1]!,
        sort: one.sort,
        part: one.part,
        level: lastLevel(casualty, one.id),
        readings: readingsOf(casualty, one.id),
        pumping: pumpingOf(casualty, one.id),
        pumpSeen: pumpSeenOf(casualty, one.id),
      })),
    ],
    readings: readingsOf(casualty, space.id),
    pumping: pumpingOf(casualty, space.id),
    pumpSeen: pumpSeenOf(casualty, space.id),
    patches: patchesOf(casualty, space.id),
    hole: { diameter: casualty.hole?.diameter },
    now: Math.max(secondsOn(casualty, now), lastChange(casualty)),
    ...leftToDo(casualty, space.id),
    ...seenOf(casualty),
    fuelSmelt: casualty.fuelSmelt !== undefined,
  };
}

/** Two devices may each have written a cabin: the second is "Cabin 2", so that each stays a space of its own. */
function namesApart(names: readonly string[]): readonly string[] {
  return names.map((name, i) => {
    const before = names.slice(0, i).filter((one) => one.trim() === name.trim()).length;
    return before === 0 ? name : `${name.trim()} ${before + 1}`.slice(-MOST_LETTERS);
  });
}

const MOST_LETTERS = 60;

/**
 * What to ask for how she was when she was sounded last: nothing is carried on from there, however long ago it was.
 *
 * @param casualty - as its entries tell it
 * @param chosen - id of the space looked at
 */
export function lastKnownQuestion(casualty: CasualtyState, chosen?: string): OnSceneInput | undefined {
  const question = sheetQuestion(casualty, Date.parse(casualty.opened.at), chosen);
  return question && asLastSounded(question);
}

/**
 * What to ask for when a space is to be sounded next: of that space alone, as of the last line about it, so that it
 * changes only when something about it is written.
 *
 * @param casualty - as its entries tell it
 * @param space - id of the space
 * @returns undefined where it was never sounded
 */
export function nextSoundingQuestion(casualty: CasualtyState, space: string): OnSceneInput | undefined {
  const alone = {
    ...casualty,
    spaces: casualty.spaces.filter(({ id }) => id === space),
    soundings: casualty.soundings.filter((one) => one.space === space),
    patches: casualty.patches.filter((one) => one.space === space),
    pumps: casualty.pumps.map((pump) => ({ ...pump, runs: pump.runs.filter((run) => run.space === space) })),
    stability: {},
  };
  if (alone.soundings.length === 0) return undefined;
  return sheetQuestion(alone, Date.parse(casualty.opened.at), space);
}

/** What people see of her. Trim is told as an angle there, bow down positive. */
function seenOf({ boat, stability: { trim, ...seen } }: CasualtyState): Partial<OnSceneInput> {
  return { ...seen, ...(trim !== undefined && { trimSeen: -Math.atan2(trim, boat.length) }) };
}

/** Where an engine is not told of it may have more in it; a kit is taken to run full out until eased. */
function leftToDo({ pumps }: CasualtyState, space: string): Pick<OnSceneInput, "canOpenUp" | "canLower"> {
  const running = pumps.filter((pump) => pump.running && pump.space === space);
  return {
    canOpenUp: running.some(({ kit, throttle }) => (throttle ?? (kit === undefined ? 0 : 1)) < 1),
    canLower: running.some(({ lift }) => (lift ?? USUAL_LIFT) > LEAST_LIFT),
  };
}

/** Nothing written down lies after now, however coarse the clock that asks. */
function lastChange(casualty: CasualtyState): number {
  const { soundings, patches, pumps } = casualty;
  const runs = pumps.flatMap((pump) => pump.runs.flatMap(({ from, to }) => (to === undefined ? [from] : [from, to])));
  const instants = [...[...soundings, ...patches, ...(casualty.pumpSeen ?? [])].map(({ at }) => at), ...runs];
  return Math.max(0, ...instants.map((at) => secondsOn(casualty, at)));
}

function lastLevel({ soundings }: CasualtyState, space: string): number | undefined {
  return soundings.findLast((one) => one.space === space)?.level;
}

/** Two soundings at one instant are two devices at one mark: the later by id stands. */
function readingsOf(casualty: CasualtyState, space: string): OnSceneInput["readings"] {
  const byTime = new Map<number, number>();
  for (const { at, level, space: where } of casualty.soundings) {
    if (where === space) byTime.set(secondsOn(casualty, at), level);
  }
  return [...byTime].map(([at, level]) => ({ at, level })).slice(-MOST);
}

const MOST = 60;

function pumpingOf(casualty: CasualtyState, space: string): OnSceneInput["pumping"] {
  return casualty.pumps.flatMap(({ pump, name, runs }) =>
    runs
      .filter((run) => run.space === space)
      .map(({ from, to, flow, lift, throttle }) => ({
        from: secondsOn(casualty, from),
        ...(to !== undefined && { to: secondsOn(casualty, to) }),
        flow,
        pump: pumpKey(pump),
        ...(name.trim() !== "" && { name }),
        ...(lift !== undefined && lift >= 0 && { lift }),
        ...(throttle !== undefined && { throttle: Math.min(1, throttle) }),
      })),
  );
}

/** A pump as the question names it. */
export function pumpKey(pump: string): string {
  return pump.slice(-60);
}

/** What was seen of the pumps that draw, or drew, from this space. */
function pumpSeenOf(casualty: CasualtyState, space: string): NonNullable<OnSceneInput["pumpSeen"]> {
  const here = new Set(casualty.pumps.filter((one) => isHere(one, space)).map(({ pump }) => pump));
  return (casualty.pumpSeen ?? [])
    .filter(({ pump }) => here.has(pump))
    .map(({ at, pump, sign }) => ({ at: secondsOn(casualty, at), pump: pumpKey(pump), sign }))
    .slice(-MOST_SEEN);
}

const MOST_SEEN = 100;

/** Set to draw from this space, or drew from it. */
function isHere({ space, runs }: CasualtyState["pumps"][number], wanted: string): boolean {
  return space === wanted || runs.some((run) => run.space === wanted);
}

function patchesOf(casualty: CasualtyState, space: string): NonNullable<OnSceneInput["patches"]> {
  const byTime = new Map<number, number>();
  for (const { at, open, space: where } of casualty.patches) {
    if (where === space) byTime.set(secondsOn(casualty, at), open);
  }
  return [...byTime].map(([at, open]) => ({ at, open }));
}
