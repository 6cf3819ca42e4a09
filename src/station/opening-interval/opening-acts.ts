import { formatSpan, type Span } from "#base";
import { STATION_PLACE } from "#log";
import type { Bodies } from "#readiness";
import { allow, unless, type Act, type ActContext } from "../acts/draft.ts";
import { because } from "../judging/faults.ts";
import { openingFaults } from "./longest.ts";
import type { OpeningAsked, OpeningProposal } from "./proposal.ts";

/**
 * Accepts how often kits of a pattern are opened: the year's plan then goes by it. Never longer than the unit's own manual,
 * which stands first; it grounds no kit.
 *
 * @param doing - the station and who does it
 * @param pattern - id of the pattern, without version
 * @param every - from one opening to the next
 * @param proposal - what it rests on, where it was proposed; nothing where somebody chose it
 */
export function acceptOpenings(
  doing: ActContext,
  pattern: string,
  every: Span,
  proposal?: OpeningProposal & Weights,
): Act<"opening-interval-set"> {
  const body = { pattern, every: formatSpan(every), ...(proposal && { rests: restsOn(proposal) }) };
  return allow(doing, about(body), openingFaults(body, [...doing.patterns.values()]));
}

/** Goes back to the manual's own interval. */
export function withdrawOpenings(doing: ActContext, pattern: string): Act<"opening-interval-set"> {
  const isSet = doing.policy?.openings?.[pattern] !== undefined;
  return allow(doing, about({ pattern }), [
    unless(
      isSet,
      because("SN-262", "pattern", pattern, "one with an interval that was accepted", "Nothing is left to do."),
    ),
  ]);
}

function about(body: Bodies["opening-interval-set"]) {
  return { subject: "station", kind: "opening-interval-set", body, place: STATION_PLACE } as const;
}

/** What a failure on the night and an opening were said to weigh. */
type Weights = Pick<OpeningAsked, "nightHours" | "stated">;

function restsOn({ evidence, best, nightHours, stated }: OpeningProposal & Weights) {
  return {
    looks: evidence.looks,
    found: evidence.found,
    lay: Math.round(evidence.lay),
    best: [best.shortest, best.middle, best.longest].map((days) => Math.min(36_525, Math.round(days))),
    nightHours,
    ...(stated && Object.keys(stated).length > 0 && { costs: { ...stated, starts: evidence.starts } }),
  };
}
