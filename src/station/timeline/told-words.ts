import { inUnit, type UnitSystem } from "#base";
import type { Bodies, CasualtyHole, CasualtySituation, CasualtyTold } from "#readiness";

const TWO_MINUTES = 120;

/**
 * What her skipper told by radio before anybody was on her, as far as the opening of her sheet has it.
 *
 * @param opening - body of `casualty-opened`
 * @param units - of the paper
 * @param clock - an instant as the paper writes it
 * @returns "Told by radio: 50 cm of water at 13:02; hole 90 mm across.", or undefined where nothing was told
 */
export function toldWords(
  { told, hole }: Pick<Bodies["casualty-opened"], "told" | "hole">,
  units: UnitSystem,
  clock: (at: string) => string,
): string | undefined {
  const parts = [told && waterWords(told, units, clock(told.at)), hole && holeWords(hole, units)];
  const said = parts.filter((part) => part !== undefined);
  return said.length === 0 ? undefined : `Told by radio: ${said.join("; ")}.`;
}

/**
 * Where she is and who else can help, as it was told.
 *
 * @returns "Position 57 12 N 1 40 W; drift east 2 kn; other kits: two, 40 min."
 */
export function situationWords({ position, drift, tide, otherKits }: CasualtySituation): string {
  const parts = [
    position !== undefined && `position ${position}`,
    drift !== undefined && `drift ${drift}`,
    tide !== undefined && `tide ${tide}`,
    otherKits !== undefined && `other kits: ${otherKits}`,
  ].filter((part) => part !== false);
  const said = parts.join("; ");
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

function waterWords({ water, rising }: CasualtyTold, units: UnitSystem, at: string): string | undefined {
  const unit = units === "us" ? "in" : "cm";
  const level = water === undefined ? undefined : `${figureOf(water, unit)} of water`;
  const rise = rising === undefined ? undefined : `rising ${figureOf(rising * TWO_MINUTES, unit)} in 2 min`;
  return listed([level, rise], (words) => `${words} at ${at}`);
}

function holeWords({ diameter, depth }: CasualtyHole, units: UnitSystem): string | undefined {
  const across = diameter === undefined ? undefined : `${figureOf(diameter, units === "us" ? "in" : "mm")} across`;
  const below = depth === undefined ? undefined : `${figureOf(depth, units === "us" ? "ft" : "m")} below the waterline`;
  return listed([across, below], (words) => `hole ${words}`);
}

function listed(parts: readonly (string | undefined)[], say: (words: string) => string): string | undefined {
  const known = parts.filter((part) => part !== undefined);
  return known.length === 0 ? undefined : say(known.join(", "));
}

/** Two figures at most: nobody tells more by radio. */
function figureOf(si: number, unit: string): string {
  return `${Number(inUnit(si, unit, "length").toPrecision(2))}\u00a0${unit}`;
}
