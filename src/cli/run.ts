import { describeFault, isInputError } from "#base";
import { isStoreError } from "#station";
import { parseArgs } from "node:util";
import { askCommand } from "./ask-command.ts";
import { backupCommand } from "./backup-command.ts";
import { checkRecordCommand } from "./check-record-command.ts";
import type { Command, Surroundings } from "./command.ts";
import { exportCommand, importCommand } from "./exchange-commands.ts";
import { inviteCommand } from "./invite-command.ts";
import { patternCommand } from "./pattern-command.ts";
import { tableCommand } from "./table-command.ts";
import { standingCommand } from "./standing-command.ts";
import { columns, guarded, type Terminal } from "./terminal.ts";
import { usageError } from "./usage-error.ts";
import { verifyCommand } from "./verify-command.ts";
import { keepHeadsCommand } from "./witness/keep-heads-command.ts";
import { witnessCommand } from "./witness-command.ts";

const COMMANDS: readonly Command[] = [
  standingCommand,
  tableCommand,
  askCommand,
  patternCommand,
  verifyCommand,
  witnessCommand,
  keepHeadsCommand,
  checkRecordCommand,
  exportCommand,
  importCommand,
  backupCommand,
  inviteCommand,
];

/**
 * Runs one call of `drykeel`.
 *
 * @param args - words after the program's name
 * @returns exit code: 0 answered, 1 looked and found something wrong, 2 bad input, 3 the data could not be reached;
 *   the process itself ends with 141 where whoever read its output has gone
 */
export async function runDrykeel(args: readonly string[], bare: Terminal, surroundings: Surroundings): Promise<number> {
  const [name, ...rest] = args;
  const terminal = guarded(
    bare,
    ["--json", "--example", "--schema"].some((option) => args.includes(option)),
  );
  if (name === undefined || name === "--help" || name === "-h") return printUsage(terminal);
  try {
    const command = commandNamed(name);
    if (rest.includes("--help") || rest.includes("-h")) return printUsage(terminal, [command]);
    const { values, positionals } = readArguments(command, rest);
    return await command.run({ words: positionals, options: values, terminal, surroundings });
  } catch (cause) {
    return report(cause, terminal, args.includes("--json"));
  }
}

function printUsage(terminal: Terminal, commands = COMMANDS): number {
  terminal.out("npm run -s drykeel -- COMMAND ...    DATA_DIR or DATABASE_URL say where the station is\n");
  for (const line of columns(commands.map(({ usage, summary }) => [`  ${usage}`, summary]))) terminal.out(line);
  return 0;
}

function commandNamed(name: string): Command {
  const command = COMMANDS.find((one) => one.name === name);
  if (command) return command;
  throw usageError(
    "command",
    name,
    COMMANDS.map((one) => one.name).join(", "),
    "Without any word, drykeel lists what it does.",
  );
}

function readArguments(
  command: Command,
  args: readonly string[],
): { values: Record<string, string | boolean | undefined>; positionals: string[] } {
  const options = Object.fromEntries(
    Object.entries(command.options).map(([name, takes]) => [
      name,
      { type: takes ? ("string" as const) : ("boolean" as const) },
    ]),
  );
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (cause) {
    throw usageError(command.name, args.join(" "), command.usage, (cause as Error).message);
  }
}

function report(cause: unknown, terminal: Terminal, json: boolean): number {
  if (isInputError(cause)) {
    for (const fault of cause.faults) terminal.error(describeFault(fault));
    if (json) terminal.out(JSON.stringify({ error: { code: cause.faults[0]?.code, faults: cause.faults } }, null, 2));
    return 2;
  }
  if (!isStoreError(cause)) throw cause;
  terminal.error(cause.message);
  if (json)
    terminal.out(
      JSON.stringify({ error: { code: cause.code, message: cause.message, remedy: cause.remedy } }, null, 2),
    );
  return 3;
}
