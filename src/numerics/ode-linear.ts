/** A matrix taken apart by Gauss elimination with row exchange. */
export interface Factors {
  readonly size: number;
  readonly matrix: Float64Array;
  readonly order: Int32Array;
}

/** P·A = L·U. `matrix` (row by row) is overwritten. Undefined when it is singular or not finite. */
export function factorise(matrix: Float64Array, size: number): Factors | undefined {
  const order = Int32Array.from({ length: size }, (_, i) => i);
  for (let k = 0; k < size; k += 1) {
    const pivot = largestBelow(matrix, size, k);
    if (!(Math.abs(matrix[pivot * size + k]!) > 0)) return undefined;
    exchangeRows(matrix, size, order, k, pivot);
    eliminateBelow(matrix, size, k);
  }
  return { size, matrix, order };
}

function largestBelow(matrix: Float64Array, size: number, k: number): number {
  let best = k;
  for (let i = k + 1; i < size; i += 1) {
    if (Math.abs(matrix[i * size + k]!) > Math.abs(matrix[best * size + k]!)) best = i;
  }
  return best;
}

function exchangeRows(matrix: Float64Array, size: number, order: Int32Array, a: number, b: number): void {
  if (a === b) return;
  for (let j = 0; j < size; j += 1) {
    const kept = matrix[a * size + j]!;
    matrix[a * size + j] = matrix[b * size + j]!;
    matrix[b * size + j] = kept;
  }
  const kept = order[a]!;
  order[a] = order[b]!;
  order[b] = kept;
}

function eliminateBelow(matrix: Float64Array, size: number, k: number): void {
  for (let i = k + 1; i < size; i += 1) {
    const factor = matrix[i * size + k]! / matrix[k * size + k]!;
    matrix[i * size + k] = factor;
    for (let j = k + 1; j < size; j += 1) matrix[i * size + j]! -= factor * matrix[k * size + j]!;
  }
}

/** Solves A·x = b into `out`, with b given entry by entry. */
export function solveFactorised(factors: Factors, right: (index: number) => number, out: Float64Array): void {
  const { size, matrix, order } = factors;
  for (let i = 0; i < size; i += 1) {
    let sum = right(order[i]!);
    for (let j = 0; j < i; j += 1) sum -= matrix[i * size + j]! * out[j]!;
    out[i] = sum;
  }
  for (let i = size - 1; i >= 0; i -= 1) {
    let sum = out[i]!;
    for (let j = i + 1; j < size; j += 1) sum -= matrix[i * size + j]! * out[j]!;
    out[i] = sum / matrix[i * size + i]!;
  }
}
