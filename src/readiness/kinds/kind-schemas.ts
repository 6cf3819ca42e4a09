import { InputError, printGiven, type Fault } from "#base";
import { ENTRY_LIMITS, type Entry } from "#log";
import type { z } from "zod";
import { SCHEMAS } from "../registry/schemas.ts";
import type { Bodies, EntryKind } from "./kinds.ts";
import { shapes, type Shapes } from "./shapes.ts";

const MAKE: { readonly [Kind in EntryKind]: (shapes: Shapes) => z.ZodType<Bodies[Kind]> } = SCHEMAS;

/** One schema for each kind of entry, as the file of each kind says. */
export const kindSchemas = Object.fromEntries(
  Object.entries(MAKE).map(([kind, make]) => [kind, make(shapes)]),
) as unknown as { readonly [Kind in EntryKind]: ReturnType<(typeof MAKE)[Kind]> };

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
