import { InputError, printGiven } from "#base";
import { z } from "zod";
import { planYearQuestion } from "./planning/index.ts";
import type { Question, QuestionContext } from "./question.ts";
import { QUESTIONS } from "./registry.ts";

/** Names of every question, in the order doors list them. */
export function questionNames(): readonly string[] {
  return QUESTIONS.map((question) => question.name);
}

/** The question of this name, if there is one. */
export function questionNamed(name: string): Question | undefined {
  return QUESTIONS.find((question) => question.name === name);
}

/**
 * Asks a question: validates what was given, then answers.
 *
 * @param name - as in `questionNames()`
 * @param given - input as its schema says: quantities as text with a unit or bare SI numbers
 * @param context - what the door can look up, such as patterns
 * @returns the answer, in bare SI numbers
 * @throws InputError QU-100 for an unknown question, else with every fault in what was given
 * @example ask("water", { temperature: "15 °C", salinity: 35 }) // { density: 1025.97, ... }
 */
export function ask(name: string, given: unknown, context: QuestionContext = {}): unknown {
  return requireQuestion(name).answer(given, context);
}

/** Whether a door that can load a solver does so for this question; the others are spared it. */
export function usesSolver(name: string): boolean {
  return name === planYearQuestion.name;
}

/** JSON Schema of a question's input and output. */
export function schemaOf(name: string): { readonly input: object; readonly output: object } {
  const { input, output } = requireQuestion(name);
  return { input: z.toJSONSchema(input, { io: "input" }), output: z.toJSONSchema(output, { io: "output" }) };
}

/** A complete, valid input for a question. */
export function exampleOf(name: string): unknown {
  return requireQuestion(name).example;
}

function requireQuestion(name: string): Question {
  const question = questionNamed(name);
  if (question) return question;
  throw new InputError([
    {
      code: "QU-100",
      field: "name",
      got: printGiven(name),
      allowed: questionNames().join(", "),
      remedy: "Use one of these names.",
    },
  ]);
}
