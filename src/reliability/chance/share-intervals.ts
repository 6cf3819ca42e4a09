import { betaQuantile, normalQuantile } from "#numerics";

export type Interval = readonly [low: number, high: number];

/**
 * The exact interval of Clopper and Pearson for a share.
 *
 * @param failures - whole, 0 to trials
 * @param trials - whole, at least 1
 * @param level - of confidence, strictly between 0 and 1 [1]
 * @returns low and high end [1]
 * @source Clopper & Pearson, Biometrika 26 (1934) 404-413 (FROM MEMORY)
 * @example clopperPearson(0, 20, 0.95) // [0, 0.16843]
 */
export function clopperPearson(failures: number, trials: number, level: number): Interval {
  const tail = (1 - level) / 2;
  const low = failures === 0 ? 0 : betaQuantile(tail, failures, trials - failures + 1);
  const high = failures === trials ? 1 : betaQuantile(1 - tail, failures + 1, trials - failures);
  return [low, high];
}

/**
 * Wilson's score interval for a share.
 *
 * @param failures - whole, 0 to trials
 * @param trials - whole, at least 1
 * @param level - of confidence, strictly between 0 and 1 [1]
 * @returns low and high end [1]
 * @source Wilson, JASA 22 (1927) 209-212 (FROM MEMORY)
 * @example wilson(0, 20, 0.95) // [0, 0.16113]
 */
export function wilson(failures: number, trials: number, level: number): Interval {
  const z = normalQuantile(1 - (1 - level) / 2);
  const share = failures / trials;
  const middle = (share + (z * z) / (2 * trials)) / (1 + (z * z) / trials);
  const root = Math.sqrt((share * (1 - share)) / trials + (z * z) / (4 * trials * trials));
  const half = (z * root) / (1 + (z * z) / trials);
  return [failures === 0 ? 0 : middle - half, failures === trials ? 1 : middle + half];
}

/**
 * The equal-tailed interval from Jeffreys' prior, its end set to 0 or 1 where nothing or everything failed.
 *
 * @param failures - whole, 0 to trials
 * @param trials - whole, at least 1
 * @param level - of belief, strictly between 0 and 1 [1]
 * @returns low and high end [1]
 * @source Brown, Cai & DasGupta, Statist. Sci. 16 (2001) 101-133 (FROM MEMORY)
 * @example jeffreys(0, 20, 0.95) // [0, 0.11664]
 */
export function jeffreys(failures: number, trials: number, level: number): Interval {
  const tail = (1 - level) / 2;
  const [a, b] = [failures + 0.5, trials - failures + 0.5];
  return [failures === 0 ? 0 : betaQuantile(tail, a, b), failures === trials ? 1 : betaQuantile(1 - tail, a, b)];
}
