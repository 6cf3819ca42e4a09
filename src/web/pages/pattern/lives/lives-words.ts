import { MOST_LOOKS, rangesOf, type ItemLives, type Lasting, type LifeTold, type LifeVerdict } from "#station";
import { sayCount } from "#web/parts/words/say-count.ts";
import { sayLong } from "../interval/interval-words.ts";

/** "8.1 to 9.6 times in 10": a chance by its range of nine in ten, never alone. */
export function sayLasting({ low, high }: Lasting): string {
  const tenths = [low, high].map((chance) => (10 * chance).toFixed(1));
  return tenths[0] === tenths[1] ? `${tenths[0]} times in 10` : `${tenths[0]} to ${tenths[1]} times in 10`;
}

/** What a life rests on. */
export function sayRests({ lives, ended, looks }: Pick<LifeTold, "lives" | "ended" | "looks">): string {
  return `${sayCount(lives, "life", "lives")}, ${ended === 0 ? "none" : ended} ended, ${sayCount(looks, "look")}`;
}

/** What is held against: a stated life, or the time from one opening to the next. */
export function saySpan({ span, isStated }: Pick<ItemLives, "span" | "isStated">): string {
  return isStated ? `its stated life of ${sayLong(span)}` : `${sayLong(span)}, from one opening to the next`;
}

/** Whether an item earns another life. */
export function sayLifeVerdict(verdict: LifeVerdict, isStated: boolean): string {
  switch (verdict.kind) {
    case "shorter":
      return isStated
        ? "Earns a shorter life: even at best fewer than 9 in 10 last it"
        : "Even at best fewer than 9 in 10 last to the next opening";
    case "longer":
      return "Earns a longer life: even at worst 9 in 10 last half as long again";
    case "lasts":
      return `Lasts ${isStated ? "its stated life" : "to the next opening"} at least 9 times in 10`;
    case "cannot-tell": {
      const more =
        verdict.looks >= MOST_LOOKS
          ? `more than ${MOST_LOOKS} more looks`
          : `about ${sayCount(verdict.looks, "more look")}`;
      return `Too little to tell: it takes ${more}`;
    }
  }
}

const NAMES = { weibull: "Weibull", lognormal: "lognormal", exponential: "exponential" } as const;

/** The law in words, with its ranges; or why there is none. */
export function sayLaw({ fits: [best], ended }: Pick<LifeTold, "fits" | "ended">): string {
  if (!best) {
    return ended === 0
      ? "None was found bad yet: chances are told at a steady rate, which lies between none and what so much time without a find still allows."
      : "Too few ended for a law of life: chances are told at a steady rate.";
  }
  const { scale, shape } = rangesOf(best);
  const about = best.model === "lognormal" ? "half ended by" : "nearly two in three ended by";
  const spread = shape
    ? ` Shape ${best.shape.toFixed(1)} (${shape[0].toFixed(1)} to ${shape[1].toFixed(1)})${sayShape(best.model, shape)}.`
    : "";
  const few =
    ended < 5
      ? " Fewer than five ended: the chances above are told at a steady rate, not by this law."
      : " Chances weigh Weibull and lognormal by how likely the looks make each.";
  return `Likeliest law: ${NAMES[best.model]}, ${about} ${sayLong(best.scale)} (${sayLong(scale[0])} to ${sayLong(scale[1])}).${spread}${few}`;
}

function sayShape(model: keyof typeof NAMES, [low, high]: readonly [number, number]): string {
  if (model !== "weibull") return "";
  if (low > 1) return ": it wears out";
  return high < 1 ? ": what lasts at first lasts longer" : ": whether it wears out cannot be told";
}

/** Other laws by how much less likely they make what was seen. */
export function sayOthers({ fits: [best, ...others] }: Pick<LifeTold, "fits">): string | undefined {
  if (!best || others.length === 0) return undefined;
  const told = others.map(({ model, logLikelihood }) => {
    return `${NAMES[model]} (ln likelihood less by ${(best.logLikelihood - logLikelihood).toFixed(2)})`;
  });
  return `Beside it: ${told.join(", ")}. A difference below about 2 decides nothing.`;
}
