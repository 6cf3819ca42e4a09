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
