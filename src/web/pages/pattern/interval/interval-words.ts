import { sayDuration } from "#words";
import { formatSpan, type Span } from "#base";
import {
  LEAST_PLANTED,
  type Drilled,
  type OpeningEvidence,
  type OpeningProposal,
  type OpeningVerdict,
  type StatedCosts,
} from "#station";
import { sayCount } from "#web/parts/words/say-count.ts";

const YEAR_DAYS = 365.25;
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

/** What a year costs one kit at the likeliest best, part by part; what nobody stated is not in it. */
export function sayCosts({ costs }: Pick<OpeningProposal, "costs">, stated: StatedCosts): string {
  const { parts, wearPerStart, perDayNotReady } = stated;
  const made = [
    `${sayHours(costs.tests)} opening it`,
    ...(parts === undefined ? [] : [`${sayHours(costs.parts)} in parts`]),
    ...(wearPerStart === undefined ? [] : [`${sayHours(costs.wear)} in wear`]),
    ...(perDayNotReady === undefined ? [] : [`${sayHours(costs.notReady)} for days without it`]),
    `${sayHours(costs.night)} for nights on which it fails`,
  ];
  const last = made.at(-1);
  return `At the likeliest best, one kit and year weigh as much as ${made.slice(0, -1).join(", ")}, and ${last}.`;
}

function sayHours(hours: number): string {
  return `${hours < 10 ? hours.toFixed(1) : Math.round(hours)}\u00a0hours`;
}

/** Days as months or years. */
export function sayLong(days: number): string {
  if (days >= MOST_DAYS) return "more than ten years";
  return sayDuration(86_400 * Math.max(1, days), "long");
}

/** What the log has, a sentence each. */
export function sayEvidence(evidence: OpeningEvidence, stated: StatedCosts): readonly string[] {
  const { looks, found, lay, kits, rate, asked, failing, calls, callsPerYear, starts } = evidence;
  const years = lay / 86_400 / YEAR_DAYS;
  const tenYears = (perSecond: number) => Number((perSecond * 10 * YEAR_DAYS * 86_400).toPrecision(2));
  return [
    `${sayCount(looks, "opening")} of ${sayCount(kits, "kit")} after lying closed for ${years.toFixed(1)} years in all: ${sayCount(found, "fault")} that would have stopped the kit.`,
    `So in ten years of lying closed ${tenYears(rate.p05)} to ${tenYears(rate.p95)} such faults come, nine times in ten, at a steady rate; kits are taken as alike.`,
    sayDrilled(evidence.drilled),
    asked === 0
      ? "How often it fails when it is asked to start was never counted: half the times is reckoned with."
      : `Asked to start ${sayTimes(asked)}, it fails ${figure(100 * failing.p05)} to ${figure(100 * failing.p95)} times in 100, nine times in ten, whatever its age, just opened or not.`,
    `Put to work on casualties ${sayTimes(calls)}: ${figure(callsPerYear.p05)} to ${figure(callsPerYear.p95)} calls a year on one kit, nine times in ten; reckoned with ${figure(callsPerYear.mean)}.`,
    `${sayOut(evidence)} It is started ${sayTimes(starts)}.`,
    sayNotCounted(stated),
  ];
}

const COUNTED: readonly { readonly key: keyof StatedCosts; readonly words: string }[] = [
  { key: "parts", words: "parts" },
  { key: "wearPerStart", words: "wear of starts" },
  { key: "perDayNotReady", words: "days without the kit" },
  { key: "harmed", words: "faults that an opening leaves behind" },
];

function sayNotCounted(stated: StatedCosts): string {
  const left = COUNTED.filter(({ key }) => stated[key] === undefined).map(({ words }) => words);
  return left.length === 0
    ? "All that an opening costs was stated."
    : `Not counted, as nobody stated it: ${left.join(", ")}.`;
}

/** Whether openings find such faults, as drills measured. */
function sayDrilled(drilled: Drilled | undefined): string {
  if (!drilled) return "No drill planted such a fault: every opening is taken to find each of them.";
  const { found, planted, finding, counts } = drilled;
  const told = `Of ${sayCount(planted, "such fault")} planted in drills the opening found ${found}`;
  if (!counts) return `${told}: fewer than ${LEAST_PLANTED} tell too little, and every opening is taken to find each.`;
  return `${told}, so ${ofTen(finding.p05)} to ${ofTen(finding.p95)} of 10, nine times in ten. What one overlooks the next may find; counted with ${ofTen(finding.mean)} of 10.`;
}

function ofTen(chance: number): string {
  return (10 * chance).toFixed(1);
}

function sayTimes(count: number): string {
  return count === 1 ? "once" : count === 2 ? "twice" : `${count} times`;
}

function figure(value: number): string {
  return `${Number(value.toPrecision(2))}`;
}

/** Hours of work by the pattern; hours out as the log has them, nights for drying and all, where enough were timed. */
function sayOut({ hours, out, timed }: OpeningEvidence): string {
  const work = `By the pattern an opening takes ${hours.toFixed(1)} hours of work`;
  const long = `${(out / 3600).toFixed(1)} hours`;
  if (timed === 0) return `${work}, and the kit is out for ${long} and for what it hangs to dry beyond that.`;
  return `${work}; seal to seal the kit was out for ${long}, on average of ${timed} openings.`;
}
