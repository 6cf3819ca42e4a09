import { LEAST_ENDED, lastsTo, rangesOf, type LifeTold } from "./life-told.ts";

/** An age with its range of nine in ten [d]; infinite where it is not reached within {@link FARTHEST}. */
export interface AgeTold {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** By what age things are found bad, as far as looks tell. */
export interface AgesTold {
  /** By which one in ten is bad. */
  readonly tenth: AgeTold;
  /** By which half are bad. */
  readonly half: AgeTold;
  /** Oldest that anybody looked at: beyond it nothing but the law tells [d]. */
  readonly oldest: number;
  /** What a law of life would take, where it is told at a steady rate: so many more found bad, in about so many lives. */
  readonly lack?: { readonly ended: number; readonly lives: number };
}

/** Ages beyond a century are not looked for [d]. */
const FARTHEST = 36_525;

/**
 * Ages by which one in ten and one in two are found bad: where the chances that are told, and the ends of their ranges,
 * come down to nine in ten and one in two.
 *
 * @param told - by looks
 * @source DERIVED: inverse of `lastsTo`
 * @range to a tenth of a day
 */
export function agesTold(told: LifeTold): AgesTold {
  const lack = lackOf(told);
  return {
    tenth: ageAt(told, 0.9),
    half: ageAt(told, 0.5),
    oldest: told.oldest,
    ...(lack && { lack }),
  };
}

function ageAt(told: LifeTold, share: number): AgeTold {
  const isSteady = told.ended < LEAST_ENDED || told.fits.every(({ model }) => model === "exponential");
  const day = lastsTo(told, 0, 1);
  const reach = (end: keyof typeof day) =>
    isSteady ? Math.abs(Math.log(share) / Math.log(day[end])) : ageWhere((age) => lastsTo(told, 0, age)[end] <= share);
  // With nothing found bad a rate has no lower end: what is told is only "no sooner than".
  const high = told.ended === 0 ? Infinity : reach("high");
  return { value: told.ended === 0 ? Infinity : reach("chance"), low: reach("low"), high };
}

/** Outward in small steps first: far beyond its age a law of life leaves nothing to count with. */
function ageWhere(isReached: (age: number) => boolean): number {
  let [young, old] = [0, 1];
  while (old < FARTHEST && !isReached(old)) [young, old] = [old, 1.1 * old];
  if (old >= FARTHEST) return Infinity;
  while (old - young > Math.min(0.01, old * 1e-6)) {
    const middle = (young + old) / 2;
    if (isReached(middle)) old = middle;
    else young = middle;
  }
  return old;
}

function lackOf({ ended, lives }: LifeTold): AgesTold["lack"] {
  if (ended >= LEAST_ENDED) return undefined;
  const more = LEAST_ENDED - ended;
  return { ended: more, lives: Math.ceil((more * (lives + 1)) / (ended + 0.5)) };
}

/**
 * Whether things fail the likelier the older they are, by the range of a Weibull's shape; undefined where too few were found
 * bad to ask.
 *
 * @source Meeker & Escobar 1998 (FROM MEMORY): a shape above 1 is a hazard that grows with age
 */
export function wearOf({ fits, ended }: Pick<LifeTold, "fits" | "ended">): "wears" | "lasts" | "unknown" | undefined {
  const fit = fits.find(({ model }) => model === "weibull");
  const shape = fit && rangesOf(fit).shape;
  if (!shape || ended < LEAST_ENDED) return undefined;
  const [low, high] = shape;
  return low > 1 ? "wears" : high < 1 ? "lasts" : "unknown";
}
