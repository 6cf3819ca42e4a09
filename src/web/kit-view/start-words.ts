import type { Demand } from "#readiness";
import type { EnoughTonight, KitStartRecord, Tonight } from "#station";
import { sayCount } from "../parts/words/say-count.ts";

/** How often of ten it starts, as a range people can picture; never a percentage. */
export function sayOfTen({ failing }: KitStartRecord): string {
  const [low, high] = [Math.floor(10 * (1 - failing.p95)), Math.floor(10 * (1 - failing.p05) + 0.5)];
  return low === high ? `about ${low} of 10 times` : `between ${low} and ${high} of 10 times`;
}

/** What it did so far. */
export function sayRecord({ demands, failures }: KitStartRecord): string {
  if (demands.length === 0) return "Nobody has asked it to start yet, that the log knows of.";
  const asked = sayCount(demands.length, "time");
  if (failures === 0) return `Asked to start ${asked}, it started every time.`;
  return `Asked to start ${asked}, it failed ${failures === 1 ? "once" : `${failures} times`}.`;
}

/** What came of one time that it was asked to start. */
export function sayOutcome(failed: Demand["failed"]): string {
  if (failed === undefined) return "started";
  return failed === "start" ? "did not start" : failed === "prime" ? "started, no water" : "started, too little water";
}

/** What that says of the next time. */
export function sayNext(record: KitStartRecord): string {
  if (record.openings > 0) {
    const more = sayCount(record.openings, "more opening");
    return `Too little to tell how it will go: about ${more} would narrow it. So far it could be ${sayOfTen(record)}.`;
  }
  return `By that record a kit like this starts ${sayOfTen(record)}.`;
}

/** What the range rests on. */
export function sayRests({ others, demands }: KitStartRecord): string {
  const own = `The range holds nine times in ten. It rests on this kit's ${sayCount(demands.length, "start")}`;
  const rest =
    others > 0
      ? ` and on the record of ${sayCount(others, "other kit")} of its pattern.`
      : "; others of its pattern say nothing yet, so the range is wide.";
  return `${own}${rest}`;
}

/** What the fall since the last proof rests on. */
export function sayHidden({ unseen, hidden }: KitStartRecord): string {
  if (!unseen || !hidden)
    return "No kit of its pattern has lain closed between two openings yet: what comes unseen cannot be told.";
  const own = `Opened ${sayCount(unseen.looks, "time")} after lying closed, this kit had ${sayCount(unseen.found, "fault")} that would have stopped it.`;
  const rate = `By that and the other kits of its pattern about ${sayRate(hidden.mean)} comes unseen in ten years of lying closed.`;
  return `${own} ${hidden.from === "own" ? rate.replace(" and the other kits of its pattern", "") : rate} Such faults are taken to come at a steady rate.`;
}

const YEAR = 365.25 * 86_400;

function sayRate(perSecond: number): string {
  const count = Number((perSecond * 10 * YEAR).toPrecision(2));
  return `${count} ${count === 1 ? "fault" : "faults"}`;
}

/** A range this wide or wider says too little. */
const WIDE = 0.35;

interface Range {
  readonly p05: number;
  readonly p50: number;
  readonly p95: number;
}

/** How likely, in a word and a range of ten: never a percentage, never a promise. */
export function sayTonight({ working }: Tonight): string {
  return `${wordOf(working)} tonight: ${tenths(working)}`;
}

function wordOf({ p05, p50, p95 }: Range): string {
  if (p95 - p05 > WIDE) return "Too little to tell whether it starts";
  if (p05 >= 0.9) return "Very likely to start";
  if (p05 >= 0.7) return "Likely to start";
  return p50 >= 0.5 ? "May start" : "Doubtful to start";
}

/** "8 to 10 times in 10"; the upper end is open. */
export function tenths({ p05, p95 }: Range): string {
  const [low, high] = [Math.floor(10 * p05), Math.ceil(10 * p95 - 0.5)];
  return low >= high ? `about ${high} times in 10` : `${low} to ${high} times in 10`;
}

const SHARED_WORDS = {
  fuel: () => "fuel of one delivery",
  lot: (of: string) => `${of} of one lot`,
  hands: (of: string) => `the hands of ${of}, who closed them`,
} as const;

/** Whether enough kits of a place start. */
export function sayEnough({ least, of, chance }: EnoughTonight): string {
  const wide = chance.p95 - chance.p05 > WIDE ? "Too little to tell: " : "";
  return `${wide}at least ${least} of ${of} start tonight ${tenths(chance)}`;
}

/** What they have in common, a sentence for each thing. */
export function sayCommon(
  { common }: EnoughTonight,
  nameOfKit: (kit: string) => string,
  nameOf: (of: string) => string,
): readonly string[] {
  return common.map(
    ({ kind, of, kits }) => `${kits.map(nameOfKit).join(", ")} share ${SHARED_WORDS[kind](nameOf(of))}.`,
  );
}
