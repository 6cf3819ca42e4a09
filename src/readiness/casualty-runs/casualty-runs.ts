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
  const kits = new Set(casualty.pumps.flatMap(({ kit }) => kit ?? []));
  return [...kits].flatMap((kit) => {
    const run = runOf(
      casualty,
      casualty.pumps.filter((pump) => pump.kit === kit),
    );
    return run ? [{ kit, run }] : [];
  });
}

function runOf(casualty: CasualtyState, pumps: readonly CasualtyPump[]): Run | undefined {
  const ids = new Set(pumps.map(({ pump }) => pump));
  const runs = pumps
    .flatMap((pump) => pump.runs)
    .toSorted((one, other) => Date.parse(one.from) - Date.parse(other.from));
  const failed = (casualty.pumpSeen ?? []).find(({ pump, sign }) => ids.has(pump) && sign === "wont-start");
  const at = runs[0]?.from ?? failed?.at;
  if (at === undefined) return undefined;
  const share = casualty.closed?.delivered?.find(({ pump }) => ids.has(pump));
  return {
    casualty: { id: casualty.id, name: casualty.name },
    at,
    started: runs.length > 0,
    ...toldOf(casualty, ids),
    ...spanOf(runs),
    ...(share && { seen: { p05: share.p05, p50: share.p50, p95: share.p95 } }),
  };
}

/** Pulls and prime as they were last told. */
function toldOf({ starts = [] }: CasualtyState, pumps: ReadonlySet<string>): Partial<Run> {
  const told = starts.filter(({ pump }) => pumps.has(pump));
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
