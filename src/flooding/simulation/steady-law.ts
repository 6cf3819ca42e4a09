import type { Passage, Piping, Suction } from "../openings/flows.ts";
import { signedRoot } from "../openings/opening.ts";
import { PIPE_SHARE, surfaceWith, waterAtSea, waterAtSurface, type StraightSpace } from "../hull/straight-space.ts";
import type { StretchLaw } from "./stretch-law.ts";

/** All that moves water in one straight space, between two events. */
export interface SteadyLaw {
  readonly space: StraightSpace;
  /** `hole`: one to the sea, or none, and steady pumps. `rest`: what flows in is taken. `lift`: a pump on a parabola. */
  readonly kind: "hole" | "rest" | "lift";
  /** Height of the hole; of the lift, what the shut-off head exceeds the discharge height by [m]. */
  readonly height: number;
  /** See `StretchLaw`. */
  readonly strength: number;
  readonly linearBelow: number;
  /** What is taken, whatever the water [m³/s]. */
  readonly drain: number;
  /** Volumes at which another stretch begins, in no order; some of them never met, below zero or no number. */
  readonly limits: readonly number[];
}

/** The law of a space as openings and pumps stand now; undefined where there is no closed form. */
export function steadyLaw(
  space: StraightSpace,
  piping: Piping,
  water: number,
  linearBelow: number,
): SteadyLaw | undefined {
  const passage = onlyOpen(piping.openings);
  if (passage === "more" || passage?.opening.kind === "slot" || passage?.opening.kind === "deck-edge") return undefined;
  const height = passage?.opening.height ?? 0;
  const strength = passage === undefined ? 0 : passage.share * passage.strength;
  const hole: SteadyLaw = { space, kind: "hole", height, strength, linearBelow, drain: 0, limits: NONE };
  return withPumps(hole, piping.pumps, water);
}

const NONE: readonly number[] = [];

function onlyOpen(passages: readonly Passage[]): Passage | "more" | undefined {
  let found: Passage | undefined;
  for (const passage of passages) {
    if (passage.share === 0) continue;
    if (found !== undefined) return "more";
    found = passage;
  }
  return found;
}

function isIdle(pump: Suction): boolean {
  return pump.share === 0 || pump.intake === "above";
}

/** Steady pumps all bare or all wet, or one on a parabola and no hole. */
function withPumps(hole: SteadyLaw, pumps: readonly Suction[], water: number): SteadyLaw | undefined {
  let able = 0;
  let first: Suction | undefined;
  for (const pump of pumps) {
    if (isIdle(pump)) continue;
    if (pump.delivery.kind !== "steady") return liftLaw(hole, pumps, pump);
    first ??= pump;
    if (pump.intake !== first.intake) return undefined;
    able += pump.share * pump.delivery.flow;
  }
  return first?.intake === "skimming" ? withBare(hole, able, water) : withLimits(hole, able);
}

/** Bare strainers take no more than flows in: all they are able to, nothing, or just that. */
function withBare(hole: SteadyLaw, able: number, water: number): SteadyLaw {
  const inflow = inflowWith(hole, water);
  if (inflow < 0) return withLimits(hole, 0);
  return inflow < able ? atRest(hole, inflow) : withLimits(hole, able);
}

function atRest({ space, height, strength, linearBelow }: SteadyLaw, drain: number): SteadyLaw {
  return { space, kind: "rest", height, strength, linearBelow, drain, limits: NONE };
}

function withLimits(hole: SteadyLaw, drain: number): SteadyLaw {
  const { space, height, strength, linearBelow } = hole;
  return { space, kind: "hole", height, strength, linearBelow, drain, limits: strength === 0 ? NONE : limitsOf(hole) };
}

function liftLaw(hole: SteadyLaw, pumps: readonly Suction[], pump: Suction): SteadyLaw | undefined {
  const { delivery } = pump;
  const isAlone = hole.strength === 0 && pumps.every((one) => one === pump || isIdle(one));
  if (delivery.kind !== "parabola" || !isAlone) return undefined;
  if (pump.intake === "skimming") return atRest(hole, 0);
  const height = delivery.shutOffHead - delivery.dischargeHeight;
  const { space, linearBelow } = hole;
  const limits = [0, space.capacity, waterAtSurface(space, -height)];
  return {
    space,
    kind: "lift",
    height,
    strength: -pump.share / Math.sqrt(delivery.bend),
    linearBelow,
    drain: 0,
    limits,
  };
}

/** Volumes at which hole, sea, surface or √ and straight line take over from one another. */
function limitsOf(hole: SteadyLaw): number[] {
  const { space, height, linearBelow } = hole;
  const limits = [
    0,
    waterAtSurface(space, height),
    waterAtSurface(space, height + linearBelow),
    levelApart(space, linearBelow),
    levelApart(space, -linearBelow),
  ];
  if (space.seaRise !== 0) limits.push(waterAtSea(space, height), waterAtSea(space, height + linearBelow));
  if (space.capacity === Number.POSITIVE_INFINITY) return limits;
  limits.push(space.capacity, pipeApart(space, linearBelow), pipeApart(space, -linearBelow));
  return limits;
}

/** Water at which the sea stands so much above the surface, in the space and in its pipe. */
function levelApart(space: StraightSpace, head: number): number {
  return (space.seaDry - space.floor - head) / (1 / space.area - space.seaRise);
}

function pipeApart(space: StraightSpace, head: number): number {
  const short = space.seaDry + space.seaRise * space.capacity - surfaceWith(space, space.capacity) - head;
  return space.capacity + short / (1 / (space.area * PIPE_SHARE) - space.seaRise);
}

/** Through the hull [m³/s]. */
export function inflowWith(law: SteadyLaw, water: number): number {
  if (law.kind === "rest") return law.drain;
  if (law.kind === "lift" || law.strength === 0) return 0;
  const { space, height } = law;
  const sea = Math.max(space.seaDry + space.seaRise * water, height);
  return law.strength * signedRoot(sea - Math.max(surfaceWith(space, water), height), law.linearBelow);
}

/** dw/dt [m³/s]. */
export function netWith(law: SteadyLaw, water: number): number {
  if (law.kind !== "lift") return inflowWith(law, water) - law.drain;
  return law.strength * Math.sqrt(Math.max(0, law.height + surfaceWith(law.space, water)));
}

/** What the pumps have taken in a time in which the water grew so much [m³]. */
export function pumpedWith(law: SteadyLaw, seconds: number, grown: number): number {
  return law.kind === "lift" ? -grown : law.drain * seconds;
}

/** The nearest volume beyond, that way, at which another stretch begins; infinite where there is none. */
export function limitBeyond(law: SteadyLaw, water: number, way: number): number {
  let best = way < 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  for (const limit of law.limits) {
    if (limit >= 0 && (limit - water) * way > 0 && (limit - best) * way < 0) best = limit;
  }
  return best;
}

/** The law of the stretch that a volume lies in. */
export function stretchAround(law: SteadyLaw, water: number): StretchLaw {
  if (law.kind === "rest") return AT_REST;
  const { space, strength, drain } = law;
  const isPiped = water > space.capacity;
  const rise = 1 / (isPiped ? space.area * PIPE_SHARE : space.area);
  const foot = isPiped ? surfaceWith(space, space.capacity) - rise * space.capacity : space.floor;
  if (law.kind === "lift") return { side: 1, strength, head: law.height + foot, slope: rise, drain };
  return strength === 0 ? { ...AT_REST, drain } : throughHole(law, water, foot, rise);
}

const AT_REST: StretchLaw = { side: 0, strength: 0, head: 0, slope: 0, drain: 0 };

function throughHole(law: SteadyLaw, water: number, foot: number, rise: number): StretchLaw {
  const { space, height, linearBelow, drain } = law;
  const isCovered = foot + rise * water > height;
  const isUnder = space.seaDry + space.seaRise * water > height;
  const head = (isUnder ? space.seaDry : height) - (isCovered ? foot : height);
  const slope = (isUnder ? space.seaRise : 0) - (isCovered ? rise : 0);
  const there = head + slope * water;
  const isStraight = Math.abs(there) < linearBelow;
  const strength = isStraight ? law.strength / Math.sqrt(linearBelow) : law.strength;
  return { side: isStraight ? 0 : there > 0 ? 1 : -1, strength, head, slope, drain };
}
