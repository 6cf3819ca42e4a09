/** Unions of crews that are written as rows at most. */
const MOST_UNIONS = 64;

/**
 * Every union of crews: work can be shared within hours exactly where, for each union, the work open only to its people is
 * no more than their hours.
 * @param crews - of the kits that one week may open
 * @returns undefined where there are too many
 * @source DERIVED: greatest flow, least cut (Ford and Fulkerson 1956), for work that any people of a crew may share
 */
export function crewUnions(crews: readonly (readonly number[])[]): readonly ReadonlySet<number>[] | undefined {
  const found = new Map<string, ReadonlySet<number>>();
  for (const crew of crews.filter((one) => one.length > 0)) {
    for (const union of [new Set<number>(), ...found.values()]) {
      const wider = new Set([...union, ...crew]);
      found.set([...wider].toSorted((one, other) => one - other).join(), wider);
    }
    if (found.size > MOST_UNIONS) return undefined;
  }
  return [...found.values()];
}
