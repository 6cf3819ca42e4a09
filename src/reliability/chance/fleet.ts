import { firstOf, nth } from "#base";
import { digamma, logBeta, logGamma } from "#numerics";
import { climb } from "../climb/index.ts";
import { logChoose } from "./beta-mixture.ts";

/** Failures of one member of a fleet in so many demands. */
export interface Demands {
  readonly failures: number;
  readonly trials: number;
}

/** Failures of one member of a fleet in so much time. */
export interface Exposure {
  readonly failures: number;
  readonly time: number;
}

/** A distribution over a fleet: beta(a, b) of chances, or gamma(a, rate b) of rates. */
export interface FleetFit {
  readonly a: number;
  readonly b: number;
  readonly logLikelihood: number;
  /**
   * True where members differ no more than chance alone would have it. The likeliest fleet has then no spread at all, and
   * would make every member's own record count for nothing: a and b are those of the widest spread that the counts allow.
   */
  readonly isAlike: boolean;
}

/** A log-likelihood of a and b, with its slopes. */
interface FleetLaw {
  readonly value: (a: number, b: number) => number;
  readonly slope: (a: number, b: number) => readonly [byA: number, byB: number];
}

/**
 * ln of the chance of a fleet's counts, each member having its own chance from a beta(a, b).
 *
 * @param fleet - members with their demands
 * @returns ln likelihood by a and b, with the number of ways, and its slopes
 * @source DERIVED: beta-binomial
 */
export function lawOfChances(fleet: readonly Demands[]): FleetLaw {
  const ways = fleet.reduce((sum, { failures, trials }) => sum + logChoose(trials, failures), 0);
  const members = sameTogether(fleet);
  return {
    value: (a, b) => {
      const one = logBeta(a, b);
      return members.reduce((sum, { failures: x, trials, count }) => {
        return sum + count * (logBeta(a + x, b + trials - x) - one);
      }, ways);
    },
    slope: (a, b) => {
      const [ofA, ofB, both] = [digamma(a), digamma(b), digamma(a + b)];
      let [byA, byB] = [0, 0];
      for (const { failures: x, trials, count } of members) {
        const whole = digamma(a + b + trials) - both;
        byA += count * (digamma(a + x) - ofA - whole);
        byB += count * (digamma(b + trials - x) - ofB - whole);
      }
      return [byA, byB];
    },
  };
}

/** Members with the same record counted once, so that a large fleet costs no more than its different records. */
function sameTogether<One extends Demands | Exposure>(
  fleet: readonly One[],
): readonly (One & { readonly count: number })[] {
  const members = new Map<string, One & { count: number }>();
  for (const one of fleet) {
    const key = `${one.failures} ${"trials" in one ? one.trials : one.time}`;
    members.set(key, { ...one, count: (members.get(key)?.count ?? 0) + 1 });
  }
  return [...members.values()];
}

/**
 * ln of the chance of a fleet's counts over time, each member having its own rate from a gamma(a, rate b).
 *
 * @param fleet - members with the time watched
 * @returns ln likelihood by a and b, and its slopes
 * @source DERIVED: gamma-Poisson
 */
export function lawOfRates(fleet: readonly Exposure[]): FleetLaw {
  const members = sameTogether(fleet);
  return {
    value: (a, b) =>
      members.reduce((sum, { failures: x, time, count }) => {
        const counted = x === 0 ? 0 : x * Math.log(time / (b + time)) - logGamma(x + 1);
        return sum + count * (logGamma(a + x) - logGamma(a) - a * Math.log1p(time / b) + counted);
      }, 0),
    slope: (a, b) => {
      let [byA, byB] = [0, 0];
      for (const { failures: x, time, count } of members) {
        byA += count * (digamma(a + x) - digamma(a) - Math.log1p(time / b));
        byB += count * (a / b - (a + x) / (b + time));
      }
      return [byA, byB];
    },
  };
}

/**
 * The beta distribution that best tells a fleet's failures on demand.
 *
 * @param fleet - at least 2 members, with at least one failure and one success among them
 * @returns a, b by maximum likelihood, or the widest that counts allow where members are alike
 * @source Carlin & Louis, Bayes and Empirical Bayes Methods, 2000 (FROM MEMORY)
 */
export function fitFleetOfChances(fleet: readonly Demands[]): FleetFit {
  const share = fleet.reduce((sum, one) => sum + one.failures, 0) / fleet.reduce((sum, one) => sum + one.trials, 0);
  return fitFleet(lawOfChances(fleet), Math.log(share / (1 - share)), (t, s) => {
    const mean = 1 / (1 + Math.exp(-t));
    const [a, b] = [mean * Math.exp(s), (1 - mean) * Math.exp(s)];
    return { a, b, byMean: (byA, byB) => (byA - byB) * a * (1 - mean), bySize: (byA, byB) => a * byA + b * byB };
  });
}

/**
 * The gamma distribution that best tells a fleet's failures over time.
 *
 * @param fleet - at least 2 members, with at least one failure among them
 * @returns a, b by maximum likelihood, b in the fleet's unit of time, or the widest that counts allow
 * @source Carlin & Louis, Bayes and Empirical Bayes Methods, 2000 (FROM MEMORY)
 */
export function fitFleetOfRates(fleet: readonly Exposure[]): FleetFit {
  const rate = fleet.reduce((sum, one) => sum + one.failures, 0) / fleet.reduce((sum, one) => sum + one.time, 0);
  return fitFleet(lawOfRates(fleet), Math.log(rate), (t, s) => {
    const [a, b] = [Math.exp(s), Math.exp(s - t)];
    return { a, b, byMean: (_, byB) => -b * byB, bySize: (byA, byB) => a * byA + b * byB };
  });
}

/** a and b of a mean and a size, both in logarithms, and how slopes by a and b turn into slopes by those. */
type Shape = (
  mean: number,
  size: number,
) => {
  readonly a: number;
  readonly b: number;
  readonly byMean: (byA: number, byB: number) => number;
  readonly bySize: (byA: number, byB: number) => number;
};

/** ln of the size beyond which members are taken as alike. */
const ALIKE = Math.log(1e6);
/** Half the 95 % point of chi-square with one degree of freedom: how far below the best a spread is still allowed. */
const ALLOWED = 1.92;

function fitFleet(law: FleetLaw, mean: number, shape: Shape): FleetFit {
  const value = ([m, s]: readonly number[]) => {
    const { a, b } = shape(m!, s!);
    return a > 0 && b > 0 && s! < ALIKE + 3 && s! > -12 ? law.value(a, b) : -Infinity;
  };
  const slope = ([m, s]: readonly number[]) => {
    const { a, b, byMean, bySize } = shape(m!, s!);
    const [byA, byB] = law.slope(a, b);
    return [byMean(byA, byB), bySize(byA, byB)];
  };
  const tops = [1, 4].map((size) => climb({ value, slope }, [mean, size]));
  const top = tops.reduce((best, one) => (one.value > best.value ? one : best));
  const alike = value([mean, ALIKE]);
  if (top.value > alike + 1e-9 && nth(top.at, 1) < ALIKE) {
    const { a, b } = shape(firstOf(top.at), nth(top.at, 1));
    return { a, b, logLikelihood: top.value, isAlike: false };
  }
  const widest = widestSize((size) => value([mean, size]), alike - ALLOWED);
  const { a, b } = shape(mean, widest);
  return { a, b, logLikelihood: value([mean, widest]), isAlike: true };
}

/** The smallest ln size that the counts allow. */
function widestSize(value: (size: number) => number, least: number): number {
  let [low, high] = [-8, ALIKE];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (value(middle) < least) low = middle;
    else high = middle;
  }
  return high;
}
