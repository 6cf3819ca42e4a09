import { sayCount } from "#base";
import type { LifeFit, LifeModel } from "#reliability";

/** Parameters of each law. */
const PARAMETERS: Readonly<Record<LifeModel, number>> = { weibull: 2, lognormal: 2, exponential: 1 };
const NAMES: Readonly<Record<LifeModel, string>> = {
  weibull: "Weibull",
  lognormal: "lognormal",
  exponential: "exponential",
};

/** Laws whose AIC lie no further apart than this fit about as well as each other [1]. */
const ALIKE = 2;
/** Ended lives below which Weibull and lognormal are seldom told apart: judgement [1]. */
const FEW = 30;

/**
 * Why this law, and what speaks for another: AIC = 2 k - 2 ln L, k parameters, the lower the better. Weibull and lognormal
 * have two each, so their AIC differ by twice the difference of their log-likelihoods.
 *
 * @param fitted - the law of the answer
 * @param fits - every law that could be fitted to the same lives
 * @param failures - lives that ended [1]
 * @param isAsked - whether whoever asked named the law
 * @returns words that stand behind what the answer rests on
 * @source AIC: Akaike, IEEE Trans. Automatic Control 19 (1974) 716-723; up to 2 apart: Burnham & Anderson 2002 (both FROM MEMORY)
 */
export function sayChoice(fitted: LifeFit, fits: readonly LifeFit[], failures: number, isAsked: boolean): string {
  const ranked = fits.map(({ model, logLikelihood }) => ({ model, aic: 2 * PARAMETERS[model] - 2 * logLikelihood }));
  ranked.sort((one, other) => one.aic - other.aic);
  const why = isAsked ? "as was asked" : "as no other was asked for";
  const figures = ranked.map(({ model, aic }) => `${NAMES[model]} ${aic.toFixed(1)}`).join(", ");
  const rests = `The law is ${NAMES[fitted.model]}, ${why}. AIC, of which the lower fits better for its parameters: ${figures}.`;
  return ranked.length < 2 ? rests : [rests, sayApart(ranked), ...sayFew(failures)].join(" ");
}

interface Ranked {
  readonly model: LifeModel;
  readonly aic: number;
}

function sayApart([first, ...others]: readonly Ranked[]): string {
  const alike = others.filter(({ aic }) => aic - first!.aic <= ALIKE).map(({ model }) => NAMES[model]);
  const best = NAMES[first!.model];
  if (alike.length === 0) return `By it ${best} is ahead by ${(others[0]!.aic - first!.aic).toFixed(1)}.`;
  return `By it ${best} is ahead of ${alike.join(" and ")} by no more than ${ALIKE}: these lives do not tell them apart.`;
}

function sayFew(failures: number): readonly string[] {
  if (failures >= FEW) return [];
  return [
    `${sayCount(failures, "end")} of life cannot tell Weibull from lognormal; beyond the ages that were seen the laws part, so look at both.`,
  ];
}
