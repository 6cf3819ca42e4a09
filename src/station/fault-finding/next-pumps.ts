import { isForCasualty, type CasualtyPump, type CasualtyState, type KitState } from "#readiness";

/**
 * Pumps that can be taken in place of one that fails: there by the sheet, standing still, and not seen to refuse since.
 *
 * @param casualty - as its entries tell it
 * @param kits - of the station
 * @param failed - id of the kit that fails
 * @returns their names, those handed over and not on the sheet yet first
 */
export function nextPumps(casualty: CasualtyState, kits: readonly KitState[], failed: string): readonly string[] {
  const listed = new Set(casualty.pumps.map(({ kit }) => kit));
  const aboard = kits.filter(
    ({ id, custody }) =>
      id !== failed && !listed.has(id) && custody.kind === "away" && isForCasualty(casualty, custody),
  );
  const idle = casualty.pumps.filter((pump) => pump.kit !== failed && !pump.running && !hasFailed(casualty, pump));
  return [...aboard, ...idle].map(({ name }) => name);
}

/** What was last seen of it is that it failed, and it was not started since. */
function hasFailed({ pumpSeen = [] }: CasualtyState, { pump, runs }: CasualtyPump): boolean {
  const last = pumpSeen.findLast((seen) => seen.pump === pump);
  if (last === undefined || last.sign === "water" || last.sign === "weak") return false;
  return !runs.some(({ from }) => Date.parse(from) > Date.parse(last.at));
}
