import { agesTold, rangesOf, wearOf, type AgeTold, type LifeTold } from "#station";
import type { Words } from "#words";
import { sayLong } from "../interval/interval-words.ts";
import type { LivesWords } from "./lives-words.ts";

/** By what age things are found bad, whether they wear, what was never seen, and what is lacking: a sentence each. */
export function sayAges(told: LifeTold, words: LivesWords): readonly string[] {
  const ages = agesTold(told);
  const long = (days: number) => sayLong(days, words.interval);
  const { lives, ended } = told;
  const wear = wearOf(told);
  const isBeyond = ended > 0 && ages.half.value > ages.oldest;
  return [
    ended === 0
      ? words.law.noSooner({ lives, tenth: long(ages.tenth.low), half: long(ages.half.low) })
      : words.law.agesBad({ tenth: sayAge(ages.tenth, words), half: sayAge(ages.half, words) }),
    ...(wear ? [words.law[WEARS[wear]]()] : []),
    ...(isBeyond ? [words.law.beyondSeen({ oldest: long(ages.oldest) })] : []),
    ...(ages.lack ? [words.law.lacking({ ended, lives, wanted: ages.lack.ended, more: ages.lack.lives })] : []),
  ];
}

const WEARS = { wears: "itWears", lasts: "firstLasts", unknown: "wearUnknown" } as const;

function sayAge({ value, low, high }: AgeTold, words: LivesWords): string {
  const [age, from, to] = [value, low, high].map((days) => sayLong(days, words.interval));
  return words.law.ageRange({ age: age!, low: from!, high: to! });
}

/** The law in words, with its ranges; or why there is none. */
export function sayLaw({ fits: [best], ended }: Pick<LifeTold, "fits" | "ended">, words: LivesWords): string {
  if (!best) return ended === 0 ? words.law.noneBad() : words.law.tooFew();
  const { scale, shape } = rangesOf(best);
  const [age, low, high] = [best.scale, ...scale].map((days) => sayLong(days, words.interval));
  const of = { law: words.law[best.model](), age: age!, low: low!, high: high! };
  return [
    best.model === "lognormal" ? words.law.halfEnded(of) : words.law.twoThirdsEnded(of),
    ...(shape ? [sayShape(best, shape, words.law)] : []),
    ended < 5 ? words.law.fewEnded() : words.law.weighed(),
  ].join(" ");
}

type Fit = Pick<LifeTold["fits"][number], "model" | "shape">;

function sayShape({ model, shape }: Fit, [low, high]: readonly [number, number], words: Words["patternLaw"]): string {
  const of = { shape: shape.toFixed(1), low: low.toFixed(1), high: high.toFixed(1) };
  if (model !== "weibull") return words.shape(of);
  if (low > 1) return words.shapeWears(of);
  return high < 1 ? words.shapeFirst(of) : words.shapeUnknown(of);
}

/** Other laws by how much less likely they make what was seen. */
export function sayOthers(
  { fits: [best, ...others] }: Pick<LifeTold, "fits">,
  { law: words }: LivesWords,
): string | undefined {
  if (!best || others.length === 0) return undefined;
  const laws = others.map(({ model, logLikelihood }) =>
    words.otherLaw({ law: words[model](), less: (best.logLikelihood - logLikelihood).toFixed(2) }),
  );
  return words.others({ laws: laws.join(", ") });
}
