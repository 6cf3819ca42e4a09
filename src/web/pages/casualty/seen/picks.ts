import type { Words } from "#words";
import type { UnitSystem } from "#base";
import type { DeckEdge, Righting } from "#readiness";
import { sayTrim } from "./words.ts";

/* What people can tell of her by eye, as big as a thumb. */

/** [rad] */
export const DEGREE = Math.PI / 180;

/** A list of so much is a sign to leave her by [rad]. */
export const GREAT_LIST = 20 * DEGREE;

interface Pick<Id extends string> {
  readonly id: Id;
  readonly words: string;
}

type SeenWords = Words["sheetSeen"];

/** Where her lowest deck edge is. */
export function edgePicks(words: SeenWords): readonly Pick<DeckEdge>[] {
  return [
    { id: "clear", words: words.edgeClear() },
    { id: "awash", words: words.edgeAwash() },
    { id: "under", words: words.edgeUnder() },
  ];
}

/** How she comes back from a roll. */
export function rightingPicks(words: SeenWords): readonly Pick<Righting>[] {
  return [
    { id: "comes-back", words: words.comesBack() },
    { id: "slowly", words: words.slowly() },
    { id: "stays", words: words.staysOver() },
  ];
}

/** The greatest list that can be written down [degrees]. */
export const MOST_LIST = 80;

/** Whole degrees of a list as typed, 1 to {@link MOST_LIST}; undefined where the text is none. */
export function readDegrees(text: string): number | undefined {
  const [, figures] = /^(\d{1,2})\s*°?$/.exec(text.trim()) ?? [];
  const degrees = Number(figures ?? 0);
  return degrees >= 1 && degrees <= MOST_LIST ? degrees : undefined;
}

const LISTS = [-40, -20, -10, -5, 0, 5, 10, 20, 40];

/** Lists to choose from, to port below 0 [rad]; one that was typed stands among them. */
export function listPicks(words: SeenWords, seen?: number): readonly (Pick<string> & { readonly si: number })[] {
  const typed = seen === undefined ? 0 : Math.round(seen / DEGREE);
  const lists = [...new Set([...LISTS, typed])].toSorted((one, other) => one - other);
  return lists.map((list) => {
    const degrees = Math.abs(list);
    const side = list < 0 ? words.port({ degrees }) : words.starboard({ degrees });
    return { id: `${list}`, words: list === 0 ? words.none() : side, si: list * DEGREE };
  });
}

/** Trim over her length, by the stern [m]. */
export function trimPicks(
  units: UnitSystem,
  words: SeenWords,
  told: Words["casualtyTold"],
): readonly (Pick<string> & { readonly si: number })[] {
  const foot = units === "metric" ? 0.3 : 0.3048;
  return [-2, -1, 0, 1, 2].map((feet) => {
    const si = feet * foot;
    return { id: `${feet}`, words: feet === 0 ? words.none() : sayTrim(si, units, told), si };
  });
}

/** True where the list seen is so great, to either side. */
export function isListAtLeast(list: number | undefined, least: number): boolean {
  return list !== undefined && Math.abs(list) >= least * (1 - 1e-9);
}
