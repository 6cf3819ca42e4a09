import { checkNamed, itemNamed, stageNamed } from "./look-ups.ts";
import type { Item, Pattern, Step } from "./pattern.ts";

/**
 * True for what is looked at while the container is closed: the seal itself, and what the opening stage asks before a
 * line opens it. The line that opens it is the first that works a clamp; where none
 * does, the last before one that asks of something kept elsewhere.
 *
 * @param pattern - where no check reads the seal against the record, or none of this name is there, nothing is outside
 * @param step - id
 * @param check - id
 * @source DERIVED from the order of lines and the places of items; in doubt the line lies behind the seal
 */
export function isSeenClosed(pattern: Pattern, step: string, check: string): boolean {
  const seal = sealOf(pattern);
  const steps = stageNamed(pattern, "open")?.steps ?? [];
  const at = steps.findIndex(({ id }) => id === step);
  if (seal === undefined || at === -1) return false;
  return checkNamed(pattern, check)?.item === seal.id || at < openingAt(pattern, seal, steps);
}

function sealOf(pattern: Pattern): Item | undefined {
  const read = pattern.checks.find((check) => check.kind === "match" && check.against === "recorded-seal");
  return read && itemNamed(pattern, read.item);
}

/** Index of the line that opens the container. */
function openingAt(pattern: Pattern, seal: Item, steps: readonly Step[]): number {
  const clamp = steps.findIndex(({ hazards }) => hazards.includes("closes-clamp"));
  if (clamp !== -1) return clamp;
  const inside = steps.findIndex(({ checks }) => checks.some((id) => placeOf(pattern, id) !== seal.place));
  return (inside === -1 ? steps.length : inside) - 1;
}

function placeOf(pattern: Pattern, check: string): string | undefined {
  const item = checkNamed(pattern, check)?.item;
  return item === undefined ? undefined : itemNamed(pattern, item)?.place;
}
