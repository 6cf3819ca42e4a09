/**
 * Chances that 0, 1, … up to `most` of some trials come, each by itself and with its own chance.
 *
 * @param chances - that each comes, 0 to 1 [1]
 * @param most - whole, 0 to as many as there are; all of them unless said otherwise
 * @returns one chance per count [1]
 * @source DERIVED: Poisson's binomial law, one trial taken in after the other
 * @example sumLaw([0.5, 0.25]) // [0.375, 0.5, 0.125]
 */
export function sumLaw(chances: readonly number[], most = chances.length): readonly number[] {
  const none = Array.from({ length: most + 1 }, (_, k) => Number(k === 0));
  return chances.reduce<readonly number[]>(
    (law, chance) => law.map((one, k) => one * (1 - chance) + (law[k - 1] ?? 0) * chance),
    none,
  );
}
