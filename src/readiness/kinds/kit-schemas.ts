import { MET } from "#kit";
import { z } from "zod";
import { drillSchemas } from "./drill-schemas.ts";
import { secondSchemas } from "./people-schemas.ts";
import { drawn, itemRobbed } from "./stock-schemas.ts";
import {
  amountTo,
  answer,
  countTo,
  dateRead,
  dateReadAt,
  day,
  dayOrMonth,
  effect,
  fitted,
  fromSheet,
  id,
  instant,
  itemFitted,
  line,
  note,
  photos,
  reason,
  sealNumber,
  sealSeen,
  strokes,
  value,
} from "./schema-parts.ts";
import { workSchemas } from "./work-schemas.ts";

const DAY_SECONDS = 86_400;
const optionalNote = note.exactOptional();
const where = { turnaround: id, step: id };

const stepAnswer = z
  .strictObject({
    ...where,
    check: id.exactOptional(),
    answer,
    why: reason.exactOptional(),
    value: value.exactOptional(),
    note: optionalNote,
    photos: photos.exactOptional(),
    fromCard: z.boolean().exactOptional(),
    cardAt: instant.exactOptional(),
  })
  .refine((given) => given.answer !== "not-possible" || given.why !== undefined, {
    error: "why it was not possible",
    path: ["why"],
  });

const findingRaised = z
  .strictObject({
    finding: id,
    item: id,
    mode: id,
    effect,
    limit: line(300).exactOptional(),
    note: optionalNote,
    turnaround: id.exactOptional(),
    step: id.exactOptional(),
    check: id.exactOptional(),
    photos,
  })
  .refine((given) => given.mode !== "other" || given.note !== undefined, {
    error: "what is wrong, where no mode of the pattern fits",
    path: ["note"],
  });

const countedAs = z.strictObject({ item: id, as: z.enum(["there", "missing", "damaged"]) });

const foundAtReturn = z
  .strictObject({
    finding: id,
    item: id,
    mode: id,
    effect,
    limit: line(300).exactOptional(),
    note: optionalNote,
  })
  .refine((given) => given.mode !== "other" || given.note !== undefined, {
    error: "what is wrong, where no mode of the pattern fits",
    path: ["note"],
  });

const remedy = z.discriminatedUnion("how", [
  z.strictObject({ finding: id, how: z.literal("mended"), note }),
  z.strictObject({
    finding: id,
    how: z.literal("replaced"),
    part: line(120),
    quantity: countTo(1_000),
    fitted: fitted.exactOptional(),
    note: optionalNote,
    drawn: drawn.exactOptional(),
  }),
  z.strictObject({ finding: id, how: z.literal("lived-with"), name: line(120), limit: line(300), until: dayOrMonth }),
]);

const deliveryMeasured = z.strictObject({
  ...where,
  method: z.enum(["timed-fill", "discharge-pressure", "suction-vacuum", "flow-meter"]),
  lift: z.number().min(-20).max(20),
  rise: z.number().min(-20).max(100),
  throttle: amountTo(2),
  suctionLength: amountTo(1_000).exactOptional(),
  dischargeLength: amountTo(1_000).exactOptional(),
  flow: amountTo(10),
  flowUncertainty: amountTo(10),
  expected: amountTo(10),
  ratio: amountTo(100),
  verdict: z.enum(["as-expected", "noted", "grounds", "unclear"]),
  readings: z
    .record(z.string().max(60), value)
    .refine((given) => Object.keys(given).length <= 40, { error: "at most 40 readings" }),
});

const proved = z.strictObject({
  finding: id,
  checks: z
    .array(z.strictObject({ check: id, answer, value: value.exactOptional() }))
    .min(1, { error: "at least one check" })
    .max(50),
  turnaround: id.exactOptional(),
});

/** Bodies of entries about a kit. */
export const kitSchemas = {
  ...workSchemas,
  "kit-enrolled": z.strictObject({
    name: line(80),
    serial: line(80),
    seal: sealNumber.exactOptional(),
    items: z.array(fitted).max(200),
    read: z.array(dateRead).max(200).exactOptional(),
    sheet: fromSheet.exactOptional(),
  }),
  "turnaround-told": z.strictObject({
    day: dayOrMonth,
    doneBy: line(80).exactOptional(),
    result: line(300).exactOptional(),
    note: optionalNote,
    sheet: fromSheet.exactOptional(),
  }),
  "kit-renamed": z.strictObject({ name: line(80) }),
  "kit-rebuilt": z.strictObject({ reason }),
  "kit-moved": z.strictObject({ to: id }),
  "kit-retired": z.strictObject({ reason }),
  "handed-over": z.strictObject({
    to: line(120),
    method: z.enum(["passed", "hoisted", "dropped", "line", "other"]),
    sealBroken: z.boolean(),
    casualty: id.exactOptional(),
    note: optionalNote,
    back: day.exactOptional(),
    taken: z.strictObject({ name: line(80).exactOptional(), strokes: strokes.exactOptional() }).exactOptional(),
    briefed: z.boolean().exactOptional(),
  }),
  returned: z.strictObject({
    note: optionalNote,
    exposure: z.array(z.enum(MET)).max(4),
    stopped: instant.exactOptional(),
    counted: z.array(countedAs).max(200).exactOptional(),
    findings: z.array(foundAtReturn).max(200).exactOptional(),
  }),
  flushed: z.strictObject({ note: optionalNote }),
  mustered: z.strictObject({ sealSeen, containerSound: z.boolean(), note: optionalNote }),
  "turnaround-opened": z.strictObject({
    turnaround: id,
    because: z.enum(["routine", "returned", "finding", "seal", "lapse"]),
    sealSeen,
    drill: id.exactOptional(),
  }),
  "step-answered": stepAnswer,
  "timer-started": z.strictObject(where),
  "timer-stopped": z.strictObject({
    ...where,
    started: instant,
    seconds: amountTo(30 * DAY_SECONDS),
    reached: z.boolean(),
  }),
  "pulls-counted": z.strictObject({ ...where, pulls: countTo(200), started: z.boolean() }),
  "prime-timed": z.strictObject({
    ...where,
    seconds: amountTo(DAY_SECONDS),
    strokes: countTo(5_000).exactOptional(),
    primed: z.boolean(),
    lift: z.number().min(-20).max(20).exactOptional(),
  }),
  "delivery-measured": deliveryMeasured,
  "item-fitted": itemFitted.extend({ drawn: drawn.exactOptional(), robbed: id.exactOptional() }),
  "item-robbed": itemRobbed,
  "date-read": dateReadAt,
  "finding-raised": findingRaised,
  "remedy-made": remedy,
  "finding-proved": proved,
  ...secondSchemas,
  ...drillSchemas,
  sealed: z.strictObject({ turnaround: id, seal: sealNumber, note: optionalNote, witness: line(120).exactOptional() }),
  "closed-grounded": z.strictObject({ turnaround: id, reason, seal: sealNumber.exactOptional() }),
  settled: z.strictObject({ entries: z.array(id).min(2).max(50), stands: id, reason }),
};
