/** Kinds of boat told apart. */
export const BOAT_KINDS = ["open boat", "motor boat", "sailing yacht", "fishing boat"] as const;
export type CasualtyBoatKind = (typeof BOAT_KINDS)[number];

/** Measures of a boat as people tell them [m]. */
export interface ToldMeasures {
  readonly kind?: CasualtyBoatKind | undefined;
  readonly length: number;
  readonly beam?: number | undefined;
  readonly depth?: number | undefined;
  readonly draught?: number | undefined;
}

/** A boat without the keel below her hull. */
export interface HullAlone<Told extends ToldMeasures> {
  /** As told, with depth and draught of the hull by itself. */
  readonly boat: Told;
  /** What of the draught told is keel [m]; 0 where it is all hull. */
  readonly keel: number;
  /** What of the depth told is keel [m]; 0 where it was told of the hull. */
  readonly keelInDepth: number;
}

/** A dry boat keeps at least so much freeboard [m]. */
export const LEAST_FREEBOARD = 0.1;
/** Draught beyond this share of the length is keel, not hull: between a canoe body's 1/18 and 1/5.2 with its keel. */
const DEEPEST_HULL = 0.1;
/** Draught of a sailing yacht's hull and freeboard, as shares of her length. */
const HULL_DRAUGHT = 0.065;
const FREEBOARD = 0.095;

/**
 * The hull of a boat without her keel. People tell a sailing yacht's draught to the foot of the keel; what floats her is
 * the canoe body. Told more than L/10, its own draught is taken as 0.065·L, less where the depth told leaves less; the
 * depth is from the keel's foot or of the hull, whichever leaves a freeboard nearer 0.095·L by ratio. Other kinds, and
 * yachts that draw less, are as told.
 *
 * @param boat - as told [m]
 * @returns the hull, and how much of what was told is keel
 * @range sailing yachts of 3 to 40 m with a keel below the hull; a long keel grown into the hull is taken for one too
 * @source that there are two draughts, T_c near L_WL/18 and T near L_WL/5.2: L. Larsson, R. E. Eliasson, Principles of
 *   Yacht Design, figs. 5.33 and 5.34; the rule between them: FROM JUDGEMENT
 * @example hullAlone({ kind: "sailing yacht", length: 8, draught: 2.1 }).boat.draught // 0.52
 */
export function hullAlone<Told extends ToldMeasures>(boat: Told): HullAlone<Told> {
  const { kind, length, depth, draught } = boat;
  if (kind !== "sailing yacht" || draught === undefined || draught <= DEEPEST_HULL * length) {
    return { boat, keel: 0, keelInDepth: 0 };
  }
  const isFromFoot = depth !== undefined && isDepthFromFoot(boat, depth, draught);
  const usual = HULL_DRAUGHT * length;
  const own = isFromFoot || depth === undefined ? usual : Math.min(usual, shallowIn(boat, depth));
  const keel = draught - own;
  const keelInDepth = isFromFoot ? keel : 0;
  return {
    boat: { ...boat, draught: own, ...(depth !== undefined && { depth: depth - keelInDepth }) },
    keel,
    keelInDepth,
  };
}

function isDepthFromFoot({ length }: ToldMeasures, depth: number, draught: number): boolean {
  const [fromFoot, ofHull] = [depth - draught, depth - HULL_DRAUGHT * length];
  return fromFoot > 0 && fromFoot * ofHull >= (FREEBOARD * length) ** 2;
}

/** Draught of a hull this shallow: a fifth of it dry, or a hand's breadth, and no less than any boat draws. */
function shallowIn(boat: ToldMeasures, depth: number): number {
  return Math.max(leastDraught(boat), Math.min(0.8 * depth, depth - LEAST_FREEBOARD));
}

/** Least draught of a hull: 0.08 m, L/50, B/15 [m]. */
export function leastDraught({ length, beam = 0 }: ToldMeasures): number {
  return Math.max(0.08, length / 50, beam / 15);
}
