import { newestOfEach, patternKey, type StrangerCard } from "#kit";
import type { StationView } from "#web/device/index.ts";

/** What a card can be shown for: a kit, or a pattern where no kit of it is here. */
export interface CardKit {
  readonly id: string;
  readonly name: string;
  readonly isKit: boolean;
  /** "id@version" */
  readonly pattern: string;
  readonly card: StrangerCard;
}

/** Kits whose pattern has a card, those handed over last first, then patterns with a card and no kit. */
export function cardKits({ kits, patterns }: Pick<StationView, "kits" | "patterns">): readonly CardKit[] {
  const ofKits = kits
    .toSorted((one, other) => awaySince(other).localeCompare(awaySince(one)) || compare(one.name, other.name))
    .flatMap(({ id, name, pattern }): readonly CardKit[] => {
      const card = patterns.get(pattern)?.stranger;
      return card === undefined ? [] : [{ id, name, isKit: true, pattern, card }];
    });
  const built = new Set(ofKits.map(({ pattern }) => pattern));
  const ofPatterns = newestOfEach([...patterns.values()]).flatMap((pattern): readonly CardKit[] => {
    const key = patternKey(pattern);
    if (pattern.stranger === undefined || built.has(key)) return [];
    return [{ id: key, name: pattern.name, isKit: false, pattern: key, card: pattern.stranger }];
  });
  return [...ofKits, ...ofPatterns];
}

/** When a kit left; empty for one that is here. */
function awaySince({ custody }: StationView["kits"][number]): string {
  return custody.kind === "away" ? custody.at : "";
}

function compare(one: string, other: string): number {
  return one.localeCompare(other, "en", { numeric: true });
}
