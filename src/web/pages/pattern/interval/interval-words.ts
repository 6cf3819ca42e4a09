import { formatSpan, type Span } from "#base";
import type { OpeningEvidence, OpeningProposal, OpeningVerdict } from "#station";
import { sayCount } from "../../../parts/words/say-count.ts";

const YEAR_DAYS = 365.25;
const MONTH_DAYS = YEAR_DAYS / 12;
/** Beyond it an interval is only said to be longer. */
const MOST_DAYS = 10 * YEAR_DAYS;

/** What holds now, and by whom. */
export function sayStanding({ standing, manual }: Pick<OpeningProposal, "standing" | "manual">): string {
  if (!standing) return "Neither the unit's manual nor the station says how often it is opened.";
  const own = manual && formatSpan(manual) === formatSpan(standing) ? ", as the unit's manual has it" : "";
  const beside = manual && own === "" ? `; the unit's manual has ${formatSpan(manual)}` : "";
  return `It is opened ${sayEvery(standing)} now${own}${beside}.`;
}

/** "every year", "every 8 months". */
export function sayEvery(span: Span): string {
  return `every ${formatSpan(span).replace(/^1 /, "")}`;
}

/** The verdict in a sentence, and what it would take where the log does not tell. */
export function sayVerdict(verdict: OpeningVerdict, standing: Span | undefined): string {
  const now = standing ? sayEvery(standing) : "what is done now";
  switch (verdict.kind) {
    case "cannot-tell":
      return `Too little to tell whether ${now} is too often or too seldom: it would take ${sayMore(verdict.openings)}.`;
    case "keep":
      return `Keep to ${now}: nothing else would be better by more than one part in twenty.`;
    case "shorter":
      return `Open it ${sayEvery(verdict.every)} rather than ${now}.`;
    case "longer":
      return `To open it ${sayEvery(verdict.every)} would do; it is opened ${now} now.`;
    case "manual-stands":
      return `Keep to ${now}: by the log longer would do, but the manual stands first. To show its maker that half as long again would do, it would take ${sayMore(verdict.cleanOpenings)} without a fault.`;
  }
}

/** More than this many are not counted out. */
const MANY = 4000;

function sayMore(openings: number): string {
  return openings >= MANY ? `more than ${MANY} more openings` : `about ${sayCount(openings, "more opening")}`;
}

/** The best interval as a range. */
export function sayBest({ best }: OpeningProposal): string {
  return `By these figures the best lies between ${sayLong(best.shortest)} and ${sayLong(best.longest)}, nine times in ten.`;
}

/** How little it matters near the best. */
export function sayFlat({ flat, best }: OpeningProposal): string {
  return `Of what is likeliest, about ${sayLong(best.middle)}, anything from ${sayLong(flat.from)} to ${sayLong(flat.to)} costs less than one part in twenty more.`;
}

/** Days as months or years. */
export function sayLong(days: number): string {
  if (days >= MOST_DAYS) return "more than ten years";
  if (days >= 2 * YEAR_DAYS) return `${(days / YEAR_DAYS).toFixed(1)} years`;
  if (days >= 1.5 * MONTH_DAYS) return `${Math.round(days / MONTH_DAYS)} months`;
  return sayCount(Math.max(1, Math.round(days)), "day");
}

/** What the log has, a sentence each. */
export function sayEvidence(evidence: OpeningEvidence): readonly string[] {
  const { looks, found, lay, kits, rate, asked, failing, calls, callsPerYear, hours, out } = evidence;
  const years = lay / 86_400 / YEAR_DAYS;
  const tenYears = (perSecond: number) => Number((perSecond * 10 * YEAR_DAYS * 86_400).toPrecision(2));
  return [
    `${sayCount(looks, "opening")} of ${sayCount(kits, "kit")} after lying closed for ${years.toFixed(1)} years in all: ${sayCount(found, "fault")} that would have stopped the kit.`,
    `So in ten years of lying closed ${tenYears(rate.p05)} to ${tenYears(rate.p95)} such faults come, nine times in ten, at a steady rate; kits are taken as alike.`,
    asked === 0
      ? "How often it fails when it is asked to start was never counted: half the times is reckoned with."
      : `Asked to start, it fails about ${sayTenths(failing)} whatever its age, just opened or not.`,
    `Put to work on casualties ${calls === 1 ? "once" : `${calls} times`}: ${Number(callsPerYear.toPrecision(2))} calls a year on one kit.`,
    `By the pattern an opening takes ${hours.toFixed(1)} hours of work, and the kit is out for ${(out / 3600).toFixed(1)} hours. Parts and wear are not counted.`,
  ];
}

function sayTenths(chance: number): string {
  return `${Number((100 * chance).toPrecision(2))} times in 100`;
}
