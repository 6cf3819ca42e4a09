import { InputError, isInputError, parseQuantity, parseSpan, printGiven } from "#base";
import type { Dimension, Span } from "#base";
import { z } from "zod";
import type { Life } from "../pattern.ts";

/*
 * Kinds of field a pattern file is made of. Each carries, as its zod message, the text of what is allowed there,
 * so that a fault can say it; and a description, which the published JSON Schema shows in an editor.
 */

const SPAN_ALLOWED = 'a whole number of days, weeks, months or years, such as "12 months" or "90 days"';
const LIFE_ALLOWED = `none, printed, single use, or ${SPAN_ALLOWED}`;
const ID_TEXT = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const ID_ALLOWED = "lower-case words and digits joined by hyphens, such as tank-cap";

/** An id of something in the pattern, or a reference to one. */
export function idText(about: string) {
  return z.string({ error: ID_ALLOWED }).max(60, ID_ALLOWED).regex(ID_TEXT, ID_ALLOWED).describe(about);
}

/** Text for a person, at most so many characters. */
export function readingText(most: number, about: string) {
  const allowed = `text of 1 to ${most} characters`;
  return z.string({ error: allowed }).trim().min(1, allowed).max(most, allowed).describe(about);
}

/** A whole number from 1 up. */
export function countNumber(most: number, about: string) {
  const allowed = `a whole number from 1 to ${most}`;
  return z.int({ error: allowed }).min(1, allowed).max(most, allowed).describe(about);
}

/** A bare number between limits. */
export function bareNumber(least: number, most: number, about: string) {
  const allowed = `a number from ${least} to ${most}`;
  return z.number({ error: allowed }).min(least, allowed).max(most, allowed).describe(about);
}

/** One of these words. */
export function oneWord<const Words extends readonly [string, ...string[]]>(words: Words, about: string) {
  return z.enum(words, { error: `one of ${words.join(", ")}` }).describe(about);
}

/** A list of such things. */
export function listOf<Of extends z.ZodType>(of: Of, least: number, about: string) {
  const allowed = least === 0 ? "a list" : `a list of at least ${least}`;
  return z.array(of, { error: allowed }).min(least, allowed).max(1000, "a list of at most 1000").describe(about);
}

/** A block with these fields and no others. */
export function block<Shape extends z.core.$ZodLooseShape>(shape: Shape, about: string) {
  const allowed = `these fields: ${Object.keys(shape).join(", ")}`;
  return z.strictObject(shape, { error: allowed }).describe(about);
}

/** A quantity as text with its unit, read into SI. */
export function quantityText(dimension: Dimension, example: string, about: string) {
  const read = (text: string) => parseQuantity(text, dimension);
  return z
    .string({ error: `a ${dimension} with its unit, such as ${example}` })
    .meta({ description: `${about} With its unit.`, examples: [example] })
    .transform((text, context): number => readText(read, text, { context, code: "KI-105" }));
}

/** A span of calendar time, such as "12 months". */
export function spanText(about: string) {
  return z
    .string({ error: SPAN_ALLOWED })
    .meta({ description: about, examples: ["12 months", "90 days"] })
    .transform((text, context): Span => {
      return readText(parseLifespan, text, { context, code: "KI-106", allowed: SPAN_ALLOWED });
    });
}

/** How long an item lasts: "none", "printed", "single use", or a span from fitting. */
export function lifeText(about: string) {
  return z
    .string({ error: LIFE_ALLOWED })
    .meta({ description: about, examples: ["none", "printed", "single use", "24 months"] })
    .transform((text, context): Life => {
      if (text === "none" || text === "printed") return { kind: text };
      if (text === "single use") return { kind: "single-use" };
      return {
        kind: "fitted",
        span: readText(parseLifespan, text, { context, code: "KI-106", allowed: LIFE_ALLOWED }),
      };
    });
}

/** A span of at least a day. */
function parseLifespan(text: string): Span {
  const span = parseSpan(text);
  if (("months" in span ? span.months : span.days) >= 1) return span;
  const remedy = "Write a span longer than nothing.";
  throw new InputError([{ code: "KI-106", field: "span", got: printGiven(text), allowed: SPAN_ALLOWED, remedy }]);
}

/** What a zod issue of our own carries beside its message. */
export interface OwnIssue {
  readonly code: string;
  readonly remedy: string;
}

interface ReadAs {
  readonly context: { readonly issues: z.core.$ZodRawIssue[] };
  readonly code: string;
  readonly allowed?: string;
}

function readText<Value>(reader: (text: string) => Value, input: string, as: ReadAs): Value {
  try {
    return reader(input);
  } catch (thrown) {
    if (!isInputError(thrown)) throw thrown;
    for (const { allowed, remedy } of thrown.faults) {
      const own: OwnIssue = { code: as.code, remedy };
      as.context.issues.push({ code: "custom", message: as.allowed ?? allowed, input, params: { ...own } });
    }
    return z.NEVER;
  }
}
