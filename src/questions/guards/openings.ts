import type { Fault } from "#base";
import { halfBreadthAt, type Opening, type PlacedOpening, type PlacedPump, type Vessel } from "#flooding";
import { faultOf, metres } from "./guard-fault.ts";
import { beamOf, boxOf, depthOf, lengthOf, NEAR, PLANK, type Box, type Reach } from "./places.ts";

/** Coamings, trunks and casings the sea may come over stand at most so high above the deck edge [m]. */
const HIGHEST_COAMING = 2;

function spread(one: Box, other: Box): Box {
  return { x: over(one.x, other.x), y: over(one.y, other.y), z: over(one.z, other.z) };
}

function over(one: Reach, other: Reach): Reach {
  return [Math.min(one[0], other[0]), Math.max(one[1], other[1])];
}

interface SpotInBoat {
  readonly x?: number | undefined;
  readonly y?: number | undefined;
  readonly z?: number | undefined;
}

/**
 * QU-154: an opening outside the space it leads into (a pipe: outside the boat) or outside the shell, or larger than
 * what it opens.
 *
 * @param given - the openings as they were given, for the name of the field that tells their size
 */
export function wrongOpenings(
  vessel: Vessel,
  openings: readonly PlacedOpening[],
  given: readonly object[] = [],
): readonly Fault[] {
  return openings.flatMap((one, i) => {
    const field = `openings[${i}]`;
    const into = boxOf(vessel, one.into);
    const home = one.from === undefined ? into : spread(into, boxOf(vessel, one.from));
    const { key, height } = edgeOf(one.opening);
    const place = { x: one.x, y: one.y, z: height };
    const misplaced = wrongPlace("QU-154", place, reachOf(vessel, one.opening, home), field, key);
    const size = "area" in (given[i] ?? {}) ? "area" : "diameter";
    return [
      ...misplaced,
      ...(misplaced.length > 0 ? [] : outsideShell(vessel, { ...one, height, home: into }, field)),
      ...tooLarge(vessel, one.opening, home, { field, size }),
    ];
  });
}

/** Beside the planks at its own height: a boat is narrower low down and at her ends than her beam. */
function outsideShell(
  vessel: Vessel,
  { x, y, height, home }: PlacedOpening & { readonly height: number; readonly home: Box },
  field: string,
): readonly Fault[] {
  if (vessel.kind === "fixed" || y === undefined) return [];
  const along = x ?? (home.x[0] + home.x[1]) / 2;
  const half = halfBreadthAt(vessel.hull, along, height);
  if (Math.abs(y) <= half + PLANK) return [];
  const allowed = `${metres(-half)} to ${metres(half)}, where her shell is ${metres(height)} above the keel`;
  return [faultOf("QU-154", `${field}.y`, metres(y), allowed, "Give it higher up, or nearer the middle of the boat.")];
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

interface Told {
  readonly field: string;
  /** The field a hole's size was told in. */
  readonly size: string;
}

function tooLarge(vessel: Vessel, opening: Opening, home: Box, told: Told): readonly Fault[] {
  if (vessel.kind === "fixed") return [];
  if (opening.kind === "hole") return tooWide(vessel, opening.area, home, told);
  if (opening.kind === "pipe") return [];
  const [along, across, up] = [home.x, home.y, home.z].map(([low, high]) => high - low) as [number, number, number];
  const most = opening.kind === "slot" ? Math.max(along, across) : 2 * (along + across);
  const what = opening.kind === "slot" ? "the longest wall of its space" : "the way round its space";
  const highest = home.z[1] + HIGHEST_COAMING;
  const wide = opening.width <= most * (1 + NEAR) ? [] : [tooMuch(`${told.field}.width`, opening.width, most, what)];
  if (opening.kind !== "slot" || opening.top <= highest + NEAR || up <= 0) return wide;
  return [...wide, tooMuch(`${told.field}.top`, opening.top, highest, "its space and the coaming on it")];
}

function tooMuch(field: string, got: number, most: number, what: string): Fault {
  return faultOf("QU-154", field, metres(got), `at most ${what}, ${metres(most)}`, SIZE);
}

const SIZE = "Check the size and its unit: no opening is larger than what it opens.";

function tooWide(
  { hull }: Extract<Vessel, { kind: "floating" }>,
  area: number,
  home: Box,
  { field, size }: Told,
): readonly Fault[] {
  const boat = Math.max(depthOf(hull), beamOf(hull));
  const space = Math.max(...[home.x, home.y, home.z].map(([low, high]) => high - low));
  const most = Math.min(boat, space);
  const across = 2 * Math.sqrt(area / Math.PI);
  if (across <= most * (1 + NEAR)) return [];
  const allowed = `at most ${space < boat ? "the longest side of its space" : "her beam or depth"}, ${metres(most)}`;
  const got = `${metres(across)} across`;
  return [
    faultOf(
      "QU-154",
      `${field}.${size}`,
      got,
      allowed,
      "Check the size and its unit: no hole is larger than the boat.",
    ),
  ];
}

/** QU-154: a level to be passed outside its space. */
export function wrongMarks(
  vessel: Vessel,
  marks: readonly { readonly compartment: string; readonly level: number }[],
): readonly Fault[] {
  return marks.flatMap(({ compartment, level }, i) =>
    wrongPlace("QU-154", { z: level }, boxOf(vessel, compartment), `marks[${i}]`, "level"),
  );
}

/** QU-155: a strainer outside the space it draws from. */
export function wrongStrainers(vessel: Vessel, pumps: readonly (PlacedPump & SpotInBoat)[]): readonly Fault[] {
  return pumps.flatMap((one, i) => {
    const place = { x: one.x, y: one.y, z: one.suctionHeight };
    const misplaced = wrongPlace("QU-155", place, boxOf(vessel, one.compartment), `pumps[${i}]`, "suctionHeight");
    return [...misplaced, ...lowDischarge(one, `pumps[${i}]`)];
  });
}

/** Water that ends lower than it began was not pumped out of her. */
function lowDischarge({ delivery, suctionHeight }: PlacedPump, field: string): readonly Fault[] {
  if (delivery.kind === "steady" || suctionHeight === undefined || delivery.dischargeHeight >= suctionHeight) return [];
  const allowed = `at least the strainer's height, ${metres(suctionHeight)}`;
  const remedy = "Count both heights from the keel: the hose ends over the side.";
  return [faultOf("QU-155", `${field}.dischargeHeight`, metres(delivery.dischargeHeight), allowed, remedy)];
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
