import type { Fault } from "#base";
import {
  spaceVolumes,
  type Compartment,
  type FixedVessel,
  type HullForm,
  type Opening,
  type PlacedOpening,
  type PlacedPump,
  type Prism,
  type Vessel,
} from "#flooding";
import { faultOf, metres } from "./guard-fault.ts";
import { wrongLie } from "./lies.ts";

/** Rounding of what people type [m]. */
const NEAR = 1e-6;
/** Coamings, trunks and casings the sea may come over stand at most so high above the deck edge [m]. */
const HIGHEST_COAMING = 2;

/** QU-150: a name that stands for two things. */
export function namedTwice(things: readonly { readonly name: string }[], field: string): readonly Fault[] {
  const names = things.map((one) => one.name);
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
      return overfull({ top: depthOf(hull), ...one }, volumes[i]!, at);
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

type Filled = Pick<Prism, "level" | "water" | "top">;

function overfull(space: Filled, most: number, field: string): readonly Fault[] {
  const { level, water, top } = space;
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

function beamOf(hull: HullForm): number {
  if (hull.form !== "offsets") return hull.beam;
  return 2 * Math.max(...hull.stations.flatMap((one) => one.offsets.map(({ halfBreadth }) => halfBreadth)));
}

interface Box {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly z: readonly [number, number];
}

function boxOf(vessel: Vessel, name: string): Box {
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

function spread(one: Box, other: Box): Box {
  return { x: over(one.x, other.x), y: over(one.y, other.y), z: over(one.z, other.z) };
}

type Reach = readonly [number, number];

function over(one: Reach, other: Reach): Reach {
  return [Math.min(one[0], other[0]), Math.max(one[1], other[1])];
}

interface SpotInBoat {
  readonly x?: number | undefined;
  readonly y?: number | undefined;
  readonly z?: number | undefined;
}

/** QU-154: an opening outside the space it leads into (a pipe: outside the boat), or larger than the hull. */
export function wrongOpenings(vessel: Vessel, openings: readonly PlacedOpening[]): readonly Fault[] {
  return openings.flatMap((one, i) => {
    const field = `openings[${i}]`;
    const into = boxOf(vessel, one.into);
    const home = one.from === undefined ? into : spread(into, boxOf(vessel, one.from));
    const box = reachOf(vessel, one.opening, home);
    const { key, height } = edgeOf(one.opening);
    const place = { x: one.x, y: one.y, z: height };
    return [...wrongPlace("QU-154", place, box, field, key), ...tooLarge(vessel, one.opening, field)];
  });
}

/** Where an opening may be: a pipe anywhere in the boat, the sea also over a coaming. */
function reachOf(vessel: Vessel, opening: Opening, home: Box): Box {
  if (opening.kind === "deck-edge") return { ...home, z: [home.z[0], home.z[1] + HIGHEST_COAMING] };
  if (opening.kind !== "pipe" || vessel.kind === "fixed") return home;
  const half = beamOf(vessel.hull) / 2;
  return { x: [0, lengthOf(vessel.hull)], y: [-half, half], z: [0, depthOf(vessel.hull)] };
}

function edgeOf(opening: Opening): { readonly key: string; readonly height: number } {
  if (opening.kind === "slot" || opening.kind === "deck-edge") return { key: "sill", height: opening.sill };
  return { key: "height", height: opening.height };
}

function tooLarge(vessel: Vessel, opening: Opening, field: string): readonly Fault[] {
  if (vessel.kind === "fixed" || opening.kind !== "hole") return [];
  const most = Math.max(depthOf(vessel.hull), beamOf(vessel.hull));
  const across = 2 * Math.sqrt(opening.area / Math.PI);
  if (across <= most * (1 + NEAR)) return [];
  return [
    faultOf(
      "QU-154",
      `${field}.diameter`,
      `${metres(across)} across`,
      `at most her beam or depth, ${metres(most)}`,
      "Check the size and its unit: no hole is larger than the boat.",
    ),
  ];
}

/** QU-155: a strainer outside the space it draws from. */
export function wrongStrainers(vessel: Vessel, pumps: readonly (PlacedPump & SpotInBoat)[]): readonly Fault[] {
  return pumps.flatMap((one, i) => {
    const place = { x: one.x, y: one.y, z: one.suctionHeight };
    return wrongPlace("QU-155", place, boxOf(vessel, one.compartment), `pumps[${i}]`, "suctionHeight");
  });
}

const WAYS = [
  ["x", "Count from the after end forward, or leave it out for the middle of the space."],
  ["y", "Starboard is positive, port negative; leave it out for the middle of the space."],
  ["z", "Count the height from the keel, not from the floor or the waterline."],
] as const;

function wrongPlace(code: string, place: SpotInBoat, box: Box, field: string, height: string): readonly Fault[] {
  return WAYS.flatMap(([way, remedy]) => {
    const value = place[way];
    const [low, high] = box[way];
    if (value === undefined || (value >= low - NEAR && value <= high + NEAR)) return [];
    const name = way === "z" ? height : way;
    const allowed = Number.isFinite(high)
      ? `${metres(low)} to ${metres(high)}, inside its space`
      : `at least ${metres(low)}, inside its space`;
    return [faultOf(code, `${field}.${name}`, metres(value), allowed, remedy)];
  });
}

/** Floor of a space above the keel [m]. */
export function floorOf({ compartments }: Vessel | FixedVessel, name: string): number {
  const spaces: readonly { readonly name: string; readonly floor?: number }[] = compartments;
  return spaces.find((one) => one.name === name)?.floor ?? 0;
}
