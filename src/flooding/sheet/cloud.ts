import { EVEN, type Reading } from "../soundings/sounding-model.ts";
import { areaAt, volumeAt, type SoundedSpace } from "../soundings/sounding-space.ts";
import type { Chances } from "./chances.ts";
import { misread } from "./reading.ts";
import {
  drawOutside,
  drawShare,
  drawStick,
  drawStrainer,
  drawWidening,
  holeThought,
  THOUGHT,
  type HoleThought,
} from "./thought.ts";

/** Ways she may be, each with the log of its weight: one number of each array belongs to one way. */
export interface Cloud {
  readonly count: number;
  readonly weight: Float64Array;
  /** Log of the hole's strength, and its height as a share of the outside level. */
  readonly hole: Float64Array;
  readonly height: Float64Array;
  /** Log of the floodable area over that drawn. */
  readonly area: Float64Array;
  readonly outside: Float64Array;
  readonly strainer: Float64Array;
  readonly level: Float64Array;
  /** By what share of themselves area and deliveries grow with each metre the water stands higher [1/m]. */
  readonly widens: Float64Array;
  readonly eases: Float64Array;
  /** Error of a sounding that is read well [m]: the same hand, the same stick, the same sea. */
  readonly stick: Float64Array;
  /** By pump: share of what is stated. */
  readonly shares: readonly Float64Array[];
  /** Number of the reading after the last untold change since the last told one, negative of a pump; 0 for none. */
  readonly turned: Float64Array;
  /** By reading: chance that it is a slip. */
  readonly slips: readonly Float64Array[];
}

/** All arrays of a cloud, to be copied alike. */
export function rowsOf(cloud: Cloud): readonly Float64Array[] {
  const { hole, height, area, outside, strainer, level, widens, eases, stick, shares, turned, slips } = cloud;
  return [hole, height, area, outside, strainer, level, widens, eases, stick, turned, ...shares, ...slips];
}

/** A cloud of zeros: so many ways, pumps and readings. */
export function emptyCloud(count: number, pumps: number, readings: number): Cloud {
  const row = (): Float64Array => new Float64Array(count);
  return {
    count,
    weight: row(),
    hole: row(),
    height: row(),
    area: row(),
    outside: row(),
    strainer: row(),
    level: row(),
    widens: row(),
    eases: row(),
    stick: row(),
    shares: Array.from({ length: pumps }, row),
    turned: row(),
    slips: Array.from({ length: readings }, row),
  };
}

/** What the first draw goes by. */
export interface Beginning {
  readonly space: SoundedSpace;
  readonly readings: readonly Reading[];
  readonly pumps: number;
  /** Area told of the hole [m²]. */
  readonly holeTold?: number;
  readonly isMeasured: boolean;
  /** Stated flow by pump over the first two readings [m³/s]; absent where something was changed between them. */
  readonly firstFlows?: readonly number[];
}

/** Chance that the hole is drawn to make the first rise, where there is one. */
const AIMED = 0.8;

/**
 * Draws the cloud before the second sounding. The hole is drawn partly from what is thought, partly so that it makes the
 * rise between the first two soundings, and weighed back: a sounding then leaves many ways, not few.
 */
export function drawCloud(given: Beginning, count: number, chances: Chances): Cloud {
  const cloud = emptyCloud(count, given.pumps, given.readings.length);
  const thought = holeThought(given.holeTold);
  const { space, readings } = given;
  const aim = aimAt(given);
  const areaSpread = given.isMeasured ? THOUGHT.area.measured : THOUGHT.area.guessed;
  for (let n = 0; n < count; n += 1) {
    cloud.stick[n] = drawStick(chances);
    cloud.level[n] = Math.max(0, readings[0]!.level + misread(cloud.stick[n]!, chances));
    cloud.widens[n] = drawWidening(chances);
    cloud.eases[n] = THOUGHT.eases * chances.even();
    cloud.area[n] = areaSpread * chances.normal();
    cloud.outside[n] = Math.max(0.05, space.outside * drawOutside(given.isMeasured, chances));
    cloud.height[n] = 1 / (1 + Math.exp(-EVEN * chances.normal()));
    cloud.strainer[n] = drawStrainer(chances);
    for (const share of cloud.shares) share[n] = drawShare(chances);
    drawHole(aim, cloud, n, thought, chances);
  }
  return cloud;
}

function drawHole(aimed: Aim | undefined, cloud: Cloud, n: number, thought: HoleThought, chances: Chances): void {
  const aim = aimed && aimOf(aimed, cloud, n);
  const isAimed = aim !== undefined && chances.even() < AIMED;
  let hole = isAimed ? aim.middle + aim.spread * chances.normal() : thought.middle + thought.spread * chances.normal();
  if (hole > thought.most) hole = isAimed ? hole : 2 * thought.most - hole;
  cloud.hole[n] = hole;
  if (aim === undefined) return;
  const own = density(hole, thought.middle, thought.spread) * (hole > thought.most ? 0.02 : 1);
  const drawn = AIMED * density(hole, aim.middle, aim.spread) + (1 - AIMED) * own;
  cloud.weight[n] = Math.log(own / drawn + 1e-300);
}

function density(x: number, middle: number, spread: number): number {
  return Math.exp(-(((x - middle) / spread) ** 2) / 2) / spread;
}

/** What the hole is drawn to make: the second level, the water and the area under it, so long after the first. */
interface Aim {
  readonly space: SoundedSpace;
  readonly level: number;
  readonly water: number;
  readonly area: number;
  readonly seconds: number;
  readonly flows: readonly number[];
}

/** Of the first two readings, where nothing was changed between them. */
function aimAt({ space, readings, firstFlows: flows }: Beginning): Aim | undefined {
  const [first, second] = readings;
  if (second === undefined || flows === undefined) return undefined;
  const { level } = second;
  const seconds = second.at - first!.at;
  return { space, level, water: volumeAt(space, level), area: areaAt(space, level), seconds, flows };
}

/** Log strength that makes the rise between the first two soundings, area, height and pumps being these. */
function aimOf(
  { space, level, water, area, seconds, flows }: Aim,
  cloud: Cloud,
  n: number,
): { readonly middle: number; readonly spread: number } | undefined {
  const share = Math.exp(cloud.area[n]!);
  const gained = share * (water - volumeAt(space, cloud.level[n]!));
  let pumped = 0;
  for (let p = 0; p < flows.length; p += 1) pumped += flows[p]! * cloud.shares[p]![n]!;
  const inflow = gained / seconds + pumped;
  const doubt = (share * area * cloud.stick[n]!) / seconds;
  const sea = cloud.outside[n]!;
  const head = sea - Math.max(cloud.height[n]! * sea, (cloud.level[n]! + level) / 2);
  if (inflow <= doubt || head < 0.02) return undefined;
  return { middle: Math.log(inflow / Math.sqrt(head)), spread: Math.min(1, Math.max(0.15, doubt / inflow)) };
}
