import type { CautionId } from "#base";
import { isForCasualty, type CasualtyPump, type CasualtyState, type KitState, type PumpSign } from "#readiness";

/** A sign of a pump and when it was seen. */
export type SignSeen = NonNullable<CasualtyState["pumpSeen"]>[number];

/** Aboard and never started: nothing it could do is done yet. */
export function isUnstarted({ runs, running }: CasualtyPump): boolean {
  return !running && runs.length === 0;
}

/** It does not run, whether it ever did: the next thing done to it is a start. */
export function isIdle({ running }: Pick<CasualtyPump, "running">): boolean {
  return !running;
}

/**
 * True where the hazards of a start stand in the pump's own row, before anybody asks for more: before its first start, and
 * once it stopped, unless a pump above shows them.
 *
 * @param above - hazards that the pumps above it show already
 */
export function isStartNear(pump: CasualtyPump, above: readonly CautionId[]): boolean {
  return isUnstarted(pump) || (isIdle(pump) && above.length === 0);
}

/** Of the hazards of its start, those that neither its own row nor a pump above shows: each once. */
export function hazardsLeft(
  pump: CasualtyPump,
  ofStart: readonly CautionId[],
  above: readonly CautionId[],
): readonly CautionId[] {
  return isStartNear(pump, above) ? [] : ofStart.filter((id) => !above.includes(id));
}

/** Kits handed over to her that nobody has put on the sheet. */
export function kitsUnlisted(casualty: CasualtyState, kits: readonly KitState[]): readonly KitState[] {
  const listed = new Set(casualty.pumps.map(({ kit }) => kit));
  return kits.filter(
    ({ id, custody }) => !listed.has(id) && custody.kind === "away" && isForCasualty(casualty, custody),
  );
}

/**
 * Names of pumps that are aboard and were never started: the first thing that would help. One of which something amiss was
 * seen, such as that it will not start, is none of them.
 */
export function unstartedOn(casualty: CasualtyState, kits: readonly KitState[]): readonly string[] {
  const waiting = casualty.pumps.filter((pump) => isUnstarted(pump) && !isAmiss(signOf(casualty, pump)?.sign));
  return [...kitsUnlisted(casualty, kits), ...waiting].map(({ name }) => name);
}

/**
 * What was last seen of a pump that still holds: nothing once it was started or stopped since.
 *
 * @param casualty - as its entries tell it
 * @param pump - of it
 */
export function signOf({ pumpSeen = [] }: CasualtyState, { pump, runs, running }: CasualtyPump): SignSeen | undefined {
  const last = pumpSeen.findLast((one) => one.pump === pump);
  const run = runs.at(-1);
  const changed = running ? run?.from : run?.to;
  if (!last || (changed !== undefined && Date.parse(last.at) < Date.parse(changed))) return undefined;
  return last;
}

/** Signs that say something is wrong with it. */
export function isAmiss(sign: PumpSign | undefined): boolean {
  return sign !== undefined && sign !== "water";
}

/** It stopped, or something is wrong with it: what may be behind that is then one tap away. */
export function isFaultNear(pump: CasualtyPump, sign: PumpSign | undefined): boolean {
  const hasStopped = !pump.running && pump.runs.length > 0;
  return hasStopped || isAmiss(sign);
}
