import type { Words } from "#words";
import { formatQuantity, type UnitSystem } from "#base";
import type { DeckEdge, PumpSign, Righting, StabilitySeen } from "#readiness";
import { sayList } from "../sheet/say.ts";

type Told = Words["casualtyTold"];

const SIGNS = {
  water: "waterComes",
  "no-water": "noWater",
  "sucks-air": "sucksAir",
  weak: "weak",
  "wont-start": "wontStart",
} as const satisfies Readonly<Record<PumpSign, keyof Told>>;

/** What somebody beside a pump sees of it, in words. */
export function saySign(sign: PumpSign, words: Told): string {
  return words[SIGNS[sign]]();
}

const LOOK_AT = {
  water: undefined,
  "no-water": "lookNoWater",
  "sucks-air": "lookAir",
  weak: "lookWeak",
  "wont-start": "lookStart",
} as const satisfies Readonly<Record<PumpSign, keyof Words["sheetPumps"] | undefined>>;

/** What to look at first, by what is seen of a pump; nothing where water comes. */
export function sayLook(sign: PumpSign, words: Words["sheetPumps"]): string | undefined {
  const look = LOOK_AT[sign];
  return look && words[look]();
}

const RIGHTINGS = {
  "comes-back": "comesBack",
  slowly: "comesSlowly",
  stays: "staysOver",
} as const satisfies Readonly<Record<Righting, keyof Told>>;

const EDGES = {
  clear: "edgeClear",
  awash: "edgeAwash",
  under: "edgeUnder",
} as const satisfies Readonly<Record<DeckEdge, keyof Told>>;

/** Her lowest deck edge against the water outside. */
export function sayEdge(edge: DeckEdge, words: Told): string {
  return words[EDGES[edge]]();
}

/** Everything one line says that is seen of her, a few words each. */
export function saySeen(seen: StabilitySeen, units: UnitSystem, words: Told): readonly string[] {
  const { list, trim, rollPeriod, righting, deckEdge, overSill, leaving } = seen;
  const said: (string | false | undefined)[] = [
    leaving !== undefined && (leaving ? words.skipperLeave() : words.skipperStays()),
    deckEdge && sayEdge(deckEdge, words),
    overSill !== undefined && (overSill ? words.overSill() : words.notOverSill()),
    list !== undefined && sayList(list, words),
    trim !== undefined && sayTrim(trim, units, words),
    righting && words[RIGHTINGS[righting]](),
    rollPeriod !== undefined && words.roll({ seconds: rollPeriod.toFixed(1) }),
  ];
  return said.filter((one) => typeof one === "string");
}

/** Trim as it is seen: "20 cm by the stern", "no trim". */
export function sayTrim(trim: number, units: UnitSystem, words: Told): string {
  if (trim === 0) return words.noTrim();
  const amount = formatQuantity(Math.abs(trim), "length", { unit: units === "metric" ? "cm" : "in", digits: 2 });
  return trim > 0 ? words.byStern({ amount }) : words.byBow({ amount });
}
