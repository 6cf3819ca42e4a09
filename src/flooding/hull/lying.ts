import { nth } from "#base";
import { makeBody } from "./body.ts";
import type { FloatingVessel } from "./vessel.ts";

/** How a boat lies with the water that is in her. */
export type Lying =
  | {
      readonly kind: "afloat";
      /** Outside water above the keel at the after and forward end [m]. */
      readonly aft: number;
      readonly forward: number;
      /** To starboard [rad]. */
      readonly heel: number;
      /** Least height of the deck edge above the water [m]. */
      readonly freeboard: number;
      /** Metacentric height, floodwater free to move [m]. */
      readonly gm: number;
      /** Water inside above the keel at both bulkheads of each compartment [m], in their order. */
      readonly inside: readonly { readonly aft: number; readonly forward: number }[];
    }
  | { readonly kind: "founders" | "capsizes"; readonly because: string };

/**
 * How a boat lies with its compartments filled to the levels they give, the water level within each.
 *
 * @param vessel - a valid boat with levels or volumes of water in its compartments
 * @returns where the water stands outside and in, list, freeboard and stability
 * @source DERIVED: docs/methods/flooding.md, "Equilibrium"
 */
export function lieWithWater(vessel: FloatingVessel): Lying {
  const body = makeBody(vessel);
  const resting = body.settle(body.water);
  if (resting.kind !== "afloat") return resting;
  const { height, slopeX, slopeY } = resting.plane;
  const length = body.hull!.length;
  return {
    kind: "afloat",
    aft: height,
    forward: height + slopeX * length,
    heel: Math.atan(slopeY),
    freeboard: body.freeboard(resting)!,
    gm: resting.stiffness / resting.volume,
    inside: vessel.compartments.map(({ from, to }, i) => ({
      aft: nth(resting.levels, i) + slopeX * from,
      forward: nth(resting.levels, i) + slopeX * to,
    })),
  };
}
