import {
  checkNamed,
  forbiddenBy,
  forbiddenByUnknown,
  modeNamed,
  stepNamed,
  workOf,
  type Pattern,
  type Work,
} from "#kit";
import type { Saying } from "#words";
import { hangingOf, type Hanging } from "../kit/hanging.ts";
import type { StepAnswer } from "../kinds/kit-parts.ts";
import { lookUp, nameOfMode, type Lookup } from "../lookup.ts";
import type { Finding, KitState, Turnaround } from "../state.ts";
import { isGrounding, isRemedied } from "./finding-list.ts";
import { forbiddenByFinding } from "./forbidden.ts";
import { halfDoneBefore } from "./half-done.ts";
import { proofSoFar } from "./proof-so-far.ts";
import { wrongWithoutFinding } from "./loose-ends.ts";

/** What keeps a step from being done, a fault that grounds or a line half done, and the work of the step that it forbids. */
export interface Bar {
  /** The fault by its name, "Fuel coupling: Coupling o-ring cut or missing", or what else it is. */
  readonly said: string | Saying<"held">;
  readonly works: readonly Work[];
  /** The finding, where one was raised. */
  readonly finding?: string;
  /** The line it was found at, where it was found at one; the line that is half done. */
  readonly step?: string;
  /** The check that found it there. */
  readonly check?: string;
  /** Nothing is wrong there: the earlier line is to hang, and is to be answered when its time is over. */
  readonly hangs?: true;
  /** Of a line that is to hang: its clock was stopped before its time, or once that was over. */
  readonly stopped?: "early" | "over";
  /** Nothing is wrong there: an earlier line is half done, and this check of it is the first still open. */
  readonly open?: string;
}

/** A turnaround as its steps are judged. */
export interface AtWork {
  readonly kit: KitState;
  readonly turnaround: Turnaround;
  readonly pattern: Pattern;
}

/**
 * What bars a step: every earlier line half done that leaves open what the step's work must not meet; every open finding that grounds, about which nothing was done, or which a line found wrong again since, and every
 * line found wrong without a finding, where it forbids work that the step does.
 *
 * What was measured at the step itself, and not answered yet, does not bar it: the answer is what is still to be given.
 * A finding about which something was done bars no more: its proof may need the very work, such as a run under fuel.
 *
 * @param at - kit, turnaround and pattern
 * @param step - id of the step
 * @param check - the check of it that is asked; the one that found the fault may be made again
 * @returns empty where the step may be done; a line that hangs bars every later one, whatever its work
 */
export function barsAt(at: AtWork, step: string, check?: string): readonly Bar[] {
  const asked = stepNamed(at.pattern, step);
  const work = asked ? workOf(asked) : [];
  const hung = hangingBefore(at, step);
  if (work.length === 0) return hung;
  const faults = faultsOf(at).flatMap(({ forbids, ...fault }) => {
    const { check: foundBy } = fault;
    const works = work.filter((one) => forbids.includes(one));
    const isSame = fault.step === step && foundBy === check && check !== undefined;
    const isMeasuredHere = fault.step === step && fault.finding === undefined && foundBy === undefined;
    return works.length === 0 || isSame || isMeasuredHere ? [] : [{ ...fault, works }];
  });
  return [...faults, ...halfDoneBefore(at, step, work), ...hung];
}

/** Restowing what still hangs wet shuts the water in: no later line is done before the one that hangs is answered. */
function hangingBefore({ turnaround, pattern }: AtWork, step: string): readonly Bar[] {
  const hanging = hangingOf(turnaround, pattern);
  const asked = stepNamed(pattern, step);
  if (!hanging || !asked || asked.line <= hanging.step.line) return [];
  const stopped = hanging.stopped && { stopped: hanging.stopped };
  return [{ said: hungToSay(hanging), works: [], step: hanging.step.id, hangs: true, ...stopped }];
}

function hungToSay({ step: { line }, until, stopped }: Hanging): Saying<"held"> {
  if (stopped === "early") return { say: "stoppedEarly", of: { line } };
  const say = until !== undefined ? "hangs" : stopped === "over" ? "hungEnough" : "toHang";
  return { say, of: { line } };
}

type Fault = Omit<Bar, "works"> & { readonly forbids: readonly Work[] };

function faultsOf({ kit, turnaround, pattern }: AtWork): readonly Fault[] {
  const lookup = lookUp(pattern);
  const found = kit.findings
    .filter((finding) => isGrounding(finding) && !isDoneAbout(finding, pattern, turnaround))
    .map((finding) => ({
      said: nameOfMode(lookup, finding.item, finding.mode),
      finding: finding.id,
      ...whereFound(finding),
      forbids: forbiddenByFinding(pattern, finding),
    }));
  const loose = wrongWithoutFinding(kit, turnaround, lookup)
    .filter(({ effect }) => effect === "grounds")
    .map((line) => ({
      said: { say: "wrongLine", of: { line: line.line } } as const,
      ...whereFound(line),
      forbids: forbiddenByLine(lookup, line.step, line.check),
    }));
  return [...found, ...loose];
}

function whereFound({ step, check }: { readonly step?: string; readonly check?: string }) {
  return { ...(step !== undefined && { step }), ...(check !== undefined && { check }) };
}

/** True once something was done, and no line that proves it was found wrong again since. */
function isDoneAbout(finding: Finding, pattern: Pattern, turnaround: Turnaround): boolean {
  if (!isRemedied(finding)) return false;
  return !proofSoFar(finding, pattern, turnaround).isRefuted;
}

/** Nobody has said yet what is wrong there: all that the gravest of it may forbid. */
function forbiddenByLine({ pattern }: Lookup, step: string, check: StepAnswer["check"]): readonly Work[] {
  const finds = check === undefined ? [] : (checkNamed(pattern, check)?.finds ?? []);
  const modes = finds.flatMap((id) => modeNamed(pattern, id) ?? []).filter(({ effect }) => effect === "grounds");
  if (modes.length === 0) return forbiddenByUnknown(pattern, step);
  return modes.flatMap((mode) => forbiddenBy(pattern, mode));
}
