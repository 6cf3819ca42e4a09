import { assert } from "#base";

/** What was told of a figure: below `value` it lies with this chance. */
export interface ToldPercentile {
  /** Above 0, below 1 [1]. */
  readonly chance: number;
  /** In the unit of the figure. */
  readonly value: number;
}

/**
 * Continuous ranked probability score of percentiles told of a figure: how far off they were, spread and all. For a
 * forecast without spread it is the distance from what came; for a yes or no it is Brier's score.
 *
 * CRPS(F, x) = ∫ (F(y) − 1{y ≥ x})² dy, F straight between the percentiles and on beyond the outer ones as steep as beside them
 *
 * @param told - two or more, by rising chance; values that never fall
 * @param came - what came, in their unit
 * @returns score, in their unit; 0 is best
 * @range what is beyond the outer percentiles is a straight tail, shorter than that of a bell curve
 * @source Gneiting & Raftery, J. Amer. Statist. Assoc. 102 (2007) 359-378, equation 20 (FROM MEMORY); pieces DERIVED
 * @example crpsOfPercentiles([{ chance: 0.25, value: 0.25 }, { chance: 0.75, value: 0.75 }], 0.5) // 0.08333
 */
export function crpsOfPercentiles(told: readonly ToldPercentile[], came: number): number {
  const places = withTails(told);
  const [first, last] = [places[0]!, places.at(-1)!];
  const beyond = Math.max(0, first.value - came) + Math.max(0, came - last.value);
  return places.slice(1).reduce((sum, to, i) => sum + pieceOf(places[i]!, to, came), beyond);
}

function withTails(told: readonly ToldPercentile[]): readonly ToldPercentile[] {
  const [first, second] = told;
  const [before, last] = told.slice(-2);
  assert(first && second && before && last, "two percentiles or more");
  const low = first.value - (first.chance * (second.value - first.value)) / (second.chance - first.chance);
  const high = last.value + ((1 - last.chance) * (last.value - before.value)) / (last.chance - before.chance);
  return [{ chance: 0, value: low }, ...told, { chance: 1, value: high }];
}

/** The integral over one straight piece of F. */
function pieceOf(from: ToldPercentile, to: ToldPercentile, came: number): number {
  const width = to.value - from.value;
  if (width <= 0) return 0;
  const share = Math.min(1, Math.max(0, (came - from.value) / width));
  const at = from.chance + share * (to.chance - from.chance);
  return width * (share * meanSquare(from.chance, at) + (1 - share) * meanSquare(1 - at, 1 - to.chance));
}

/** Mean of the square of what runs straight from one to the other. */
function meanSquare(from: number, to: number): number {
  return (from * from + from * to + to * to) / 3;
}
