import type { Reading } from "../soundings/sounding-model.ts";
import {
  bothWays,
  carryOn,
  chanceBelow,
  chanceOf,
  fallOf,
  firstPaths,
  keepLikeliest,
  READ,
  takeSounding,
  tellChange,
  UNTOLD,
  type Path,
} from "./stick-paths.ts";

/** What the stick alone has shown by one sounding, whatever is thought of hole and pump. */
export interface StickView {
  /** Soundings in all. */
  readonly of: number;
  /** Soundings since the last told change, and the time they span [s]. */
  readonly soundings: number;
  readonly span: number;
  /** Chances that the level falls, rises, and moves less than a stick can tell in that span. */
  readonly falling: number;
  readonly rising: number;
  readonly steady: number;
  /** That it falls on: even odds at the most in so far as this sounding may be a slip, or follow an untold change. */
  readonly fallingOn: number;
  /** Rise that a stick cannot tell from none in that span [m/s]. */
  readonly band: number;
  /** Rise of the level, its middle; a fall is negative [m/s]. */
  readonly rise: number;
  /** From the sounding before to this one [m]; 0 for the first. */
  readonly move: number;
  /** Chance that this sounding is a slip, or that something untold changed just before it. */
  readonly odd: number;
  /** The sounding likeliest to be a slip, or to follow an untold change, and how likely. */
  readonly suspect?: Suspect;
}

/** A sounding that does not go with the others: its number, and whether it is thought a slip or a change. */
export interface Suspect {
  readonly reading: number;
  readonly kind: "slip" | "change";
  readonly chance: number;
}

/** The stick tells a move of so much from none over a watch [m], and no watch counts as shorter than so long [s]. */
const TOLD_APART = 0.05;
const SHORTEST = 240;

/**
 * What timed levels show by themselves of a rise or fall, sounding by sounding: a level and a rate followed through the
 * soundings (a sum of normals), each sounding read well, in a slosh or a slip, and between any two an untold change
 * possible. A told change leaves the level as it is and the rate open. No hole, hull or pump is thought of.
 *
 * @param readings - in order of time, at least one
 * @param changes - when pumping or hole were changed [s], in order of time
 * @returns a view for each sounding since the last change that has one after it; else one, of none since
 * @range soundings good to 5 to 25 mm, sloshes of 30 mm one time in ten
 * @source DERIVED: Kalman filter, Gaussian sum (Alspach & Sorenson 1972, FROM MEMORY); docs/methods/soundings.md, "The word"
 * @example readStick([{ at: 0, level: 0.6 }, { at: 180, level: 0.5 }, { at: 360, level: 0.4 }], []).at(-1)!.falling > 0.97 // true
 */
export function readStick(readings: readonly Reading[], changes: readonly number[]): readonly StickView[] {
  const since = lastChangeBefore(readings, changes);
  const views: StickView[] = [];
  let paths: readonly Path[] = firstPaths(readings[0]!.level);
  readings.forEach((reading, k) => {
    if (k > 0) paths = nextPaths(paths, readings[k - 1]!, reading, changes);
    if (reading.at > since || k === readings.length - 1) views.push(viewOf(paths, readings, k, since));
  });
  return views;
}

/** The last change before the last sounding: what the stick can have seen. */
function lastChangeBefore(readings: readonly Reading[], changes: readonly number[]): number {
  const last = readings[readings.length - 1]!.at;
  return Math.max(Number.NEGATIVE_INFINITY, ...changes.filter((at) => at <= last));
}

function nextPaths(paths: readonly Path[], from: Reading, to: Reading, changes: readonly number[]): readonly Path[] {
  const told = changes.filter((at) => at >= from.at && at < to.at);
  const grown = paths.flatMap((path) =>
    waysOn(path, from.at, to.at, told).flatMap(([on, untold]) =>
      READ.map((_, how) => takeSounding(on, to.level, how, untold)),
    ),
  );
  return keepLikeliest(grown);
}

/** Where a change was told between two soundings an untold one beside it would not be seen. */
function waysOn(path: Path, from: number, to: number, told: readonly number[]): readonly (readonly [Path, number])[] {
  if (told.length === 0) return bothWays(path, to - from);
  let at = from;
  let on = path;
  for (const change of told) {
    on = tellChange(carryOn(on, change - at));
    at = change;
  }
  return [[carryOn(on, to - at), 0]];
}

function viewOf(paths: readonly Path[], readings: readonly Reading[], k: number, since: number): StickView {
  const own = readings.slice(0, k + 1).filter(({ at }) => at >= since);
  const span = own.length === 0 ? 0 : readings[k]!.at - Math.max(since, own[0]!.at);
  const band = TOLD_APART / Math.max(SHORTEST, span);
  const falling = chanceBelow(paths, 0);
  const suspect = suspectOf(paths, readings, k);
  return {
    of: k + 1,
    soundings: own.length,
    span,
    falling,
    rising: 1 - falling,
    steady: chanceBelow(paths, band) - chanceBelow(paths, -band),
    fallingOn: chanceOf(paths, (path) => Math.min(fallOf(path), isOdd(path.taken[k]!) ? EVEN : 1)),
    band,
    rise: chanceOf(paths, ({ rate }) => rate),
    move: k === 0 ? 0 : readings[k]!.level - readings[k - 1]!.level,
    odd: chanceOf(paths, ({ taken }) => (isOdd(taken[k]!) ? 1 : 0)),
    ...(suspect && { suspect }),
  };
}

/** Of what something new has begun nobody has seen which way it goes. */
const EVEN = 0.5;

function isOdd(taken: number): boolean {
  return taken >= UNTOLD || READ[taken % UNTOLD]!.kind === "slip";
}

/** A sounding is named from so likely on. */
const NAMED = 0.4;

function suspectOf(paths: readonly Path[], readings: readonly Reading[], last: number): Suspect | undefined {
  let best: Suspect | undefined;
  for (let k = 0; k <= last && k < readings.length; k += 1) {
    const slip = chanceOf(paths, ({ taken }) => (READ[taken[k]! % UNTOLD]!.kind === "slip" ? 1 : 0));
    const odd = chanceOf(paths, ({ taken }) => (isOdd(taken[k]!) ? 1 : 0));
    if (odd < NAMED || odd <= (best?.chance ?? 0)) continue;
    best = { reading: k, kind: slip > odd / 2 ? "slip" : "change", chance: odd };
  }
  return best;
}
