import type { Pattern } from "#kit";
import { readPatternFolders } from "#store/patterns";
import { StartProblem } from "./start-problem.ts";

/**
 * Reads the patterns shipped and the station's own.
 *
 * @throws StartProblem naming every file that is wrong and why: a station must not start on half its patterns
 */
export function readPatterns(folders: readonly string[]): readonly Pattern[] {
  const { patterns, wrong } = readPatternFolders(folders);
  if (wrong.length > 0) throw new StartProblem(`Patterns cannot be read:\n${wrong.join("\n")}`);
  return patterns;
}
