import type { OnSceneInput } from "./on-scene-fields.ts";

type Seen = NonNullable<OnSceneInput["pumpSeen"]>[number];

/**
 * What was last seen of a pump and still holds: a start ends it, since water comes where a run is told of.
 *
 * @param input - with its pumping
 * @param id - of the pump; undefined where pumps are not told apart
 */
export function standingSign({ pumpSeen = [], pumping, now }: OnSceneInput, id: string | undefined) {
  const last = pumpSeen.findLast(({ at, pump }) => at <= now && (pump === undefined || pump === id));
  if (last === undefined) return undefined;
  return startAfter(pumping, { ...last, ...(id !== undefined && { pump: id }) }, now) === undefined
    ? last.sign
    : undefined;
}

/**
 * What the belief of the pumps goes by. That a pump would not start says nothing of what it moves once it runs; of one
 * that gave no water, its next start tells that water comes.
 *
 * @param input - with its pumping
 * @returns in order of time where they came in it
 */
export function signsTold({ pumpSeen = [], pumping, now }: OnSceneInput): readonly Seen[] {
  const told = pumpSeen.flatMap((seen): Seen[] => {
    const again = startAfter(pumping, seen, now);
    if (again === undefined) return [seen];
    if (seen.sign === "wont-start") return [];
    return seen.sign === "no-water" ? [seen, { ...seen, at: again, sign: "water" }] : [seen];
  });
  return told.toSorted((one, other) => one.at - other.at);
}

/** When a pump began to run from a standstill at or after something was seen of it; a new setting is no start. */
function startAfter(pumping: OnSceneInput["pumping"], { at, pump, sign }: Seen, now: number): number | undefined {
  const runs = pumping.filter((run) => pump === undefined || run.pump === pump);
  const starts = runs.filter(({ from }) => !runs.some((run) => run.from < from && (run.to ?? Infinity) >= from));
  const isPast = (from: number): boolean => (sign === "wont-start" ? from >= at : from > at);
  return starts.map(({ from }) => from).find((from) => isPast(from) && from <= now);
}
