// Watches drawn from what the sheet itself thinks beforehand: hole, pumps, strainer and hull, untold changes, patches that
// hold or not, soundings read well, in a slosh or as a slip. One way is drawn and followed; it is not what is inferred.
import { uprightSpace, type SheetPumpRun, type Reading, type SheetCase } from "#flooding";
import { chancesFrom, type Chances } from "../../src/flooding/sheet/chances.ts";
import { drawCloud, type Cloud } from "../../src/flooding/sheet/cloud.ts";
import { drawTurns, moveThrough, tellPatch, wander } from "../../src/flooding/sheet/motion.ts";
import { misread } from "../../src/flooding/sheet/reading.ts";

/** What is told on the way: a pump; a second one; a patch. */
export const WATCHES = ["pump", "second pump", "patch"] as const;
export type Watch = (typeof WATCHES)[number];

/** What the sheet is told, and what is true at the last sounding. */
export interface DrawnWatch {
  readonly given: SheetCase;
  readonly truth: Cloud;
  readonly draw: () => number;
}

const EVERY = 240;
const COUNT = 8;
const FIRST_PUMP = 300;
const CHANGE = 1000;

/** Watch number n of a kind. */
export function drawWatch(kind: Watch, n: number, readAs = 1): DrawnWatch {
  const chances = chancesFrom(0xca11 + 31 * n + 7 * WATCHES.indexOf(kind));
  const first: Reading = { at: 0, level: 0.35 + 0.3 * chances.even() };
  const area = 5 + 10 * chances.even();
  const space = uprightSpace({ area, outside: 1 + 0.4 * chances.even(), outsideDoubt: 0.1, sinkage: 0.01 });
  const runs = runsOf(kind, chances);
  const plain = {
    space,
    runs,
    pumps: runs.length,
    patches: kind === "patch" ? [{ at: CHANGE, open: 0.25 }] : [],
    signs: [],
    isMeasured: true,
    holeTold: 0.004,
  };
  const truth = drawCloud({ ...plain, readings: [first] }, 1, chances);
  const readings = [first];
  for (let k = 1; k < COUNT; k += 1) {
    follow(truth, plain, k, chances);
    readings.push({ at: k * EVERY, level: Math.max(0, truth.level[0]! + misread(readAs * truth.stick[0]!, chances)) });
  }
  return { given: { ...plain, readings, now: (COUNT - 1) * EVERY }, truth, draw: () => chances.even() };
}

function runsOf(kind: Watch, chances: Chances): SheetPumpRun[] {
  const flow = (): number => 0.003 + 0.005 * chances.even();
  const first: SheetPumpRun = { from: FIRST_PUMP, flow: flow(), pump: 0 };
  return kind === "second pump" ? [first, { from: CHANGE, flow: flow(), pump: 1 }] : [first];
}

type Plain = Omit<SheetCase, "readings" | "now">;

function follow(truth: Cloud, { space, runs, pumps, patches }: Plain, k: number, chances: Chances): void {
  const [from, to] = [(k - 1) * EVERY, k * EVERY];
  wander(truth, EVERY, chances);
  const turns = drawTurns(truth, EVERY, false, chances);
  const told = [FIRST_PUMP, CHANGE].filter((at) => at > from && at < to);
  const cuts = [from, ...told, to];
  for (let c = 0; c + 1 < cuts.length; c += 1) {
    const [start, end] = [cuts[c]!, cuts[c + 1]!];
    for (const { at, open } of patches) if (at === start) tellPatch(truth, open, 1, chances);
    const flows = Array.from({ length: pumps }, (_, p) =>
      runs.reduce((sum, run) => sum + (run.pump === p && start >= run.from ? run.flow : 0), 0),
    );
    moveThrough(truth, space, { from: start, to: end, flows }, { turns, start: from, reading: k }, chances);
  }
}
