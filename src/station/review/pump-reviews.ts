import type { Entry } from "#log";
import { casualtyRuns, type Bodies, type CasualtyState, type Run } from "#readiness";

/** What one pump did on a casualty, for the review. */
export interface PumpReview {
  readonly pump: string;
  readonly name: string;
  readonly kit?: string;
  /** From the opening of the sheet until it first pumped [min]. */
  readonly minutesFromCall?: number;
  /** From when it was first told of aboard until it first pumped [min]; 0 where both were told at once. */
  readonly minutesAboard?: number;
  /** Somebody saw it refuse to start before it ran, or it never ran. */
  readonly refused: boolean;
  readonly pulls?: number;
  readonly primeSeconds?: number;
  readonly refuels: number;
  /** How long it ran in all [min]; absent where it never ran or still runs. */
  readonly minutesRan?: number;
  /** What the soundings showed of its stated delivery when the sheet was closed [1]. */
  readonly seen?: NonNullable<Run["seen"]>;
}

/**
 * Each pump of a casualty as its lines tell it: how soon it gave water, what starting and priming took, refuels, delivery.
 *
 * @param casualty - as its entries tell it
 * @param entries - of its sheet, those that count
 * @returns in the order in which they were told of
 */
export function pumpReviews(casualty: CasualtyState, entries: readonly Entry[]): readonly PumpReview[] {
  const runs = new Map(casualtyRuns(casualty).map(({ kit, run }) => [kit, run]));
  return casualty.pumps.map((pump) => {
    const first = pump.runs[0]?.from;
    const told = entries.find((one) => one.kind === "pump-set" && bodyOf(one).pump === pump.pump);
    const starts = (casualty.starts ?? []).filter((one) => one.pump === pump.pump);
    const run = pump.kit === undefined ? undefined : runs.get(pump.kit);
    const ends = pump.runs.flatMap(({ to }) => to ?? []);
    const pulls = starts.findLast((one) => one.pulls !== undefined)?.pulls;
    const primeSeconds = starts.findLast((one) => one.primeSeconds !== undefined)?.primeSeconds;
    const seen = casualty.closed?.delivered?.find((one) => one.pump === pump.pump);
    return {
      pump: pump.pump,
      name: pump.name,
      ...(pump.kit !== undefined && { kit: pump.kit }),
      ...(first !== undefined && { minutesFromCall: minutes(casualty.opened.at, first) }),
      ...(first !== undefined && told && { minutesAboard: Math.max(0, minutes(told.at, first)) }),
      refused: isRefused(casualty, pump.pump, first) || run?.started === false,
      ...(pulls !== undefined && { pulls }),
      ...(primeSeconds !== undefined && { primeSeconds }),
      refuels: entries.filter((one) => one.kind === "pump-refuelled" && bodyOf(one).pump === pump.pump).length,
      ...(ends.length > 0 && ends.length === pump.runs.length && { minutesRan: ranOf(pump.runs) }),
      ...(seen && { seen: { p05: seen.p05, p50: seen.p50, p95: seen.p95 } }),
    };
  });
}

function isRefused({ pumpSeen = [] }: CasualtyState, pump: string, first: string | undefined): boolean {
  return pumpSeen.some((seen) => {
    const isBefore = first === undefined || Date.parse(seen.at) <= Date.parse(first);
    return seen.pump === pump && seen.sign === "wont-start" && isBefore;
  });
}

function ranOf(runs: CasualtyState["pumps"][number]["runs"]): number {
  return runs.reduce((sum, { from, to }) => sum + minutes(from, to!), 0);
}

function minutes(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / 60_000;
}

function bodyOf(entry: Entry): Bodies["pump-refuelled"] {
  return entry.body as Bodies["pump-refuelled"];
}
