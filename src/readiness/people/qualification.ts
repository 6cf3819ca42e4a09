import type { Span } from "#base";
import type { Pattern, StageId } from "#kit";
import type { Tie } from "../kinds/people-parts.ts";
import type { Mark } from "../state.ts";

/** What a person may do alone once they have shown it. */
export interface Qualification {
  readonly id: string;
  readonly name: string;
  readonly ties: readonly Tie[];
  /** Who did it holds it so long afterwards. */
  readonly every: Span;
  readonly seenBy: "holders" | "keepers";
  readonly alone: "with-note" | "never";
  /** When it was first set: what was done before counts, since nobody asked for a second person then. */
  readonly since: Mark;
  readonly retired?: Mark & { readonly reason: string };
}

/** Where in a turnaround something is done: at a step of a stage, or at the sealing itself. */
export interface AtStage {
  readonly stage: StageId | undefined;
  /** Absent at the sealing. */
  readonly step?: string;
}

/** True where a qualification is for what is done there under this pattern. */
export function isFor({ ties }: Pick<Qualification, "ties">, pattern: Pick<Pattern, "id">, at: AtStage): boolean {
  return ties.some((tie) => {
    if (tie.to === "sheet") return false;
    if (tie.to === "step") return tie.pattern === pattern.id && tie.step === at.step;
    return tie.stage === at.stage && (tie.pattern ?? pattern.id) === pattern.id;
  });
}

/** Steps of a pattern that a qualification is for, the optional ones too, in order. */
export function stepsFor(
  qualification: Pick<Qualification, "ties">,
  pattern: Pattern,
): Pattern["stages"][number]["steps"] {
  return pattern.stages.flatMap(({ id: stage, steps }) =>
    steps.filter(({ id: step }) => isFor(qualification, pattern, { stage, step })),
  );
}

/** Qualifications that an opening of a kit of this pattern asks for: each that some line of every turnaround needs. */
export function neededFor(qualifications: readonly Qualification[], pattern: Pattern): readonly Qualification[] {
  return qualifications.filter(
    (one) => !one.retired && stepsFor(one, pattern).some(({ optional, after }) => !optional && after === undefined),
  );
}
