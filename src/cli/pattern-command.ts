import { lintPatternText, type LintFault } from "#kit";
import { filesBeside } from "#store/patterns";
import { readFile } from "node:fs/promises";
import type { Call, Command } from "./command.ts";
import { usageError } from "./usage-error.ts";

/** `drykeel pattern lint`: what a pattern's owner should mend before anyone uses it. */
export const patternCommand: Command = {
  name: "pattern",
  usage: "pattern lint FILE ... [--json]",
  summary: "say what is wrong or missing in a pattern",
  options: { json: false },
  run: async (call) => {
    const [verb, ...files] = call.words;
    if (verb !== "lint") throw usageError("pattern", verb ?? "nothing", "lint", "Write: pattern lint FILE");
    if (files.length === 0)
      throw usageError("FILE", "nothing", "one or more pattern files", "Write: pattern lint patterns/NAME.yaml");
    const counts = [];
    for (const file of files) counts.push(await lintFile(call, file));
    return counts.some((count) => count > 0) ? 1 : 0;
  },
};

async function lintFile({ terminal, options }: Call, file: string): Promise<number> {
  const text = await readFile(file, "utf8").catch((cause: Error) => {
    throw usageError(file, cause.message, "a pattern file that can be read", "Check the name.");
  });
  const faults = lintPatternText(text, file, filesBeside(file));
  if (options["json"]) terminal.out(JSON.stringify({ file, faults }, null, 2));
  else for (const line of faults.map((fault) => lintLine(file, fault))) terminal.out(line);
  if (!options["json"] && faults.length === 0) terminal.out(`${file}: nothing to mend`);
  return faults.filter(({ isNote }) => isNote !== true).length;
}

/** Where first, as an editor can jump to it; a file that does not load says so itself. */
function lintLine(file: string, { at, where, what, remedy, rule, isNote }: LintFault): string {
  if (rule === "loads") return `${where.startsWith(file) ? "" : `${file}: `}${where}: ${what}. ${remedy} (${rule})`;
  const position = at === undefined ? "" : `:${at.line}:${at.column}`;
  return `${file}${position}: ${isNote ? "note, " : ""}${where}: ${what} ${remedy} (${rule})`;
}
