import { sayDuration } from "#words";
import { formatQuantity, type UnitSystem } from "#base";
import type { Bodies, PumpSign, StabilitySeen } from "#readiness";

const SIGNS: Readonly<Record<PumpSign, string>> = {
  water: "water comes",
  "no-water": "no water comes",
  "sucks-air": "sucks air",
  weak: "moves little",
  "wont-start": "will not start",
};

/** What was seen of a pump. */
export function signWords(sign: PumpSign): string {
  return SIGNS[sign];
}

/** What starting and priming took: "3 pulls to start, water after 40 s". */
export function startWords({ pulls, primeSeconds }: Omit<Bodies["pump-start-told"], "pump">): string {
  const cord = pulls !== undefined && `${pulls} ${pulls === 1 ? "pull" : "pulls"} to start`;
  const prime = primeSeconds !== undefined && `water after ${sayDuration(primeSeconds)}`;
  return [cord, prime].filter((part) => part !== false).join(", ");
}

const RIGHTINGS = {
  "comes-back": "comes back from a roll",
  slowly: "comes back slowly from a roll",
  stays: "stays over: does not come back",
} as const;

const EDGES = { clear: "deck edge clear", awash: "deck edge awash", under: "deck edge under" } as const;

/**
 * What was seen of her in one line, in words.
 *
 * @example seenWords({ list: -0.17, rollPeriod: 4 }, "metric") // "list 10° to port, roll of 4.0 s"
 */
export function seenWords(seen: StabilitySeen, units: UnitSystem): string {
  const { list, trim, rollPeriod, righting, deckEdge, overSill, leaving } = seen;
  const words: (string | false | undefined)[] = [
    leaving !== undefined && `her skipper says ${leaving ? "leave" : "stay"}`,
    deckEdge && EDGES[deckEdge],
    overSill !== undefined && `${overSill ? "" : "no "}water over the sill`,
    list !== undefined && listWords(list),
    trim !== undefined && trimWords(trim, units),
    rollPeriod !== undefined && `roll of ${rollPeriod.toFixed(1)} s`,
    righting && RIGHTINGS[righting],
  ];
  return words.filter((one) => typeof one === "string").join(", ");
}

function listWords(list: number): string {
  const degrees = Math.round((Math.abs(list) * 180) / Math.PI);
  return degrees === 0 ? "no list" : `list ${degrees}° to ${list > 0 ? "starboard" : "port"}`;
}

function trimWords(trim: number, units: UnitSystem): string {
  if (trim === 0) return "no trim";
  const amount = formatQuantity(Math.abs(trim), "length", { unit: units === "us" ? "in" : "cm", digits: 2 });
  return `${amount} down by the ${trim > 0 ? "stern" : "bow"}`;
}
