import type { Fault } from "#base";
import { spaceVolumes, type Compartment, type FixedVessel, type HullForm, type Prism, type Vessel } from "#flooding";
import { faultOf, metres } from "./guard-fault.ts";
import { wrongLie } from "./lies.ts";

/** Rounding of what people type [m]. */
export const NEAR = 1e-6;
/** A shell is so thick, and measured no better [m]. */
export const PLANK = 0.02;

/** QU-150: a name that stands for two things. */
export function namedTwice(things: readonly { readonly name: string }[], field: string): readonly Fault[] {
  const names = things.map((one) => one.name.trim());
  return names.flatMap((name, i) => {
    if (names.indexOf(name) === i) return [];
    return [faultOf("QU-150", `${field}[${i}].name`, JSON.stringify(name), "each name once", "Rename one of them.")];
  });
}

/** QU-151 spaces that share room, QU-152 a space outside the hull, QU-153 more water than a space holds. */
export function wrongSpaces(vessel: Vessel, field = "vessel.compartments"): readonly Fault[] {
  if (vessel.kind === "fixed")
    return vessel.compartments.flatMap((one, i) => overfull(one, prismVolume(one), `${field}[${i}]`));
  const { hull, compartments } = vessel;
  const volumes = spaceVolumes(hull, compartments);
  return [
    ...wrongLie(hull, vessel, "vessel.draught"),
    ...overlaps(compartments, field),
    ...compartments.flatMap((one, i) => {
      const at = `${field}[${i}]`;
      if (!(volumes[i]! > 0)) return [outside(one, at)];
      return [...sticksOut(hull, one, at), ...overfull({ top: depthOf(hull), ...one }, volumes[i]!, at)];
    }),
  ];
}

function outside(space: Compartment, field: string): Fault {
  const got = `${metres(space.from)} to ${metres(space.to)}, nothing of it inside the shell`;
  return faultOf(
    "QU-152",
    field,
    got,
    "limits inside the hull",
    "Check sides, floor and top against beam and depth; port is negative.",
  );
}

/** QU-152: sides beyond her breadth, a ceiling above her deck edge: what lies outside would be left out unsaid. */
function sticksOut(hull: HullForm, { sideFrom, sideTo, top }: Compartment, field: string): readonly Fault[] {
  const half = beamOf(hull) / 2;
  const depth = depthOf(hull);
  return [
    ...beyond(`${field}.sideFrom`, sideFrom, [-half, half], SIDES),
    ...beyond(`${field}.sideTo`, sideTo, [-half, half], SIDES),
    ...beyond(`${field}.top`, top, [0, depth], "Give no top for a space that reaches the deck."),
  ];
}

const SIDES = "Port is negative; leave a side out where the space reaches the shell.";

function beyond(field: string, value: number | undefined, [low, high]: Reach, remedy: string): readonly Fault[] {
  if (value === undefined || (value >= low - PLANK && value <= high + PLANK)) return [];
  return [faultOf("QU-152", field, metres(value), `${metres(low)} to ${metres(high)}, inside the hull`, remedy)];
}

function overlaps(spaces: readonly Compartment[], field: string): readonly Fault[] {
  return spaces.flatMap((one, i) => {
    const other = spaces.slice(0, i).find((before) => shareRoom(before, one));
    if (other === undefined) return [];
    const got = `${metres(one.from)} to ${metres(one.to)}`;
    const allowed = `clear of ${JSON.stringify(other.name)}, ${metres(other.from)} to ${metres(other.to)}`;
    return [
      faultOf(
        "QU-151",
        `${field}[${i}]`,
        got,
        allowed,
        "One place belongs to one space: move the bulkhead, side, floor or top.",
      ),
    ];
  });
}

function shareRoom(one: Compartment, other: Compartment): boolean {
  const inf = Number.POSITIVE_INFINITY;
  return (
    meet([one.from, one.to], [other.from, other.to]) &&
    meet([one.sideFrom ?? -inf, one.sideTo ?? inf], [other.sideFrom ?? -inf, other.sideTo ?? inf]) &&
    meet([one.floor ?? -inf, one.top ?? inf], [other.floor ?? -inf, other.top ?? inf])
  );
}

function meet(one: readonly [number, number], other: readonly [number, number]): boolean {
  return Math.min(one[1], other[1]) - Math.max(one[0], other[0]) > NEAR;
}

type Filled = Pick<Prism, "level" | "water" | "top" | "floor">;

function overfull(space: Filled, most: number, field: string): readonly Fault[] {
  const { level, water, top, floor = 0 } = space;
  if (level !== undefined && level !== 0 && level < floor - NEAR)
    return [
      faultOf(
        "QU-153",
        `${field}.level`,
        metres(level),
        `at least its floor, ${metres(floor)} above the keel, or nothing`,
        "Count the level from the keel, not from the floor; leave it out where the space is dry.",
      ),
    ];
  if (level !== undefined && water !== undefined)
    return [faultOf("QU-153", `${field}.water`, water, "level or water, one of them", "Give the one you know.")];
  if (water !== undefined && water > most * (1 + NEAR))
    return [
      faultOf(
        "QU-153",
        `${field}.water`,
        `${water} m³`,
        `at most the ${Number(most.toPrecision(4))} m³ it holds`,
        "Check the volume, its unit and the size of the space.",
      ),
    ];
  if (level !== undefined && top !== undefined && level > top + NEAR)
    return [
      faultOf(
        "QU-153",
        `${field}.level`,
        metres(level),
        `at most its top, ${metres(top)} above the keel`,
        "Count the level from the keel, not from the floor; check depth and top.",
      ),
    ];
  return [];
}

function prismVolume({ area, permeability = 1, floor = 0, top }: Prism): number {
  return top === undefined ? Number.POSITIVE_INFINITY : (top - floor) * area * permeability;
}

/** Usual where no depth is given: so many draughts. */
const USUAL_DEPTH = 1.6;

type GivenHull =
  | { readonly form: "offsets"; readonly stations: readonly { readonly offsets: readonly { readonly z: number }[] }[] }
  | {
      readonly form: Exclude<HullForm["form"], "offsets">;
      readonly depth?: number | undefined;
      readonly draught: number;
    };

/** Keel to deck edge of a hull as it was given. */
export function depthOfGiven(hull: GivenHull): number {
  if (hull.form === "offsets") return Math.max(...hull.stations.flatMap((one) => one.offsets.map(({ z }) => z)));
  return hull.depth ?? (hull.form === "wigley" ? hull.draught : USUAL_DEPTH * hull.draught);
}

/** Keel to deck edge. */
export function depthOf(hull: HullForm): number {
  return hull.form === "offsets" ? depthOfGiven(hull) : hull.depth;
}

/** From the after end to the forward end. */
export function lengthOf(hull: HullForm): number {
  return hull.form === "offsets" ? hull.stations.at(-1)!.x - hull.stations[0]!.x : hull.length;
}

/** Greatest breadth. */
export function beamOf(hull: HullForm): number {
  if (hull.form !== "offsets") return hull.beam;
  return 2 * Math.max(...hull.stations.flatMap((one) => one.offsets.map(({ halfBreadth }) => halfBreadth)));
}

/** From one limit to the other. */
export type Reach = readonly [number, number];

/** What a space spans at most. */
export interface Box {
  readonly x: Reach;
  readonly y: Reach;
  readonly z: Reach;
}

/** What the space of this name spans at most, shell and deck counted in. */
export function boxOf(vessel: Vessel, name: string): Box {
  const inf = Number.POSITIVE_INFINITY;
  if (vessel.kind === "fixed") {
    const { floor = 0, top = inf } = vessel.compartments.find((one) => one.name === name)!;
    return { x: [-inf, inf], y: [-inf, inf], z: [floor, top] };
  }
  const space = vessel.compartments.find((one) => one.name === name)!;
  const half = beamOf(vessel.hull) / 2;
  return {
    x: [space.from, space.to],
    y: [Math.max(-half, space.sideFrom ?? -half), Math.min(half, space.sideTo ?? half)],
    z: [space.floor ?? 0, space.top ?? depthOf(vessel.hull)],
  };
}

/** Floor of a space above the keel [m]. */
export function floorOf({ compartments }: Vessel | FixedVessel, name: string): number {
  const spaces: readonly { readonly name: string; readonly floor?: number }[] = compartments;
  return spaces.find((one) => one.name === name)?.floor ?? 0;
}
