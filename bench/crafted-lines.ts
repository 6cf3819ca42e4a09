/**
 * Every crafted set of 20,000 lines folded to a board, in processor time, beside a peer that reads no rule: the same lines
 * parsed from JSON and put in order; and beside a quarter of the set. Ends with 1 where one takes a second or more at its
 * best of three, or grows with more than the lines.
 * Run with `npm run bench -- crafted-lines`.
 */
import { compareEntries, type Entry } from "#log";
import { boardOf, createStationFold } from "#station";
import { CRAFTED } from "../src/station/growth/crafted-lines.ts";
import { SMALL_PATTERN } from "../src/station/sample-station.ts";
import { bestOf } from "./processor/best-of.ts";

const LINES = 20_000;
/** No set of so many lines may take the fold longer [ms of the processor], on the machine this was built for. */
const LIMIT_MS = 1000;
/** Four times the lines take at most so many times as long; what grows with the square takes sixteen. */
const LIMIT_RATIO = 9;
/** Below this the clock and the collector of garbage say more than the work does [ms]. */
const LEAST_MS = 15;

function fold(lines: readonly Entry[]): void {
  const made = createStationFold([SMALL_PATTERN]);
  made.add(lines);
  boardOf(made.read(), "2027-06-01T00:00:00Z");
}

/** What one set took: all of it at its best [ms of the processor], and how many times as long as a quarter, at the least. */
interface Taken {
  readonly ours: number;
  readonly ratio: number;
}

/** Three tries, each with a quarter and with all side by side: the same folds give time and ratio. */
function takenBy(some: readonly Entry[], all: readonly Entry[]): Taken {
  const tries = [1, 2, 3].map(() => ({ quarter: bestOf(1, () => fold(some)), whole: bestOf(1, () => fold(all)) }));
  return {
    ours: Math.min(...tries.map(({ whole }) => whole)),
    ratio: Math.min(...tries.map(({ quarter, whole }) => whole / Math.max(LEAST_MS, quarter))),
  };
}

const over: string[] = [];
for (const [name, make] of Object.entries(CRAFTED)) {
  const lines = make(LINES);
  const text = JSON.stringify(lines);
  const peer = bestOf(3, () => (JSON.parse(text) as Entry[]).sort(compareEntries));
  const { ours, ratio } = takenBy(make(LINES / 4), lines);
  if (ours >= LIMIT_MS || ratio >= LIMIT_RATIO) over.push(name);
  const figures = `${ours.toFixed(0).padStart(6)} ms, ${ratio.toFixed(1).padStart(4)} times a quarter`;
  console.log(`${figures}   peer ${peer.toFixed(0).padStart(4)} ms   ${name}`);
}
console.log(over.length === 0 ? "all under a second and straight" : `a second or more, or bent: ${over.join("; ")}`);
if (over.length > 0) process.exitCode = 1;
