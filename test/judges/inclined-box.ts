import { rootBetween } from "./quadrature.ts";

/**
 * A box boat with one box-shaped space to one side of her middle, exact at any angle at which the water still covers
 * her whole bottom and the space's whole floor, and reaches neither deck nor ceiling. Along the span heights differ;
 * across it nothing changes: the span is her beam where she heels, her length where she trims. SI units.
 */
export interface InclinedBox {
  readonly span: number;
  readonly across: number;
  readonly draught: number;
  /** Centre of gravity above the bottom, dry. */
  readonly kg: number;
  readonly space: {
    /** From her middle, along the span. */
    readonly from: number;
    readonly to: number;
    readonly across: number;
    readonly permeability: number;
  };
}

export interface Inclined {
  /** tan of the angle, positive where the water stands higher towards positive places. */
  readonly slope: number;
  /** Draught in her middle, and depth of water in the middle of the space. */
  readonly draught: number;
  readonly depth: number;
}

/**
 * Where she rests with so much water in the space. DERIVED. Under z = T + q·y a span b centred on 0 holds, per unit
 * across, the volume b·T with its centre at
 *
 *     y = ∫y(T + q y)dy/(bT) = q b²/(12T),  z = ∫(T + q y)²/2 dy/(bT) = T/2 + q²b²/(24T).
 *
 * So of the boat (b = B), and of the water about its own middle c (b = its width, depth h in place of T). With
 * M = V·B − V₀·G − w·c at rest the line from the weights' centre to the buoyancy's stands square to the water:
 * M_y + q·M_z = 0, a cubic in q.
 */
export function restingBox(boat: InclinedBox, water: number): Inclined {
  const dry = boat.span * boat.across * boat.draught;
  const draught = (dry + water) / (boat.span * boat.across);
  const { from, to, across, permeability } = boat.space;
  const depth = water / (permeability * (to - from) * across);
  const turning = (q: number): number => {
    const buoyancy = centre(boat.span, draught, q);
    const flood = centre(to - from, depth, q);
    const sideways = (dry + water) * buoyancy.y - water * ((from + to) / 2 + flood.y);
    const upright = (dry + water) * buoyancy.z - dry * boat.kg - water * flood.z;
    return sideways + q * upright;
  };
  const slope = rootBetween(turning, -0.6, 0.6);
  if (Math.abs(slope) * boat.span > 2 * draught) throw new Error("Her bottom is out of the water.");
  if (Math.abs(slope) * (to - from) > 2 * depth) throw new Error("The floor of the space is dry on one side.");
  return { slope, draught, depth };
}

function centre(width: number, depth: number, q: number): { readonly y: number; readonly z: number } {
  return { y: (q * width ** 2) / (12 * depth), z: depth / 2 + (q * width) ** 2 / (24 * depth) };
}
