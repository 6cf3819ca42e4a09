import type { RescueBoat } from "#readiness";
import type { StationView } from "#web/device/index.ts";
import { sayDuration, type Words } from "#words";
import type { Call } from "./before-launch.ts";
import { wayOf, type Way } from "./our-boat.ts";
import { kitsAtHand } from "./usable-kits.ts";

/** A boat of the station whose first pump would run sooner than that of the boat chosen. */
export interface SoonerBoat {
  readonly boat: RescueBoat;
  /** Until her first pump runs, as she is set [s]. */
  readonly time: number;
  /** The same of the boat chosen [s]; undefined where she has no kit to take. */
  readonly chosen: number | undefined;
}

type View = Pick<StationView, "boats" | "place" | "kits" | "standings" | "patterns" | "places">;
type KitWords = Parameters<typeof kitsAtHand>[3];

/** Less than this between two boats is no reason to change [s]. This program's judgement. */
const WORTH_A_CHANGE = 60;

/**
 * The boat of the station with the soonest first pump, where that is sooner than with the boat chosen.
 *
 * @param call - what is told; without a distance no boat is sooner
 * @returns undefined where the boat chosen is as soon, or no boat has a kit to take
 */
export function soonerBoat(view: View, call: Call, words: KitWords): SoonerBoat | undefined {
  const way = wayOf(view, call);
  const chosen = firstPump(view, way, call, words);
  const [best] = view.boats
    .filter(({ id }) => id !== way.boat?.id)
    .flatMap((boat) => {
      const time = firstPump(view, wayOf(view, { boat: boat.id }), call, words);
      return time === undefined ? [] : [{ boat, time, chosen }];
    })
    .toSorted((one, other) => one.time - other.time);
  return best && best.time + WORTH_A_CHANGE <= (chosen ?? Infinity) ? best : undefined;
}

/** Until the first pump runs [s]: under way, the way there, rigged; undefined where no kit that can be used lies with her. */
function firstPump(view: View, way: Way, call: Call, words: KitWords): number | undefined {
  if (call.distance === undefined || way.carries < 1) return undefined;
  const { usable } = kitsAtHand(view, way, { light: call.light, herMains: call.herMains }, words);
  if (usable.every(({ follows }) => follows)) return undefined;
  return way.launch + call.distance / way.speed + way.setUp;
}

/** Which boat is sooner, and by how much. */
export function saySooner({ boat, time, chosen }: SoonerBoat, words: Words["launch"]): string {
  const told = { boat: boat.name, duration: sayDuration(time, "estimate") };
  return chosen === undefined
    ? words.soonerOnly(told)
    : words.sooner({ ...told, chosen: sayDuration(chosen, "estimate") });
}
