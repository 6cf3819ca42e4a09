import { findUnit, formatQuantity, preferredUnit, type Dimension, type Unit, type UnitSystem } from "#base";

/** A quantity as somebody read it. */
export interface QuantityRead {
  readonly si: number;
  readonly dimension: Dimension;
  /** As it was entered, with its unit. */
  readonly text: string;
}

/**
 * A reading as it was entered, and in the reader's own unit where it was entered in one that their system does not use.
 *
 * @param units - the reader's
 * @example sayAsRead({ si: 1.23, dimension: "length", text: "1.23 m" }, "us") // "1.23 m (4.04 ft)"
 */
export function sayAsRead({ si, dimension, text }: QuantityRead, units: UnitSystem): string {
  const [metric, us] = SYSTEMS.map((system) => preferredUnit(si, dimension, system).symbol);
  const entered = findUnit(unitIn(text), dimension);
  if (metric === us || entered === undefined || systemsOf(entered).includes(units)) return text;
  return `${text} (${formatQuantity(si, dimension, { system: units })})`;
}

const SYSTEMS = ["metric", "us"] as const;
/** Read in neither system's first choice, and yet by inch, foot or gallon. */
const CUSTOMARY = /^(in|ft|imp)/;
const AT_SEA: readonly string[] = ["nmi", "kn"];

/** Who reads a quantity in this unit without a second thought. */
function systemsOf({ symbol, shownIn }: Unit): readonly UnitSystem[] {
  if (AT_SEA.includes(symbol)) return SYSTEMS;
  return shownIn ?? [CUSTOMARY.test(symbol) ? "us" : "metric"];
}

/** What stands after the figures; of a quantity in parts, the unit of the last. */
function unitIn(text: string): string {
  return text.replace(/^.*[\d½¼¾⅓⅔⅛⅜⅝⅞]\s*/u, "");
}
