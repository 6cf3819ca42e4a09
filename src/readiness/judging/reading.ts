import { isDate, isMonth, parseDate, type PlainDate } from "#base";
import type { Check } from "#kit";
import type { Value } from "../kinds/schema-parts.ts";
import { isSameSeal } from "../kit/seal-number.ts";
import { readQuarters } from "./quarters.ts";

/** What a reading is held against, beside its check. */
export interface Against {
  /** "YYYY-MM-DD" where the kit is: a printed date before it has passed. */
  readonly today: PlainDate;
  /** The day that a printed date must reach, where that is later than today. */
  readonly wanted?: PlainDate | undefined;
  /** The seal or the number on record that the check is held against, where one stands there. */
  readonly recorded?: string | undefined;
}

/** How a reading stands to its check, with the figures that say why. Words for it are each door's own. */
export type Judged =
  | Right<"no-limit">
  | Right<"within">
  | Right<"counted">
  | Right<"agrees">
  | Right<"none-on-record">
  | (Right<"in-date"> & { readonly lastDay: PlainDate; readonly beyond?: PlainDate })
  | (NotRight<"too-low"> & { readonly limit: number })
  | (NotRight<"too-high"> & { readonly limit: number })
  | (NotRight<"missing"> & { readonly by: number })
  | (NotRight<"too-many"> & { readonly by: number })
  | NotRight<"differs">
  | (NotRight<"passed"> & { readonly lastDay: PlainDate })
  | (NotRight<"too-soon"> & { readonly lastDay: PlainDate; readonly wanted: PlainDate });

interface Right<Why extends string> {
  readonly right: true;
  readonly because: Why;
}

interface NotRight<Why extends string> {
  readonly right: false;
  readonly because: Why;
}

type Of<Kind extends Check["kind"]> = Check & { readonly kind: Kind };

/**
 * Holds a reading against its check. Looks and proofs have no reading: the eye judges them.
 *
 * @param check - a check of kind measure, timed, count, match or date
 * @param value - as read; quantities in SI
 * @param against - the day, the day that a printed date must reach, and the seal on record
 * @returns how it stands; undefined where this is no reading of this check
 */
export function judgeReading(check: Check, value: Value, against: Against): Judged | undefined {
  switch (check.kind) {
    case "measure":
    case "timed":
      return value.kind === "quantity" ? judgeLimits(check, value.si) : undefined;
    case "count":
      return value.kind === "count" ? judgeCount(check, value.count) : undefined;
    case "date":
      return value.kind === "date" ? judgePrinted(value.date, against) : undefined;
    case "match":
      return check.against === undefined ? judgeTwo(check, value) : judgeRecorded(value, against.recorded);
    default:
      return undefined;
  }
}

function judgeLimits({ atLeast, atMost }: Of<"measure"> | Of<"timed">, si: number): Judged {
  if (atLeast !== undefined && !(si >= atLeast)) return { right: false, because: "too-low", limit: atLeast };
  if (atMost !== undefined && !(si <= atMost)) return { right: false, because: "too-high", limit: atMost };
  return { right: true, because: atLeast === undefined && atMost === undefined ? "no-limit" : "within" };
}

function judgeCount({ exactly }: Of<"count">, count: number): Judged {
  if (count === exactly) return { right: true, because: "counted" };
  return { right: false, because: count < exactly ? "missing" : "too-many", by: Math.abs(count - exactly) };
}

function judgePrinted(date: string, { today, wanted = today }: Against): Judged | undefined {
  if (!isDate(date) && !isMonth(date)) return undefined;
  const lastDay = parseDate(date);
  if (lastDay < today) return { right: false, because: "passed", lastDay };
  if (lastDay < wanted) return { right: false, because: "too-soon", lastDay, wanted };
  return { right: true, because: "in-date", lastDay, ...(wanted > today && { beyond: wanted }) };
}

function judgeTwo({ reads }: Of<"match">, value: Value): Judged | undefined {
  if (value.kind !== "match") return undefined;
  if (reads === "quarters") return judgeGauge(readQuarters(value.first), readQuarters(value.second));
  return agreeing(plain(value.first) === plain(value.second));
}

/** What is no reading of a gauge is judged neither right nor wrong: it is to be read again. */
function judgeGauge(first: number | undefined, second: number | undefined): Judged | undefined {
  return first === undefined || second === undefined ? undefined : agreeing(first === second);
}

/** Held against the record itself, whatever the reading says that the record is; with none, it is only kept. */
function judgeRecorded(value: Value, recorded: string | undefined): Judged | undefined {
  if (recorded !== undefined) return agreeing(value.kind === "match" && isSameSeal(value.first, recorded));
  const isKept = value.kind === "text" && value.text.trim() !== "";
  return isKept ? { right: true, because: "none-on-record" } : undefined;
}

function agreeing(agrees: boolean): Judged {
  return agrees ? { right: true, because: "agrees" } : { right: false, because: "differs" };
}

/** What was read off two things as it is compared: letter case and runs of blanks do not count. */
function plain(text: string): string {
  return text.trim().replace(/\s+/g, " ").toLowerCase();
}
