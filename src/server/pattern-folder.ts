import { isInputError } from "#base";
import { loadPattern, type Pattern } from "#kit";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { StartProblem } from "./start-problem.ts";

/**
 * Reads every pattern of a folder and its subfolders.
 *
 * @throws StartProblem naming every file that is wrong and why: a station must not start on half its patterns
 */
export function readPatterns(folder: string): readonly Pattern[] {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => /\.ya?ml$/.test(name));
  const read = files.toSorted().map((name) => readPattern(folder, name));
  const wrong = read.flatMap((one) => ("wrong" in one ? [one.wrong] : []));
  if (wrong.length > 0) throw new StartProblem(`Patterns cannot be read:\n${wrong.join("\n")}`);
  return read.flatMap((one) => ("pattern" in one ? [one.pattern] : []));
}

function readPattern(folder: string, name: string): { readonly pattern: Pattern } | { readonly wrong: string } {
  try {
    return { pattern: loadPattern(readFileSync(join(folder, name), "utf8"), name) };
  } catch (cause) {
    if (isInputError(cause)) return { wrong: `${name}: ${cause.message}` };
    throw cause;
  }
}
