import { stageOfStep, type Pattern, type StageId } from "#kit";
import type { Finding, Turnaround } from "../state.ts";
import { benchDemands, type Benched } from "./bench-demands.ts";
import { openingsOf } from "./openings.ts";

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
 * Once it did not work in an opening, what is found there from then on is of that failure, at whichever line it was raised:
 * it counts once, as the demand that failed.
 *
 * An opening of a drill is no look, since what is found there was planted; the kit lies closed anew from its closing on.
 *
 * @param kit - as its entries tell it
 * @param pattern - it is built to
 * @returns modes found and the time it lay closed, from each closing to the next opening
 */
export function hiddenOf(kit: Benched, pattern: Pattern): HiddenRecord {
  const stopping = stoppingModes(pattern);
  const failures = failuresOf(kit, pattern);
  const opened = openingsOf(kit);
  let [found, lay, looks] = [0, 0, 0];
  for (const [i, turnaround] of opened.entries()) {
    const before = opened[i - 1]?.closed;
    if (!before || turnaround.drill !== undefined) continue;
    looks += 1;
    lay += Math.max(0, Date.parse(turnaround.opened.at) - Date.parse(before.at)) / 1000;
    const own = foundIn(turnaround, kit.findings, failures.get(turnaround.id));
    found += modesIn(own, pattern, stopping).size;
  }
  return { found, lay, looks };
}

/** When it did not work, by opening [ms]. */
function failuresOf(kit: Benched, pattern: Pattern): ReadonlyMap<string, number> {
  const failed = benchDemands(kit, pattern).filter(({ worked }) => !worked);
  return new Map(failed.flatMap(({ turnaround, at }) => (turnaround ? [[turnaround, Date.parse(at)] as const] : [])));
}

/** Raised in an opening before it did not work there. */
function foundIn({ id }: Turnaround, findings: readonly Finding[], failedAt = Infinity): readonly Finding[] {
  const own = findings.filter(({ turnaround }) => turnaround === id);
  return failedAt === Infinity ? own : own.filter(({ raised }) => Date.parse(raised.at) < failedAt);
}

function modesIn(findings: readonly Finding[], pattern: Pattern, stopping: ReadonlySet<string>): ReadonlySet<string> {
  const own = findings.filter(({ mode, step }) => {
    const stage = step === undefined ? undefined : stageOfStep(pattern, step)?.id;
    return stopping.has(mode) && (stage === undefined || !ASKED.has(stage));
  });
  return new Set(own.map(({ mode }) => mode));
}

/** Modes by which a kit does not start, prime or deliver. */
export function stoppingModes({ modes, troubles = [] }: Pattern): ReadonlySet<string> {
  const named = new Set(troubles.flatMap(({ causes }) => causes.flatMap(({ mode }) => mode ?? [])));
  const grounding = modes.filter(({ effect }) => effect === "grounds").map(({ id }) => id);
  return new Set(named.size === 0 ? grounding : grounding.filter((id) => named.has(id)));
}
