/** What is believed of an unknown figure: a mixture of pieces with known chances and quantiles. */
export interface Belief {
  readonly mean: number;
  readonly p05: number;
  readonly p50: number;
  readonly p95: number;
}

/** A belief given on a grid: places from low to high and how much weight lies at each. */
export function beliefOnGrid(places: readonly number[], logWeights: readonly number[]): Belief {
  const weights = fromLogs(logWeights);
  const mean = places.reduce((sum, place, i) => sum + place * weights[i]!, 0);
  const [p05, p50, p95] = [0.05, 0.5, 0.95].map((chance) => readOff(places, weights, chance));
  return { mean, p05: p05!, p50: p50!, p95: p95! };
}

/** Weights that add up to 1 from their logarithms. */
export function fromLogs(logs: readonly number[]): number[] {
  const most = logs.reduce((greatest, one) => Math.max(greatest, one), -Infinity);
  const raw = logs.map((one) => Math.exp(one - most));
  const sum = raw.reduce((total, one) => total + one, 0);
  return raw.map((one) => one / sum);
}

/** Where the sum of weights reaches a chance, each weight spread about its place in the logarithm. */
function readOff(places: readonly number[], weights: readonly number[], chance: number): number {
  let below = 0;
  let before = { sum: 0, place: Math.log(places[0]!) };
  for (const [i, place] of places.entries()) {
    const middle = below + weights[i]! / 2;
    below += weights[i]!;
    const here = { sum: middle, place: Math.log(place) };
    if (middle >= chance) {
      const share = here.sum > before.sum ? (chance - before.sum) / (here.sum - before.sum) : 1;
      return Math.exp(before.place + share * (here.place - before.place));
    }
    before = here;
  }
  return places.at(-1)!;
}

/** The greatest of the log of a sum of exponentials, without overflow. */
export function logSum(logs: readonly number[]): number {
  const most = logs.reduce((greatest, one) => Math.max(greatest, one), -Infinity);
  return most === -Infinity ? most : most + Math.log(logs.reduce((sum, one) => sum + Math.exp(one - most), 0));
}
