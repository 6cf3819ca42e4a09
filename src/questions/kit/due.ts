import {
  addSpan,
  gs1Date,
  InputError,
  printGiven,
  isInputError,
  lastDayOf,
  isMonth,
  parseDate,
  parseRecurrence,
  parseSpan,
  recurrenceDates,
  type Fault,
  type PlainDate,
  type Recurrence,
  type Span,
} from "#base";
import { z } from "zod";
import { faultOf } from "../guards/guard-fault.ts";
import { defineQuestion } from "../question.ts";

/** The most dates one answer gives. */
const MOST = 1_000;
/** Spans counted from the anchor in search of the first date wanted. */
const FURTHEST = 100_000;
const BASIC_DAY = /^(\d{4})-?(\d{2})-?(\d{2})(?:T\d{2}:?\d{2}(?::?\d{2})?(?:\.\d+)?(?:Z|[+-]\d{2}:?\d{2})?)?$/;

type Rule = { readonly kind: "span"; readonly span: Span } | { readonly kind: "rule"; readonly rule: Recurrence };

/** A text that is read by a function of the calendar, whose fault is passed on. */
function readBy<Read>(read: (text: string) => Read, meaning: string) {
  return z
    .string()
    .max(300)
    .transform((text, context) => {
      try {
        return read(text);
      } catch (thrown) {
        const fault: Fault | undefined = isInputError(thrown) ? thrown.faults[0] : undefined;
        if (!fault) throw thrown;
        context.issues.push({ code: "custom", message: fault.allowed, input: text, params: { fault } });
        return z.NEVER;
      }
    })
    .describe(meaning);
}

const input = z
  .strictObject({
    anchor: readBy(readDay, 'First day to count from: "2026-03-31", or "2026-03" for its last day').optional(),
    rule: readBy(
      readRule,
      'How often: "every 6 months", "90 days", "6 weeks", "2 years", "P6M", or an RFC 5545 rule "FREQ=MONTHLY;BYMONTHDAY=-1"',
    ).optional(),
    printed: readBy(
      (text) => parseDate(text),
      'The date printed on a thing: "2027-03-14", or "2027-03", which means its last day',
    ).optional(),
    gs1: readBy((text) => text.trim(), "The date of a GS1 label, YYMMDD; day 00 means the month's last").optional(),
    currentYear: z.int().min(1950).max(9900).describe("Year in which a GS1 label is read").optional(),
    count: z.int().min(1).max(MOST).describe("How many dates; 5 unless the rule has its own COUNT or UNTIL").optional(),
    from: readBy(
      (text) => parseDate(text),
      "Leaves out dates of the rule before this day; a printed date is told even where it has passed",
    ).optional(),
  })
  .superRefine((given, context) => {
    for (const { path, message } of gaps(given)) context.addIssue({ code: "custom", path: [path], message });
  });

/** Dates on which something falls due: counted from an anchor by a rule, or as printed. */
export const dueQuestion = defineQuestion({
  name: "due",
  summary: "Dates on which something falls due: from an anchor by a rule, or as printed on it.",
  input,
  output: z.strictObject({
    dates: z
      .array(z.string())
      .describe('Days "YYYY-MM-DD" in order; the anchor itself only where an RFC 5545 rule counts it'),
    basis: z.enum(["rule", "printed"]).describe("What the dates were taken from"),
    lastGoodDay: z
      .string()
      .exactOptional()
      .describe("The earliest date after the anchor: the last day on which the thing is still good"),
    passed: z
      .array(z.string())
      .exactOptional()
      .describe("Printed dates before the day asked from: the thing is past them and not to be used"),
  }),
  example: { anchor: "2026-08-31", rule: "every 6 months", count: 4 },
  answer: (given) => {
    const printed = [
      given.printed,
      given.gs1 === undefined ? undefined : gs1Date(given.gs1, given.currentYear ?? 0, "gs1"),
    ];
    const counted = given.anchor && given.rule ? countDates(given.anchor, given.rule, given) : [];
    const since = given.from ?? "";
    const wanted = [...counted.filter((date) => date >= since), ...printed.flatMap((date) => date ?? [])];
    const dates = [...new Set(wanted)].toSorted();
    const [lastGoodDay] = dates.filter((date) => date !== given.anchor || printed.includes(date));
    const passed = dates.filter((date) => date < since);
    return {
      dates,
      basis: counted.length > 0 ? ("rule" as const) : ("printed" as const),
      ...(lastGoodDay ? { lastGoodDay } : {}),
      ...(passed.length > 0 ? { passed } : {}),
    };
  },
});

function countDates(
  anchor: PlainDate,
  rule: Rule,
  { count, from }: { readonly count?: number | undefined; readonly from?: string | undefined },
): readonly PlainDate[] {
  if (rule.kind === "rule") {
    const bounded = rule.rule.count !== undefined || rule.rule.until !== undefined;
    const days = recurrenceDates(anchor, rule.rule, from === undefined ? (count ?? (bounded ? MOST : 5)) : FURTHEST);
    return days.filter((day) => day >= (from ?? "")).slice(0, count ?? (bounded ? MOST : 5));
  }
  const times = firstTime(anchor, rule.span, from);
  const days = Array.from({ length: count ?? 5 }, (_, index) => addSpan(anchor, timesSpan(rule.span, times + index)));
  const unnamed = days.find((day) => !isNamed(day));
  if (unnamed === undefined) return days;
  const remedy = "A day is written with a year of four figures. Ask for fewer dates, or count from an earlier day.";
  throw new InputError([faultOf("QU-281", "rule", unnamed, "dates up to 9999-12-31", remedy)]);
}

/** True up to 9999-12-31: later days have a year of five figures, which no order of texts holds. */
function isNamed(day: PlainDate): boolean {
  return day.length === "9999-12-31".length;
}

/** How many spans after the anchor the first date wanted lies; the anchor itself is none. */
function firstTime(anchor: PlainDate, span: Span, from: string | undefined): number {
  if (from === undefined) return 1;
  let times = 1;
  const isBefore = (day: PlainDate): boolean => isNamed(day) && day < from;
  while (times < FURTHEST && isBefore(addSpan(anchor, timesSpan(span, times)))) times += 1;
  return times;
}

function timesSpan(span: Span, times: number): Span {
  return "days" in span ? { days: span.days * times } : { months: span.months * times };
}

interface Given {
  readonly anchor?: unknown;
  readonly rule?: unknown;
  readonly printed?: unknown;
  readonly gs1?: unknown;
  readonly currentYear?: unknown;
}

function gaps(given: Given): readonly { readonly path: string; readonly message: string }[] {
  const found: { path: string; message: string }[] = [];
  const none = [given.anchor, given.rule, given.printed, given.gs1].every((one) => one === undefined);
  if (none) found.push({ path: "anchor", message: "anchor and rule, or printed, or gs1 and currentYear" });
  if (given.rule !== undefined && given.anchor === undefined)
    found.push({ path: "anchor", message: "a day for the rule to count from" });
  if (given.anchor !== undefined && given.rule === undefined)
    found.push({ path: "rule", message: "a rule that counts from the anchor" });
  if (given.gs1 !== undefined && given.currentYear === undefined) {
    found.push({
      path: "currentYear",
      message: "the year in which the label is read: two digits do not say the century",
    });
  }
  return found;
}

function readDay(text: string): PlainDate {
  const trimmed = text.trim();
  if (isMonth(trimmed)) return lastDayOf(trimmed);
  const parts = BASIC_DAY.exec(trimmed);
  return parseDate(parts ? `${parts[1]}-${parts[2]}-${parts[3]}` : trimmed);
}

function readRule(text: string): Rule {
  if (/FREQ=/i.test(text)) return { kind: "rule", rule: parseRecurrence(text) };
  const span = parseSpan(
    text
      .trim()
      .replace(/^every\s+/i, "")
      .replace(/^(day|week|month|year)$/i, "1 $1"),
    "rule",
  );
  if (("days" in span ? span.days : span.months) > 0) return { kind: "span", span };
  const remedy = 'Say how long it lasts: "6 months". A thing due every day has "1 day".';
  throw new InputError([faultOf("QU-280", "rule", printGiven(text.trim()), "a time of one day or more", remedy)]);
}
