import { volumeAt, type SoundedSpace } from "#flooding";
import type { OnSceneInput, OnSceneWarning } from "./on-scene-fields.ts";

/** What was sounded in one space and pumped out of it, with its shape. */
export interface WatchedSpace {
  readonly name: string;
  readonly space: SoundedSpace;
  readonly readings: OnSceneInput["readings"];
  readonly pumping: OnSceneInput["pumping"];
}

/** Soundings looked back on [s]: a door opened an hour ago has done its work. */
const LOOKED_BACK = 1800;
/** Shortest time that both were sounded over [s]. */
const SHORTEST = 120;
/** A change of level that is no slip of the stick: twice what two soundings are good to [m]. */
const SEEN = 0.04;
/** Amounts are comparable within so much, the hull being guessed and each space having a hole of its own, perhaps. */
const COMPARABLE = 3;

/**
 * Warns of two spaces of which one lost water that its pumps do not account for while the other gained about as much:
 * within a factor of three, over the last half hour in which both were sounded. Of several such, the two with most of it.
 *
 * @param spaces - of one boat, on one clock
 * @source this program's judgement, docs/methods/soundings.md
 */
export function betweenWarning(spaces: readonly WatchedSpace[]): OnSceneWarning | undefined {
  const pairs = spaces.flatMap((one, i) => spaces.slice(i + 1).map((other) => changesOf(one, other)));
  const [most] = pairs
    .filter(([falling, rising]) => falling && rising && isRunning(falling, rising))
    .toSorted(([one], [other]) => one!.water - other!.water);
  return most && warningOf(most[0]!.name, most[1]!.name);
}

/** Water let in less water let out by ways nobody told of [m³], and the least that would be seen. */
interface Change {
  readonly name: string;
  readonly water: number;
  readonly seen: number;
}

function isRunning(falling: Change, rising: Change): boolean {
  const [lost, gained] = [-falling.water, rising.water];
  const isSeen = lost > falling.seen && gained > rising.seen;
  return isSeen && Math.max(lost, gained) <= COMPARABLE * Math.min(lost, gained);
}

/** The one that lost most first, over the time in which both were sounded; nothing where that is too short. */
function changesOf(one: WatchedSpace, other: WatchedSpace): readonly Change[] {
  const firsts = [one, other].map(({ readings }) => readings[0]?.at ?? Number.POSITIVE_INFINITY);
  const lasts = [one, other].map(({ readings }) => readings.at(-1)?.at ?? Number.NEGATIVE_INFINITY);
  const to = Math.min(...lasts);
  const from = Math.max(...firsts, to - LOOKED_BACK);
  if (to - from < SHORTEST) return [];
  return [one, other].map((watched) => changeOf(watched, from, to)).toSorted((a, b) => a.water - b.water);
}

function changeOf({ name, space, readings, pumping }: WatchedSpace, from: number, to: number): Change {
  const [before, after] = [levelAt(readings, from), levelAt(readings, to)];
  const pumped = pumping.reduce((sum, run) => sum + run.flow * overlap(run, from, to), 0);
  return {
    name,
    water: volumeAt(space, after) - volumeAt(space, before) + pumped,
    seen: volumeAt(space, Math.max(before, after) + SEEN) - volumeAt(space, Math.max(before, after)),
  };
}

function overlap(run: OnSceneInput["pumping"][number], from: number, to: number): number {
  return Math.max(0, Math.min(to, run.to ?? to) - Math.max(from, run.from));
}

/** Between two soundings as if it had changed evenly. */
function levelAt(readings: OnSceneInput["readings"], at: number): number {
  const next = Math.max(
    1,
    readings.findIndex((one) => one.at >= at),
  );
  const [before, after] = [readings[next - 1]!, readings[next]!];
  return before.level + ((after.level - before.level) * (at - before.at)) / (after.at - before.at);
}

function warningOf(falling: string, rising: string): OnSceneWarning {
  return {
    kind: "between-spaces",
    signal: "WARNING",
    hazard: "Water between two spaces",
    says: `Water may be running between ${falling} and ${rising}: the first loses about what the second gains. The estimate follows each space for itself and takes this for a hole or a pump. Look for an open door, pipe or limber hole between them, and sound both at one time.`,
  };
}
