import { worthTelling } from "#reliability";
import { z } from "zod";

/** One failure more among the others, where it speaks for this one. */
export function oneMoreOut(unit: string) {
  return z
    .number()
    .exactOptional()
    .describe(
      `Only where one failure more among the others would make failing look less likely here: the least mean it would come to [${unit}]`,
    );
}

/** The field of an answer and its words; neither where it is not worth telling. */
export interface OneMore {
  readonly told: { readonly oneMore?: number };
  readonly words: string;
}

const UNTOLD: OneMore = { told: {}, words: "" };

/**
 * Where one failure more among others would make failing look less likely, with the words for it. A record is drawn to others
 * by how much they differ: one failure more changes that too, and now and then by more than it changes what they come to.
 *
 * @param mean - as told
 * @param oneMore - the least that one failure more of any other would make of it; undefined where there are no others
 * @param say - a mean in figures
 * @returns nothing where it moves by less than one in a hundred
 */
export function oneMoreOf(
  mean: number,
  oneMore: number | undefined,
  say: (mean: number, figures: number) => string,
): OneMore {
  const told = worthTelling(mean, oneMore);
  if (told === undefined) return UNTOLD;
  return { told: { oneMore: told }, words: sayMore("failure more among the others", "it", pairOf(told, mean, say)) };
}

function sayMore(what: string, which: string, pair: string): string {
  return ` One ${what} could make ${which} look less likely, ${pair}: how far a record is drawn to others hangs on how much they differ, and it changes that too. Take it for no better.`;
}

/** Both to two figures, or to three where two say the same. */
function pairOf(least: number, mean: number, say: (mean: number, figures: number) => string): string {
  const figures = say(least, 2) === say(mean, 2) ? 3 : 2;
  return `${say(least, figures)} for ${say(mean, figures)}`;
}

/** A chance in so many figures. */
export function sayFigures(chance: number, figures: number): string {
  return String(Number(chance.toPrecision(figures)));
}

/**
 * The same of a check that finds: where one fault more missed by another check would make finding look likelier.
 *
 * @param mean - chance of finding, as told [1]
 * @param oneMore - the most that one fault more missed by any other would make of it [1]
 * @returns nothing where the chance of missing moves by less than one in a hundred
 */
export function oneMissMore(mean: number, oneMore: number | undefined): OneMore {
  const told = worthTelling(1 - mean, oneMore === undefined ? undefined : 1 - oneMore);
  if (oneMore === undefined || told === undefined) return UNTOLD;
  return {
    told: { oneMore },
    words: sayMore("fault more missed by another", "missing", pairOf(told, 1 - mean, sayFigures)),
  };
}
