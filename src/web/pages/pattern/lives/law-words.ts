import { rangesOf, type LifeTold } from "#station";
import type { Words } from "#words";
import { sayLong } from "../interval/interval-words.ts";
import type { LivesWords } from "./lives-words.ts";

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
