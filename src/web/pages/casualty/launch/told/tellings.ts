/** A level told, with when [ms] and over the floor [m]. */
export interface ToldLevel {
  readonly at: number;
  readonly water: number;
}

/** A level told again within this was a slip of the thumb [ms]. */
const SAME = 45_000;
const MOST = 12;

/** Levels with one more: it stands beside those told a while before, and in place of one just told. */
export function withLevel(
  tellings: readonly ToldLevel[],
  water: number | undefined,
  now: number,
): readonly ToldLevel[] {
  if (water === undefined) return [];
  return [...tellings.filter(({ at }) => now - at > SAME), { at: now, water }].slice(-MOST);
}

/**
 * Levels as the question takes them [s, m].
 *
 * @param now - in whole minutes [ms], so that it is not asked anew at every tick; the time between levels is as told
 */
export function tellingsOf(
  tellings: readonly ToldLevel[],
  now: number,
): readonly { readonly ago: number; readonly water: number }[] {
  const last = tellings.at(-1);
  if (!last) return [];
  const since = Math.max(0, Math.round((now - last.at) / 60_000) * 60);
  return tellings.map(({ at, water }) => ({ ago: since + Math.round((last.at - at) / 1000), water }));
}
