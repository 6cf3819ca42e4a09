import { openAsk, type Line } from "#web/act/lines.ts";

/**
 * The next line with something to answer that nothing bars: after the given one, else before it.
 *
 * @param lines - lines of the pattern with their answers
 * @param from - number of the line that is barred
 * @param isBarred - true for a step that an open finding bars
 */
export function nextFree(lines: readonly Line[], from: number, isBarred: (line: Line) => boolean): number | undefined {
  const free = lines.filter((line) => line.step.line !== from && openAsk(line) && !isBarred(line));
  const after = free.find((line) => line.step.line > from);
  return (after ?? free.find((line) => !line.step.optional))?.step.line;
}
