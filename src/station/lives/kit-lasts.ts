import { dayNumber, type PlainDate } from "#base";
import type { Item, Pattern } from "#kit";
import type { Lasting } from "#reliability";
import { lastsTo } from "./life-told.ts";
import { livingNow, type KitLines } from "./lives-seen.ts";
import { modesLookedFor, type ItemLives, type LivesLog } from "./pattern-lives.ts";

/** Whether an item of one kit lasts to its next opening. */
export interface KitLasts {
  readonly item: Item;
  /** Since it was new [d]. */
  readonly age: number;
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
 * @param next - day of its next opening, as `nextOpening` has it
 * @returns least likely first; items found bad and not mended yet are left out
 */
export function kitLasts(
  given: KitLines,
  pattern: Pattern,
  lives: readonly ItemLives[],
  log: LivesLog,
  next: PlainDate,
): readonly KitLasts[] {
  const now = Date.parse(log.now);
  const left = dayNumber(next) - Math.floor(now / DAY);
  if (left <= 0) return [];
  const all = lives.flatMap(({ item, told }) => {
    const modes = new Set(modesLookedFor(pattern, item).map(({ id }) => id));
    const own = livingNow(given, log.patterns.get(given.kit.pattern) ?? pattern, item, modes);
    if (!own) return [];
    const age = (now - Date.parse(own.from)) / DAY;
    return [{ item, age, lasts: lastsTo(told, own.after, age + left) }];
  });
  return all.toSorted((one, other) => one.lasts.chance - other.lasts.chance);
}
