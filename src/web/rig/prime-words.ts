import { sayDuration, sayFlow, sayLength, type Words } from "#words";
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

/** How the person reads, in which units. */
export interface PrimeReader {
  readonly units: UnitSystem;
  readonly words: Words["prime"];
}

/** Strokes and seconds to be expected, in one line. */
export function sayPrime(answer: PrimeAnswer, height: number, { units, words }: PrimeReader): string {
  const lift = sayLength(height, units);
  const { kind, wholeStrokes, seconds } = answer;
  if (kind === "will-not-prime" || wholeStrokes === undefined || seconds === undefined) return words.willNot({ lift });
  if (wholeStrokes === 0) return words.runsIn({ lift });
  return words.expect({ lift, strokes: wholeStrokes, duration: sayDuration(seconds) });
}

/** How high to count on: what the maker states and what practice holds come first, the limit of physics only as such. */
export function sayGreatest(
  answer: PrimeAnswer,
  stated: number | undefined,
  lift: number,
  { units, words }: PrimeReader,
): string {
  const say = (si: number) => sayLength(si, units);
  const plain = say(PRACTICE_LIFT.plainLossAbove);
  return [
    ...(lift > (stated ?? PRACTICE_LIFT.notBeyond) ? [words.doNotCount()] : []),
    stated === undefined
      ? words.unstated({ plain, most: say(PRACTICE_LIFT.notBeyond) })
      : words.stated({ stated: say(stated), plain }),
    words.physics({ greatest: say(answer.greatestLift) }),
  ].join(" ");
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
export function readPrime(answer: PrimeAnswer, reader: PrimeReader, seconds?: number): PrimeReading | undefined {
  const { leak } = answer;
  if (!leak) return undefined;
  const isQuick = seconds !== undefined && isTooQuick(seconds, answer);
  if (!isQuick) return { kind: leak.kind, words: sayLeak(leak, reader), lookFirst: leak.lookFirst ?? [] };
  const least = sayDuration(leak.expectedSeconds ?? 0);
  return { kind: "too-quick", words: reader.words.tooQuick({ least }), lookFirst: [] };
}

function sayLeak(leak: NonNullable<PrimeAnswer["leak"]>, { units, words }: PrimeReader): string {
  const { kind, expectedSeconds = 0, airLeak = 0, share = 0, greatestLift = 0 } = leak;
  const expected = sayDuration(expectedSeconds);
  if (kind === "cannot-prime") return words.notExpected();
  if (kind === "as-expected") return words.asExpected({ expected });
  return words.slow({
    expected,
    leak: sayFlow(airLeak, units),
    share: Math.round(100 * share),
    greatest: sayLength(greatestLift, units),
  });
}
