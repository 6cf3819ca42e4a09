import { newestOf } from "#kit";
import { ask, exampleOf, questionNamed, questionNames, schemaOf, usesSolver } from "#questions";
import { sayProse } from "#words";
import { loadSolver } from "#solver";
import { readFile } from "node:fs/promises";
import type { Call, Command } from "./command.ts";
import { stationPatterns } from "./open-data.ts";
import { readableAnswer } from "./readable-answer.ts";
import { columns } from "./terminal.ts";
import { usageError } from "./usage-error.ts";

/** `drykeel ask`: every computation, from a file or standard input. */
export const askCommand: Command = {
  name: "ask",
  usage: "ask [NAME FILE|-] [--json] [--us] [--example] [--schema]",
  summary: "answer a question; without a name, list the questions",
  options: { json: false, us: false, example: false, schema: false },
  run: async (call) => {
    const [name, file] = call.words;
    if (name === undefined) listQuestions(call);
    else if (call.options["example"]) call.terminal.out(print(exampleOf(name)));
    else if (call.options["schema"]) call.terminal.out(print(schemaOf(name)));
    else await answer(call, name, file);
    return 0;
  },
};

function listQuestions({ terminal, options }: Call): void {
  const rows = questionNames().map((name) => [name, questionNamed(name)?.summary ?? ""]);
  if (options["json"]) return terminal.out(print(rows.map(([name, summary]) => ({ name, summary }))));
  for (const line of columns(rows)) terminal.out(line);
}

async function answer(call: Call, name: string, file: string | undefined): Promise<void> {
  const { terminal, options } = call;
  const patterns = stationPatterns(call);
  const given = questionNamed(name) === undefined ? undefined : await readGiven(call, name, file);
  const solver = usesSolver(name) ? { solver: await loadSolver() } : {};
  const answered = ask(name, given, {
    patterns: (id) => newestOf(patterns, id),
    ...solver,
  });
  if (options["json"]) return terminal.out(print(answered));
  const units = options["us"] ? "us" : "metric";
  for (const line of readableAnswer(answered, schemaOf(name).output)) terminal.out(sayProse(line, units));
}

async function readGiven({ terminal }: Call, name: string, file: string | undefined): Promise<unknown> {
  const remedy = `See what it takes: npm run -s drykeel -- ask ${name} --example`;
  if (file === undefined) throw usageError("FILE", "nothing", "a JSON file, or - for standard input", remedy);
  const text = file === "-" ? await terminal.readInput() : await readNamed(file, remedy);
  try {
    return JSON.parse(text) as unknown;
  } catch (cause) {
    throw usageError(file, (cause as Error).message, "one JSON object", remedy);
  }
}

async function readNamed(file: string, remedy: string): Promise<string> {
  return readFile(file, "utf8").catch((cause: Error) => {
    throw usageError(file, cause.message, "a JSON file that can be read, or - for standard input", remedy);
  });
}

function print(value: unknown): string {
  return JSON.stringify(value, null, 2);
}
