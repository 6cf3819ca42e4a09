import { z } from "zod";
import type { Said } from "./said.ts";
import {
  amountTo,
  answer,
  countTo,
  dayOrMonth,
  effect,
  fitted,
  fromSheet,
  id,
  instant,
  line,
  note,
  photos,
  reason,
  value,
} from "./schema-parts.ts";
import { drawn } from "./stock-parts.ts";

/* What is said of a kit, where the state keeps it as it was said, or more than one kind says it. */

export const DAY_SECONDS = 86_400;

/** A line of a turnaround. */
export const where = { turnaround: id, step: id };

export const stepAnswer = z
  .strictObject({
    ...where,
    /** Check answered; absent for a step with no check. */
    check: id.exactOptional(),
    answer,
    /** Required with "not-possible". */
    why: reason.exactOptional(),
    value: value.exactOptional(),
    note: note.exactOptional(),
    photos: photos.exactOptional(),
    /** True where the answer was typed up from a filled paper card. */
    fromCard: z.boolean().exactOptional(),
    /** When the card was filled in, as written on it. */
    cardAt: instant.exactOptional(),
  })
  .refine((given) => given.answer !== "not-possible" || given.why !== undefined, {
    error: "why it was not possible",
    path: ["why"],
  });
export type StepAnswer = Said<typeof stepAnswer>;

/** What every finding says, whatever it was raised by. */
const found = {
  finding: id,
  item: id,
  /** Mode id of the pattern, or "other" with `effect` given by the person. */
  mode: id,
  effect,
  limit: line(300).exactOptional(),
  note: note.exactOptional(),
};

const isTold = (given: { readonly mode: string; readonly note?: string }) =>
  given.mode !== "other" || given.note !== undefined;
const TOLD = { error: "what is wrong, where no mode of the pattern fits", path: ["note"] };

export const findingRaised = z
  .strictObject({
    ...found,
    turnaround: id.exactOptional(),
    step: id.exactOptional(),
    check: id.exactOptional(),
    photos,
  })
  .refine(isTold, TOLD);
export type FindingRaised = Said<typeof findingRaised>;

export const foundAtReturn = z.strictObject(found).refine(isTold, TOLD);
/** What a count at the return found wrong. */
export type FoundAtReturn = Said<typeof foundAtReturn>;

export const countedAs = z
  .strictObject({
    item: id,
    as: z.enum(["there", "missing", "damaged"]),
    /** Of a missing item of which the kit has several: how many came back. */
    back: countTo(1_000).exactOptional(),
  })
  .refine(({ as, back }) => back === undefined || as === "missing", {
    error: "a number that came back only of what is missing",
    path: ["back"],
  });
/** One item as it was counted when the kit came back. */
export type CountedAs = Said<typeof countedAs>;

/** Name of a thing lent with a kit. */
export const lentName = line(80);

/** Something that went with a kit beside its own items, such as a fuel can. `count`: how many went, or came back. */
const lentOf = (least: 0 | 1) => z.strictObject({ name: lentName, count: countTo(99).min(least) });
export type Lent = Said<ReturnType<typeof lentOf>>;

/** Things lent with a kit, each name once. At most 20 kinds of thing, 1 to 99 of each going out, 0 to 99 coming back. */
export function lentList(least: 0 | 1) {
  return z
    .array(lentOf(least))
    .max(20)
    .refine((given) => new Set(given.map(({ name }) => name)).size === given.length, { error: "each name once" });
}

export const remedy = z.discriminatedUnion("how", [
  z.strictObject({ finding: id, how: z.literal("mended"), note }),
  z.strictObject({
    finding: id,
    how: z.literal("replaced"),
    part: line(120),
    quantity: countTo(1_000),
    fitted: fitted.exactOptional(),
    note: note.exactOptional(),
    /** The shelf it was taken off; absent where it came from no shelf of the station. */
    drawn: drawn.exactOptional(),
  }),
  /** Lived with: by a named person, under a stated limit, until a date. */
  z.strictObject({ finding: id, how: z.literal("lived-with"), name: line(120), limit: line(300), until: dayOrMonth }),
]);
export type Remedy = Said<typeof remedy>;

export const findingProved = z.strictObject({
  finding: id,
  checks: z
    .array(z.strictObject({ check: id, answer, value: value.exactOptional() }))
    .min(1, { error: "at least one check" })
    .max(50),
  turnaround: id.exactOptional(),
});
export type FindingProved = Said<typeof findingProved>;

export const deliveryMeasured = z.strictObject({
  ...where,
  method: z.enum(["timed-fill", "discharge-pressure", "suction-vacuum", "flow-meter"]),
  /** Suction lift [m]. */
  lift: z.number().min(-20).max(20),
  /** Discharge rise above the pump [m]. */
  rise: z.number().min(-20).max(100),
  /** As speed ratio. */
  throttle: amountTo(2),
  /** Hose lengths used [m]. */
  suctionLength: amountTo(1_000).exactOptional(),
  dischargeLength: amountTo(1_000).exactOptional(),
  /** Measured [m³/s], with its own standard uncertainty [m³/s]. */
  flow: amountTo(10),
  flowUncertainty: amountTo(10),
  /** Expected [m³/s], and the ratio of measured to it. */
  expected: amountTo(10),
  ratio: amountTo(100),
  verdict: z.enum(["as-expected", "noted", "grounds", "unclear"]),
  readings: z
    .record(z.string().max(60), value)
    .refine((given) => Object.keys(given).length <= 40, { error: "at most 40 readings" }),
});
export type DeliveryMeasured = Said<typeof deliveryMeasured>;

export const turnaroundTold = z.strictObject({
  /** "YYYY-MM-DD", or "YYYY-MM" where only the month is known. */
  day: dayOrMonth,
  /** Who did it, in the teller's words. */
  doneBy: line(80).exactOptional(),
  /** How it went, in the teller's words. */
  result: line(300).exactOptional(),
  note: note.exactOptional(),
  sheet: fromSheet.exactOptional(),
});
export type TurnaroundTold = Said<typeof turnaroundTold>;
