/**
 * What stands at a place of a list or a typed array.
 *
 * @param index - from 0, below the length
 * @throws RangeError naming index and length, where nothing stands there
 * @example nth(["a", "b"], 1) // "b"
 */
export function nth<T>(values: ArrayLike<T>, index: number): NonNullable<T> {
  return values[index] ?? nothingAt(values, index);
}

/**
 * The first of a list.
 *
 * @throws RangeError where the list is empty
 * @example firstOf([3, 4, 5]) // 3
 */
export function firstOf<T>(values: ArrayLike<T>): NonNullable<T> {
  return nth(values, 0);
}

/**
 * The last of a list.
 *
 * @throws RangeError where the list is empty
 * @example lastOf([3, 4, 5]) // 5
 */
export function lastOf<T>(values: ArrayLike<T>): NonNullable<T> {
  return nth(values, values.length - 1);
}

/**
 * As `nth`, of numbers in a Float64Array and nothing else: for loops that run millions of times. An engine makes one fast
 * load of an access that has seen one kind of array; `nth` sees them all.
 *
 * @param index - from 0, below the length
 * @throws RangeError naming index and length, where nothing stands there
 * @example numberAt(Float64Array.of(0.5, 0.25), 1) // 0.25
 */
export function numberAt(values: Float64Array, index: number): number {
  return values[index] ?? nothingAt(values, index);
}

function nothingAt(values: ArrayLike<unknown>, index: number): never {
  throw new RangeError(`There is nothing at index ${index} of ${values.length}.`);
}
