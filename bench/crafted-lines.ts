/**
 * Every crafted set of 20,000 lines folded to a board, in processor time, beside a peer that reads no rule: the same lines
 * parsed from JSON and put in order. Ends with 1 where one takes a second or more at its best of three.
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

function fold(lines: readonly Entry[]): void {
  const made = createStationFold([SMALL_PATTERN]);
  made.add(lines);
  boardOf(made.read(), "2027-06-01T00:00:00Z");
}

const over: string[] = [];
for (const [name, make] of Object.entries(CRAFTED)) {
  const lines = make(LINES);
  const text = JSON.stringify(lines);
  const peer = bestOf(3, () => (JSON.parse(text) as Entry[]).sort(compareEntries));
  const ours = bestOf(3, () => fold(lines));
  if (ours >= LIMIT_MS) over.push(name);
  console.log(`${ours.toFixed(0).padStart(6)} ms   peer ${peer.toFixed(0).padStart(4)} ms   ${name}`);
}
console.log(over.length === 0 ? "all under a second" : `a second or more: ${over.join("; ")}`);
if (over.length > 0) process.exitCode = 1;
