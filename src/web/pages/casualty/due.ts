import { refuelsDue, type CasualtyState } from "#readiness";
import { freshnessOf } from "./freshness.ts";

/** Something to be done by the wall clock. */
export interface Due {
  /** The same for as long as it is the same thing: what was silenced stays silent through a reload. */
  readonly key: string;
  readonly words: string;
  /** [ms]; in the past where it is overdue. */
  readonly at: number;
  /** The pump to refuel; a sounding has none. */
  readonly pump?: string;
}

/**
 * What is due, the first to come first. Nothing is sounded while fuel is smelt: nobody goes below for a figure.
 *
 * @param casualty - as its entries tell it
 * @param space - id of the space looked at
 * @param nextSounding - as the newest answer has it [ms]; one from before the last sounding is none
 * @param now - [ms]
 */
export function duesOf(
  casualty: CasualtyState,
  space: string,
  nextSounding: number | undefined,
  now: number,
): readonly Due[] {
  const refuels = refuelsDue(casualty, now).map(({ pump, name, at }) => ({
    key: refuelKey(casualty, pump),
    words: `Refuel ${name}`,
    at,
    pump,
  }));
  const sounding = soundingDue(casualty, space, nextSounding);
  return [...(sounding ? [sounding] : []), ...refuels].sort((one, other) => one.at - other.at);
}

function soundingDue(casualty: CasualtyState, space: string, next: number | undefined): Due | undefined {
  const { last } = freshnessOf(casualty, space, 0);
  if (casualty.fuelSmelt || last === undefined || next === undefined || next <= last) return undefined;
  return { key: `${casualty.id} sound ${space} ${last}`, words: "Sound", at: next };
}

/** A tank filled again, or an engine started again, calls anew. */
function refuelKey({ id, pumps }: CasualtyState, pump: string): string {
  const found = pumps.find((one) => one.pump === pump);
  return `${id} refuel ${pump} ${found?.filled ?? ""} ${found?.runs.length ?? 0}`;
}

/** What calls now: due, not silenced, the longest due first. */
export function callingOf(dues: readonly Due[], silenced: readonly string[], now: number): Due | undefined {
  return dues.find(({ key, at }) => at <= now && !silenced.includes(key));
}
