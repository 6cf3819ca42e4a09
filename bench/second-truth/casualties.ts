// One casualty: the boat, what runs in and out of her and when that changes, and how she is sounded.
import { drawBoat, levelOn, type Afloat } from "./boats.ts";
import { chanceOf, type Chance } from "./chance.ts";
import { heightOf } from "./columns.ts";
import type { FAMILIES } from "./families.ts";
import { inflowBy, type Hole, type Pump } from "./flows.ts";
import type { Stage } from "./following.ts";
import { floodWhere, lieOf, type Surfaces } from "./lies.ts";
import { SETTINGS, type Setting } from "./settings.ts";

export type Family = (typeof FAMILIES)[number];

/** Something changed: what is written of it, or nothing where nobody knew. */
export interface Change {
  readonly at: number;
  readonly told: boolean;
}

export interface ToldPump {
  readonly from: number;
  readonly stated: number;
}

export interface Casualty {
  readonly family: Family;
  readonly number: number;
  readonly afloat: Afloat;
  /** Water in her at the first sounding [m³]. */
  readonly start: number;
  readonly stages: readonly Stage[];
  readonly changes: readonly Change[];
  readonly pumps: readonly ToldPump[];
  readonly patches: readonly { readonly at: number; readonly open: number }[];
  readonly holeDiameter?: number;
  /** Seen, to starboard [rad]. */
  readonly list?: number;
  /** Times of the soundings [s]. */
  readonly soundings: readonly number[];
  readonly interval: number;
  /** Error of the stick, one standard deviation [m]. */
  readonly error: number;
  readonly stick: Setting["stick"];
  readonly slip?: { readonly sounding: number; readonly by: number };
  /** What the pumps truly are, in order of starting: dead, a quarter, or working. */
  readonly pumpStates: readonly PumpState[];
  readonly chance: Chance;
}

export type PumpState = "dead" | "quarter" | "works";

/** What a family adds to boat, water and first pump. */
export interface Scene {
  readonly chance: Chance;
  readonly afloat: Afloat;
  readonly start: number;
  readonly surfaces: Surfaces;
  readonly soundings: readonly number[];
  /** A time between two soundings, counted from 0 [s]. */
  readonly after: (sounding: number) => number;
}

/** Soundings, counted from 0, after which a first and a second change come. */
export const FIRST_AFTER = 1;
export const SECOND_AFTER = 4;
/** Soundings in all; of one boat in ten, and of one that nothing is pumped out of until she is lost, more. */
const SOUNDINGS = 9;
const MORE_SOUNDINGS = 13;
const MORE_SHARE = 0.1;

/** What a family asks of a scene. */
export interface Asked {
  /** Held at, to starboard [rad]. */
  readonly heel?: number;
  /** Sounded until she is lost, or nearly. */
  readonly isLong?: boolean;
  /** A boat that this space can take down, sounded each three minutes. */
  readonly canBeLost?: boolean;
}

/** Draws boat, water in her and the times of the soundings. */
export function drawScene(
  chance: Chance,
  asked: Asked,
  setting: Setting = SETTINGS.usual,
): Scene & { readonly interval: number } {
  const { heel = 0, isLong = false, canBeLost = false } = asked;
  const afloat = drawBoat(chance, heel, canBeLost, setting);
  const interval = canBeLost ? 180 : chance.pick(setting.intervals);
  const count = isLong || chance.happens(MORE_SHARE) ? MORE_SOUNDINGS : SOUNDINGS;
  const soundings = drawTimes(chance, interval, count);
  const start = drawStart(chance, afloat);
  const after = (sounding: number): number => {
    const [from, to] = [soundings[sounding]!, soundings[sounding + 1]!];
    return Math.round(from + (to - from) * chance.between(0.25, 0.75));
  };
  return { chance, afloat, start, surfaces: lieOf(afloat.lies, start), soundings, after, interval };
}

function drawTimes(chance: Chance, interval: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, n) => (n === 0 ? 0 : n * interval + Math.round(12 * chance.normal())));
}

/** Water on the stick at first: a sixth to six tenths of what she can have on it before she is lost or level with the sea. */
function drawStart(chance: Chance, afloat: Afloat): number {
  const most = levelOn(afloat, lieOf(afloat.lies, mostWater(afloat)));
  const level = Math.max(0.08, chance.between(0.15, 0.6) * most);
  return floodWhere(afloat.lies, (surfaces) => levelOn(afloat, surfaces) - level);
}

/** Lost, or as high inside as outside, or full [m³]. */
export function mostWater({ lies, stick }: Afloat): number {
  return floodWhere(lies, ({ sea, inside }) => heightOf(inside, stick.x, 0) - heightOf(sea, stick.x, 0));
}

/** A hole in the shell of the space that lets in `flow` as she lies [m³/s]. */
export function drawHole({ chance, afloat, surfaces }: Scene, flow: number): Hole {
  const place = drawPlace(chance, afloat, surfaces);
  const dischargeCoefficient = chance.between(0.55, 0.75);
  let hole: Hole = { ...place, diameter: 0.03, dischargeCoefficient, open: 1 };
  for (let n = 0; n < SIZED; n += 1) {
    const factor = Math.sqrt(flow / Math.max(1e-6, inflowBy(hole, surfaces)));
    hole = { ...hole, diameter: Math.max(0.004, Math.min(0.35, hole.diameter * factor)) };
  }
  return hole;
}

/** A larger hole reaches higher and lower: its size is found in so many turns. */
const SIZED = 6;

/** Anywhere between the floor and just under the sea; where the water is seen to come in, so that it does come in. */
function drawPlace(chance: Chance, { shape, from, to, floor }: Afloat, { sea }: Surfaces): Pick<Hole, "x" | "y" | "z"> {
  const x = chance.between(from + 0.1 * (to - from), to - 0.1 * (to - from));
  const bottom = shape.keel(x) + floor;
  const z = bottom + chance.between(0.02, 0.85) * Math.max(0.05, heightOf(sea, x, 0) - bottom);
  const side = chance.pick([-1, 1]);
  return { x, y: side * breadthAt(shape, x, z), z };
}

/** Half breadth at a height, by halving: the shell rises outward. */
function breadthAt(shape: Afloat["shape"], x: number, z: number): number {
  let [low, high] = [0, shape.halfBreadth(x)];
  for (let n = 0; n < 40; n += 1) {
    const middle = (low + high) / 2;
    if (shape.shell(x, middle) < z) low = middle;
    else high = middle;
  }
  return low;
}

/** Share of what is stated that a pump in this state moves at the lift she has at first. */
function shareOf(chance: Chance, state: PumpState): number {
  return state === "dead" ? 0 : state === "quarter" ? 0.25 : chance.between(0.6, 1);
}

/** A pump on its curve, its strainer near the stick: low as a rule, sometimes on something. */
export function drawPump({ chance, afloat, surfaces }: Scene, stated: number, state: PumpState): Pump {
  const { shape, stick, from, to, floor } = afloat;
  const x = Math.max(from + 0.1, Math.min(to - 0.1, stick.x + 0.1 * (to - from) * chance.normal()));
  const strainer = shape.keel(x) + floor + (chance.happens(0.75) ? chance.between(0, 0.06) : chance.between(0.06, 0.2));
  const outlet = shape.deck(x) + chance.between(0.1, 0.7);
  const knownLift = Math.max(0.3, outlet - heightOf(surfaces.inside, x, 0));
  const shutOff = knownLift * chance.between(2, 6);
  return { x, y: 0, strainer, outlet, flow: stated * shareOf(chance, state), knownLift, shutOff };
}

/** Stated deliveries as on a plate: 150 to 900 L/min, to the nearest 10 [m³/s]. */
export function drawStated(chance: Chance): number {
  return (10 * Math.round(chance.between10(15, 90))) / 60e3;
}

/** Of ten pumps one moves a quarter and, of thirty, one nothing. */
export function drawState(chance: Chance): PumpState {
  return chance.happens(0.1) ? "quarter" : chance.happens(0.035) ? "dead" : "works";
}

/** The chance of a casualty, by family and number. */
export function chanceFor(family: number, number: number): Chance {
  return chanceOf(0x5ec0d + 7919 * family + 104_729 * number);
}
