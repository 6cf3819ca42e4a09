/**
 * Time per line of fold, sync and push, and of a snapshot, from 10,000 lines on; and how each grows with the log: the
 * power of the number of lines that it goes by, 1 where the time per line is the same. Processor time, so that other
 * work on the machine counts as little as may be.
 * Run with `npm run bench -- growth`; `npm run bench -- growth --full` goes to 1,000,000 lines.
 */
import { brotliCompressSync, constants } from "node:zlib";
import type { Entry } from "#log";
import { createStationFold, sendSnapshot, snapshotOf } from "#station";
import { readPatternFolders } from "#store/patterns";
import { GrownStation } from "./growth/grown-station.ts";
import { longLog } from "./growth/long-log.ts";

const SIZES = process.argv.includes("--full") ? [10_000, 100_000, 1_000_000] : [10_000, 40_000, 100_000];
const PUSHES = 101;
/** What grows faster than the log, by a power above this, is not straight. */
const LIMIT = 1.15;
/** A push may not grow with the log at all; noise of the machine aside. */
const PUSH_LIMIT = 0.15;

const { patterns } = readPatternFolders(["patterns"]);

interface Row {
  readonly lines: number;
  /** [µs] a line. */
  readonly fold: number;
  /** [µs] a line. */
  readonly sync: number;
  /** Middle of all [µs]. */
  readonly push: number;
  /** [ms] */
  readonly snapshot: number;
  /** Packed [kB]. */
  readonly size: number;
  readonly kits: number;
}

/** Processor time of this process [µs]. */
async function costOf<Result>(
  work: () => Result | Promise<Result>,
): Promise<{ readonly us: number; readonly result: Result }> {
  const before = process.cpuUsage();
  const result = await work();
  const { user, system } = process.cpuUsage(before);
  return { us: user + system, result };
}

async function snapshotCost(lines: readonly Entry[]) {
  globalThis.gc?.();
  const { us: fold, result } = await costOf(() => {
    const made = createStationFold(patterns);
    made.add(lines);
    return made;
  });
  const { us, result: sent } = await costOf(() => JSON.stringify(sendSnapshot(snapshotOf(result, [], "2026-11-28"))));
  const params = { [constants.BROTLI_PARAM_QUALITY]: 4, [constants.BROTLI_PARAM_LGWIN]: 22 };
  const size = brotliCompressSync(sent, { params }).length / 1000;
  return { fold: fold / lines.length, snapshot: us / 1000, size, kits: result.read().kits.length };
}

/** The lines themselves are let go, so that the process holds no more than a server does. */
async function begin(count: number) {
  const lines = longLog(count, patterns);
  return { folded: await snapshotCost(lines), station: await GrownStation.open(lines, patterns) };
}

async function measure(count: number): Promise<Row> {
  const { folded, station } = await begin(count);
  globalThis.gc?.();
  const { us, result: pulled } = await costOf(() => station.pullAll());
  const pushes: number[] = [];
  for (let one = 0; one < PUSHES; one++) pushes.push((await costOf(() => station.push())).us);
  await station.close();
  const push = pushes.toSorted((a, b) => a - b)[PUSHES >> 1]!;
  return { lines: count, ...folded, sync: us / pulled, push };
}

/** Power by which what takes `of` per line grows with the lines: the slope of a straight line through the logarithms. */
function power(rows: readonly Row[], of: (row: Row) => number): number {
  const points = rows.map((row) => [Math.log(row.lines), Math.log(of(row))] as const);
  const mean = (at: 0 | 1) => points.reduce((sum, point) => sum + point[at], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const over = points.reduce((sum, [px, py]) => sum + (px - x) * (py - y), 0);
  return over / points.reduce((sum, [px]) => sum + (px - x) ** 2, 0);
}

await measure(10_000);
const rows: Row[] = [];
console.log("    lines   kits   fold a line   sync a line   one push   snapshot   packed");
for (const size of SIZES) {
  const row = await measure(size);
  rows.push(row);
  const cells = [
    String(row.lines).padStart(9),
    String(row.kits).padStart(6),
    `${row.fold.toFixed(1)} µs`.padStart(13),
    `${row.sync.toFixed(1)} µs`.padStart(13),
    `${(row.push / 1000).toFixed(1)} ms`.padStart(10),
    `${row.snapshot.toFixed(0)} ms`.padStart(10),
    `${row.size.toFixed(0)} kB`.padStart(8),
  ];
  console.log(cells.join(" "));
}
const powers = {
  fold: 1 + power(rows, ({ fold }) => fold),
  sync: 1 + power(rows, ({ sync }) => sync),
  push: power(rows, ({ push }) => push),
};
console.log(
  `From ${SIZES[0]} to ${SIZES.at(-1)} lines the whole fold goes by lines^${powers.fold.toFixed(2)} and the whole sync by ` +
    `lines^${powers.sync.toFixed(2)} (straight: 1, limit ${LIMIT}); one push by lines^${powers.push.toFixed(2)} ` +
    `(the same at any length: 0, limit ${PUSH_LIMIT}).`,
);
if (powers.fold > LIMIT || powers.sync > LIMIT || powers.push > PUSH_LIMIT) process.exitCode = 1;
