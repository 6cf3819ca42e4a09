import type { Body } from "../hull/body.ts";
import type { Resting } from "../hull/equilibrium.ts";
import type { Piping } from "./flows.ts";

type Afloat = Extract<Resting, { kind: "afloat" }>;

/** Slopes of the flows by differences, gathered as the flows themselves are: no water is lost in the matrix. */
export function slopesOfFlows(body: Body, piping: Piping, y: Float64Array, size: number, out: Float64Array): void {
  const width = size + 2;
  const point = y.slice();
  out.fill(0);
  piping.refresh(lying(body, point), point);
  const base = piping.flows.slice();
  const slope = new Float64Array(base.length);
  for (let k = 0; k < size; k += 1) {
    const nudge = 1e-7 * Math.max(1e-2, Math.abs(y[k]!));
    point[k] = y[k]! + nudge;
    piping.refresh(lying(body, point), point);
    point[k] = y[k]!;
    for (let j = 0; j < slope.length; j += 1) slope[j] = (piping.flows[j]! - base[j]!) / nudge;
    piping.gather(slope, 1, 0, out, width, k);
  }
}

function lying(body: Body, water: Float64Array): Afloat {
  const resting = body.settle(water);
  if (resting.kind === "afloat") return resting;
  const level = { height: 0, slopeX: 0, slopeY: 0 };
  return { kind: "afloat", plane: level, levels: body.names.map(() => 0), stiffness: 0, volume: 0 };
}
