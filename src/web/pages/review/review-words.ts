import type { UnitSystem } from "#base";
import { sayDuration, sayLength } from "#words";
import type { KeptForecast } from "#readiness";
import type { ForecastScore } from "#reliability";
import type { PumpReview } from "#station";
import { sayCount } from "#web/parts/words/say-count.ts";

/** What one pump did, a sentence each; what nobody wrote down is said as such. */
export function sayPump(pump: PumpReview): readonly string[] {
  return [
    sayWater(pump),
    pump.pulls === undefined ? "Pulls were not written down." : `${sayCount(pump.pulls, "pull")} to start.`,
    pump.primeSeconds === undefined
      ? "Prime was not timed."
      : `Water ${sayDuration(pump.primeSeconds)} after the first stroke.`,
    ...(pump.minutesRan === undefined
      ? []
      : [`Ran ${sayDuration(60 * pump.minutesRan, "minutes")}; ${sayRefuels(pump.refuels)}.`]),
    sayDelivery(pump),
  ];
}

function sayWater({ minutesFromCall, minutesAboard, refused }: PumpReview): string {
  if (minutesFromCall === undefined) return refused ? "It did not start." : "It was not put to work.";
  const aboard = minutesAboard ? `, ${sayDuration(60 * minutesAboard, "minutes")} after it was told of aboard` : "";
  const first = refused ? "It refused at first. " : "";
  return `${first}Water ${sayDuration(60 * minutesFromCall, "minutes")} after the sheet was opened${aboard}.`;
}

function sayRefuels(count: number): string {
  return count === 0 ? "not refuelled" : `refuelled ${count === 1 ? "once" : `${count} times`}`;
}

function sayDelivery({ seen }: PumpReview): string {
  if (!seen) return "What it delivered was not told by the soundings.";
  return `The soundings saw ${Math.round(10 * seen.p05)} to ${Math.round(10 * seen.p95)} tenths of its stated delivery.`;
}

const VERDICTS: Readonly<Record<ForecastScore["kind"], string>> = {
  "too-few": "Too few to tell",
  "as-sure": "About as sure as it should be",
  "too-sure": "Surer than it should be: take its chances as nearer to even",
  "not-sure-enough": "Less sure than it could be",
};

/** The verdict on some forecasts, with how many it rests on. */
export function sayScore({ kind, count, wanted, brier, plain, logScore }: ForecastScore): string {
  if (count === 0) return "None yet.";
  const more = kind === "too-few" ? `: about ${sayCount(wanted, "more forecast")} would tell` : "";
  const figures = `Brier score ${brier.toFixed(3)} (always telling the share that came: ${plain.toFixed(3)}), log score ${logScore.toFixed(3)}`;
  return `${VERDICTS[kind]}${more}. ${sayCount(count, "forecast")}. ${figures}; lower is better.`;
}

/** How far off levels were, spread and all, beside that of saying that she stays as she is; nothing where none was scored. */
export function sayOff(forecasts: readonly KeptForecast[], units: UnitSystem): string | undefined {
  const scored = forecasts.flatMap(({ off }) => off ?? []);
  if (scored.length === 0) return undefined;
  const mean = (of: "told" | "stayed") =>
    sayLength(scored.reduce((sum, one) => sum + one[of], 0) / scored.length, units);
  return `The level itself was ${mean("told")} off on average, spread and all (CRPS of ${sayCount(scored.length, "forecast")}); saying that it stays as it is, ${mean("stayed")}. Lower is better.`;
}
