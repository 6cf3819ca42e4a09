import { startCheckOf, type Pattern } from "#kit";
import type { KitState, Run, Turnaround } from "../state.ts";
import type { Demand } from "./demand.ts";
import { openingsOf } from "./openings.ts";

/** What one opening tells of its first start. */
interface Told {
  readonly at: string;
  readonly started: boolean;
  readonly run?: Run;
  readonly turnaround?: string;
}

/** What of a kit tells of its starts on the bench. */
export type Benched = Pick<KitState, "runs" | "findings" | "turnarounds" | "turnaround">;

/**
 * First starts of a kit's turnarounds. Counted pulls tell of one; else the proof that it starts, by key or plug; else
 * water that was measured. Drills and openings set aside are left out.
 *
 * @param kit - as its entries tell it
 * @param pattern - it is built to; without one only pulls and measured water tell
 * @returns one for each opening at most, in no order
 */
export function benchDemands(kit: Benched, pattern: Pattern | undefined): readonly Demand[] {
  const runs = kit.runs.filter(({ casualty, drill }) => casualty === undefined && drill === undefined);
  const check = pattern && startCheckOf(pattern)?.id;
  const proved = check === undefined ? [] : provedIn(kit, check);
  const byRun = runs.flatMap((run) => tellingRun(run, proved) ?? withRun(run, proved) ?? measuredRun(run) ?? []);
  const others = proved.filter(({ turnaround }) => !runs.some((run) => run.turnaround === turnaround));
  return [...byRun, ...others].map((told) => demandOf(told, pattern));
}

type Proved = Told & { readonly turnaround: string };

/** Pulls counted without a start, at a line then answered as seen: who answered it saw it run. */
function tellingRun(run: Run, proved: readonly Proved[]): Told | undefined {
  if (run.started === undefined) return undefined;
  const isSeen = proved.some(({ turnaround, started }) => turnaround === run.turnaround && started);
  return { at: run.at, started: run.started || isSeen, run };
}

function withRun(run: Run, proved: readonly Proved[]): Told | undefined {
  const own = proved.find(({ turnaround }) => turnaround === run.turnaround);
  return own && { ...own, run };
}

/** What was measured under load had started, whatever nobody wrote of it. */
function measuredRun(run: Run): Told | undefined {
  return run.ratio === undefined ? undefined : { at: run.at, started: true, run };
}

function demandOf({ at, started, run, turnaround = run?.turnaround }: Told, pattern: Pattern | undefined): Demand {
  const failed = started ? failedRunning(run, pattern) : "start";
  const asked = { at, on: "turnaround" as const, ...(turnaround !== undefined && { turnaround }) };
  return { ...asked, worked: failed === undefined, ...(failed && { failed }) };
}

function failedRunning(run: Run | undefined, pattern: Pattern | undefined): Demand["failed"] {
  if (run?.primed === false) return "prime";
  const least = pattern?.hydraulics?.proof.grounds ?? 0;
  return run?.ratio !== undefined && run.ratio < least ? "delivery" : undefined;
}

function provedIn(kit: Benched, check: string): readonly Proved[] {
  return openingsOf(kit).flatMap((turnaround) => proofIn(turnaround, check, kit) ?? []);
}

/** A finding at the proof outlives its answer: once mended, the line is answered anew in the same opening. */
function proofIn(
  { id, answers, drill }: Turnaround,
  check: string,
  kit: Pick<KitState, "findings">,
): Proved | undefined {
  if (drill !== undefined) return undefined;
  const raised = kit.findings.find((one) => one.turnaround === id && one.check === check);
  if (raised) return { turnaround: id, at: raised.raised.at, started: false };
  const given = Object.values(answers).find((one) => one.check === check && one.answer !== "not-possible");
  return given && { turnaround: id, at: given.mark.at, started: given.answer === "seen" };
}
