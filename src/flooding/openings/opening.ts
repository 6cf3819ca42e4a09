import { STANDARD_GRAVITY } from "#water";

/** Discharge coefficient of a ragged or sharp-edged hole, best estimate. See docs/methods/flooding.md, "Openings". */
export const LIKELY_COEFFICIENT = 0.6;
/** No hole passes more than this. Shown only as "no worse than". */
export const GREATEST_COEFFICIENT = 1;

/** Heads smaller than this are taken as linear in the head: √h has no finite slope at equal levels [m]. */
export const LINEAR_BELOW = 1e-3;

/** What water passes through. Heights above the keel, along the boat's own vertical [m]. */
export type Opening =
  | {
      readonly kind: "hole";
      /** Clear area [m²]. */
      readonly area: number;
      /** Centre. */
      readonly height: number;
      readonly dischargeCoefficient?: number;
    }
  | {
      /** Upright slot or split in a side, a door, a scupper. */
      readonly kind: "slot";
      readonly width: number;
      readonly sill: number;
      readonly top: number;
      readonly dischargeCoefficient?: number;
    }
  | {
      /** Broken pipe or hose: the losses along it slow the water. */
      readonly kind: "pipe";
      readonly bore: number;
      readonly length: number;
      readonly height: number;
      /** Darcy friction factor; default 0.03. */
      readonly friction?: number;
      /** Sum of K of entry, bends and valves, exit velocity head not counted; default 0.5, a square entry. */
      readonly fittings?: number;
    }
  | {
      /** The sea comes over the deck edge along a length, without a lid above. */
      readonly kind: "deck-edge";
      readonly width: number;
      readonly sill: number;
      readonly dischargeCoefficient?: number;
    };

/** Water levels on both sides, above the keel [m]; `upright` is the cosine between the boat's vertical and true. */
export interface Levels {
  readonly outside: number;
  readonly inside: number;
  readonly upright?: number;
  /** Overrides {@link LINEAR_BELOW} [m]. */
  readonly linearBelow?: number;
}

/**
 * Head over a hole: outside level less the higher of inside level and hole; where the inside stands higher, the
 * reverse with its sign.
 *
 * @param hole - height of the hole above the keel [m]
 * @param outside - water level outside [m]
 * @param inside - water level inside [m]
 * @returns head [m], positive inward
 * @source DERIVED: a jet into air feels the hole's depth, a drowned one the difference of levels
 * @example headOver(0.2, 1.0, 0.5) // 0.5
 */
export function headOver(hole: number, outside: number, inside: number): number {
  return Math.max(outside, hole) - Math.max(inside, hole);
}

/**
 * Signed flow through an opening, inward positive.
 *
 * Hole: Q = Cd·A·√(2 g h). Pipe: Q = A·√(2 g h / (1 + ΣK + f L/D)).
 * Slot: Q = Cd·b·∫√(2 g h(z)) dz from sill to top, with h(z) the outside level less the higher of inside level and z.
 * Below {@link LINEAR_BELOW} of head √h is replaced by h/√h₀.
 *
 * @param opening - the opening, lengths in [m]
 * @param levels - water levels on both sides [m]
 * @returns flow [m³/s]
 * @range steady flow; a hole is taken at its centre's head, at most 4 % above the exact integral once covered
 * @source orifice: Encyclopaedia Britannica, 11th ed. (1911), vol. 14, Hydraulics, sec. 17-40; strip integral DERIVED
 * @example flowThrough({ kind: "hole", area: 0.01, height: 0 }, { outside: 2, inside: 0 }) // 0.03758
 */
export function flowThrough(opening: Opening, levels: Levels): number {
  return flowWith(opening, strengthOf(opening), levels);
}

/** The same, of an opening whose strength is known. */
export function flowWith(opening: Opening, strength: number, levels: Levels): number {
  const { outside, inside } = levels;
  const upright = levels.upright ?? 1;
  const linear = levels.linearBelow ?? LINEAR_BELOW;
  if (opening.kind === "slot" || opening.kind === "deck-edge") {
    const top = opening.kind === "slot" ? opening.top : Number.POSITIVE_INFINITY;
    const slot = { sill: opening.sill, top, strength };
    if (outside >= inside) return slotFlow(slot, outside, inside, upright, linear);
    return -slotFlow(slot, inside, outside, upright, linear);
  }
  return strength * signedRoot(upright * headOver(opening.height, outside, inside), linear);
}

/**
 * What multiplies √head: Cd·A·√(2g) for holes and pipes, Cd·b·√(2g) for slots.
 *
 * @param opening - the opening
 * @returns strength [m^2.5/s], of a slot or deck edge [m^1.5/s]
 * @source Encyclopaedia Britannica, 11th ed. (1911), vol. 14, Hydraulics, sec. 17
 */
export function strengthOf(opening: Opening): number {
  const root = Math.sqrt(2 * STANDARD_GRAVITY);
  if (opening.kind === "hole") return (opening.dischargeCoefficient ?? LIKELY_COEFFICIENT) * opening.area * root;
  if (opening.kind === "pipe") return pipeCoefficient(opening) * (Math.PI / 4) * opening.bore ** 2 * root;
  return (opening.dischargeCoefficient ?? LIKELY_COEFFICIENT) * opening.width * root;
}

function pipeCoefficient(pipe: Extract<Opening, { kind: "pipe" }>): number {
  const losses = (pipe.fittings ?? 0.5) + ((pipe.friction ?? 0.03) * pipe.length) / pipe.bore;
  return 1 / Math.sqrt(1 + losses);
}

/**
 * √h with the sign of h, straight through zero: h/√h₀ below h₀.
 *
 * @param head - h [m]
 * @param linearBelow - h₀ [m]
 * @returns root [m^0.5]
 * @source DERIVED: √h has no finite slope at 0, which no integrator can step over
 */
export function signedRoot(head: number, linearBelow: number): number {
  const size = Math.abs(head);
  if (size < linearBelow) return head / Math.sqrt(linearBelow);
  return head < 0 ? -Math.sqrt(size) : Math.sqrt(size);
}

interface Slot {
  readonly sill: number;
  readonly top: number;
  readonly strength: number;
}

/** Free part above the lower level: ∫√(high − z) dz; drowned part below it: one head. */
function slotFlow(slot: Slot, high: number, low: number, upright: number, linear: number): number {
  const wet = Math.min(slot.top, high);
  if (wet <= slot.sill) return 0;
  const drowned = Math.min(Math.max(low, slot.sill), wet);
  const free = (2 / 3) * (threeHalves(high - drowned) - threeHalves(high - wet));
  const under = (drowned - slot.sill) * signedRoot(upright * (high - low), linear);
  return slot.strength * (Math.sqrt(upright) * free + under);
}

function threeHalves(x: number): number {
  return x <= 0 ? 0 : x * Math.sqrt(x);
}

/** Height at which an opening begins to pass water. */
export function sillOf(opening: Opening): number {
  return opening.kind === "slot" || opening.kind === "deck-edge" ? opening.sill : opening.height;
}
