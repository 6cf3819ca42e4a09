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
export function measureFaults(boat: CasualtyBoat, typed: Measures): { readonly [M in Measure]?: string } {
  if (typed.freeboard !== undefined && typed.draught !== undefined) return { draught: BOTH };
  const measured = measuredBoat(boat, typed);
  if (typed.freeboard !== undefined && measured.depth === undefined) return { freeboard: NO_DECK };
  const wrong = wrongMeasures(measured).map(({ field, got, allowed }): [string, string] => {
    if (field !== "draught" || typed.freeboard === undefined) return [field, `From ${allowed}.`];
    return ["freeboard", `That leaves a draught of ${got}. The draught is from ${allowed}.`];
  });
  return Object.fromEntries(wrong);
}

const BOTH = "Freeboard or draught, not both: one follows from the other.";
const NO_DECK = "Enter keel to deck edge too: freeboard alone does not say how deep she is.";

/** "Beam, depth and draught are guessed from length and kind": what nobody has measured; undefined where all is known. */
export function sayGuessed({ beam, depth, draught }: CasualtyBoat): string | undefined {
  const guessed = [beam ?? "beam", depth ?? "depth", draught ?? "freeboard"].filter((one) => typeof one === "string");
  if (guessed.length === 0) return undefined;
  const words = guessed.length < 2 ? guessed.join("") : `${guessed.slice(0, -1).join(", ")} and ${guessed.at(-1)}`;
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} guessed from length and kind`;
}
