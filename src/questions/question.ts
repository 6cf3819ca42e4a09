import type { Fault } from "#base";
import type { Pattern } from "#kit";
import type { LinearSolver } from "#planning";
import { z } from "zod";
import { parseInput } from "./input-faults.ts";

/** What a question may look up besides what it was given. Nothing else reaches it: no disk, clock or network. */
export interface QuestionContext {
  /** Pattern by id, where the door that asks knows patterns. */
  readonly patterns?: (id: string) => Pattern | undefined;
  /** A solver, where the door that asks has loaded one: see `usesSolver`. */
  readonly solver?: LinearSolver;
  /** Time that a solver may take in all, where the door has a limit of its own [s]. */
  readonly mostSeconds?: number;
}

/** One computation with a name: what it takes, what it gives, an example and the function. */
export interface Question<Answer = unknown> {
  /** As scripts write it, such as "hose-loss". */
  readonly name: string;
  /** One sentence: what a person learns from it. */
  readonly summary: string;
  readonly input: z.ZodType;
  readonly output: z.ZodType;
  /** A complete, valid input. */
  readonly example: unknown;
  /** Validates what was given, collecting every fault, and answers in bare SI numbers. */
  readonly answer: (given: unknown, context: QuestionContext) => Answer;
}

/** A question as its author writes it: the function sees only input the schema has accepted and turned into SI. */
export interface QuestionDefinition<I extends z.ZodType, O extends z.ZodType> {
  readonly name: string;
  readonly summary: string;
  readonly input: I;
  readonly output: O;
  readonly example: z.input<I>;
  /** Looks at what was given before its units are gone; what it finds is told with the schema's own faults. */
  readonly check?: (given: unknown) => readonly Fault[];
  /** `given` is the same before its units are gone, for an answer that says in which unit it is. */
  readonly answer: (input: z.output<I>, context: QuestionContext, given: unknown) => z.input<O>;
}

/**
 * Makes a question from its schemas and its function.
 *
 * @throws InputError (from the question's `answer`) with every fault in what was given
 */
export function defineQuestion<I extends z.ZodType, O extends z.ZodType>(
  definition: QuestionDefinition<I, O>,
): Question<z.input<O>> {
  return {
    ...definition,
    answer: (given, context) =>
      definition.answer(parseInput(definition.input, given, definition.check), context, given),
  };
}
