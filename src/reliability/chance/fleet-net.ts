import { nth } from "#base";
import type { BetaPiece } from "./beta-mixture.ts";
import { fitFleetOfChances, lawOfChances, type Demands } from "./fleet.ts";
import { focused } from "./net.ts";

/**
 * How the spread of a fleet is taken: fitted as if known, integrated over priors that lean to fleets all alike, or
 * integrated without that leaning.
 */
export type Pooling = "fitted" | "whole" | "wary";

const HYPER = 1e-4;

/**
 * A fleet's beta distributions over a net of mean and size, weighed by the fleet's counts and the priors of a and b.
 *
 * @param fleet - members with their demands, some of them asked
 * @param pooling - which prior
 * @returns pieces of a belief about one more member; weights of those kept add up to nearly 1
 * @source as `startingOf`
 */
export function netPieces(fleet: readonly Demands[], pooling: Exclude<Pooling, "fitted">): readonly BetaPiece[] {
  const middle = middleOf(fleet);
  const law = lawOfChances(fleet);
  const prior = pooling === "wary" ? waryPrior(fleet) : gammaPrior;
  const logs = (odds: number, size: number) => {
    const { a, b } = betaAt(odds, size);
    return law.value(a, b) + prior(a, b);
  };
  const places = focused(logs, { across: [middle - 8, middle + 8], up: [Math.log(5e-3), Math.log(3e6)] });
  return places.map(({ at: [odds, size], weight }) => ({ ...betaAt(odds, size), weight }));
}

/** The beta of a mean by its ln odds, and of a size by its logarithm. */
function betaAt(odds: number, size: number): { readonly a: number; readonly b: number } {
  const mean = 1 / (1 + Math.exp(-odds));
  return { a: mean * Math.exp(size), b: (1 - mean) * Math.exp(size) };
}

/** ln odds of failing, near which the belief lies: of the likeliest fleet, which is none where all failed or none did. */
function middleOf(fleet: readonly Demands[]): number {
  const failures = fleet.reduce((sum, one) => sum + one.failures, 0);
  const trials = fleet.reduce((sum, one) => sum + one.trials, 0);
  if (failures === 0 || failures === trials) return Math.log((failures + 0.5) / (trials - failures + 0.5));
  const { a, b } = fitFleetOfChances(fleet);
  return Math.log(a / b);
}

/** Gamma(10⁻⁴, 10⁻⁴) of a and of b, over ln odds and ln size. */
function gammaPrior(a: number, b: number): number {
  return HYPER * (Math.log(a) + Math.log(b) - a - b);
}

/**
 * Any mean alike, and any share by which a usual record is drawn to the fleet alike: n/(n + size)² for the size, with n the
 * middle number of trials. Christiansen & Morris, JASA 92 (1997) 618-632; Daniels, Canad. J. Statist. 27 (1999) (FROM MEMORY)
 */
function waryPrior(fleet: readonly Demands[]): (a: number, b: number) => number {
  const trials = fleet.map((one) => one.trials).toSorted((one, other) => one - other);
  const usual = Math.max(1, nth(trials, Math.floor(trials.length / 2)));
  return (a, b) => Math.log(a) + Math.log(b) - Math.log(a + b) - 2 * Math.log(usual + a + b);
}
