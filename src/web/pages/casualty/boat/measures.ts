import type { Words } from "#words";
import { wrongMeasures, type CasualtyBoat } from "#readiness";

/** What can be told of a boat's size, as people read it off her. */
export type Measure = "beam" | "depth" | "freeboard" | "draught";
/** As typed so far [m]. */
export type Measures = { readonly [M in Measure]?: number };

/** The boat with what was typed. Freeboard and keel to deck edge leave the draught. */
export function measuredBoat(boat: CasualtyBoat, { beam, depth, freeboard, draught }: Measures): CasualtyBoat {
  const deck = depth ?? boat.depth;
  const left = freeboard === undefined || deck === undefined ? undefined : deck - freeboard;
  const told = { beam, depth, draught: draught ?? left };
  return { ...boat, ...Object.fromEntries(Object.entries(told).filter(([, si]) => si !== undefined)) };
}

/**
 * What is wrong with each measure typed, in words beside its field; empty where all can be. The limits are those the
 * log and the estimate go by.
 */
export function measureFaults(
  boat: CasualtyBoat,
  typed: Measures,
  words: Words["sheetBoat"],
): { readonly [M in Measure]?: string } {
  if (typed.freeboard !== undefined && typed.draught !== undefined) return { draught: words.bothTold() };
  const measured = measuredBoat(boat, typed);
  if (typed.freeboard !== undefined && measured.depth === undefined) return { freeboard: words.noDeck() };
  const wrong = wrongMeasures(measured).map(({ field, got, allowed }): [string, string] => {
    if (field !== "draught" || typed.freeboard === undefined) return [field, words.from({ allowed })];
    return ["freeboard", words.leavesDraught({ got, allowed })];
  });
  return Object.fromEntries(wrong);
}

const GUESSED = ["beam", "depth", "freeboard"] as const;

/** "Beam, depth and freeboard guessed from length and kind": what nobody has measured; undefined where all is known. */
export function sayGuessed({ beam, depth, draught }: CasualtyBoat, words: Words["sheetBoat"]): string | undefined {
  const [one, two, three] = GUESSED.filter((key) => ({ beam, depth, freeboard: draught })[key] === undefined);
  if (!one) return undefined;
  const first = words[`${one}First`]();
  if (!two) return words.guessedOne({ first });
  const second = words[`${two}Next`]();
  return three
    ? words.guessedThree({ first, second, third: words[`${three}Next`]() })
    : words.guessedTwo({ first, second });
}
