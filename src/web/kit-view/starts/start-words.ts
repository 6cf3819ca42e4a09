import type { Demand, KitState, StandingInWords } from "#readiness";
import type { Words } from "#words";
import type { EnoughTonight, KitStartRecord, Tonight } from "#station";
import { sayDay } from "#web/parts/words/say-time.ts";

type StartWords = Words["starts"];

/** How often of ten it starts, as a range people can picture; never a percentage. */
export function sayOfTen({ failing }: KitStartRecord, words: StartWords): string {
  const [low, high] = [Math.floor(10 * (1 - failing.p95)), Math.floor(10 * (1 - failing.p05) + 0.5)];
  return low === high ? words.ofTen({ low }) : words.ofTenRange({ low, high });
}

/** What it did so far, and since when. */
export function sayRecord({ demands, failures }: KitStartRecord, words: StartWords): string {
  const [first] = demands;
  if (!first) return words.neverAsked();
  const asked = { count: demands.length, since: sayDay(first.at) };
  return failures === 0 ? words.everyTime(asked) : words.failedSome({ ...asked, failures });
}

/** What came of one time that it was asked to start. */
export function sayOutcome(failed: Demand["failed"], words: StartWords): string {
  if (failed === undefined) return words.started();
  return failed === "start" ? words.noStart() : failed === "prime" ? words.noWater() : words.tooLittle();
}

/** What that says of the next time. */
export function sayNext(record: KitStartRecord, words: StartWords): string {
  const often = sayOfTen(record, words);
  return record.openings > 0 ? words.wideRange({ count: record.openings, often }) : words.byRecord({ often });
}

/** What the range rests on. */
export function sayRests({ others, othersStarts, demands }: KitStartRecord, words: StartWords): string {
  const count = demands.length;
  if (others > 0) return words.restsOthers({ count, others, starts: othersStarts });
  return count > 0 ? words.restsAlone({ count }) : words.restsNone();
}

/** Where one failure more of another kit would make this one look better; undefined where it would not. */
export function sayOneMore({ failing, oneMore }: KitStartRecord, words: StartWords): string | undefined {
  if (oneMore === undefined) return undefined;
  const [now, more] = [failing.mean, oneMore].map((chance) => (100 * chance).toFixed(1));
  return words.oneMore({ now: now!, more: more! });
}

/** How many turnarounds were only told of, so that no figure counts them, and why; undefined where none was. */
export function sayToldOf(kits: readonly Pick<KitState, "told">[], words: StartWords): string | undefined {
  const days = kits.flatMap(({ told = [] }) => told.map(({ day }) => day)).toSorted();
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  return words.toldOf({ count: days.length, first: sayDay(first), last: sayDay(last) });
}

/** What the fall since the last proof rests on. */
export function sayHidden({ unseen, hidden, failures }: KitStartRecord, words: StartWords): string {
  if (!unseen || !hidden) return words.hiddenUnknown();
  const own = words.hiddenOwn({ looks: unseen.looks, found: unseen.found });
  const rate = Number((hidden.mean * 10 * YEAR).toPrecision(2));
  const faults = { rate: String(rate), count: rate };
  const came = hidden.from === "own" ? words.hiddenRateOwn(faults) : words.hiddenRateAll(faults);
  const once = failures > 0 ? [words.failedOnce()] : [];
  return [own, came, words.hiddenSteady(), ...once].join(" ");
}

const YEAR = 365.25 * 86_400;

/** A range this wide or wider says too little. */
const WIDE = 0.35;

interface Range {
  readonly p05: number;
  readonly p50: number;
  readonly p95: number;
}

/** Standings of a kit that nobody can take from here tonight. What is wrong with one that is away, nobody may know yet. */
const NOT_TO_BE_TAKEN: readonly string[] = ["grounded", "open", "away"];

/** Why nothing is told of tonight; undefined where the kit may be taken. */
export function sayNoChance(standing: StandingInWords | undefined, words: StartWords): string | undefined {
  if (standing === undefined || !NOT_TO_BE_TAKEN.includes(standing.standing)) return undefined;
  return words.noChance({ why: standing.because.map(({ text }) => text.replace(/\.$/, "")).join("; ") });
}

/** How likely, in a word and a range of ten: never a percentage, never a promise. */
export function sayTonight({ working }: Tonight, words: StartWords): string {
  return words.tonight({ word: words[wordOf(working)](), often: tenths(working, words) });
}

/** The same for one line of a board, with the starts that it rests on. */
export function sayTonightShort(tonight: Tonight, record: KitStartRecord, words: StartWords): string {
  const { demands, others, othersStarts } = record;
  const [first] = demands;
  const own = first ? words.ownStarts({ count: demands.length, since: sayDay(first.at) }) : words.noOwnStart();
  const rests = others > 0 ? words.andOthers({ own, count: othersStarts, others }) : own;
  const told = words.tonightBy({ tonight: sayTonight(tonight, words), rests });
  return record.oneMore === undefined ? told : words.oneMoreShort({ told });
}

function wordOf({ p05, p50, p95 }: Range) {
  if (p95 - p05 > WIDE) return "unsure";
  if (p05 >= 0.9) return "veryLikely";
  if (p05 >= 0.7) return "likely";
  return p50 >= 0.5 ? "may" : "doubtful";
}

/** "8 to 10 times in 10"; the upper end is open. */
export function tenths({ p05, p95 }: Range, words: StartWords): string {
  const [low, high] = [Math.floor(10 * p05), Math.ceil(10 * p95 - 0.5)];
  return low >= high ? words.tenths({ high }) : words.tenthsRange({ low, high });
}

const SHARED = { fuel: "shareFuel", lot: "shareLot", hands: "shareHands" } as const;

/** Whether enough kits of a place start. */
export function sayEnough({ least, of, chance }: EnoughTonight, words: StartWords): string {
  const told = { least, of, often: tenths(chance, words) };
  return chance.p95 - chance.p05 > WIDE ? words.enoughUnsure(told) : words.enough(told);
}

/** How wide that is, by how many starts, and which kits were left out and why. */
export function sayEnoughRests(
  { starts: { count, since }, untold }: EnoughTonight,
  nameOf: (kit: string) => string,
  words: StartWords,
): string {
  const rests = since === undefined ? words.enoughNone() : words.enoughRests({ count, since: sayDay(since) });
  if (untold.length === 0) return rests;
  return `${rests} ${words.enoughWithout({ kits: untold.map(nameOf).join(", ") })}`;
}

/** What they have in common, a sentence for each thing. */
export function sayCommon(
  { common }: EnoughTonight,
  nameOf: { readonly kit: (kit: string) => string; readonly other: (of: string) => string },
  words: StartWords,
): readonly string[] {
  return common.map(({ kind, of, kits }) =>
    words[SHARED[kind]]({ kits: kits.map(nameOf.kit).join(", "), of: nameOf.other(of) }),
  );
}
