import type { UnitSystem } from "#base";
import { sayChance, sayDuration, sayLength, type Words } from "#words";
import type { KeptForecast } from "#readiness";
import type { ForecastScore } from "#reliability";
import type { PumpReview } from "#station";
import { sayDay } from "#web/parts/words/say-time.ts";

type ReviewWords = Words["review"];

/** What one pump did, a sentence each; what nobody wrote down is said as such. */
export function sayPump(pump: PumpReview, words: ReviewWords): readonly string[] {
  const { pulls, primeSeconds, minutesRan, refuels } = pump;
  return [
    sayWater(pump, words),
    pulls === undefined ? words.noPulls() : words.pulls({ count: pulls }),
    primeSeconds === undefined ? words.noPrime() : words.prime({ duration: sayDuration(primeSeconds) }),
    ...(minutesRan === undefined ? [] : [words.ran({ refuels, duration: sayDuration(60 * minutesRan, "minutes") })]),
    sayDelivery(pump, words),
  ];
}

function sayWater({ minutesFromCall, minutesAboard, refused }: PumpReview, words: ReviewWords): string {
  if (minutesFromCall === undefined) return refused ? words.notStarted() : words.notUsed();
  const sinceOpened = sayDuration(60 * minutesFromCall, "minutes");
  const water = minutesAboard
    ? words.waterAboard({ sinceOpened, sinceAboard: sayDuration(60 * minutesAboard, "minutes") })
    : words.water({ sinceOpened });
  return refused ? words.refusedFirst({ water }) : water;
}

/** A range wider than this, in shares of the stated delivery, tells nothing of a pump: judgement [1]. */
const WIDEST = 0.8;

function sayDelivery({ seen, minutesRan }: PumpReview, words: ReviewWords): string {
  if (!seen) return words.noDelivery();
  const isShort = minutesRan !== undefined && minutesRan < 1;
  if (isShort || seen.p95 - seen.p05 > WIDEST) return words.deliveryTooLittle();
  return words.delivery({ low: Math.round(10 * seen.p05), high: Math.round(10 * seen.p95) });
}

const VERDICTS = {
  "too-few": "tooFew",
  "as-sure": "asSure",
  "too-sure": "tooSure",
  "not-sure-enough": "notSureEnough",
} as const satisfies Readonly<Record<ForecastScore["kind"], keyof ReviewWords>>;

/** A forecast that was made, and whether what it was of came. */
type Made = Pick<KeptForecast, "at" | "chance" | "came">;

/** The verdict on some forecasts: of how many it is, made from when to when, what they said and what came. */
export function sayScore(forecasts: readonly Made[], { kind, wanted }: ForecastScore, words: ReviewWords): string {
  const days = forecasts.map(({ at }) => at).toSorted((one, other) => Date.parse(one) - Date.parse(other));
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return words.noneYet();
  const verdict = words[VERDICTS[kind]]();
  const count = forecasts.length;
  return words.score({
    verdict: kind === "too-few" ? words.wanted({ verdict, count: wanted }) : verdict,
    count,
    days: sayDays(sayDay(first), sayDay(last), words),
    told: sayChance(forecasts.reduce((sum, { chance }) => sum + chance, 0) / count, "ten"),
    came: forecasts.filter((one) => one.came).length,
  });
}

function sayDays(first: string, last: string, words: ReviewWords): string {
  return first === last ? words.onDay({ day: first }) : words.fromTo({ first, last });
}

/** The same as scores, for whoever compares them. */
export function sayMarks({ brier, plain, logScore }: ForecastScore, words: ReviewWords): string {
  return words.marks({ brier: brier.toFixed(3), plain: plain.toFixed(3), log: logScore.toFixed(3) });
}

/** How far off levels were, spread and all, beside that of saying that she stays as she is; nothing where none was scored. */
export function sayOff(forecasts: readonly KeptForecast[], units: UnitSystem, words: ReviewWords): string | undefined {
  const scored = forecasts.flatMap(({ off }) => off ?? []);
  if (scored.length === 0) return undefined;
  const mean = (of: "told" | "stayed") =>
    sayLength(scored.reduce((sum, one) => sum + one[of], 0) / scored.length, units);
  return words.off({ told: mean("told"), stayed: mean("stayed"), count: scored.length });
}
