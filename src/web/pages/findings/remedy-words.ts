import { formatDate, parseDate } from "#base";
import type { Remedy } from "#readiness";

/** A remedy in a sentence. */
export function sayRemedy(remedy: Remedy): string {
  if (remedy.how === "mended") return `Mended: ${remedy.note}`;
  if (remedy.how === "lived-with") {
    return `Lived with by ${remedy.name} until ${formatDate(parseDate(remedy.until))}: ${remedy.limit}`;
  }
  const printed = remedy.fitted?.printed === undefined ? "" : `, printed ${remedy.fitted.printed}`;
  const note = remedy.note === undefined ? "" : `: ${remedy.note}`;
  return `Replaced with ${remedy.quantity} × ${remedy.part}${printed}${note}`;
}
