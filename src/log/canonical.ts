import { InputError, printGiven, type Fault } from "#base";

/** A lone half of a surrogate pair; whole pairs do not match in a pattern with the u flag. */
const LONE_SURROGATE = /\p{Surrogate}/u;

/** True where text has a UTF-8 form: no half of a surrogate pair stands alone. */
export function isWellFormed(text: string): boolean {
  return !LONE_SURROGATE.test(text);
}

/**
 * The one JSON text of a value: keys sorted by UTF-16 code unit, no white space, numbers and text as ECMAScript
 * writes them. Two values that mean the same have the same text, so it can be hashed.
 *
 * A property whose value is `undefined` counts as absent, as in `JSON.stringify`.
 *
 * @param value - anything JSON can carry
 * @returns canonical JSON text; its UTF-8 bytes are what is hashed
 * @source IETF RFC 8785, JSON Canonicalization Scheme, sections 3.2.2 and 3.2.3, 2020
 * @throws InputError LG-130 for NaN, Infinity, a lone surrogate, a function, a big integer: JSON has no form for them
 * @example canonicalText({ b: 1, a: [true, null] }); // '{"a":[true,null],"b":1}'
 */
export function canonicalText(value: unknown): string {
  if (typeof value === "string") return textForm(value);
  if (typeof value === "number") return numberForm(value);
  if (value === null || typeof value === "boolean") return String(value);
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(",")}]`;
  if (typeof value === "object") return objectForm(value as Record<string, unknown>);
  throw unfit(value, "text, a finite number, true, false, null, a list or an object");
}

function objectForm(value: Record<string, unknown>): string {
  const parts: string[] = [];
  for (const key of Object.keys(value).sort()) {
    if (value[key] !== undefined) parts.push(`${textForm(key)}:${canonicalText(value[key])}`);
  }
  return `{${parts.join(",")}}`;
}

function textForm(text: string): string {
  if (!isWellFormed(text)) throw unfit(text, "well-formed Unicode text");
  return JSON.stringify(text);
}

function numberForm(value: number): string {
  if (!Number.isFinite(value)) throw unfit(value, "a finite number");
  return JSON.stringify(value);
}

function unfit(value: unknown, allowed: string): InputError {
  const fault: Fault = {
    code: "LG-130",
    field: "value",
    got: typeof value === "object" ? typeof value : printGiven(value),
    allowed,
    remedy: "Only what JSON can carry can be kept in the log.",
  };
  return new InputError([fault]);
}
