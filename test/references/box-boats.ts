import { makeBalance, makeHull, type Resting } from "#flooding";
import type { Inputs } from "./flooding-rows.ts";

/** Box boats of the published rows, with one space bilged. */

export function openBox(i: Inputs): Extract<Resting, { kind: "afloat" }> {
  const balance = boxBalance(i, midships(i), i.KG ?? kgOf(i));
  const resting = balance.settleOpen([true]);
  if (resting.kind !== "afloat") throw new Error(resting.because);
  return resting;
}

export const midships = (i: Inputs) => ({ from: i.L! / 2 - i.l! / 2, to: i.L! / 2 + i.l! / 2 });
export const kgOf = (i: Inputs): number => i.T! / 2 + i.B! ** 2 / (12 * i.T!) - (i.GM0 ?? 0.6);

export function boxBalance(
  i: Inputs,
  space: { from: number; to: number; sideFrom?: number; sideTo?: number; top?: number },
  kg: number,
) {
  return makeBalance({
    hull: makeHull({ form: "box", length: i.L!, beam: i.B!, depth: 3 * i.T!, draught: i.T! }),
    dry: { draught: i.T! },
    kg,
    compartments: [{ name: "hold", permeability: i.mu ?? 1, ...space }],
  });
}
