// `npm run calibrate`: simulation-based calibration of the soundings (Talts, Betancourt, Simpson, Vehtari, Gelman,
// Validating Bayesian inference algorithms with simulation-based calibration, 2018, arXiv 1804.06788).
// Casualties are drawn from the prior, sounded, and inferred. If the inference is right, the truth's rank among the
// inferred values is even, and 90 % intervals hold it nine times in ten. With the soundings' error misstated by half
// the same test must fail: a test that cannot fail proves nothing.
import { fork } from "node:child_process";
import { fileURLToPath } from "node:url";
import {
  AREA_SHARE,
  believeCasualties,
  DELIVERY,
  followLevel,
  HOLE,
  planSteps,
  START_LEVEL,
  STRENGTH,
  type Present,
} from "#flooding";
import { chiSquareTail } from "#numerics";
import { makeFloating } from "./casualties/floating.ts";
import { makeSynthetic } from "./casualties/synthetic.ts";

const CASES = 1800;
const CONTROL_CASES = 300;
/** Every third casualty is a boat afloat, by the full simulation; the others are spaces with upright sides. */
const AFLOAT_EACH = 3;
const BINS = 10;
const QUANTITIES = ["holeArea", "floodableArea", "pumpDelivery", "holeHeight", "startLevel", "levelInOneHour"] as const;
const PLACES = [STRENGTH, AREA_SHARE, DELIVERY, HOLE, START_LEVEL] as const;

/** Where the truth stands among the inferred values, 0 to 1, by quantity; lost is lost, however deep. */
type Ranks = readonly number[];

function isAfloat(n: number): boolean {
  return n % AFLOAT_EACH === AFLOAT_EACH - 1;
}

function ranksOf(n: number, statedNoise?: number): Ranks {
  const { given, truth, laterLevel, draw } = (isAfloat(n) ? makeFloating : makeSynthetic)(n, statedNoise);
  const { present } = believeCasualties(given);
  const ranks = PLACES.map((place) =>
    rankAmong(
      present.casualties.map((one) => one[place]!),
      truth[place]!,
      draw,
    ),
  );
  const highest = given.space.lossLevel ?? Number.POSITIVE_INFINITY;
  const levels = levelsInOneHour(present, given.pumping[0]!.flow).map((level) => Math.min(level, highest));
  return [...ranks, rankAmong(levels, Math.min(laterLevel, highest), draw)];
}

function levelsInOneHour({ space, casualties, levels }: Present, flow: number): number[] {
  const plan = planSteps([0, 3600], [{ from: -1, flow }], 60);
  const out = new Float64Array(2);
  return casualties.map((one, k) => followLevel(space, one, plan, levels[k]!, out));
}

/** Share below; where values are the same (a dry floor is a dry floor) a place among them is drawn. */
function rankAmong(values: readonly number[], truth: number, draw: () => number): number {
  const near = 1e-4;
  const below = values.filter((value) => value < truth - near).length;
  const same = values.filter((value) => Math.abs(value - truth) <= near).length;
  return (below + draw() * Math.max(1, same)) / (values.length + 1);
}

interface Verdict {
  readonly quantity: string;
  readonly coverage: number;
  readonly p: number;
  readonly passes: boolean;
}

function judge(ranks: readonly Ranks[]): Verdict[] {
  return QUANTITIES.map((quantity, q) => {
    const column = ranks.map((row) => row[q]!);
    const coverage = column.filter((rank) => rank >= 0.05 && rank <= 0.95).length / column.length;
    const counts = Array.from(
      { length: BINS },
      (_, b) => column.filter((r) => Math.min(BINS - 1, Math.floor(r * BINS)) === b).length,
    );
    const even = column.length / BINS;
    const p = chiSquareTail(
      counts.reduce((sum, count) => sum + (count - even) ** 2 / even, 0),
      BINS - 1,
    );
    return { quantity, coverage, p, passes: Math.abs(coverage - 0.9) <= 0.025 && p > 0.001 };
  });
}

function print(title: string, verdicts: readonly Verdict[]): void {
  console.log(`\n${title}\nquantity          90 % interval holds   rank chi-square p`);
  for (const one of verdicts) {
    const row = [one.quantity.padEnd(18), one.coverage.toFixed(4).padEnd(22), one.p.toExponential(2).padEnd(12)];
    console.log(`${row.join("")}${one.passes ? "" : "  out of bounds"}`);
  }
}

/** Half of the cases in each of two processes. */
function shareOut(count: number, statedNoise?: number): Promise<Ranks[]> {
  const parts = [0, 1].map(
    (part) =>
      new Promise<Ranks[]>((resolve, reject) => {
        const child = fork(fileURLToPath(import.meta.url), ["part", `${part}`, `${count}`, `${statedNoise ?? ""}`]);
        child.on("message", (ranks) => resolve(ranks as Ranks[]));
        child.on("exit", (code) => code !== 0 && reject(new Error(`a calibration process ended with ${code}`)));
      }),
  );
  return Promise.all(parts).then(([even = [], odd = []]) =>
    Array.from({ length: count }, (_, n) => (n % 2 === 0 ? even : odd)[n >> 1]!),
  );
}

function runPart(part: number, count: number, statedNoise: number | undefined): void {
  const ranks: Ranks[] = [];
  for (let n = part; n < count; n += 2) ranks.push(ranksOf(n, statedNoise));
  process.send!(ranks, () => process.exit(0));
}

/** The casualties by family, and all of them; each is judged for itself, so that none hides behind another. */
function familiesOf(ranks: readonly Ranks[]): readonly (readonly [string, readonly Ranks[]])[] {
  return [
    ["spaces with upright sides", ranks.filter((_, n) => !isAfloat(n))],
    ["boats afloat", ranks.filter((_, n) => isAfloat(n))],
    ["of both", ranks],
  ];
}

async function isCalibrated(): Promise<boolean> {
  const verdicts = familiesOf(await shareOut(CASES)).map(([name, ranks]) => {
    const judged = judge(ranks);
    print(`${ranks.length} casualties, ${name}, error of soundings as stated`, judged);
    return judged.every((one) => one.passes);
  });
  return verdicts.every(Boolean);
}

/** With the error misstated every family must be out of bounds. */
async function isControlCaught(): Promise<boolean> {
  const verdicts = familiesOf(await shareOut(CONTROL_CASES, 0.0075)).map(([name, ranks]) => {
    const judged = judge(ranks);
    print(`Control: ${ranks.length} casualties, ${name}, error misstated by half (must be out of bounds)`, judged);
    return judged.some((one) => !one.passes);
  });
  return verdicts.every(Boolean);
}

/** What the sheet thinks beforehand, in a process of its own: a pump, a second one, a patch told on the way. */
function isSheetCalibrated(): Promise<boolean> {
  console.log("\nThe sheet's own first thoughts: 90 % interval holds");
  return new Promise((resolve) => {
    const child = fork(fileURLToPath(new URL("./casualties/sheet-calibration.ts", import.meta.url)), []);
    child.on("exit", (code) => resolve(code === 0));
  });
}

async function main(): Promise<void> {
  const [calibrated, caught] = [await isCalibrated(), await isControlCaught()];
  console.log(`\ncalibrated: ${calibrated ? "yes" : "NO"}; control caught: ${caught ? "yes" : "NO"}`);
  const ofSheet = await isSheetCalibrated();
  process.exit(calibrated && caught && ofSheet ? 0 : 1);
}

const [mode, part, count, noise] = process.argv.slice(2);
if (mode === "part") runPart(Number(part), Number(count), noise ? Number(noise) : undefined);
else await main();
