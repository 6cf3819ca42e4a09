import { normalQuantile, sobolPoints, weightedQuantiles } from "#numerics";
import { STANDARD_GRAVITY } from "#water";
import { BOAT_SHAPES, likelyBeam, type BoatKind } from "./boat-kinds.ts";
import { spreadOf, type Spread } from "./sounding-forecast.ts";

/** Before launching: what is known of a casualty. SI units; what is unknown is left out. */
export interface CallForHelp {
  readonly length: number;
  readonly kind: BoatKind;
  /** Hole across [m], and how far below the waterline [m]. */
  readonly holeDiameter?: number;
  readonly holeDepth?: number;
  /** Water over the floor now [m], and how fast it rises [m/s]. */
  readonly waterInside?: number;
  readonly rising?: number;
  /** Length of the flooded space [m]. */
  readonly spaceLength?: number;
  /** Until a kit pumps aboard her [s]. */
  readonly arrival: number;
  /** What one kit moves out of this boat [m³/s], and its log spread. */
  readonly delivery: number;
  readonly deliveryLogSpread: number;
  /** Time on scene to plan fuel for [s], burn [m³/s], fuel that goes with a kit [m³], and the can [m³]. */
  readonly onScene: number;
  readonly burn: number;
  readonly fuelInKit: number;
  readonly can: number;
}

export interface KitsNeeded {
  /** Inflow with the space still empty enough not to matter [m³/s]. */
  readonly inflow: Spread;
  /** The same if every hole passed all it could (discharge coefficient 1), 95 % [m³/s]. */
  readonly noWorseThan: number;
  /** Chances with 1, 2, … kits. */
  readonly byKits: readonly {
    readonly kits: number;
    readonly holding: number;
    readonly gaining: number;
    readonly holdingPatched: number;
  }[];
  /** Fewest kits with at least nine chances in ten, absent where none of those looked at has them. */
  readonly forHolding?: number;
  readonly forGaining?: number;
  /** The same for holding with the hole halved. */
  readonly forHoldingPatched?: number;
  /** Chance that her deck edge is not under when the first kit pumps. */
  readonly afloatOnArrival: number;
  readonly cansPerKit: number;
  /** What to ask the skipper, the answer that narrows this most first. */
  readonly ask: readonly string[];
}

const POINTS = 4096;
const MOST_KITS = 6;
const SURE = 0.9;
/** Gaining means a tenth and a half more out than in: a level that falls visibly. */
const GAINING = 1.15;

/**
 * How many kits to take, before launching, from what little is known.
 *
 * Inflow Q = Cd·(π/4)d²·√(2 g h), with Cd about 0.6, d and h as far as they are known; or, where the rise is known,
 * area × rise. Kits hold where n·q ≥ Q with the boat's own pumps left out.
 *
 * @param call - what is known, SI units
 * @returns inflow, chances by number of kits, fuel, and what to ask next
 * @range boats of 4 to 30 m; one hole
 * @source orifice: see `flowThrough`; proportions and spreads: this program's judgement, docs/methods/flooding.md
 * @example needKits({ length: 10, kind: "motor boat", holeDiameter: 0.05, arrival: 1200, delivery: 0.004,
 *   deliveryLogSpread: 0.2, onScene: 7200, burn: 4e-7, fuelInKit: 0.0036, can: 0.005 }).forHolding // 1
 */
export function needKits(call: CallForHelp): KitsNeeded {
  const cases = drawCases(call);
  const even = new Float64Array(POINTS).fill(1);
  const byKits = Array.from({ length: MOST_KITS }, (_, k) => chancesWith(cases, k + 1));
  const fewest = (key: "holding" | "gaining" | "holdingPatched") => byKits.find((row) => row[key] >= SURE)?.kits;
  const wanted = {
    forHolding: fewest("holding"),
    forGaining: fewest("gaining"),
    forHoldingPatched: fewest("holdingPatched"),
  };
  const known = Object.entries(wanted).filter(([, kits]) => kits !== undefined);
  return {
    inflow: spreadOf(cases.inflow),
    noWorseThan: weightedQuantiles(cases.worst, even, [0.95])[0]!,
    byKits,
    ...(Object.fromEntries(known) as Partial<typeof wanted> as { forHolding?: number }),
    afloatOnArrival: cases.afloat.reduce((sum, one) => sum + one, 0) / POINTS,
    cansPerKit: Math.ceil(Math.max(0, call.onScene * call.burn - call.fuelInKit) / call.can - 1e-9),
    ask: questionsFor(call),
  };
}

interface Cases {
  readonly inflow: Float64Array;
  readonly worst: Float64Array;
  readonly delivery: Float64Array;
  readonly afloat: Float64Array;
}

function drawCases(call: CallForHelp): Cases {
  const points = sobolPoints(POINTS, 5, 3);
  const cases: Cases = {
    inflow: new Float64Array(POINTS),
    worst: new Float64Array(POINTS),
    delivery: new Float64Array(POINTS),
    afloat: new Float64Array(POINTS),
  };
  for (let n = 0; n < POINTS; n += 1) {
    const z = Array.from({ length: 5 }, (_, d) => normalQuantile(points[n * 5 + d]!));
    drawCase(call, z, n, cases);
  }
  return cases;
}

function drawCase(call: CallForHelp, z: readonly number[], n: number, cases: Cases): void {
  const shape = BOAT_SHAPES[call.kind];
  const coefficient = 0.6 * Math.exp(0.08 * z[2]!);
  const byHole = holeFlow(call, shape.draught * call.length, z);
  const byRise = call.rising === undefined ? undefined : call.rising * spaceArea(call) * Math.exp(0.35 * z[3]!);
  const inflow = byRise !== undefined && byRise > 0 ? byRise : coefficient * byHole;
  cases.inflow[n] = inflow;
  cases.worst[n] = byRise !== undefined && byRise > 0 ? inflow : byHole;
  cases.delivery[n] = call.delivery * Math.exp(call.deliveryLogSpread * z[4]! - call.deliveryLogSpread ** 2 / 2);
  const reserve = reserveVolume(call) * Math.exp(0.3 * z[3]!) - (call.waterInside ?? 0) * spaceArea(call);
  cases.afloat[n] = inflow * call.arrival < reserve ? 1 : 0;
}

/** Inflow at a discharge coefficient of 1 [m³/s]. Unknown holes are 50 mm across, 15 to 160 mm nine times in ten. */
function holeFlow(call: CallForHelp, draught: number, z: readonly number[]): number {
  const diameter =
    call.holeDiameter === undefined ? 0.05 * Math.exp(0.72 * z[0]!) : call.holeDiameter * Math.exp(0.15 * z[0]!);
  const depth =
    call.holeDepth === undefined ? draught / (1 + Math.exp(-1.6 * z[1]!)) : call.holeDepth * Math.exp(0.15 * z[1]!);
  return (Math.PI / 4) * diameter ** 2 * Math.sqrt(2 * STANDARD_GRAVITY * depth);
}

function spaceArea(call: CallForHelp): number {
  return 0.75 * 0.85 * likelyBeam(call.length) * (call.spaceLength ?? call.length / 2);
}

/** What she can take in before the deck edge is under, roughly [m³]. */
function reserveVolume(call: CallForHelp): number {
  const { draught, depth, block } = BOAT_SHAPES[call.kind];
  return block * call.length * likelyBeam(call.length) * (depth - draught) * call.length;
}

function chancesWith(cases: Cases, kits: number): KitsNeeded["byKits"][number] {
  let [holding, gaining, patched] = [0, 0, 0];
  for (let n = 0; n < POINTS; n += 1) {
    const out = kits * cases.delivery[n]!;
    if (out >= cases.inflow[n]!) holding += 1;
    if (out >= GAINING * cases.inflow[n]!) gaining += 1;
    if (out >= cases.inflow[n]! / 2) patched += 1;
  }
  return { kits, holding: holding / POINTS, gaining: gaining / POINTS, holdingPatched: patched / POINTS };
}

/** In the order in which an answer narrows the inflow; people first, always. */
function questionsFor(call: CallForHelp): string[] {
  const questions: (string | false)[] = [
    "How many people aboard, is everyone in a lifejacket, is anyone hurt or in the water?",
    "Do you smell fuel, or see it on the water inside?",
    call.rising === undefined && "How deep is the water inside at one mark, and how deep again in two minutes?",
    call.holeDiameter === undefined && "Where does it come in? How big: coin, fist, plate, larger?",
    call.holeDepth === undefined && "How far below the waterline is it?",
    "Can you shut a seacock, or stuff it with cloth, a cushion, a plug, and hold it?",
    call.spaceLength === undefined && "Which spaces have water, and which are dry? Are the doors between them shut?",
    "Is the list growing? Does she come back slowly when she rolls?",
    "Do your own pumps run, and where do they draw from?",
    "How high is your deck above the water for our hose, and can you take a line?",
  ];
  return questions.filter((one): one is string => one !== false);
}
