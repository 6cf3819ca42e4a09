import type { Fault } from "#base";
import type { z } from "zod";
import type { soundingIn } from "../on-scene/sounding-fields.ts";
import { aboveDeck, aboveSea, risesTooFast } from "./levels.ts";
import type { SayInstant } from "./one-clock.ts";
import { depthOfGiven } from "./places.ts";
import { afterNow, beginsAfterNow, endsBeforeItBegins, longBeforeReadings, outOfOrder } from "./times.ts";

type SoundingInput = z.output<typeof soundingIn>;

/**
 * Times of soundings and pumping that cannot be: out of order, after now, ending before they begin, another clock.
 *
 * @param say - an instant as it was given
 */
export function wrongSoundings({ readings, pumping, options }: SoundingInput, say: SayInstant): readonly Fault[] {
  const now = options?.now;
  return [
    ...outOfOrder(readings, "readings", say),
    ...(now === undefined
      ? []
      : [...afterNow(readings, "readings", now, say), ...beginsAfterNow(pumping, "pumping", now, say)]),
    ...endsBeforeItBegins(pumping, "pumping", "to", say),
    ...longBeforeReadings(pumping, readings, "pumping", say),
  ];
}

/** Levels that cannot be: above deck or sea, or rising as no hole makes them. */
export function wrongReadings({ readings, vessel, compartment }: SoundingInput): readonly Fault[] {
  const rises = risesTooFast(readings);
  if (typeof compartment === "object")
    return [
      ...rises,
      ...aboveSea(readings, { ...compartment, area: compartment.area * (compartment.permeability ?? 1) }),
    ];
  if (vessel === undefined) return rises;
  const space = vessel.compartments.find((one, i) => (one.name ?? `compartment ${i + 1}`) === compartment);
  const floor = (space ?? vessel.compartments[0]!).floor ?? 0;
  return [...rises, ...aboveDeck(readings, depthOfGiven(vessel.hull) - floor)];
}
