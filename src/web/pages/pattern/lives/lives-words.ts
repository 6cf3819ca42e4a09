import { MOST_LOOKS, type ItemLives, type Lasting, type LifeTold, type LifeVerdict } from "#station";
import type { Words } from "#words";
import { sayLong } from "../interval/interval-words.ts";

/** What the pages of lives speak from. */
export interface LivesWords {
  readonly lives: Words["patternLives"];
  readonly law: Words["patternLaw"];
  /** For how long something is. */
  readonly interval: Words["patternInterval"];
}

/** "8.1 to 9.6 times in 10": a chance by its range of nine in ten, never alone. */
export function sayLasting({ low, high }: Lasting, { lives: words }: LivesWords): string {
  const [from, to] = [(10 * low).toFixed(1), (10 * high).toFixed(1)];
  return from === to ? words.timesInTen({ tenths: from }) : words.timesInTenRange({ low: from, high: to });
}

/** What a life rests on. */
export function sayRests(
  { lives, ended, looks, lost, undated }: Pick<LifeTold, "lives" | "ended" | "looks" | "lost" | "undated">,
  { lives: words }: LivesWords,
): string {
  return words.rests({ lives, ended, looks, lost, undated });
}

/** What is held against: a stated life, or the time from one opening to the next. */
export function saySpan({ span, isStated }: Pick<ItemLives, "span" | "isStated">, words: LivesWords): string {
  const long = { span: sayLong(span, words.interval) };
  return isStated ? words.lives.spanStated(long) : words.lives.spanNext(long);
}

/** Whether an item earns another life. */
export function sayLifeVerdict(verdict: LifeVerdict, isStated: boolean, { lives: words }: LivesWords): string {
  switch (verdict.kind) {
    case "shorter":
      return isStated ? words.shorterLife() : words.shorterNext();
    case "longer":
      return words.longerLife();
    case "lasts":
      return isStated ? words.lastsLife() : words.lastsNext();
    case "cannot-tell":
      return verdict.looks >= MOST_LOOKS
        ? words.cannotTellMost({ count: MOST_LOOKS })
        : words.cannotTell({ count: verdict.looks });
  }
}
