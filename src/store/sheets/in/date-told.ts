import type { KitState } from "#readiness";
import type { DateField } from "./date-fields.ts";

/** A date of a kit as it was written down: a month stays a month; "" where none is. */
export function dateTold(kit: KitState, { of, itemIn }: Pick<DateField, "of" | "itemIn">): string {
  const item = itemIn.get(kit.pattern.split("@", 1)[0]!);
  if (item === undefined) return "";
  const fitted = kit.contents[item];
  const own = kit.dates?.[item]?.[of];
  return own ?? (of === "made" ? "" : (fitted?.[of] ?? ""));
}
