import { sayFlow } from "#words";
import { formatNumber, type UnitSystem } from "#base";
import type { Check, Effect, Pattern } from "#kit";
import type { Bodies } from "#readiness";
import type { Line, Ask } from "#web/act/lines.ts";
import type { Box, Method, ProofAnswer } from "./measure-draft.ts";

type Measured = Pick<Bodies["delivery-measured"], "flow" | "flowUncertainty" | "expected" | "ratio">;
type Verdict = ProofAnswer["verdict"];

/** Ways to measure, the sharpest first. */
export const METHODS: readonly { readonly value: Method; readonly label: string; readonly note: string }[] = [
  { value: "timed-fill", label: "Timed fill of a drum", note: "The sharpest: a known drum, timed, best twice" },
  { value: "flow-meter", label: "Flow meter", note: "Read once it stands still" },
  {
    value: "discharge-pressure",
    label: "Pressure at the discharge",
    note: "Gauge at the pump's outlet; the hose is the meter",
  },
  { value: "suction-vacuum", label: "Vacuum at the suction", note: "Gauge at the pump's inlet, while it pumps" },
];

/** Label and hint of every box. */
export const BOX_WORDS: Readonly<Record<Box, { readonly label: string; readonly hint?: string }>> = {
  lift: { label: "Suction lift", hint: "From the water up to the pump." },
  rise: { label: "Rise", hint: "From the pump up to the end of the hose." },
  suctionLength: { label: "Suction hose" },
  dischargeLength: { label: "Discharge hose" },
  throttle: { label: "Part of full speed", hint: "By the tachometer, or by ear." },
  volume: { label: "The drum holds", hint: "To the mark it is filled to." },
  first: { label: "First fill took", hint: "From empty to the mark." },
  second: { label: "Second fill took", hint: "The same drum again makes the answer sharper." },
  pressure: { label: "Gauge at the outlet" },
  vacuum: { label: "Vacuum at the inlet", hint: "While it pumps." },
  flow: { label: "The meter shows" },
  beside: {
    label: "Vacuum at the inlet while it pumps",
    hint: "If there is a gauge: it tells a blocked suction from a weak pump.",
  },
  closed: { label: "Vacuum it holds", hint: "Gauge on the closed suction port." },
};

const VACUUM_UNITS: Readonly<Record<UnitSystem, string>> = { metric: "kPa", us: "inHg" };

/** Unit a bare number is in, where it is not the person's usual one for that dimension: as gauges and watches show it. */
export function unitOf(box: Box, units: UnitSystem): string | undefined {
  if (box === "throttle") return "%";
  if (box === "first" || box === "second") return "s";
  return box === "vacuum" || box === "beside" || box === "closed" ? VACUUM_UNITS[units] : undefined;
}

/** What a pump that stands in the water calls its rise. */
export const RISE_FROM_WATER = { label: "Rise", hint: "From the water up to the end of the hose." };

/** A measured flow with its doubt: "455 L/min, give or take 18". */
export function sayMeasured({ flow, flowUncertainty }: Measured, units: UnitSystem): string {
  return `${sayFlow(flow, units, "measured")}, give or take ${sayFlow(2 * flowUncertainty, units, "measured")}`;
}

/** Measured against expected: "96 % of the 472 L/min expected". */
export function sayRatio({ ratio, expected }: Measured, units: UnitSystem): string {
  return `${sayShare(ratio)} of the ${sayFlow(expected, units, "measured")} expected`;
}

/** A share as it is entered at the check. */
export function sayShare(ratio: number): string {
  return `${formatNumber(100 * ratio, ratio < 1 ? 2 : 3)}\u00a0%`;
}

/** A verdict in words, with the limit it is held to. */
export function sayVerdict({ verdict, ratio }: Pick<ProofAnswer, "verdict" | "ratio">, pattern: Pattern): string {
  if (verdict === "unclear" && ratio > 1) {
    return "More than this pump can give: check lift, rise, hoses, drum and watch, and measure again.";
  }
  const { grounds = 0, notes = 0 } = pattern.hydraulics?.proof ?? {};
  const words: Readonly<Record<Verdict, string>> = {
    "as-expected": "As expected.",
    noted: `Below ${sayShare(notes)}: a finding.`,
    grounds: `Below ${sayShare(grounds)}, also at the edge of the doubt: this grounds the kit.`,
    unclear: `Too rough to tell from ${sayShare(grounds)}: measure again, with a bigger drum or twice.`,
  };
  return words[verdict];
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
