/** y' = f(t, y), written into `out`. Must be a pure function of t and y. */
export type Rate = (t: number, y: Float64Array, out: Float64Array) => void;

/** ∂f/∂y, row by row, written into `out` (n × n). */
export type Jacobian = (t: number, y: Float64Array, out: Float64Array) => void;

/** Error allowed per step. */
export interface ErrorScale {
  readonly relative: number;
  readonly absolute: number;
}

/** What a method offers the driver. One value per run; it owns its work arrays. */
export interface Stepper {
  readonly order: number;
  /** Tries a step of length h from (t, y); afterwards `next` holds the end state. Returns the scaled error, at most 1 to accept. */
  attempt(t: number, y: Float64Array, h: number): number;
  readonly next: Float64Array;
  /** Called after acceptance; returns the interpolant on θ in [0, 1]. */
  accept(): Interpolant;
  /** True when the steps are held short by stability, not by accuracy. */
  isHeldShort(): boolean;
}

export type Interpolant = (theta: number, out: Float64Array) => void;
