import { sayLent, type Lent } from "#readiness";
import type { Words } from "#words";

/** Greatest number of kinds of thing, and of one thing. */
const MOST_LINES = 20;
const MOST = 99;

/** What was written of things lent: one a line, its number first and a space ("2 fuel cans") or none for one of it. */
export interface LentWritten {
  readonly lent: readonly Lent[];
  /** Why it cannot be taken so; nothing where it can. */
  readonly fault?: string;
}

/** How each line was read, to be looked at before it is written down, in the words of every screen after: "fuel cans (2)". */
export function sayLentRead(lent: readonly Lent[]): string {
  return lent.map(sayLent).join(", ");
}

/** Reads what was written of things lent with a kit. */
export function readLent(text: string, words: Words["handOver"]): LentWritten {
  const written = text.split("\n").map((line) => line.trim());
  const lent = written.filter((line) => line !== "").map(readLine);
  const fault = faultOf(lent, words);
  return { lent, ...(fault !== undefined && { fault }) };
}

function readLine(line: string): Lent {
  const [, digits, name] = /^([+-]?\d+)(?:\s*[x×]\s+|\s+|$)(.*)$/.exec(line) ?? [];
  return digits === undefined ? { name: line, count: 1 } : { name: name ?? "", count: Number(digits) };
}

function faultOf(lent: readonly Lent[], words: Words["handOver"]): string | undefined {
  if (lent.length > MOST_LINES) return words.mostLines({ most: MOST_LINES });
  if (lent.some(({ name }) => name === "")) return words.sayWhat();
  const long = lent.find(({ name }) => name.length > 80);
  if (long) return words.mostLetters();
  const odd = lent.find(({ count }) => count < 1 || count > MOST);
  if (odd) return words.oneTo({ name: odd.name, most: MOST });
  const names = new Set(lent.map(({ name }) => name));
  return names.size === lent.length ? undefined : words.nameOnce();
}
