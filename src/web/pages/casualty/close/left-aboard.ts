import { isForCasualty, type CasualtyPump, type CasualtyState, type KitState } from "#readiness";

/** What has to be said of before a sheet is closed. */
export interface StillThere {
  /** Pumps that by the log run. */
  readonly running: readonly CasualtyPump[];
  /** Kits aboard: handed over to her, or pumping on her, and not taken back. */
  readonly aboard: readonly KitState[];
}

/** What is still there by the log. */
export function stillThere(casualty: CasualtyState, kits: readonly KitState[]): StillThere {
  const pumping = new Set(casualty.pumps.map(({ kit }) => kit));
  const isAboard = ({ id, custody }: KitState) =>
    custody.kind === "away" && (pumping.has(id) || isForCasualty(casualty, custody));
  return { running: casualty.pumps.filter((pump) => pump.running), aboard: kits.filter(isAboard) };
}

/** What was said of each, by its id: true stays or runs on, false goes with us or is stopped. */
export type Said = ReadonlyMap<string, boolean>;

/** True once something was said of each. */
export function isAllSaid({ running, aboard }: StillThere, pumps: Said, kits: Said): boolean {
  return running.every(({ pump }) => pumps.has(pump)) && aboard.every(({ id }) => kits.has(id));
}

/** Ids of those that stay or run on; the ones that are not still there any more are none. */
export function leftOf(ids: readonly string[], said: Said): readonly string[] {
  return ids.filter((id) => said.get(id) === true);
}
