import type { PreparedCase } from "./delivery-case.ts";
import { suctionMargin, type Pumping } from "./pumping.ts";

/** Standard uncertainties taken where nobody measured: common practice, not a standard's. */
export const TAKEN_UNCERTAINTY = {
  /** Of the pump's head, relative [1]: make, wear, and the maker's own measurement. */
  head: 0.05,
  /** Of the losses in a hose and its fittings, relative [1]: roughness is known to a factor of about two, which moves
   * friction by 10 to 20 %, and published fitting losses spread by 20 to 50 %. */
  losses: 0.2,
  /** Of lift and rise together [m]. */
  height: 0.15,
  /** Of NPSH required, relative [1]. */
  npshRequired: 0.1,
} as const;

/** Where the true flow lies, 95 times in 100, if nothing is wrong with kit or figures [m³/s]. */
export interface FlowBand {
  readonly low: number;
  readonly high: number;
  /** Standard uncertainty of the flow [m³/s]. */
  readonly uncertainty: number;
}

/**
 * Uncertainty of a delivery from the uncertainties of what it was computed from.
 *
 * u(Q)² = Σ (∂F/∂x_i · u(x_i))² / (∂F/∂Q)², F = 0 being the equation that binds; the band is Q ± 2 u(Q)
 *
 * @param rig - prepared case
 * @param found - its answer
 * @returns band of the flow of all pumps, [m³/s]; zero to zero where the pump cannot lift
 * @range small uncertainties; within about two standard uncertainties of the height limit it is too narrow
 * @source JCGM 100:2008 (GUM), 5.1; the uncertainties themselves are common practice
 */
export function flowBand(rig: PreparedCase, found: Pumping): FlowBand {
  const { kind } = found;
  if (kind === "cannot-lift") return { low: 0, high: 0, uncertainty: 0 };
  const slope = kind === "delivers" ? excessSlope(rig, found) : marginSlope(rig, found);
  const variance = kind === "delivers" ? headVariance(found) : suctionVariance(rig, found);
  const uncertainty = slope < 0 ? (rig.pumps * Math.sqrt(variance)) / -slope : 0;
  return { low: Math.max(0, found.flow - 2 * uncertainty), high: found.flow + 2 * uncertainty, uncertainty };
}

function headVariance(found: Pumping): number {
  return (
    (TAKEN_UNCERTAINTY.head * found.head) ** 2 +
    TAKEN_UNCERTAINTY.height ** 2 +
    lossVariance(found.suctionLoss) +
    lossVariance(found.dischargeLoss)
  );
}

function suctionVariance(rig: PreparedCase, found: Pumping): number {
  return (
    (TAKEN_UNCERTAINTY.npshRequired * rig.npshRequired(found.flowPerPump)) ** 2 +
    TAKEN_UNCERTAINTY.height ** 2 +
    lossVariance(found.suctionLoss)
  );
}

function lossVariance(loss: number): number {
  return (TAKEN_UNCERTAINTY.losses * loss) ** 2;
}

/** Step for a slope [m³/s]: small against the flow, large against rounding. */
function stepAt(flow: number): number {
  return Math.max(1e-9, 1e-5 * flow);
}

/** ∂(H_pump − H_rig)/∂Q, beyond the operating point, where the excess is what the residual says. */
function excessSlope(rig: PreparedCase, { flowPerPump, residual }: Pumping): number {
  const step = stepAt(flowPerPump);
  return (rig.excess(flowPerPump + step) - residual) / step;
}

/** ∂(NPSH available − required)/∂Q, beyond the suction limit. */
function marginSlope(rig: PreparedCase, { flowPerPump, residual }: Pumping): number {
  const step = stepAt(flowPerPump);
  return (suctionMargin(rig, flowPerPump + step) - residual) / step;
}

/** The uncertainties taken, in words. */
export const BAND_ASSUMPTION =
  `One standard uncertainty each: pump head ${TAKEN_UNCERTAINTY.head * 100} %, hose losses ` +
  `${TAKEN_UNCERTAINTY.losses * 100} %, heights ${TAKEN_UNCERTAINTY.height} m (6 in), NPSH required ` +
  `${TAKEN_UNCERTAINTY.npshRequired * 100} %.`;
