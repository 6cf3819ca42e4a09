import { formatDate } from "#base";
import type { OrderLine } from "#readiness";

/** Why a part must be ordered: the shelf, what is to be kept, and the first thing that wants it. */
export function sayWhy({ usable, onOrder, least, needs, want, part }: OrderLine): string {
  const [first] = needs;
  return [
    `${usable} fit to use${onOrder > 0 ? `, ${onOrder} on order` : ""}`,
    least > 0 ? `keep ${least}` : "",
    first
      ? `${first.item} of ${first.kit} by ${formatDate(first.day)}${needs.length > 1 ? ` and ${needs.length - 1} more` : ""}`
      : "",
    `wanted by ${formatDate(want)}`,
    part.leadTime === undefined ? "no lead time on record" : `comes in ${part.leadTime}`,
  ]
    .filter((words) => words !== "")
    .join("; ");
}
