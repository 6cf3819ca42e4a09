import { sayDate } from "#web/parts/index.ts";
import type { OrderLine, StockPart } from "#readiness";
import type { Words } from "#words";

/** Why a part must be ordered: the shelf, what is to be kept, and the first thing that wants it. */
export function sayWhy({ usable, onOrder, least, needs, want, part }: OrderLine, words: Words["stock"]): string {
  return [
    onOrder > 0 ? words.fitAndOnOrder({ usable, onOrder }) : words.fitToUse({ usable }),
    least > 0 ? words.keepLeast({ least }) : "",
    sayFirst(needs, words),
    words.wantedBy({ day: sayDate(want) }),
    sayLead(part, words),
  ]
    .filter((reason) => reason !== "")
    .join(words.reasonsBetween());
}

/** How long a part takes to come; where nobody said so, what is supposed. */
export function sayLead({ leadTime }: Pick<StockPart, "leadTime">, words: Words["stock"]): string {
  return leadTime === undefined ? words.leadSupposed() : words.comesIn({ span: leadTime });
}

/** That nothing falls short: of parts that are not on the list nothing is known, and that is said. */
export function sayNothingShort(unlisted: number, words: Words["stock"]): string {
  return unlisted === 0 ? words.nothingShort() : words.nothingShortListed({ count: unlisted });
}

function sayFirst([first, ...more]: OrderLine["needs"], words: Words["stock"]): string {
  if (!first) return "";
  const need = { item: first.item, kit: first.kit, day: sayDate(first.day) };
  return more.length === 0 ? words.needOf(need) : words.needOfMore({ ...need, more: more.length });
}
