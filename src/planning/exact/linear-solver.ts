/** A column of a linear model. */
export interface Column {
  readonly lower: number;
  readonly upper: number;
  readonly isWhole: boolean;
}

/** Coefficients by column. */
export type Terms = readonly (readonly [column: number, coefficient: number])[];

/** A row: lower <= terms <= upper. */
export interface Row {
  readonly terms: Terms;
  readonly lower: number;
  readonly upper: number;
}

/** A mixed-integer linear model; its cost is to be as small as possible. */
export interface LinearModel {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  readonly cost: Terms;
}

/** How far a solver is to go. */
export interface SolveLimits {
  /** Time it may take [s]. */
  readonly seconds: number;
  /** It may stop where cost and bound differ by no more. */
  readonly gap: number;
  /** A solution to start from, one value per column. */
  readonly start: readonly number[];
}

/** What a solver found. */
export interface Solved {
  /** One value per column, or none where it found no solution. */
  readonly values: readonly number[] | undefined;
  /** No solution costs less. */
  readonly bound: number;
  /** Time it took [s]. */
  readonly seconds: number;
}

/** A solver of mixed-integer linear models, handed in by whoever asks: a pure room loads none. */
export interface LinearSolver {
  solve(model: LinearModel, limits: SolveLimits): Solved;
}
