import { gammaChance, gaussNodes, logGamma } from "#numerics";

/** How long a thing lies good before a hidden fault comes: Weibull; a shape of 1 is a constant rate 1/scale. */
export interface LifeLaw {
  /** [1] */
  readonly shape: number;
  /** [s, or the unit of every time in the case] */
  readonly scale: number;
}

/**
 * Failures to be expected of a thing by an age, had it been mended at once each time.
 *
 * H(t) = (t / η)^β
 *
 * @param law - life
 * @param age - t, at least 0 [unit of the scale]
 * @returns H [1]
 * @source Weibull's distribution (FROM MEMORY)
 */
export function hazardBy(law: LifeLaw, age: number): number {
  return age <= 0 ? 0 : Math.pow(age / law.scale, law.shape);
}

/**
 * Time lost to a hidden fault over a stretch that begins as new.
 *
 * ∫₀ʷ (1 − e^(−H)) dt = w − η Γ(1 + 1/β) P(1/β, (w/η)^β), by its series where the chance is small
 *
 * @param law - life
 * @param stretch - w, at least 0 [unit of the scale]
 * @returns time lost, to be expected [unit of the scale]
 * @range about 1e-13 relative
 * @source DERIVED; 1 − (1 − e^(−λT))/(λT) times T where the shape is 1
 */
export function lossOver(law: LifeLaw, stretch: number): number {
  const x = hazardBy(law, stretch);
  if (x < 0.5) return stretch * smallLoss(x, law.shape);
  const whole = Math.exp(logGamma(1 + 1 / law.shape));
  return stretch - law.scale * whole * gammaChance(1 / law.shape, x);
}

function smallLoss(x: number, shape: number): number {
  let term = 1;
  let sum = 0;
  for (let n = 1; n < 60 && Math.abs(term) > 1e-20; n += 1) {
    term *= -x / n;
    sum -= term / (n * shape + 1);
  }
  return sum;
}

const PLACES = gaussNodes(32, 0, 1);

/**
 * Time lost over a stretch where a test renews one share of the faults and the rest has aged before.
 *
 * ∫₀ʷ (1 − e^(−θH(s) − (1 − θ)H(a + s))) ds
 *
 * @param law - life
 * @param covered - θ, 0 to 1 [1]
 * @param age - a, of the rest where the stretch begins [unit of the scale]
 * @param stretch - w [unit of the scale]
 * @returns time lost, to be expected [unit of the scale]
 * @range closed form for a constant rate; else 32 places, about 1e-9 relative
 * @source DERIVED
 */
export function lossWhereAged(law: LifeLaw, covered: number, age: number, stretch: number): number {
  if (covered === 1 || age === 0) return lossOver(law, stretch);
  if (law.shape === 1) {
    const kept = Math.exp(-((1 - covered) * age) / law.scale);
    return (1 - kept) * stretch + kept * lossOver(law, stretch);
  }
  return PLACES.reduce((sum, { at, weight }) => {
    const s = stretch * at ** 3;
    const gone = -Math.expm1(-covered * hazardBy(law, s) - (1 - covered) * hazardBy(law, age + s));
    return sum + weight * 3 * at * at * stretch * gone;
  }, 0);
}
