import { lawOfRates, type Exposure } from "./fleet.ts";
import { focused } from "./net.ts";
import { meanOfGammas, spreadOfGammas, type GammaPiece, type Spread } from "./spread.ts";

/** What is believed of the rate at which hidden faults come to one member of a fleet. */
export interface HiddenRate {
  /** [1/time] */
  readonly mean: number;
  /** [1/time] */
  readonly spread: Spread;
  /** Where it comes from: members that differ, a fleet without any fault taken as one, or this one alone. */
  readonly from: "fleet" | "clean-fleet" | "own";
}

/**
 * The rate of hidden faults of each member of a fleet.
 *
 * Fleet with faults: gamma-Poisson, its mean and spread integrated warily, then gamma(a + x, b + t). A fleet in which
 * nobody found any is taken as one: gamma(1/2, all its time), Jeffreys' prior. One alone: gamma(1/2 + x, t).
 *
 * @param fleet - every member: faults found in so much time unseen
 * @returns belief by a member's own record, which is among those of the fleet; undefined where no time was watched
 * @source Christiansen & Morris, JASA 92 (1997) 618-632 (FROM MEMORY); Jeffreys' prior of a Poisson rate, NASA/SP-2009-569
 */
export function hiddenRates(fleet: readonly Exposure[]): ((own: Exposure) => HiddenRate) | undefined {
  const watched = fleet.filter(({ time }) => time > 0);
  if (watched.length === 0) return undefined;
  const piecesOf = memberPieces(watched);
  const isClean = watched.every(({ failures }) => failures === 0);
  const from = watched.length === 1 ? "own" : isClean ? "clean-fleet" : "fleet";
  return (own) => rateOfPieces(piecesOf(own), from);
}

/**
 * The rate of each member of a fleet as gamma distributions, by the fleet's record with the member's own among it.
 *
 * @param fleet - every member, each watched for some time; at least 1
 * @returns pieces by a member's own record, weights adding up to 1
 * @source as `hiddenRates`
 */
export function memberPieces(fleet: readonly Exposure[]): (own: Exposure) => readonly GammaPiece[] {
  const time = fleet.reduce((sum, one) => sum + one.time, 0);
  const failures = fleet.reduce((sum, one) => sum + one.failures, 0);
  if (fleet.length === 1 || failures === 0) return () => [{ a: 0.5 + failures, b: time, weight: 1 }];
  const pieces = waryPieces(fleet, failures / time);
  return (own) => pieces.map(({ a, b, weight }) => ({ a: a + own.failures, b: b + own.time, weight }));
}

function rateOfPieces(pieces: readonly GammaPiece[], from: HiddenRate["from"]): HiddenRate {
  return { mean: meanOfGammas(pieces), spread: spreadOfGammas(pieces), from };
}

/** How far from the fleet's own rate the mean is looked for, and from the usual time the size, in ln. */
const WIDE = { mean: 2.5, size: Math.log(1e3) } as const;

function around(middle: number, width: number): readonly [number, number] {
  return [Math.log(middle) - width, Math.log(middle) + width];
}

/** Any mean alike, and any share by which a usual record is drawn to the fleet alike: t/(t + b)² for b. */
function waryPieces(fleet: readonly Exposure[], rate: number): readonly GammaPiece[] {
  const law = lawOfRates(fleet);
  const times = fleet.map(({ time }) => time).toSorted((one, other) => one - other);
  const usual = times[Math.floor(times.length / 2)]!;
  const logs = (mean: number, size: number) => {
    const b = Math.exp(size);
    return law.value(Math.exp(mean) * b, b) + size - 2 * Math.log(usual + b);
  };
  const places = focused(logs, { across: around(rate, WIDE.mean), up: around(usual, WIDE.size) });
  const sum = places.reduce((total, { weight }) => total + weight, 0);
  return places.map(({ at: [mean, size], weight }) => {
    const b = Math.exp(size);
    return { a: Math.exp(mean) * b, b, weight: weight / sum };
  });
}
