import { sayDuration, sayFlow, sayLength } from "#words";
import { isInputError, type UnitSystem } from "#base";
import { PRACTICE_LIFT } from "#hydraulics";
import type { Pattern } from "#kit";
import { primeQuestion } from "#questions";
import { knowing } from "./rig-setting.ts";

export type PrimeAnswer = ReturnType<typeof primeQuestion.answer>;

/** A prime as it is asked about; what is left out stands as the question takes it. */
export interface PrimeCase {
  /** [m] */
  readonly lift: number;
  /** [m]; as packed if left out. */
  readonly hoseLength?: number;
  /** What it really took, from first stroke to water [s]. */
  readonly observed?: number;
  readonly surroundings?: object;
}

/** What a prime is expected to take; undefined where the pattern has no primer, an error where it cannot be said. */
export function askPrime(pattern: Pattern, given: PrimeCase): PrimeAnswer | { readonly error: unknown } | undefined {
  if (!pattern.hydraulics?.primer || !pattern.hydraulics.suction) return undefined;
  const { lift, hoseLength, observed, surroundings } = given;
  const hose = hoseLength === undefined ? {} : { hose: { length: hoseLength } };
  const seen = observed === undefined ? {} : { observed };
  try {
    return primeQuestion.answer({ kit: pattern.id, lift, ...hose, ...seen, ...surroundings }, knowing(pattern));
  } catch (cause) {
    if (isInputError(cause)) return { error: cause };
    throw cause;
  }
}

/** Strokes and seconds to be expected, in one line. */
export function sayPrime(answer: PrimeAnswer, lift: number, units: UnitSystem): string {
  const at = `At ${sayLength(lift, units)} lift`;
  if (answer.kind === "will-not-prime" || answer.wholeStrokes === undefined || answer.seconds === undefined)
    return `${at} it will not prime.`;
  if (answer.wholeStrokes === 0) return `${at} water runs in by itself.`;
  return `${at} expect about ${answer.wholeStrokes} strokes, ${sayDuration(answer.seconds)}.`;
}

/** How high to count on: what the maker states and what practice holds come first, the limit of physics only as such. */
export function sayGreatest(answer: PrimeAnswer, stated: number | undefined, lift: number, units: UnitSystem): string {
  const say = (si: number) => sayLength(si, units);
  const loss = `beyond about ${say(PRACTICE_LIFT.plainLossAbove)} the loss is plain`;
  const maker =
    stated === undefined
      ? `The maker states no greatest lift; ${loss}, and beyond about ${say(PRACTICE_LIFT.notBeyond)} suction is not attempted (common practice).`
      : `The maker states ${say(stated)}; ${loss} (common practice).`;
  const above = lift > (stated ?? PRACTICE_LIFT.notBeyond) ? "Do not count on priming at this lift. " : "";
  return `${above}${maker} No primer at all gets water above ${say(answer.greatestLift)} here: a limit of physics, not a lift to plan for.`;
}

/** A timed prime against what was expected. */
export interface PrimeReading {
  readonly kind: "as-expected" | "too-quick" | "leaks" | "cannot-prime";
  readonly words: string;
  readonly lookFirst: readonly string[];
}

/** A prime in less than this share of what the air takes to be pumped out was not one from an empty hose [1]. Judgement. */
const QUICKEST = 0.5;

/** True where water came sooner than the primer can have taken the air out: it is asked about, not taken as right. */
export function isTooQuick(seconds: number, { leak, wholeStrokes }: PrimeAnswer): boolean {
  return leak?.expectedSeconds !== undefined && wholeStrokes !== 0 && seconds < QUICKEST * leak.expectedSeconds;
}

/** What a timed prime says of air leaks, in words; one quicker than can be is questioned. */
export function readPrime(answer: PrimeAnswer, units: UnitSystem, seconds?: number): PrimeReading | undefined {
  const { leak } = answer;
  if (!leak) return undefined;
  if (seconds !== undefined && isTooQuick(seconds, answer)) {
    const least = `about ${sayDuration(leak.expectedSeconds ?? 0)} is the least that pumping out the air takes`;
    const ask = "Did water stand in the hose already, or was the clock started late? Drain the hose and prime again.";
    return { kind: "too-quick", words: `Too quick: ${least} at this lift. ${ask}`, lookFirst: [] };
  }
  const { kind, expectedSeconds = 0, airLeak = 0, share = 0, greatestLift = 0, lookFirst = [] } = leak;
  const expected = `about ${sayDuration(expectedSeconds)} was to be expected`;
  if (kind === "cannot-prime") return { kind, words: "At this lift it is not to be expected to prime.", lookFirst };
  if (kind === "as-expected") return { kind, words: `As it should be: ${expected}.`, lookFirst };
  const much = sayFlow(airLeak, units);
  const words =
    `Slow: ${expected}. Air leaks in at about ${much}, ${Math.round(100 * share)}\u00a0% of what the primer takes out. ` +
    `With this leak no primer gets water above ${sayLength(greatestLift, units)}.`;
  return { kind, words, lookFirst };
}
