import { sayLent, sayLentOut, type KitState } from "#readiness";
import type { Words } from "#words";

interface StillOutWords {
  readonly keep: Words["keep"];
  readonly standing: Words["standing"];
}

/** What nobody fetches any more once the kit is retired: itself, and what was lent with it. */
export function sayStillOut(
  { custody, lentOut = [] }: KitState,
  { keep: words, standing }: StillOutWords,
): readonly string[] {
  const short = lentOut.map((out) => words.sentence({ what: sayLentOut(out, standing) }));
  if (custody.kind !== "away") return short;
  const lent = (custody.lent ?? []).map(sayLent).join(", ");
  const vessel = custody.to;
  return [lent === "" ? words.isWith({ vessel }) : words.isWithLent({ vessel, lent }), ...short];
}
