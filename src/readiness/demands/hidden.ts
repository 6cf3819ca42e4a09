import { stageOfStep, type Pattern, type StageId } from "#kit";
import type { CasualtyState } from "../casualty/casualty-state.ts";
import type { Finding } from "../state.ts";
import { failureOf, type Failing } from "./failure-of.ts";
import { openingsOf } from "./openings.ts";
import { stoppingModes } from "./stopping-modes.ts";

/** What was found of faults that came unseen while the kit lay closed. */
export interface HiddenRecord {
  /** Modes found at its openings by which it would not have worked. */
  readonly found: number;
  /** How long it lay closed before those openings [s]. */
  readonly lay: number;
  /** Openings after a closing. */
  readonly looks: number;
}

/** Stages in which it is asked to work: what is found there is a demand that failed, not a fault found by a look. */
const ASKED: ReadonlySet<StageId> = new Set<StageId>(["prime", "run", "spare-start"]);

/**
 * Faults that came while a kit lay closed, found at its openings before it was asked to start: modes that ground it and
 * that the pattern's troubles name as causes; every mode that grounds, where the pattern tells of no troubles.
 *
 * What is of a demand that failed, in that opening or on a casualty before it, is no such fault: it counts once, as the
 * demand that failed, at whichever line it was raised.
 *
 * An opening of a drill is no look, since what is found there was planted; the kit lies closed anew from its closing on.
 *
 * @param kit - as its entries tell it
 * @param pattern - it is built to
 * @param casualties - of the station, open and closed
 * @returns modes found and the time it lay closed, from each closing to the next opening
 */
export function hiddenOf(kit: Failing, pattern: Pattern, casualties: readonly CasualtyState[] = []): HiddenRecord {
  const stopping = stoppingModes(pattern);
  const failed = failureOf(kit, casualties, pattern);
  const opened = openingsOf(kit);
  let [found, lay, looks] = [0, 0, 0];
  for (const [i, turnaround] of opened.entries()) {
    const before = opened[i - 1]?.closed;
    if (!before || turnaround.drill !== undefined) continue;
    looks += 1;
    lay += Math.max(0, Date.parse(turnaround.opened.at) - Date.parse(before.at)) / 1000;
    const own = kit.findings.filter((one) => one.turnaround === turnaround.id && !failed.has(one));
    found += modesIn(own, pattern, stopping).size;
  }
  return { found, lay, looks };
}

function modesIn(findings: readonly Finding[], pattern: Pattern, stopping: ReadonlySet<string>): ReadonlySet<string> {
  const own = findings.filter(({ mode, step }) => {
    const stage = step === undefined ? undefined : stageOfStep(pattern, step)?.id;
    return stopping.has(mode) && (stage === undefined || !ASKED.has(stage));
  });
  return new Set(own.map(({ mode }) => mode));
}
