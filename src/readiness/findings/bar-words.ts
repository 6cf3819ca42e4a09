import type { Work } from "#kit";
import { inWords, type Saying, type Words } from "#words";
import type { Bar } from "./barred.ts";

type HeldWords = Words["held"];

/** A bar in a sentence or two: what it is, and what it forbids. */
export function sayBarred({ said, works, hangs }: Bar, words: HeldWords): string {
  const what = typeof said === "string" ? said : inWords(said, words);
  return hangs ? words.nothingAfter({ what }) : words.forbids({ what, works: sayWorks(works, words) });
}

/** The work that is barred, in words: "letting fuel flow, starting it". */
export function sayWorks(works: readonly Work[], words: HeldWords): string {
  return works.map((work) => words.work({ work })).reduce((some, next) => words.listed({ some, next }));
}

/** What a person does about a bar, in words. */
export function sayWayOut(bar: Pick<Bar, "open" | "hangs" | "stopped">, words: HeldWords): string {
  return inWords(wayOut(bar), words);
}

function wayOut({ open, hangs, stopped }: Pick<Bar, "open" | "hangs" | "stopped">): Saying<"held"> {
  if (stopped === "early") return { say: "hangAgain" };
  if (stopped === "over") return { say: "answerIt" };
  if (hangs) return { say: "answerLater" };
  return { say: open === undefined ? "mendIt" : "answerRest" };
}
