import type { CasualtyPump, CasualtyState } from "../casualty/casualty-state.ts";
import type { Run } from "../state.ts";

/** A run of one kit on a casualty. */
export interface KitRun {
  readonly kit: string;
  readonly run: Run;
}

/**
 * What a casualty's sheet tells of our kits: one run for each that was started there, or tried and would not start. A
 * kit that only lay aboard has none.
 *
 * @param casualty - as its entries tell it
 * @returns each kit at most once
 */
export function casualtyRuns(casualty: CasualtyState): readonly KitRun[] {
  return [...toldByKit(casualty)].flatMap(([kit, told]) => {
    const run = runOf(casualty, told);
    return run ? [{ kit, run }] : [];
  });
}

type Told<Field extends "pumpSeen" | "starts"> = NonNullable<CasualtyState[Field]>[number];

/** What a sheet tells of one kit's pumps, in the order in which it was told. */
interface OfKit {
  readonly runs: CasualtyPump["runs"][number][];
  readonly seen: Told<"pumpSeen">[];
  readonly starts: Told<"starts">[];
  readonly shares: NonNullable<NonNullable<CasualtyState["closed"]>["delivered"]>[number][];
}

/** Gone through once, however many kits there are. */
function toldByKit({ pumps, pumpSeen, starts, closed }: CasualtyState): ReadonlyMap<string, OfKit> {
  const kits = new Map<string, OfKit>();
  const byPump = new Map<string, OfKit>();
  for (const { kit, pump, runs } of pumps) {
    if (kit === undefined) continue;
    const told = kits.get(kit) ?? { runs: [], seen: [], starts: [], shares: [] };
    kits.set(kit, told);
    byPump.set(pump, told);
    told.runs.push(...runs);
  }
  for (const one of pumpSeen ?? []) byPump.get(one.pump)?.seen.push(one);
  for (const one of starts ?? []) byPump.get(one.pump)?.starts.push(one);
  for (const one of closed?.delivered ?? []) byPump.get(one.pump)?.shares.push(one);
  return kits;
}

function runOf(casualty: CasualtyState, told: OfKit): Run | undefined {
  const runs = told.runs.toSorted((one, other) => Date.parse(one.from) - Date.parse(other.from));
  const at = runs[0]?.from ?? told.seen.find(({ sign }) => sign === "wont-start")?.at;
  if (at === undefined) return undefined;
  const [share] = told.shares;
  return {
    casualty: { id: casualty.id, name: casualty.name },
    at,
    started: runs.length > 0,
    ...toldOf(told.starts),
    ...spanOf(runs),
    ...(share && { seen: { p05: share.p05, p50: share.p50, p95: share.p95 } }),
  };
}

/** Pulls and prime as they were last told. */
function toldOf(told: OfKit["starts"]): Partial<Run> {
  const pulls = told.findLast((one) => one.pulls !== undefined)?.pulls;
  const primeSeconds = told.findLast((one) => one.primeSeconds !== undefined)?.primeSeconds;
  return {
    ...(pulls !== undefined && { pulls }),
    ...(primeSeconds !== undefined && { primeSeconds, primed: true }),
  };
}

/** How long it ran, and when it last stopped; neither while it still runs. */
function spanOf(runs: CasualtyPump["runs"]): Partial<Run> {
  const ends = runs.flatMap(({ to }) => to ?? []);
  if (ends.length === 0 || ends.length < runs.length) return {};
  const stopped = ends.reduce((last, end) => (Date.parse(end) > Date.parse(last) ? end : last));
  const ran = runs.reduce((sum, { from, to }) => sum + Date.parse(to!) - Date.parse(from), 0) / 1000;
  return { ran, stopped };
}

/**
 * A kit's runs with those of casualties among them, each casualty once, in order of time.
 *
 * @param runs - of the kit's own log
 * @param further - of casualties' sheets
 */
export function withCasualtyRuns(runs: readonly Run[], further: readonly Run[]): readonly Run[] {
  const once = further.filter(
    ({ casualty }, at) => further.findIndex((one) => one.casualty?.id === casualty?.id) === at,
  );
  return [...runs, ...once].toSorted(byTime);
}

function byTime(one: Run, other: Run): number {
  const apart = Date.parse(one.at) - Date.parse(other.at);
  return apart || (keyOf(one) < keyOf(other) ? -1 : 1);
}

function keyOf({ turnaround, casualty }: Run): string {
  return turnaround ?? casualty?.id ?? "";
}
