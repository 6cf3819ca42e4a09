import { formatQuantity, type UnitSystem } from "#base";
import type { DeckEdge, PumpSign, Righting, StabilitySeen } from "#readiness";
import { sayList } from "../sheet/say.ts";

/** What somebody beside a pump sees of it, in words. */
export const SIGN_WORDS: Readonly<Record<PumpSign, string>> = {
  water: "water comes",
  "no-water": "no water",
  "sucks-air": "sucks air",
  weak: "weak",
  "wont-start": "will not start",
};

/** What to look at first, by what is seen of a pump; nothing where water comes. */
export const LOOK_AT: Readonly<Record<PumpSign, string | undefined>> = {
  water: undefined,
  "no-water": "Stop. Strainer under, casing filled, every coupling clamped, then prime again.",
  "sucks-air": "Strainer deeper. Clamp every coupling on the suction side.",
  weak: "Clear the strainer, engine stopped. Straighten the hose. Throttle up. Pump lower.",
  "wont-start": "Fuel cock, switch, choke. Then the next kit: do not pull this one for long.",
};

/** How she comes back from a roll. */
export const RIGHTING_WORDS: Readonly<Record<Righting, string>> = {
  "comes-back": "comes back",
  slowly: "comes back slowly",
  stays: "stays over",
};

/** Her lowest deck edge against the water outside. */
export const EDGE_WORDS: Readonly<Record<DeckEdge, string>> = {
  clear: "deck edge clear",
  awash: "deck edge awash",
  under: "deck edge under",
};

/** Everything one line says that is seen of her, a few words each. */
export function saySeen(seen: StabilitySeen, units: UnitSystem): readonly string[] {
  const { list, trim, rollPeriod, righting, deckEdge, overSill, leaving } = seen;
  const words: (string | false | undefined)[] = [
    leaving !== undefined && (leaving ? "her skipper says leave" : "her skipper stays"),
    deckEdge && EDGE_WORDS[deckEdge],
    overSill !== undefined && (overSill ? "water over the sill" : "no water over the sill"),
    list !== undefined && sayList(list),
    trim !== undefined && sayTrim(trim, units),
    righting && RIGHTING_WORDS[righting],
    rollPeriod !== undefined && `roll ${rollPeriod.toFixed(1)} s`,
  ];
  return words.filter((one) => typeof one === "string");
}

/** Trim as it is seen: "20 cm by the stern", "level". */
export function sayTrim(trim: number, units: UnitSystem): string {
  if (trim === 0) return "no trim";
  const amount = formatQuantity(Math.abs(trim), "length", { unit: units === "metric" ? "cm" : "in", digits: 2 });
  return `${amount} by the ${trim > 0 ? "stern" : "bow"}`;
}
