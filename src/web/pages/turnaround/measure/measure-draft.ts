import { isInputError, parseQuantity, type Dimension } from "#base";
import type { Pattern } from "#kit";
import { proofRunQuestion } from "#questions";
import type { Bodies, Value } from "#readiness";

export type Method = Bodies["delivery-measured"]["method"];
export type ProofAnswer = ReturnType<typeof proofRunQuestion.answer>;

/** Every box a measurement may have; what stands in it as typed, and with its unit once it can be read. */
export const BOXES = {
  lift: "length",
  rise: "length",
  suctionLength: "length",
  dischargeLength: "length",
  throttle: "ratio",
  volume: "volume",
  first: "time",
  second: "time",
  pressure: "pressure",
  vacuum: "pressure",
  flow: "flow",
  beside: "pressure",
  closed: "pressure",
} as const satisfies Readonly<Record<string, Dimension>>;
export type Box = keyof typeof BOXES;

/** A measurement being entered: kept on this device until it is written down. Nothing stands in it that was not put there. */
export interface MeasureDraft {
  readonly method?: Method;
  readonly hoses?: "packed" | "other";
  readonly speed?: "full" | "less";
  readonly boxes: Readonly<Partial<Record<Box, { readonly typed: string; readonly quantity: string }>>>;
}

export const NO_DRAFT: MeasureDraft = { boxes: {} };

/** True for a pump with a suction hose; one that stands in the water has none. */
export function hasSuction(pattern: Pattern): boolean {
  return pattern.hydraulics?.suction !== undefined;
}

/** Boxes that a method reads; all must be filled but the second timing. */
export const READ_BY: Readonly<Record<Method, readonly Box[]>> = {
  "timed-fill": ["volume", "first", "second"],
  "discharge-pressure": ["pressure"],
  "suction-vacuum": ["vacuum"],
  "flow-meter": ["flow"],
};

/** What a draft comes to. */
export type Measuring =
  | { readonly kind: "incomplete"; readonly missing: Needed }
  | { readonly kind: "refused"; readonly error: unknown }
  | { readonly kind: "measured"; readonly answer: ProofAnswer; readonly body: MeasuredBody };

/** The entry's body without what the act adds. */
export type MeasuredBody = Omit<Bodies["delivery-measured"], "turnaround" | "step">;

/** Puts what was entered together, and asks what it comes to once nothing is missing. */
export function readMeasure(pattern: Pattern, draft: MeasureDraft): Measuring {
  const missing = missingOf(pattern, draft);
  if (missing !== undefined || !draft.method) return { kind: "incomplete", missing: missing ?? "how" };
  const rig = rigOf(pattern, draft);
  try {
    const answer = proofRunQuestion.answer(
      { kit: pattern.id, ...rig.input, reading: readingOf(draft, draft.method), ...besideOf(draft) },
      { patterns: () => pattern },
    );
    return { kind: "measured", answer, body: bodyOf(draft, draft.method, rig.circumstances, answer) };
  } catch (cause) {
    if (isInputError(cause)) return { kind: "refused", error: cause };
    throw cause;
  }
}

/** Boxes that must be filled for this draft, in the order they stand. */
export function boxesOf(pattern: Pattern, draft: MeasureDraft): readonly Box[] {
  const suction = hasSuction(pattern);
  return [
    ...(suction ? (["lift"] as const) : []),
    "rise",
    ...(draft.hoses === "other"
      ? ([...(suction ? (["suctionLength"] as const) : []), "dischargeLength"] as const)
      : []),
    ...(draft.speed === "less" ? (["throttle"] as const) : []),
    ...(draft.method ? READ_BY[draft.method] : []),
  ];
}

const NEEDED = {
  lift: "needLift",
  rise: "needRise",
  suctionLength: "needSuction",
  dischargeLength: "needDischarge",
  throttle: "needThrottle",
  volume: "needVolume",
  first: "needFill",
  pressure: "needGauge",
  vacuum: "needGauge",
  flow: "needMeter",
} as const satisfies Partial<Record<Box, string>>;

/** What is still missing, by the name of its message. */
export type Needed = "how" | "needHoses" | "needSpeed" | (typeof NEEDED)[keyof typeof NEEDED];

function isNeeded(box: Box): box is keyof typeof NEEDED {
  return Object.hasOwn(NEEDED, box);
}

function missingOf(pattern: Pattern, draft: MeasureDraft): Needed | undefined {
  if (draft.hoses === undefined) return "needHoses";
  if (pattern.engine && draft.speed === undefined) return "needSpeed";
  const empty = boxesOf(pattern, draft)
    .filter(isNeeded)
    .find((box) => siOf(draft, box) === undefined);
  return empty && NEEDED[empty];
}

/** What stands in a box, in SI; undefined where it is empty or cannot be read. */
export function siOf({ boxes }: MeasureDraft, box: Box): number | undefined {
  const quantity = boxes[box]?.quantity;
  if (!quantity) return undefined;
  try {
    return parseQuantity(quantity, BOXES[box]);
  } catch (cause) {
    if (isInputError(cause)) return undefined;
    throw cause;
  }
}

type Circumstances = Pick<MeasuredBody, "lift" | "rise" | "throttle" | "suctionLength" | "dischargeLength">;

function rigOf(pattern: Pattern, draft: MeasureDraft) {
  const { suction, discharge } = pattern.hydraulics ?? {};
  const own = (box: Box, packed: number | undefined) => (draft.hoses === "other" ? siOf(draft, box) : packed);
  const suctionLength = suction && own("suctionLength", suction.length);
  const dischargeLength = own("dischargeLength", discharge?.length);
  const circumstances: Circumstances = {
    lift: siOf(draft, "lift") ?? 0,
    rise: siOf(draft, "rise") ?? 0,
    throttle: draft.speed === "less" ? (siOf(draft, "throttle") ?? 1) : 1,
    ...(suctionLength !== undefined && { suctionLength }),
    ...(dischargeLength !== undefined && { dischargeLength }),
  };
  const { lift, rise, throttle } = circumstances;
  const input = {
    throttle,
    suction: { lift, ...(suctionLength !== undefined && { length: suctionLength }) },
    discharge: { rise, ...(dischargeLength !== undefined && { length: dischargeLength }) },
  };
  return { input, circumstances };
}

function readingOf(draft: MeasureDraft, method: Method): object {
  const [volume, first, second] = (["volume", "first", "second"] as const).map((box) => siOf(draft, box));
  if (method === "timed-fill") return { method, volume, timings: [first, second].filter((one) => one !== undefined) };
  const [box] = READ_BY[method];
  return { method, [box!]: siOf(draft, box!) };
}

function besideOf(draft: MeasureDraft): object {
  const suctionVacuum = draft.method === "suction-vacuum" ? undefined : siOf(draft, "beside");
  return suctionVacuum === undefined ? {} : { suctionVacuum };
}

function bodyOf(draft: MeasureDraft, method: Method, around: Circumstances, answer: ProofAnswer): MeasuredBody {
  const { flow, flowUncertainty, expected, ratio, verdict } = answer;
  const boxes: readonly Box[] = [...READ_BY[method], "beside", "closed"];
  const readings = boxes.flatMap((box) => {
    const value = valueOf(draft, box);
    return value ? [[box, value] as const] : [];
  });
  return {
    method,
    ...around,
    flow,
    flowUncertainty,
    expected,
    ratio,
    verdict,
    readings: Object.fromEntries(readings),
  };
}

function valueOf(draft: MeasureDraft, box: Box): Value | undefined {
  const si = siOf(draft, box);
  const text = draft.boxes[box]?.quantity;
  return si === undefined || text === undefined ? undefined : { kind: "quantity", si, dimension: BOXES[box], text };
}
