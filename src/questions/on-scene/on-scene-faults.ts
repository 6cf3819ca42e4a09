import type { Fault } from "#base";
import { wrongLevel, wrongMeasures } from "#readiness";
import type { SayInstant } from "../guards/one-clock.ts";
import { namedTwice } from "../guards/places.ts";
import { afterNow, beginsAfterNow, endsBeforeItBegins, outOfOrder } from "../guards/times.ts";
import type { OnSceneInput } from "./on-scene-fields.ts";

/**
 * Everything in a sheet that cannot be, by the limits the sheet itself is written by: QU-140 times out of order, QU-141
 * a measure of the boat, QU-142 a level above her coaming, QU-143 a time after now, a pump's start too, QU-133 pumping that ends before it
 * begins, QU-150 one name for two spaces.
 *
 * @param say - an instant as it was given
 */
export function faultsOf(input: OnSceneInput, say: SayInstant): readonly Fault[] {
  const { patches = [], now } = input;
  return [
    ...wrongMeasures(input.boat).map((wrong) => ({ code: "QU-141", ...wrong, field: `boat.${wrong.field}` })),
    ...namedTwice(input.spaces, "spaces"),
    ...levelFaults(input),
    ...[...soundingsOf(input), { field: "patches", times: patches }].flatMap(({ field, times }) => [
      ...outOfOrder(times, field, say),
      ...afterNow(times, field, now, say),
    ]),
    ...signsOf(input).flatMap(({ field, times }) => afterNow(times, field, now, say)),
    ...pumpingOf(input).flatMap(({ field, pumping }) => [
      ...endsBeforeItBegins(pumping, field, "to", say),
      ...beginsAfterNow(pumping, field, now, say),
    ]),
  ];
}

/** Every list of pumping by its field. */
function pumpingOf({ pumping, spaces }: OnSceneInput) {
  const further = spaces.map((space, i) => ({ field: `spaces[${i}].pumping`, pumping: space.pumping ?? [] }));
  return [{ field: "pumping", pumping }, ...further];
}

/** Every list of what was seen of pumps by its field. */
function signsOf({ pumpSeen = [], spaces }: OnSceneInput) {
  const further = spaces.map((space, i) => ({ field: `spaces[${i}].pumpSeen`, times: space.pumpSeen ?? [] }));
  return [{ field: "pumpSeen", times: pumpSeen }, ...further];
}

/** Every list of soundings by its field: the first space's, then those of the further ones. */
function soundingsOf({ readings, spaces }: OnSceneInput) {
  const further = spaces.map((space, i) => ({ field: `spaces[${i}].readings`, times: space.readings ?? [] }));
  return [{ field: "readings", times: readings }, ...further];
}

function levelFaults(input: OnSceneInput): readonly Fault[] {
  const { boat, spaces } = input;
  if (wrongMeasures(boat).length > 0) return [];
  const levels = [
    ...soundingsOf(input).flatMap(({ field, times }) =>
      times.map(({ level }, i) => ({ level, field: `${field}[${i}].level` })),
    ),
    ...spaces.map(({ level = 0 }, i) => ({ level, field: `spaces[${i}].level` })),
  ];
  return levels.flatMap(({ level, field }) => {
    const wrong = wrongLevel(boat, level);
    return wrong ? [{ code: "QU-142", ...wrong, field }] : [];
  });
}
