import { MET, type CountedItem, type Met } from "#kit";
import type { Words } from "#words";
import { sayMet } from "#readiness";
import type { Counting } from "./count-part.tsx";
import { isCounted, type Said } from "./counting.ts";
import type { Stopped } from "./stopped.ts";

/** What a return is asked, as far as it is answered. */
export interface Returning {
  readonly met: Readonly<Partial<Record<Met, "yes" | "no">>>;
  readonly stopped?: Stopped;
  readonly counting?: Counting;
  readonly said: Said;
}

/** True where it was in any of them: when it last pumped then decides how soon it is flushed. */
export function isMet(met: Returning["met"]): boolean {
  return MET.some((what) => met[what] === "yes");
}

/**
 * What is still to be said before a kit is back, in the order of the page; nothing once all of it is.
 *
 * @param counted - what its pattern wants counted
 * @returns such as ["yes or no to oil", "when it last pumped"]
 */
export function stillToSay(
  { met, stopped, counting, said }: Returning,
  counted: readonly CountedItem[],
  { handOver: words, standing }: { readonly handOver: Words["handOver"]; readonly standing: Words["standing"] },
): string[] {
  const unsaid = MET.filter((what) => met[what] === undefined);
  const parts = [
    unsaid.length > 0 && words.yesOrNo({ what: unsaid.map((what) => sayMet([what], standing)).join(", ") }),
    isMet(met) && stopped === undefined && words.whenPumped(),
    counted.length > 0 && counting === undefined && words.whetherAll(),
    counting === "some" && !isCounted(counted, said) && words.ofEach(),
  ];
  return parts.filter((part) => part !== false);
}
