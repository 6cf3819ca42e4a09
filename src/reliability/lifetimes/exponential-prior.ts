import { rateOf, type RateBelief } from "../chance/index.ts";
import { failuresIn, isSeen, type LifeRecord } from "./life-record.ts";

/** The belief about a steady rate, and the likelihood at its mean. */
export interface PriorFit {
  readonly belief: RateBelief;
  readonly logLikelihood: number;
}

/**
 * A steady rate from lives seen to end or still good, with a gamma prior: gamma(a + failures, b + time lived).
 *
 * @param records - each end seen, or still good
 * @param a - of the prior [1]
 * @param b - of the prior [time]
 * @returns belief about the rate; a + failures and b + time must be above 0
 * @source NASA/SP-2009-569, section 4.8.3
 */
export function exponentialWithPrior(records: readonly LifeRecord[], a: number, b: number): PriorFit {
  const failures = failuresIn(records);
  const time = records.reduce((sum, { after, count }) => sum + after * count, 0);
  const belief = rateOf({ failures, time }, { kind: "gamma", a, b });
  const seen = records.reduce((sum, record) => sum + (isSeen(record) ? record.count : 0), 0);
  const logLikelihood = seen * Math.log(belief.rate.mean) - belief.rate.mean * time;
  return { belief, logLikelihood };
}
