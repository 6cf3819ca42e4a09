import { sayLent, sayLentOut, type KitState } from "#readiness";
import type { Words } from "#words";

/** What nobody fetches any more once the kit is retired: itself, and what was lent with it. */
export function sayStillOut({ custody, lentOut = [] }: KitState, words: Words["keep"]): readonly string[] {
  const short = lentOut.map((out) => words.sentence({ what: sayLentOut(out) }));
  if (custody.kind !== "away") return short;
  const lent = (custody.lent ?? []).map(sayLent).join(", ");
  const vessel = custody.to;
  return [lent === "" ? words.isWith({ vessel }) : words.isWithLent({ vessel, lent }), ...short];
}
