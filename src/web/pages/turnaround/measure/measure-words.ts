import { sayFlow, type Words } from "#words";
import { formatNumber, type UnitSystem } from "#base";
import type { Check, Effect, Pattern } from "#kit";
import type { Bodies } from "#readiness";
import type { Line, Ask } from "#web/act/lines.ts";
import type { Box, Method, ProofAnswer } from "./measure-draft.ts";

type Measured = Pick<Bodies["delivery-measured"], "flow" | "flowUncertainty" | "expected" | "ratio">;
type Verdict = ProofAnswer["verdict"];

type MeasureWords = Words["turnaroundMeasure"];

interface MethodChoice {
  readonly value: Method;
  readonly label: string;
  readonly note: string;
}

/** Ways to measure, the sharpest first. */
export function methodChoices(words: MeasureWords): readonly MethodChoice[] {
  return [
    { value: "timed-fill", label: words.timedFill(), note: words.timedFillNote() },
    { value: "flow-meter", label: words.flowMeter(), note: words.flowMeterNote() },
    { value: "discharge-pressure", label: words.dischargePressure(), note: words.dischargePressureNote() },
    { value: "suction-vacuum", label: words.suctionVacuum(), note: words.suctionVacuumNote() },
  ];
}

export interface BoxWords {
  readonly label: string;
  readonly hint?: string;
}

/** Label and hint of every box. */
const BOX_WORDS: Readonly<Record<Box, (words: MeasureWords) => BoxWords>> = {
  lift: (words) => ({ label: words.lift(), hint: words.liftHint() }),
  rise: (words) => ({ label: words.rise(), hint: words.riseHint() }),
  suctionLength: (words) => ({ label: words.suctionLength() }),
  dischargeLength: (words) => ({ label: words.dischargeLength() }),
  throttle: (words) => ({ label: words.partOfSpeed(), hint: words.partOfSpeedHint() }),
  volume: (words) => ({ label: words.volume(), hint: words.volumeHint() }),
  first: (words) => ({ label: words.first(), hint: words.firstHint() }),
  second: (words) => ({ label: words.second(), hint: words.secondHint() }),
  pressure: (words) => ({ label: words.pressure() }),
  vacuum: (words) => ({ label: words.vacuum(), hint: words.vacuumHint() }),
  flow: (words) => ({ label: words.flow() }),
  beside: (words) => ({ label: words.beside(), hint: words.besideHint() }),
  closed: (words) => ({ label: words.closed(), hint: words.closedHint() }),
};

export function sayMeasureBox(box: Box, words: MeasureWords): BoxWords {
  return BOX_WORDS[box](words);
}

const VACUUM_UNITS: Readonly<Record<UnitSystem, string>> = { metric: "kPa", us: "inHg" };

/** Unit a bare number is in, where it is not the person's usual one for that dimension: as gauges and watches show it. */
export function unitOf(box: Box, units: UnitSystem): string | undefined {
  if (box === "throttle") return "%";
  if (box === "first" || box === "second") return "s";
  return box === "vacuum" || box === "beside" || box === "closed" ? VACUUM_UNITS[units] : undefined;
}

/** What a pump that stands in the water calls its rise. */
export function sayRiseFromWater(words: MeasureWords): BoxWords {
  return { label: words.rise(), hint: words.riseFromWaterHint() };
}

/** A reader's units and language. */
export interface Reader {
  readonly units: UnitSystem;
  readonly words: MeasureWords;
}

/** A measured flow with its doubt: "455 L/min, give or take 18". */
export function sayMeasured({ flow, flowUncertainty }: Measured, { units, words }: Reader): string {
  const say = (rate: number) => sayFlow(rate, units, "measured");
  return words.measured({ flow: say(flow), doubt: say(2 * flowUncertainty) });
}

/** Measured against expected: "96 % of the 472 L/min expected". */
export function sayRatio({ ratio, expected }: Measured, { units, words }: Reader): string {
  return words.ratio({ share: sayShare(ratio), expected: sayFlow(expected, units, "measured") });
}

/** A share as it is entered at the check. */
export function sayShare(ratio: number): string {
  return `${formatNumber(100 * ratio, ratio < 1 ? 2 : 3)}\u00a0%`;
}

/** A verdict in words, with the limit it is held to. */
export function sayVerdict(
  { verdict, ratio }: Pick<ProofAnswer, "verdict" | "ratio">,
  pattern: Pattern,
  words: MeasureWords,
): string {
  if (verdict === "unclear" && ratio > 1) return words.moreThanPossible();
  const { grounds = 0, notes = 0 } = pattern.hydraulics?.proof ?? {};
  const said: Readonly<Record<Verdict, string>> = {
    "as-expected": words.asExpected(),
    noted: words.noted({ limit: sayShare(notes) }),
    grounds: words.grounds({ limit: sayShare(grounds) }),
    unclear: words.unclear({ limit: sayShare(grounds) }),
  };
  return said[verdict];
}

/** Effect of the finding that a verdict leads to; none where nothing is wrong, or nothing is known. */
export function effectOf(verdict: Verdict): Effect | undefined {
  if (verdict === "grounds") return "grounds";
  return verdict === "noted" ? "notes" : undefined;
}

/** The check of a line that asks for measured over expected. */
export function ratioAsk(line: Line): (Ask & { readonly check: Check }) | undefined {
  return line.asks.find((ask): ask is Ask & { readonly check: Check } => {
    return ask.check?.kind === "measure" && ask.check.dimension === "ratio";
  });
}
