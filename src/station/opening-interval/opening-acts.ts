import { formatSpan, type Span } from "#base";
import { STATION_PLACE } from "#log";
import type { Bodies } from "#readiness";
import { allow, unless, type Act, type Doing } from "../acts/draft.ts";
import { because } from "../judging/faults.ts";
import { daysIn } from "./span-days.ts";
import type { OpeningProposal } from "./proposal.ts";

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
  doing: Doing,
  pattern: string,
  every: Span,
  proposal?: OpeningProposal & { readonly nightHours: number },
): Act<"opening-interval-set"> {
  const manual = manualOf(doing, pattern);
  const isWithin = manual === undefined || daysIn(every) <= daysIn(manual) + 1e-9;
  const body = { pattern, every: formatSpan(every), ...(proposal && { rests: restsOn(proposal) }) };
  const limit =
    manual === undefined ? "a pattern of this station" : `at most ${formatSpan(manual)}, as the unit's manual has it`;
  return allow(doing, about(body), [
    unless(isWithin, because("SN-261", "every", formatSpan(every), limit, "Take the manual's own interval.")),
    knownPattern(doing, pattern),
  ]);
}

/** Goes back to the manual's own interval. */
export function withdrawOpenings(doing: Doing, pattern: string): Act<"opening-interval-set"> {
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

function knownPattern({ patterns }: Doing, pattern: string) {
  const isKnown = [...patterns.values()].some(({ id }) => id === pattern);
  return unless(
    isKnown,
    because("SN-263", "pattern", pattern, "a pattern of this station", "Choose one that is here."),
  );
}

/** The shortest that any version here states. */
function manualOf({ patterns }: Doing, pattern: string): Span | undefined {
  const spans = [...patterns.values()].flatMap(({ id, policy }) => (id === pattern ? (policy.turnaround ?? []) : []));
  return spans.toSorted((one, other) => daysIn(one) - daysIn(other))[0];
}

function restsOn({ evidence, best, nightHours }: OpeningProposal & { readonly nightHours: number }) {
  return {
    looks: evidence.looks,
    found: evidence.found,
    lay: Math.round(evidence.lay),
    best: [best.shortest, best.middle, best.longest].map((days) => Math.min(36_525, Math.round(days))),
    nightHours,
  };
}
