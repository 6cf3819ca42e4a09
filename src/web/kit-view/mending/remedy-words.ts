import { formatDate, parseDate } from "#base";
import { mayBeLivedWith, type Finding, type Remedy, type Role } from "#readiness";
import { isKeeper } from "#station";

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

/** Why living with a finding is not offered, and who may or what to do instead; undefined where it is. */
export function sayWhyNotLivedWith(finding: Pick<Finding, "effect">, role: Role): string | undefined {
  if (!mayBeLivedWith(finding)) return "It grounds the kit: mend or replace it, or close the kit as grounded.";
  return isKeeper(role) ? undefined : "Only a keeper or an administrator may decide to live with it.";
}
