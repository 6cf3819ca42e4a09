import type { ErrorScale, Interpolant, Rate, Stepper } from "./ode-contract.ts";

// Dormand & Prince 5(4), J. Comput. Appl. Math. 6 (1980) 19-26; dense output after Hairer, Nørsett, Wanner, I, II.6.
// The measured order is tested in ode.laws.test.ts; the tableau's order conditions are tested in ode.sources.test.ts.
export const NODES = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1] as const;
export const TABLEAU = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
] as const;
export const ERROR_WEIGHTS = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40] as const;
const DENSE = [
  -12715105075 / 11282082432,
  0,
  87487479700 / 32700410799,
  -10690763975 / 1880347072,
  701980252875 / 199316789632,
  -1453857185 / 822651844,
  69997945 / 29380423,
] as const;

const STAGES = 7;
/** A little inside the stability interval on the negative real axis, which ends at about 3.3. */
const STABLE_REACH = 2.7;
/** Stretched steps, not set back by six calm ones in a row, that make a run stiff (Hairer & Wanner II, IV.2). */
const HELD_STEPS = 15;
const CALM_STEPS = 6;

/** The explicit method: one set of work arrays, first stage taken over from the last step's end. */
export function dormandPrince(rate: Rate, size: number, scale: ErrorScale): Stepper {
  const stages = Array.from({ length: STAGES }, () => new Float64Array(size));
  const next = new Float64Array(size);
  const before = new Float64Array(size);
  const point = new Float64Array(size);
  const lastPoint = new Float64Array(size);
  let from = Number.NaN;
  let length = 0;
  let reuse = false;
  let held = 0;
  let calm = 0;

  function attempt(t: number, y: Float64Array, h: number): number {
    if (reuse) stages[0]!.set(stages[6]!);
    else if (t !== from) rate(t, y, stages[0]!);
    reuse = false;
    from = t;
    length = h;
    before.set(y);
    for (let s = 1; s < STAGES; s += 1) evaluateStage(s, t, y, h);
    return errorOf(stages, y, next, h, scale);
  }

  function evaluateStage(s: number, t: number, y: Float64Array, h: number): void {
    const row = TABLEAU[s]!;
    const target = s === STAGES - 1 ? next : point;
    for (let i = 0; i < size; i += 1) {
      let sum = 0;
      for (let j = 0; j < s; j += 1) sum += row[j]! * stages[j]![i]!;
      target[i] = y[i]! + h * sum;
    }
    if (s === STAGES - 2) lastPoint.set(point);
    rate(t + NODES[s]! * h, target, stages[s]!);
  }

  function countHeld(stretched: boolean): void {
    calm = stretched ? 0 : calm + 1;
    if (stretched) held += 1;
    else if (calm >= CALM_STEPS) held = 0;
  }

  return {
    order: 5,
    attempt,
    next,
    accept() {
      countHeld(isStretched(stages, lastPoint, next, length));
      reuse = true;
      return interpolantOf(stages, before, next, length);
    },
    isHeldShort: () => held >= HELD_STEPS,
  };
}

function errorOf(stages: Float64Array[], y: Float64Array, next: Float64Array, h: number, scale: ErrorScale): number {
  let worst = 0;
  for (let i = 0; i < y.length; i += 1) {
    let sum = 0;
    for (let s = 0; s < STAGES; s += 1) sum += ERROR_WEIGHTS[s]! * stages[s]![i]!;
    const allowed = scale.absolute + scale.relative * Math.max(Math.abs(y[i]!), Math.abs(next[i]!));
    const error = Math.abs(h * sum) / allowed;
    if (!(error <= worst)) worst = error;
  }
  return worst;
}

/** Hairer's test: h·|f(y7) − f(y6)| / |y7 − y6| past the edge of stability. */
function isStretched(stages: Float64Array[], point: Float64Array, next: Float64Array, h: number): boolean {
  let slope = 0;
  let distance = 0;
  for (let i = 0; i < next.length; i += 1) {
    slope += (stages[6]![i]! - stages[5]![i]!) ** 2;
    distance += (next[i]! - point[i]!) ** 2;
  }
  return distance > 0 && h * Math.sqrt(slope / distance) > STABLE_REACH;
}

function interpolantOf(stages: Float64Array[], y: Float64Array, next: Float64Array, h: number): Interpolant {
  const size = y.length;
  const parts = new Float64Array(5 * size);
  for (let i = 0; i < size; i += 1) {
    const rise = next[i]! - y[i]!;
    const bend = h * stages[0]![i]! - rise;
    let dense = 0;
    for (let s = 0; s < STAGES; s += 1) dense += DENSE[s]! * stages[s]![i]!;
    parts[5 * i] = y[i]!;
    parts[5 * i + 1] = rise;
    parts[5 * i + 2] = bend;
    parts[5 * i + 3] = rise - h * stages[6]![i]! - bend;
    parts[5 * i + 4] = h * dense;
  }
  return (theta, out) => {
    const rest = 1 - theta;
    for (let i = 0; i < size; i += 1) {
      const p = 5 * i;
      const inner = parts[p + 3]! + rest * parts[p + 4]!;
      out[i] = parts[p]! + theta * (parts[p + 1]! + rest * (parts[p + 2]! + theta * inner));
    }
  };
}
