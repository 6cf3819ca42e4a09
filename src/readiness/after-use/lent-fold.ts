import type { Entry } from "#log";
import { inWords, type Saying, type Words } from "#words";
import { markOf, type KitDraft } from "../draft.ts";
import type { Lent } from "../kinds/kit-parts.ts";
import type { LentOut } from "../state.ts";

/** Counts what was lent against what went: what is short, and what nobody counted, is out from then on. */
export function countLent(draft: KitDraft, counted: readonly Lent[] | undefined, entry: Entry): void {
  const { custody } = draft.kit;
  if (custody.kind !== "away" || custody.lent === undefined) return;
  const back = new Map(counted?.map(({ name, count }) => [name, count]));
  const short = custody.lent.flatMap(({ name, count }): readonly LentOut[] => {
    const left = count - (back.get(name) ?? 0);
    const out = { ...markOf(entry), name, count: left, to: custody.to, isCounted: back.has(name) };
    return left > 0 ? [out] : [];
  });
  if (short.length > 0) draft.kit.lentOut = [...(draft.kit.lentOut ?? []), ...short];
}

/** What of it is still out, and with whom: "Lent to the vessel, not back: fuel can (1)". */
export function sayLentOut(out: LentOut, words: Words["standing"]): string {
  return inWords(lentOutToSay(out), words);
}

/** The same before it is said in a language. */
export function lentOutToSay(out: LentOut): Saying<"standing"> {
  return { say: out.isCounted ? "lentNotBack" : "lentNotCounted", of: { to: out.to, thing: sayLent(out) } };
}

/** A thing lent, and how many: "fuel can (2)". */
export function sayLent({ name, count }: Lent): string {
  return `${name} (${count})`;
}
