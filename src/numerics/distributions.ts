import { assert } from "#base";

// Wichura, Algorithm AS 241: The percentage points of the normal distribution, Appl. Statist. 37 (1988) 477-484,
// routine PPND16 (FROM MEMORY; tested against printed percentage points).
const CENTRE = [
  [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946, 1971.5909503065513,
    133.14166789178438, 3.3871328727963665,
  ],
  [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751, 687.1870074920579,
    42.31333070160091, 1,
  ],
] as const;
const SHOULDER = [
  [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
    5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
    1.6763848301838038, 2.053191626637759, 1,
  ],
] as const;
const TAIL = [
  [
    2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124, 0.29656057182850487,
    1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  [
    2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133, 0.014875361290850615,
    0.1369298809227358, 0.599832206555888, 1,
  ],
] as const;

function ratio(x: number, [over, under]: readonly [readonly number[], readonly number[]]): number {
  return horner(x, over) / horner(x, under);
}

function horner(x: number, coefficients: readonly number[]): number {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
}

/**
 * The normal deviate z with P(Z ≤ z) = p.
 *
 * @param p - chance, 0 < p < 1 [1]
 * @returns z [1]
 * @range relative error about 1e-15
 * @source Wichura, AS 241, 1988 (FROM MEMORY)
 * @example normalQuantile(0.975) // 1.959963984540054
 */
export function normalQuantile(p: number): number {
  assert(p > 0 && p < 1, `a chance strictly between 0 and 1, got ${p}`);
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(0.180625 - q * q, CENTRE);
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const z = r <= 5 ? ratio(r - 1.6, SHOULDER) : ratio(r - 5, TAIL);
  return q < 0 ? -z : z;
}

/**
 * P(Z ≤ z) of the standard normal.
 *
 * Φ(z) = ½ erfc(−z/√2) = ½ Q(½, z²/2) for z ≤ 0
 *
 * @param z - deviate [1]
 * @returns chance [1]
 * @source Abramowitz & Stegun 26.2 and 6.5 (FROM MEMORY)
 * @example normalChance(1.959963984540054) // 0.975
 */
export function normalChance(z: number): number {
  const tail = 0.5 * gammaTail(0.5, (z * z) / 2);
  return z <= 0 ? tail : 1 - tail;
}

/**
 * P(X > x) of the chi-square distribution.
 *
 * @param x - at least 0 [1]
 * @param freedom - degrees of freedom, > 0 [1]
 * @returns chance [1]
 * @source Abramowitz & Stegun 26.4.19 (FROM MEMORY)
 * @example chiSquareTail(3.841458820694124, 1) // 0.05
 */
export function chiSquareTail(x: number, freedom: number): number {
  return gammaTail(freedom / 2, Math.max(0, x) / 2);
}

/**
 * The regularised upper incomplete gamma function Q(a, x) = Γ(a, x)/Γ(a).
 *
 * @param a - > 0 [1]
 * @param x - at least 0 [1]
 * @returns Q, 0 to 1 [1]
 * @range series below x = a + 1, continued fraction (modified Lentz) above; about 1e-14
 * @source Abramowitz & Stegun 6.5.29 and 6.5.31 (FROM MEMORY)
 * @example gammaTail(1, 2) // 0.135335283237
 */
export function gammaTail(a: number, x: number): number {
  assert(a > 0 && x >= 0, `gamma tail of a = ${a}, x = ${x}`);
  if (x === 0) return 1;
  if (x > 1e6 + 10 * a) return 0;
  const front = Math.exp(-x + a * Math.log(x) - logGamma(a));
  return x < a + 1 ? 1 - front * gammaSeries(a, x) : front * gammaFraction(a, x);
}

/**
 * The regularised lower incomplete gamma function P(a, x) = 1 − Q(a, x), with its own figures where it is small.
 *
 * @param a - > 0 [1]
 * @param x - at least 0 [1]
 * @returns P, 0 to 1 [1]
 * @range as `gammaTail`
 * @source Abramowitz & Stegun 6.5.29 (FROM MEMORY)
 * @example gammaChance(1, 2) // 0.864664716763
 */
export function gammaChance(a: number, x: number): number {
  assert(a > 0 && x >= 0, `gamma chance of a = ${a}, x = ${x}`);
  if (x === 0 || x >= a + 1) return 1 - gammaTail(a, x);
  return Math.exp(-x + a * Math.log(x) - logGamma(a)) * gammaSeries(a, x);
}

function gammaSeries(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; n < 100_000 && term > sum * 1e-17; n += 1) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

function gammaFraction(a: number, x: number): number {
  const tiny = 1e-300;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < 100_000; n += 1) {
    const an = -n * (n - a);
    b += 2;
    d = 1 / (an * d + b || tiny);
    c = b + an / c || tiny;
    value *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return value;
}

const LANCZOS = [
  0.9999999999998099, 676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
] as const;

/**
 * ln Γ(x).
 *
 * @param x - > 0 [1]
 * @returns ln Γ(x) [1]
 * @range about 1e-14 relative
 * @source Lanczos 1964 with g = 7, n = 9 (FROM MEMORY)
 * @example logGamma(5) // 3.178053830348
 */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const z = x - 1;
  let sum: number = LANCZOS[0];
  for (let i = 1; i < LANCZOS.length; i += 1) sum += LANCZOS[i]! / (z + i);
  const t = z + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

/**
 * Quantiles of weighted values, each weight spread evenly about its value's place.
 *
 * @param values - any order
 * @param weights - at least 0, same length, not all 0
 * @param chances - each 0 to 1
 * @returns one value per chance, never outside the values given
 * @example weightedQuantiles([1, 2, 3], [1, 1, 1], [0.5]) // [2]
 */
export function weightedQuantiles(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  chances: readonly number[],
): number[] {
  const order = Array.from({ length: values.length }, (_, i) => i).filter((i) => weights[i]! > 0);
  order.sort((a, b) => values[a]! - values[b]!);
  let total = 0;
  const middles = order.map((i) => {
    total += weights[i]!;
    return total - weights[i]! / 2;
  });
  return chances.map((chance) => readOff(chance * total, middles, (k) => values[order[k]!]!));
}

/**
 * The same of values that all count alike: to the last bit what `weightedQuantiles` gives with weights of one, without
 * sorting by way of a list of places.
 *
 * @param values - at least one, numbers
 * @param chances - from 0 to 1
 * @returns a quantile for each chance
 * @range any
 * @source DERIVED: `weightedQuantiles`; the k-th value's weight ends at k + 1, so its middle is k + 1/2
 * @example evenQuantiles([3, 1, 2], [0.5]) // [2]
 */
export function evenQuantiles(values: ArrayLike<number>, chances: readonly number[]): number[] {
  const sorted = Float64Array.from(values).sort();
  const last = sorted.length - 1;
  return chances.map((chance) => {
    const target = chance * sorted.length;
    const high = Math.ceil(target - 0.5);
    if (high <= 0) return sorted[0]!;
    if (high > last) return sorted[last]!;
    const share = target - (high - 0.5);
    return sorted[high - 1]! * (1 - share) + sorted[high]! * share;
  });
}

function readOff(target: number, middles: readonly number[], valueOf: (place: number) => number): number {
  const high = middles.findIndex((middle) => middle >= target);
  if (high === 0) return valueOf(0);
  if (high < 0) return valueOf(middles.length - 1);
  const low = high - 1;
  const share = (target - middles[low]!) / (middles[high]! - middles[low]!);
  return valueOf(low) * (1 - share) + valueOf(high) * share;
}
