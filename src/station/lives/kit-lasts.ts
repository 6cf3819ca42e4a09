import type { Item, Pattern } from "#kit";
import type { Lasting } from "#reliability";
import { daysIn } from "../opening-interval/span-days.ts";
import { standingSpan } from "../opening-interval/proposal.ts";
import { lastsTo } from "./life-told.ts";
import { livingNow, type KitLines } from "./lives-seen.ts";
import { modesLookedFor, type ItemLives, type LivesLog } from "./pattern-lives.ts";

/** Whether an item of one kit lasts to its next opening. */
export interface KitLasts {
  readonly item: Item;
  /** Since it was new [d]. */
  readonly age: number;
  /** Until the next opening, by what holds for the pattern; 0 where it is overdue [d]. */
  readonly left: number;
  readonly lasts: Lasting;
}

const DAY = 86_400_000;

/**
 * Chance that each item of a kit, good when it was last looked at, lasts to the next opening.
 *
 * @param given - the kit
 * @param pattern - its newest version
 * @param lives - of the items of its pattern, by `patternLives`
 * @param log - the station
 * @returns least likely first; items found bad and not mended yet are left out
 */
export function kitLasts(
  given: KitLines,
  pattern: Pattern,
  lives: readonly ItemLives[],
  log: LivesLog,
): readonly KitLasts[] {
  const { kit } = given;
  const opening = standingSpan(pattern, log.policy);
  const closed = kit.turnarounds.findLast((one) => one.closed && one.closed.how !== "set-aside")?.closed;
  if (!opening || !closed) return [];
  const next = Date.parse(closed.at) + daysIn(opening) * DAY;
  const all = lives.flatMap(({ item, told }) => {
    const modes = new Set(modesLookedFor(pattern, item).map(({ id }) => id));
    const own = livingNow(given, log.patterns.get(kit.pattern) ?? pattern, item, modes);
    if (!own) return [];
    const age = (Date.parse(log.now) - Date.parse(own.from)) / DAY;
    const left = Math.max(0, (next - Date.parse(log.now)) / DAY);
    return left > 0 ? [{ item, age, left, lasts: lastsTo(told, own.after, age + left) }] : [];
  });
  return all.toSorted((one, other) => one.lasts.chance - other.lasts.chance);
}
