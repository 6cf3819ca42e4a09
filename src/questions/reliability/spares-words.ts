/** A part with its stock, as far as words need it. */
export interface StockTold {
  readonly name: string;
  /** Demands in one lead time, on average [1]. */
  readonly pipeline: number;
  /** Wanted in several sizes. */
  readonly isInLots: boolean;
  readonly stock: number;
  /** Chance of no shortage with it [1]. */
  readonly noShortage: number;
}

/** So many parts are told one by one. */
const TOLD = 5;

/**
 * What a shelf's stock rests on: of each part the demand in one lead time, its law, and the chance that is reached.
 *
 * @param parts - with the stock that is answered
 * @param target - chance of no shortage asked for, where one was [1]
 */
export function sayStocks(parts: readonly StockTold[], target: number | undefined): string {
  const told = parts.slice(0, TOLD).map(sayStock);
  const more = parts.length - told.length;
  const rest = more > 0 ? [`So too of the ${more} other part${more === 1 ? "" : "s"}: see items.`] : [];
  const asked =
    target === undefined ? [] : [`At least ${target} was asked for, and the stock is the least that reaches it.`];
  const law = "Demands come by chance, and each part used is ordered at once, one for one.";
  return [law, ...told, ...rest, ...asked].join(" ");
}

function sayStock({ name, pipeline, isInLots, stock, noShortage }: StockTold): string {
  const law = isInLots ? "compound Poisson, as several are wanted at once" : "Poisson";
  return `${name}: ${figure(pipeline)} ${isInLots ? "demands" : "wanted"} in one lead time on average (${law}); with ${stock} the chance that nobody waits is ${chance(noShortage)}.`;
}

function figure(value: number): string {
  return `${Number(value.toPrecision(2))}`;
}

/** Never rounded up to what was not reached. */
function chance(value: number): string {
  return `${Math.floor(1000 * value + 1e-9) / 1000}`;
}
