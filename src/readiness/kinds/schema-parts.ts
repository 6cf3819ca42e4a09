import { isDate, isInstant, isMonth, isZone, lastingSpanFault, dimensions } from "#base";
import { isInbornName } from "#log";
import { z } from "zod";
import type { Said } from "./said.ts";
import { ROLES } from "./writers.ts";

/* Words of which bodies are made. Sizes are generous for people and small for machines. */

const ID = /^[A-Za-z0-9][A-Za-z0-9._@-]{0,95}$/;

/** An id of anything: letters, digits, and . _ @ - */
export const id = z
  .string()
  .refine((text) => ID.test(text) && !isInbornName(text), { error: "an id of 1 to 96 letters, digits, . _ @ or -" });

/** One line a person wrote, at most so many characters. */
export const line = (longest: number) =>
  z
    .string()
    .max(longest, { error: `at most ${longest} characters` })
    .refine((text) => text.trim() !== "", { error: "some words" });

/** What a person may add in their own words. */
export const note = line(2_000);

/** A reason that must be given. */
export const reason = line(1_000);

/** A seal number as read; empty where no seal was found. */
export const sealSeen = z.string().max(40, { error: "at most 40 characters" });

/** A seal number that was fitted. */
export const sealNumber = line(40);

/** A day, or a month that means its last day. */
export const dayOrMonth = z
  .string()
  .refine((text) => isDate(text) || isMonth(text), { error: 'a day "2027-03-14" or a month "2027-03"' });

/** A day of the calendar, never a month. */
export const day = z.string().refine(isDate, { error: 'a day "2027-03-14"' });

/** Lines drawn with a finger: whole numbers "x,y" with blanks between, a line each parted by ";". */
export const strokes = z
  .string()
  .max(6_000, { error: "at most 6000 characters" })
  .regex(/^\d{1,3},\d{1,3}( \d{1,3},\d{1,3})*(;\d{1,3},\d{1,3}( \d{1,3},\d{1,3})*)*$/, {
    error: 'lines such as "10,40 12,38;90,20 91,22"',
  });

/** An instant with its offset. */
export const instant = z.string().refine(isInstant, { error: "an instant with its offset" });

/** An IANA time zone. */
export const zone = z.string().max(64).refine(isZone, { error: 'a time zone such as "Pacific/Auckland"' });

/** A span of calendar time, longer than nothing and no longer than a hundred years: no later day has a name. */
export const span = z
  .string()
  .max(40)
  .refine((text) => lastingSpanFault(text) !== "none", { error: '"90 days", "6 weeks" or "12 months"' })
  .refine((text) => lastingSpanFault(text) !== "too-long", { error: "at most 100 years" });

/** A count from nothing to so many. */
export const countTo = (most: number) => z.int({ error: "a whole number" }).min(0).max(most);

/** A number that is not below zero, to so much. */
export const amountTo = (most: number) => z.number({ error: "a number" }).min(0).max(most);

export const photo = z.strictObject({
  /** Of the bytes. */
  hash: z.string().regex(/^[0-9a-f]{64}$/, { error: "a SHA-256 in lower-case hex" }),
  mime: z.enum(["image/jpeg", "image/png", "image/webp"]),
  bytes: z.int().min(1).max(40_000_000),
  width: z.int().min(1).max(20_000),
  height: z.int().min(1).max(20_000),
});
export type PhotoRef = Said<typeof photo>;
export const photos = z.array(photo).max(20, { error: "at most 20 photos" });

export const answer = z.enum(["seen", "wrong", "not-possible"]);
/** What was found at a line: right, wrong, or that it could not be looked at. */
export type Answer = Said<typeof answer>;
export const effect = z.enum(["grounds", "limits", "notes"]);
export const role = z.enum(ROLES);

const text = z.string().max(200);
const dimension = z.string().refine((name) => dimensions().some((known) => known === name), { error: "a dimension" });

export const fromSheet = z.strictObject({
  /** Name of the file, with the sheet in it where there are several. */
  file: line(120),
  /** Number of the row as the spreadsheet shows it, from 1. */
  row: z.int().min(1).max(1_048_576),
});
/** Where a line came from that nobody typed: a row of a spreadsheet. What it says is what the sheet says. */
export type FromSheet = Said<typeof fromSheet>;

export const value = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("quantity"), si: z.number(), dimension, text }),
  z.strictObject({ kind: z.literal("count"), count: countTo(1_000_000) }),
  z.strictObject({ kind: z.literal("match"), first: text, second: text }),
  z.strictObject({ kind: z.literal("date"), date: dayOrMonth }),
  z.strictObject({ kind: z.literal("text"), text: z.string().max(2_000) }),
]);
/** What was read, in SI where it is a quantity, beside the text as entered. */
export type Value = Said<typeof value>;

const fittedFields = {
  item: id,
  /** Date fitted or filled. */
  fitted: dayOrMonth,
  /** Date printed on it: a day, or a month that means its last day. */
  printed: dayOrMonth.exactOptional(),
  quantity: countTo(1_000),
  batch: line(80).exactOptional(),
  note: note.exactOptional(),
};
export const fitted = z.strictObject(fittedFields);
export type Fitted = Said<typeof fitted>;

/** An item fitted in a turnaround, or outside one. */
export const itemFitted = z.strictObject({ ...fittedFields, turnaround: id.exactOptional(), step: id.exactOptional() });

const dateReadFields = {
  item: id,
  /** `printed`: its last good day. `fitted`: when it was fitted or filled. `made`: when it was made. */
  of: z.enum(["printed", "fitted", "made"]),
  /** A day, or a month that means its last day; absent where it cannot be read. */
  date: dayOrMonth.exactOptional(),
  note: note.exactOptional(),
};
export const dateRead = z.strictObject(dateReadFields);
/** A date read off an item, or that somebody looked and could not read it. */
export type DateRead = Said<typeof dateRead>;

/** A date read at a line of a turnaround, or outside one. */
export const dateReadAt = z.strictObject({
  ...dateReadFields,
  turnaround: id.exactOptional(),
  step: id.exactOptional(),
});
