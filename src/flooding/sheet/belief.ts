import type { Reading } from "../soundings/sounding-model.ts";
import type { SoundedSpace } from "../soundings/sounding-space.ts";
import { chancesFrom, type Chances } from "./chances.ts";
import { drawCloud, type Cloud } from "./cloud.ts";
import { drawTurns, moveThrough, tellPatch, tellSign, wander, type PumpSign, type Stretch } from "./motion.ts";
import { drawAnew, effectiveOf, loosen, weighBy, weightsOf } from "./sight.ts";
import { drawShare } from "./thought.ts";

/** All that a sheet tells of one space, on one clock. SI units. */
export interface SheetCase {
  readonly space: SoundedSpace;
  /** In order of time, at least one. */
  readonly readings: readonly Reading[];
  readonly runs: readonly SheetPumpRun[];
  /** How many pumps there are. */
  readonly pumps: number;
  /** Share of the hole open from then on. */
  readonly patches: readonly { readonly at: number; readonly open: number }[];
  readonly signs: readonly SignSeen[];
  /** Area told of the hole [m²]. */
  readonly holeTold?: number;
  /** True where her beam is known. */
  readonly isMeasured: boolean;
  readonly now: number;
}

/** One run of a pump: from, until [s], stated flow [m³/s], and the number of the pump. */
export interface SheetPumpRun {
  readonly from: number;
  readonly to?: number;
  readonly flow: number;
  readonly pump: number;
}

/** What was seen of a pump, or of all that ran. */
export interface SignSeen {
  readonly at: number;
  readonly pump?: number;
  readonly sign: PumpSign;
}

/** Ways she may be now, equally likely, and what became clear on the way. */
export interface SheetBelief {
  readonly cloud: Cloud;
  /** The level of each at the last sounding, when she was seen afloat [m]. */
  readonly sounded: Float64Array;
  /** Fewest equally weighted ways that any sounding left. */
  readonly effective: number;
  /** Chance by reading that it is a slip, all readings considered. */
  readonly slips: readonly number[];
  /** Chance by reading that something untold changed just before it, since the last told change. */
  readonly turns: readonly number[];
  /** Of that, what is a pump's. */
  readonly pumpTurns: readonly number[];
}

/** Ways at first, and from the second sounding on; fewer over long watches. */
const AT_FIRST = 14_336;
const FROM_SECOND = 6144;
/** Ways where there is one sounding and nothing to be weighed by. */
const OF_ONE = 2048;
const LONG_WATCH = 16;
const OF_LONG = 4096;
/** Below this share of the ways in play they are drawn anew. */
const DRAWN_ANEW = 0.5;
/** Ways are carried on unseen for so long and no longer [s]. */
const MOST_CARRIED = 6 * 3600;
const SEED = 0x5ee;

/**
 * What a sheet leaves possible: ways she may be, carried from sounding to sounding and weighed by each (a particle
 * filter). Every pump has a share of its own, hole and pumps wander, something untold may change in any interval, and a
 * patch is worth about what is told. One belief for the whole sheet.
 *
 * @param given - the sheet
 * @returns ways now, equally likely
 * @range one space, one hole; readings of the last hours
 * @source Gordon, Salmond & Smith, IEE Proc. F 140 (1993) 107-113 (FROM MEMORY); composition DERIVED:
 *   docs/methods/soundings.md, "On scene"
 */
export function believeSheet(given: SheetCase): SheetBelief {
  const chances = chancesFrom(SEED);
  const { readings } = given;
  const seen = { effective: Number.POSITIVE_INFINITY };
  let cloud = drawCloud(beginningOf(given), readings.length > 1 ? AT_FIRST : OF_ONE, chances);
  tellBefore(cloud, given, readings[0]!.at, chances);
  for (let k = 1; k < readings.length; k += 1) {
    const { at: to, level } = readings[k]!;
    const from = readings[k - 1]!.at;
    const before = cloud.level.slice();
    carry(cloud, given, { from, to, reading: k }, chances);
    weighBy(cloud, { level, before, seconds: to - from, reading: k });
    cloud = sifted(cloud, k === readings.length - 1, readings.length, seen, chances);
  }
  const last = readings[readings.length - 1]!.at;
  const to = Math.min(given.now, last + MOST_CARRIED);
  const sounded = cloud.level.slice();
  if (to > last) carry(cloud, given, { from: last, to, reading: 0 }, chances);
  return {
    cloud,
    sounded,
    effective: Math.min(seen.effective, cloud.count),
    slips: cloud.slips.map(meanOf),
    turns: readings.map((_, k) => shareOf(cloud.turned, k) + shareOf(cloud.turned, -k)),
    pumpTurns: readings.map((_, k) => shareOf(cloud.turned, -k)),
  };
}

function shareOf(turned: Float64Array, reading: number): number {
  if (reading === 0) return 0;
  let count = 0;
  for (const one of turned) if (one === reading) count += 1;
  return count / turned.length;
}

function meanOf(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
}

function beginningOf(given: SheetCase): Parameters<typeof drawCloud>[0] {
  const { readings, space, pumps, isMeasured, holeTold } = given;
  const [first, second] = readings;
  const isPlain = second !== undefined && toldBetween(given, first!.at, second.at).length === 0;
  return {
    space,
    readings,
    pumps,
    isMeasured,
    ...(holeTold !== undefined && { holeTold }),
    ...(isPlain && { firstFlows: flowsAt(given, (first!.at + second.at) / 2) }),
  };
}

function sifted(cloud: Cloud, isLast: boolean, readings: number, seen: { effective: number }, chances: Chances): Cloud {
  const weights = weightsOf(cloud);
  const effective = effectiveOf(weights);
  seen.effective = Math.min(seen.effective, effective);
  const count = readings > LONG_WATCH ? OF_LONG : FROM_SECOND;
  if (!isLast && cloud.count <= count && effective > DRAWN_ANEW * cloud.count) return cloud;
  const next = drawAnew(cloud, weights, count, chances);
  loosen(next, chances);
  return next;
}

/** Instants strictly within a span at which something was told [s]. */
function toldBetween({ runs, patches, signs }: SheetCase, from: number, to: number): number[] {
  const corners = runs.flatMap((run) => (run.to === undefined ? [run.from] : [run.from, run.to]));
  const all = [...corners, ...patches.map(({ at }) => at), ...signs.map(({ at }) => at)];
  return [...new Set(all.filter((at) => at > from && at < to))].toSorted((a, b) => a - b);
}

/** Stated flow by pump at an instant [m³/s]. */
export function flowsAt({ runs, pumps }: SheetCase, at: number): number[] {
  const flows = Array.from({ length: pumps }, () => 0);
  for (const run of runs) if (at >= run.from && at < (run.to ?? Infinity)) flows[run.pump]! += run.flow;
  return flows;
}

interface Interval {
  readonly from: number;
  readonly to: number;
  /** Number of the reading at its end; 0 where there is none. */
  readonly reading: number;
}

/** Through one interval: what was told at its beginning and within it, at its own instant. */
function carry(cloud: Cloud, given: SheetCase, interval: Interval, chances: Chances): void {
  const { from, to, reading } = interval;
  wander(cloud, to - from, chances);
  const turns = drawTurns(cloud, to - from, reading > 0, chances);
  const cuts = [from, ...toldBetween(given, from, to), to];
  for (let k = 0; k + 1 < cuts.length; k += 1) {
    tellAt(cloud, given, cuts[k]!, chances);
    const [start, end] = [cuts[k]!, cuts[k + 1]!];
    const stretch: Stretch = { from: start, to: end, flows: flowsAt(given, (start + end) / 2) };
    moveThrough(cloud, given.space, stretch, { turns, start: from, reading }, chances);
  }
}

/** Pumps started for the first time, of which nothing was seen before: of them only what is thought is known. */
function firstStarts({ runs, signs, pumps }: SheetCase, at: number): number[] {
  return Array.from({ length: pumps }, (_, pump) => pump).filter(
    (pump) =>
      Math.min(...runs.filter((run) => run.pump === pump).map(({ from }) => from)) === at &&
      !signs.some((sign) => sign.pump === pump && sign.at <= at),
  );
}

/** What was told at an instant; what was told of the last one counts at its end, of which the next begins. */
function tellAt(cloud: Cloud, given: SheetCase, at: number, chances: Chances): void {
  const { runs, patches, signs } = given;
  if (runs.some((run) => run.from === at || run.to === at)) cloud.turned.fill(0);
  for (const pump of firstStarts(given, at))
    cloud.shares[pump]!.forEach((_, n, share) => (share[n] = drawShare(chances)));
  patches.forEach((patch, k) => {
    if (patch.at === at) tellPatch(cloud, patch.open, patches[k - 1]?.open ?? 1, chances);
  });
  for (const sign of signs) if (sign.at === at) seeSign(cloud, given, sign, chances);
}

/** Signs seen before the first sounding; patches before it are part of the hole as it was then. */
function tellBefore(cloud: Cloud, given: SheetCase, first: number, chances: Chances): void {
  for (const sign of given.signs) if (sign.at < first) seeSign(cloud, given, sign, chances);
}

function seeSign(cloud: Cloud, given: SheetCase, { at, pump, sign }: SignSeen, chances: Chances): void {
  const running = flowsAt(given, at).flatMap((flow, p) => (flow > 0 ? [p] : []));
  for (const p of pump === undefined ? running : [pump]) tellSign(cloud.shares[p]!, sign, chances);
}
