import { text } from "node:stream/consumers";

/** Where a command reads and writes; tests give their own. */
export interface Terminal {
  out(line: string): void;
  error(line: string): void;
  readInput(): Promise<string>;
}

/** The process's own streams. */
export const processTerminal: Terminal = {
  out: (line) => void process.stdout.write(`${line}\n`),
  error: (line) => void process.stderr.write(`${line}\n`),
  readInput: () => text(process.stdin),
};

/** Exit code where whoever read the output has gone, as shells have it: 128 and the number of SIGPIPE. */
const READER_GONE = 141;

/** Ends the process without a word where its output goes to a program that has read enough, such as `head`. */
export function endWithReader(stream: NodeJS.WriteStream): void {
  stream.on("error", (cause: NodeJS.ErrnoException) => {
    if (cause.code !== "EPIPE") throw cause;
    process.exit(READER_GONE);
  });
}

/** Columns of text, each as wide as its widest cell, two spaces apart. */
export function columns(rows: readonly (readonly string[])[]): string[] {
  const widths = rows.reduce<number[]>(
    (so, row) => row.map((cell, index) => Math.max(so[index] ?? 0, cell.length)),
    [],
  );
  return rows.map((row) =>
    row
      .map((cell, index) => cell.padEnd(widths[index] ?? 0))
      .join("  ")
      .trimEnd(),
  );
}

/** Control characters, and those that turn the direction of writing: what would steer a terminal or hide text in it. */
const STEERING = /[\p{Cc}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;

/** Text from a file or a database as a terminal may show it: each steering character as a question mark. */
export function harmless(text: string): string {
  return text.replaceAll(STEERING, "?");
}

/**
 * The same terminal, shown nothing that steers it: names in the log may hold anything. Line ends stay. In JSON a steering
 * character is written as its escape, which says the same.
 */
export function guarded(terminal: Terminal, isJson: boolean): Terminal {
  const guard = (line: string) =>
    line
      .split("\n")
      .map(isJson ? escaped : harmless)
      .join("\n");
  return {
    out: (line) => terminal.out(guard(line)),
    error: (line) => terminal.error(guard(line)),
    readInput: () => terminal.readInput(),
  };
}

function escaped(text: string): string {
  return text.replaceAll(STEERING, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`);
}
