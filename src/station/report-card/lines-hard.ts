import { allSteps, type Pattern, type Step } from "#kit";
import type { StepReport } from "#readiness";
import { jeffreys } from "#reliability";
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
}

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
  const read = allSteps(pattern).map((step) => lineRead(step, openings, reports));
  const hard = read.filter((one) => one.notPossible + reportsOf(one) > 0);
  return hard.toSorted((one, other) => other.notPossible + reportsOf(other) - one.notPossible - reportsOf(one));
}

/** Reports of every sort on a line. */
export function reportsOf({ reports }: LineHard): number {
  return reports.wrong + reports.impossible + reports.unclear;
}

function lineRead(step: Step, openings: readonly OpeningRead[], reports: readonly StepReport[]): LineHard {
  const answered = openings
    .map(({ turnaround }) => Object.values(turnaround.answers).filter((one) => one.step === step.id))
    .filter((answers) => answers.length > 0);
  const notPossible = answered.filter((answers) => answers.some(({ answer }) => answer === "not-possible")).length;
  const own = reports.filter((one) => one.step === step.id);
  const count = (what: StepReport["what"]) => own.filter((one) => one.what === what).length;
  return {
    step,
    asked: answered.length,
    notPossible,
    reports: { wrong: count("wrong"), impossible: count("impossible"), unclear: count("unclear") },
    told: own.toSorted((one, other) => other.at.localeCompare(one.at)),
    atLeast: answered.length === 0 ? 0 : jeffreys(notPossible, answered.length, 0.9)[0],
  };
}
