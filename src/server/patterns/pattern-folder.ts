import type { Pattern } from "#kit";
import { readStationPatterns } from "#store/patterns";
import { join } from "node:path";
import { StartProblem } from "../start/start-problem.ts";

/** Patterns that a server starts with. */
export interface ServedPatterns {
  readonly patterns: readonly Pattern[];
  /** One line per file of the station's own that is left out: its name and what is wrong with it. */
  readonly leftOut: readonly string[];
}

/**
 * Reads the patterns shipped and the station's own. One bad file of the station's own never keeps a board from its
 * crew: it is left out and named, and the kits built to it say that their pattern is not here.
 *
 * @param root - folder of the checkout
 * @param dataDir - the station's folder
 * @throws StartProblem naming every shipped file that is wrong: then the checkout is not whole
 */
export function readPatterns(root: string, dataDir: string): ServedPatterns {
  const { patterns, broken, leftOut } = readStationPatterns(join(root, "patterns"), dataDir);
  if (broken.length > 0) throw new StartProblem(`Patterns cannot be read:\n${broken.join("\n")}`);
  return { patterns, leftOut };
}
