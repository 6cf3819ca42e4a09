import { inWords, type Words } from "#words";
import type { Band, Lapse, Limit, Reason, Standing } from "../state.ts";

type StandingWords = Words["standing"];

/** A standing as people read it, in one language. */
export interface StandingInWords extends Omit<Standing, "because" | "limits" | "lapse" | "grounding" | "restore"> {
  readonly because: readonly ReasonInWords[];
  readonly limits: readonly string[];
  readonly lapse?: LapseInWords;
  readonly grounding?: LapseInWords;
  readonly restore: { readonly what: readonly string[]; readonly minutes: number };
}

/** A reason as people read it. */
export interface ReasonInWords extends Omit<Reason, "said"> {
  readonly text: string;
}

/** A lapse as people read it. */
export interface LapseInWords extends Omit<Lapse, "what"> {
  readonly what: string;
}

/** A band as people read it. */
export interface BandInWords extends Omit<Band, "because"> {
  readonly because: string;
}

/** Why a kit stands as it does, until when and what would restore it, in words. */
export function standingInWords(standing: Standing, words: StandingWords): StandingInWords {
  const { because, limits, lapse, grounding, restore, ...rest } = standing;
  return {
    ...rest,
    because: because.map((one) => sayReason(one, words)),
    limits: limits.map((one) => sayLimited(one, words)),
    ...(lapse && { lapse: sayLapse(lapse, words) }),
    ...(grounding && { grounding: sayLapse(grounding, words) }),
    restore: { what: restore.what.map((one) => inWords(one, words)), minutes: restore.minutes },
  };
}

/** A reason in words. */
export function sayReason({ rule, said, ...about }: Reason, words: StandingWords): ReasonInWords {
  return { rule, text: inWords(said, words), ...about };
}

/** What ends, in words, and when. */
export function sayLapse(lapse: Lapse, words: StandingWords): LapseInWords {
  return { ...lapse, what: inWords(lapse.what, words) };
}

/** A band with its reason in words. */
export function sayBand(band: Band, words: StandingWords): BandInWords {
  return { ...band, because: inWords(band.because, words) };
}

/** A limit: as somebody wrote it, or in the words of the language. */
function sayLimited(limit: Limit, words: StandingWords): string {
  return typeof limit === "string" ? limit : inWords(limit, words);
}
