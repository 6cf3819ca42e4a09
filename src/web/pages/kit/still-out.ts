import { sayLent, sayLentOut, type KitState } from "#readiness";

/** What nobody fetches any more once the kit is retired: itself, and what was lent with it. */
export function sayStillOut({ custody, lentOut = [] }: KitState): readonly string[] {
  const short = lentOut.map((out) => `${sayLentOut(out)}.`);
  if (custody.kind !== "away") return short;
  const lent = (custody.lent ?? []).map(sayLent).join(", ");
  return [`The kit itself is with ${custody.to}${lent === "" ? "" : `, and with it: ${lent}`}.`, ...short];
}
