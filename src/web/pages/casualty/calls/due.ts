import { refuelsDue, type CasualtyState } from "#readiness";
import { freshnessOf } from "../soundings/freshness.ts";
import { clockKey } from "../soundings/sounding-clocks.ts";

/** Something to be done by the wall clock. */
export interface Due {
  /** The same for as long as it is the same thing: what was silenced stays silent through a reload. */
  readonly key: string;
  /** Id of the casualty. */
  readonly casualty: string;
  /** [ms]; in the past where it is overdue. */
  readonly at: number;
  /** The pump to refuel, or the space to sound; a space has its name where there are several. */
  readonly task:
    | { readonly kind: "refuel"; readonly pump: string; readonly name: string }
    | { readonly kind: "sound"; readonly space: string; readonly name?: string };
}

/**
 * What is due, the first to come first. Nothing is sounded while fuel is smelt: nobody goes below for a figure.
 *
 * @param casualty - as its entries tell it
 * @param clocks - when each space is to be sounded next [ms], by `clockKey`; one from before its last sounding is none
 * @param now - [ms]
 */
export function duesOf(casualty: CasualtyState, clocks: ReadonlyMap<string, number>, now: number): readonly Due[] {
  const refuels = refuelsDue(casualty, now).map(({ pump, name, at }): Due => ({
    key: refuelKey(casualty, pump),
    casualty: casualty.id,
    at,
    task: { kind: "refuel", pump, name },
  }));
  const soundings = casualty.spaces.flatMap((space) => soundingDue(casualty, space, clocks, now) ?? []);
  return [...soundings, ...refuels].sort((one, other) => one.at - other.at);
}

/** Silenced, it calls anew for the next sounding, and once more when she is not known any longer. */
function soundingDue(
  casualty: CasualtyState,
  { id: space, name }: CasualtyState["spaces"][number],
  clocks: ReadonlyMap<string, number>,
  now: number,
): Due | undefined {
  const { last, isStale } = freshnessOf(casualty, space, now);
  const at = clocks.get(clockKey(casualty.id, space));
  if (casualty.fuelSmelt || last === undefined || at === undefined || at <= last) return undefined;
  const key = `${casualty.id} sound ${space} ${last}${isStale ? " not known" : ""}`;
  const isOneOfSeveral = casualty.spaces.length > 1;
  return { key, casualty: casualty.id, at, task: { kind: "sound", space, ...(isOneOfSeveral && { name }) } };
}

/** A tank filled again, or an engine started again, calls anew. */
function refuelKey({ id, pumps }: CasualtyState, pump: string): string {
  const found = pumps.find((one) => one.pump === pump);
  return `${id} refuel ${pump} ${found?.filled ?? ""} ${found?.runs.length ?? 0}`;
}

/** A level in hand holds a sounding's call back for so long after the last tap at it [ms]. */
const IN_HAND = 90_000;

/** A hand on a pump puts a call off for so long [ms]. */
const PUT_OFF = 60_000;

/** What holds calls back on this device. */
export interface HeldBack {
  /** Keys of what somebody has silenced. */
  readonly silenced: readonly string[];
  /** When a call was put off for a minute [ms], by its key. */
  readonly putOff?: ReadonlyMap<string, number>;
  /** When a level not yet written down was last tapped at [ms]: somebody is at it. It never holds back a refuelling. */
  readonly tapped?: number | undefined;
}

/** What calls now: due, not held back, the longest due first. */
export function callingOf(dues: readonly Due[], { silenced, putOff, tapped }: HeldBack, now: number): Due | undefined {
  const isInHand = isWithin(tapped, IN_HAND, now);
  return dues.find(({ key, at, task }) => {
    const isHeld = silenced.includes(key) || isWithin(putOff?.get(key), PUT_OFF, now);
    return at <= now && !isHeld && !(isInHand && task.kind === "sound");
  });
}

/** A clock that was set since holds nothing back. */
function isWithin(at: number | undefined, span: number, now: number): boolean {
  return at !== undefined && Math.abs(now - at) < span;
}
