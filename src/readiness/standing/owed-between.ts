import { toLookAtAgain, type LookAgain, type Pattern } from "#kit";

/** Versions never change: what lies between two is worked out once, not for every kit of every board. */
const KNOWN = new WeakMap<Pattern, WeakMap<Pattern, readonly LookAgain[]>>();

/** What a kit last turned round under one version has to be looked at for under another. */
export function owedBetween(from: Pattern, to: Pattern): readonly LookAgain[] {
  const others = KNOWN.get(from) ?? new WeakMap<Pattern, readonly LookAgain[]>();
  const owed = others.get(to) ?? toLookAtAgain(from, to);
  KNOWN.set(from, others.set(to, owed));
  return owed;
}
