import { InputError, printGiven, type Fault } from "#base";
import { ENTRY_LIMITS, type Entry } from "#log";
import { z } from "zod";
import { casualtySchemas } from "./casualty-schemas.ts";
import type { Bodies, EntryKind } from "./kinds.ts";
import { kitSchemas } from "./kit-schemas.ts";
import { practiceSchemas, qualificationSchemas } from "./people-schemas.ts";
import { shelves, stockSchemas } from "./stock-schemas.ts";
import { timeSchemas } from "./work-schemas.ts";
import { amountTo, countTo, fromSheet, id, line, note, reason, role, span, zone } from "./schema-parts.ts";

const BOAT_SPEED = { error: "more than 0 m/s, at most 60 m/s" };

/** One schema for each kind of entry, of the same shape as its body in `kinds.ts`. */
export const kindSchemas = {
  ...kitSchemas,
  ...casualtySchemas,
  ...stockSchemas,
  ...timeSchemas,
  ...practiceSchemas,
  ...qualificationSchemas,
  "place-set": z.strictObject({ name: line(80), strength: countTo(1_000), zone }),
  "place-closed": z.strictObject({ reason }),
  "shelves-set": z.strictObject({ shelves }),
  "policy-set": z.strictObject({
    proofRun: span.exactOptional(),
    muster: span.exactOptional(),
    turnaround: span.exactOptional(),
    fuelAge: span.exactOptional(),
  }),
  "opening-interval-set": z.strictObject({
    pattern: id,
    every: span.exactOptional(),
    rests: z
      .strictObject({
        looks: countTo(1_000_000),
        found: countTo(1_000_000),
        lay: amountTo(1e13),
        best: z.array(amountTo(40_000)).length(3),
        nightHours: amountTo(1_000_000),
      })
      .exactOptional(),
  }),
  "station-named": z.strictObject({ name: line(80) }),
  "lines-imported": z.strictObject({
    lines: z.array(id).min(1).max(500),
    by: z.enum(["bringer", "word"]),
    from: z.array(id).min(1).max(500).exactOptional(),
  }),
  "lines-brought-back": z.strictObject({ lines: z.array(id).min(1).max(500), by: z.enum(["vouched", "word"]) }),
  "lines-handed-in": z.strictObject({ lines: z.array(id).min(1).max(500) }),
  "boat-set": z.strictObject({
    name: line(80),
    place: id,
    speed: z.number({ error: "a number" }).gt(0, BOAT_SPEED).max(60, BOAT_SPEED),
    launch: amountTo(86_400),
    setUp: amountTo(7_200),
    carries: countTo(50),
    mains: z.boolean(),
  }),
  "boat-retired": z.strictObject({ reason }),
  "person-joined": z.strictObject({ name: line(80), role, sheet: fromSheet.exactOptional() }),
  "person-changed": z.strictObject({ name: line(80).exactOptional(), role: role.exactOptional() }),
  "person-left": z.strictObject({ reason: reason.exactOptional() }),
  "device-joined": z.strictObject({ name: line(80) }),
  "device-shut-out": z.strictObject({ reason }),
  "step-reported": z.strictObject({
    step: id,
    what: z.enum(["wrong", "impossible", "unclear"]),
    note: note.exactOptional(),
    kit: id.exactOptional(),
  }),
  "report-answered": z.strictObject({ report: id, answer: note }),
  struck: z.strictObject({ entry: id, reason }),
} satisfies { readonly [Kind in EntryKind]: z.ZodType<Bodies[Kind]> };

/** Every kind of entry there is. */
export const entryKinds = Object.keys(kindSchemas) as readonly EntryKind[];

/** True for a kind of entry that this version knows. */
export function isEntryKind(kind: string): kind is EntryKind {
  return Object.hasOwn(kindSchemas, kind);
}

/**
 * Judges what an entry says: a known kind, and a body of that kind's shape and sizes.
 *
 * @param entry - an entry whose envelope has been judged
 * @returns its body
 * @throws InputError RD-101 unknown kind, RD-102 for each part of the body that is not as it must be
 * @example validateBody({ kind: "kit-renamed", body: { name: "Kit 4" } }) // { name: "Kit 4" }
 */
export function validateBody<Kind extends EntryKind>(entry: Pick<Entry<Kind>, "kind" | "body">): Bodies[Kind] {
  const faults = judgeBody(entry);
  if (faults.length > 0) throw new InputError(faults);
  return entry.body as Bodies[Kind];
}

/** The faults in what an entry says, at most 20; empty where there are none. */
export function judgeBody({ kind, body }: Pick<Entry, "kind" | "body">): readonly Fault[] {
  if (!isEntryKind(kind)) return [unknownKind(kind)];
  const read = kindSchemas[kind].safeParse(body);
  return read.success ? [] : read.error.issues.slice(0, ENTRY_LIMITS.faults).map((issue) => faultOf(issue, body));
}

function unknownKind(kind: string): Fault {
  return {
    code: "RD-101",
    field: "kind",
    got: printGiven(kind),
    allowed: "a kind of entry that this version knows",
    remedy: "Bring the app up to date, or take the line out.",
  };
}

function faultOf(issue: z.core.$ZodIssue, body: unknown): Fault {
  const path = ["body", ...issue.path].map(String).join(".");
  return {
    code: "RD-102",
    field: path,
    got: printGiven(valueAt(body, issue.path)),
    allowed: issue.message.slice(0, 300),
    remedy: "Correct it and write the line again.",
  };
}

function valueAt(body: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === "object" && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    body,
  );
}
