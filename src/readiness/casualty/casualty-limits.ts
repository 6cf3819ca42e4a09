import type { Fault } from "#base";
import { hullAlone, LEAST_FREEBOARD, leastDraught, type ToldMeasures } from "./casualty-hull.ts";

/** What a boat's measures may be, whatever the boat [m]. The one place: schemas, questions and acts take them from here. */
export const BOAT_LIMITS = {
  length: { atLeast: 3, atMost: 40 },
  beam: { above: 0, atMost: 15 },
  depth: { above: 0, atMost: 10 },
  draught: { above: 0, atMost: 6 },
} as const;
/** What a level may be, whatever the boat [m]. */
export const LEVEL_LIMITS = { atLeast: 0, atMost: 10 } as const;
/** Coamings, trunks and casings stand at most so high above the deck edge of boats of this size [m]. */
export const COAMING = 0.6;

/** What is wrong with one measure, in a person's words; the door adds its code. */
export type WrongMeasure = Omit<Fault, "code">;

type Measure = "length" | "beam" | "depth" | "draught";
interface Range {
  readonly least: number;
  readonly most: number;
  readonly because: string;
}

/**
 * Every measure of a boat that no boat has with the others told: beyond `BOAT_LIMITS`, a beam beyond L/12 to 0.9·L, a
 * depth beyond L/30 to 0.35·L or above 1.2·B, a draught beyond L/50 to 0.3·L or below B/15, less than 0.1 m of freeboard. A sailing yacht's draught may be told to the
 * foot of her keel, to 0.35·L; her hull alone is then held to the rest.
 *
 * @param boat - length and what else was told [m]
 * @returns one of each measure that cannot be; empty where she can float and stand up as told
 * @range boats of 3 to 40 m; the widest proportions of dinghies, punts, gigs, catamarans and trawlers, and some to spare
 * @source this program's judgement, docs/methods/flooding.md
 * @example wrongMeasures({ length: 10, depth: 1.4, draught: 1.4 })[0].field // "draught"
 */
export function wrongMeasures(boat: ToldMeasures): readonly WrongMeasure[] {
  const told = (["length", "beam", "depth", "draught"] as const).filter((measure) => boat[measure] !== undefined);
  const wrong = told.flatMap((measure) => wrongMeasure(measure, boat, rangeOf(measure, boat)));
  const alone = wrong.filter(({ field }) => field === "length");
  return alone.length > 0 ? alone : wrong;
}

function rangeOf(measure: Measure, told: ToldMeasures): Range {
  const { boat, keel, keelInDepth } = hullAlone(told);
  if (measure === "draught" && keel > 0) return keelRange(told);
  const range = RANGES[measure](boat);
  return measure === "depth" && keelInDepth > 0 ? deeper(range, keelInDepth) : range;
}

function keelRange(told: ToldMeasures): Range {
  const most = Math.min(BOAT_LIMITS.draught.atMost, 0.35 * told.length);
  return { least: leastDraught(told), most, because: `${forLength(told.length)}, to the foot of her keel` };
}

function deeper({ least, most, because }: Range, keel: number): Range {
  return { least: least + keel, most: most + keel, because: `${because}, from the foot of her keel` };
}

/**
 * The highest level that can stand in her [m]: to her deck edge and the coaming on it; where no depth is told, that of
 * the deepest boat of her length.
 *
 * @param boat - as told [m]
 * @returns [m] above the lowest point of the space
 * @source this program's judgement
 * @example highestLevel({ kind: "motor boat", length: 10, depth: 1.4 }) // 2.0
 */
export function highestLevel(boat: ToldMeasures): number {
  const hull = hullAlone(boat).boat;
  return Math.min(LEVEL_LIMITS.atMost, (hull.depth ?? RANGES.depth(hull).most) + COAMING);
}

/** What is wrong with a level sounded in this boat, if anything is. */
export function wrongLevel(boat: ToldMeasures, level: number): WrongMeasure | undefined {
  const most = highestLevel(boat);
  if (level >= LEVEL_LIMITS.atLeast && level <= most) return undefined;
  const { depth } = hullAlone(boat).boat;
  const edge = depth === undefined ? "the deepest boat of her length" : `her deck edge at ${metres(depth)}`;
  const allowed = `0 m to ${metres(most)}: ${edge} and ${metres(COAMING)} of coaming`;
  return { field: "level", got: metres(level), allowed, remedy: LEVEL_REMEDY };
}

const LEVEL_REMEDY = "Look at the stick, the figure and its unit. If it is right, correct her depth first.";
const KEEL_REMEDY = "To the foot of her keel, or of the hull alone: beyond a tenth of her length it is taken for keel.";
const REMEDY = "Look at the figure and its unit, or leave it out: what nobody knows is guessed.";

const RANGES: { readonly [M in Measure]: (boat: ToldMeasures) => Range } = {
  length: () => ({ least: BOAT_LIMITS.length.atLeast, most: BOAT_LIMITS.length.atMost, because: "all this is for" }),
  beam: ({ length }) => ({
    least: length / 12,
    most: Math.min(BOAT_LIMITS.beam.atMost, 0.9 * length),
    because: forLength(length),
  }),
  depth: ({ length, beam }) => ({
    least: Math.max(0.25, length / 30, leastDraught({ length, beam }) + LEAST_FREEBOARD),
    most: Math.min(BOAT_LIMITS.depth.atMost, 0.35 * length, 1.2 * (beam ?? Number.POSITIVE_INFINITY)),
    because: forLength(length),
  }),
  draught: ({ length, beam, depth }) => {
    const most = Math.min(BOAT_LIMITS.draught.atMost, 0.3 * length);
    const range = { least: leastDraught({ length, beam }), most, because: forLength(length) };
    if (depth === undefined || depth - LEAST_FREEBOARD >= most) return range;
    const because = `with her deck edge ${metres(depth)} above the keel and ${metres(LEAST_FREEBOARD)} of it dry`;
    return { ...range, most: depth - LEAST_FREEBOARD, because };
  },
};

function forLength(length: number): string {
  return `for a boat ${metres(length)} long`;
}

function wrongMeasure(measure: Measure, boat: ToldMeasures, { least, most, because }: Range): WrongMeasure[] {
  const value = boat[measure]!;
  if (value >= least * (1 - 1e-9) && value <= most * (1 + 1e-9)) return [];
  const allowed = least <= most ? `${metres(least)} to ${metres(most)}, ${because}` : `another depth first, ${because}`;
  const remedy = measure === "draught" && boat.kind === "sailing yacht" ? `${KEEL_REMEDY} ${REMEDY}` : REMEDY;
  return [{ field: measure, got: metres(value), allowed, remedy }];
}

function metres(si: number): string {
  return `${Number(si.toPrecision(3))} m`;
}
