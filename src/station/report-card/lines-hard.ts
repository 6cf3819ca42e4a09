import { allSteps, type Pattern, type Step } from "#kit";
import type { StepReport } from "#readiness";
import { jeffreys } from "#reliability";
import { reportedIn } from "./card-told.ts";
import type { OpeningRead } from "./openings-read.ts";

/** A line that people could not do, or told the pattern's owner about. */
export interface LineHard {
  readonly step: Step;
  /** Openings in which anything was answered at it. */
  readonly asked: number;
  /** Openings in which it, or a check of it, was not possible. */
  readonly notPossible: number;
  /** Reports, by what they said. */
  readonly reports: Readonly<Record<StepReport["what"], number>>;
  /** The same, each as it was told, newest first. */
  readonly told: readonly StepReport[];
  /** Share of openings in which it is not possible: nineteen times in twenty at least this [1]. */
  readonly atLeast: number;
  /** Openings it takes on top until its share tells anything; 0 where enough, or where it was always possible. */
  readonly openingsWanted: number;
}

/** In fewer openings than this a line that was not possible tells nothing of its wording: judgement. */
const LEAST_OPENINGS = 5;

/**
 * Lines that were ever not possible, or reported wrong, impossible or unclear; each opening counts once for a line.
 *
 * @param pattern - its newest version
 * @param openings - of its kits
 * @param reports - on its lines, answered ones too
 * @returns most often first
 * @source lower end by Jeffreys' interval, as `jeffreys`
 */
export function linesHard(
  pattern: Pattern,
  openings: readonly OpeningRead[],
  reports: readonly StepReport[],
): readonly LineHard[] {
  const counts = countedByStep(openings);
  const own = (id: string) => reports.filter(({ step, card }) => step === id && card === undefined);
  const hard = allSteps(pattern).flatMap((step) => lineRead(step, counts.get(step.id), own(step.id)) ?? []);
  return hard.toSorted((one, other) => other.notPossible + reportsOf(other) - one.notPossible - reportsOf(one));
}

/** Reports of every sort on a line. */
export function reportsOf({ reports }: LineHard): number {
  return reports.wrong + reports.impossible + reports.unclear;
}

interface Counted {
  readonly asked: number;
  readonly notPossible: number;
}

/** Every answer is read once: a station of a hundred kits has tens of thousands. */
function countedByStep(openings: readonly OpeningRead[]): ReadonlyMap<string, Counted> {
  const counts = new Map<string, Counted>();
  for (const { turnaround } of openings) {
    const isHard = new Map<string, boolean>();
    for (const { step, answer } of Object.values(turnaround.answers))
      isHard.set(step, isHard.get(step) === true || answer === "not-possible");
    for (const [step, hard] of isHard) {
      const { asked, notPossible } = counts.get(step) ?? NEVER_ASKED;
      counts.set(step, { asked: asked + 1, notPossible: notPossible + (hard ? 1 : 0) });
    }
  }
  return counts;
}

const NEVER_ASKED: Counted = { asked: 0, notPossible: 0 };

/** Undefined for a line that gave nobody trouble. */
function lineRead(
  step: Step,
  { asked, notPossible }: Counted = NEVER_ASKED,
  own: readonly StepReport[] = [],
): LineHard | undefined {
  if (notPossible + own.length === 0) return undefined;
  return {
    step,
    asked,
    notPossible,
    ...reportedIn(own),
    atLeast: asked === 0 ? 0 : jeffreys(notPossible, asked, 0.9)[0],
    openingsWanted: notPossible === 0 ? 0 : Math.max(0, LEAST_OPENINGS - asked),
  };
}
