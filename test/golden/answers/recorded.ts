import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { isInputError } from "#base";
import { ask, type QuestionContext } from "#questions";
import { loadSolver } from "#solver";
import { SHIPPED_FILES, shippedPattern } from "#test/patterns/shipped-patterns.ts";

/** One input of a question, with what came of asking it: an answer, or the faults it was refused for. */
interface Recorded {
  /** What is asked, in a few words; no two of a question are alike. */
  readonly case: string;
  readonly given: unknown;
  readonly answer?: unknown;
  readonly refused?: unknown;
}

const FOLDER = import.meta.dirname;

/** Every file of recorded answers: one for each question, in the folder of its subject. */
export function recordedFiles(): readonly { readonly question: string; readonly path: string }[] {
  const names = readdirSync(FOLDER, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".json"));
  return names
    .toSorted()
    .map((name) => ({ question: name.replace(/^.*[/\\]|\.json$/g, ""), path: join(FOLDER, name) }));
}

/** What a door that knows the shipped patterns and a solver gives beside the input. */
export async function shippedContext(): Promise<QuestionContext> {
  const patterns = SHIPPED_FILES.map((name) => shippedPattern(name.replace(/\.yaml$/, "")));
  return { patterns: (id) => patterns.find((pattern) => pattern.id === id), solver: await loadSolver() };
}

/** The cases of a file, without what came of them. */
export function givenIn(text: string): readonly Pick<Recorded, "case" | "given">[] {
  return (JSON.parse(text) as readonly Recorded[]).map((one) => ({ case: one.case, given: one.given }));
}

/** The file as it would be recorded now: its own inputs, asked again. */
export function askedAgain(question: string, path: string, context: QuestionContext): string {
  const cases = givenIn(readFileSync(path, "utf8")).map((one) => ({
    ...one,
    ...outcomeOf(question, one.given, context),
  }));
  return `${JSON.stringify(cases, null, 1)}\n`;
}

function outcomeOf(question: string, given: unknown, context: QuestionContext): Pick<Recorded, "answer" | "refused"> {
  try {
    return { answer: ask(question, given, context) };
  } catch (thrown) {
    if (isInputError(thrown)) return { refused: thrown.faults };
    throw thrown;
  }
}
