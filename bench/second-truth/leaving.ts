// Told to leave or not, against how long she truly had.
import { casualtyRow, shareRow, type Row } from "./rows.ts";
import type { Moment, Watched } from "./watching.ts";
import { isLosing } from "./words.ts";

/** More than this left: a call to leave was false [s]. */
const FALSE_LEFT = 30 * 60;
/** Warned so long before [s]. */
const BEFORE = 5 * 60;
/** Lost so soon after the first sounding or the last change [s]. */
const SOON = 15 * 60;
/** Soundings each three minutes [s]. */
const EACH = 180;
const ENOUGH_SOUNDINGS = 2;
const GROUP = "leaving";

export function leavingRows(all: readonly Watched[]): readonly Row[] {
  const each = all.filter(({ interval }) => interval === EACH);
  return [
    {
      ...shareRow(GROUP, "of `leave now`, more than 30 min truly left", all, (m) =>
        isCall(m) ? isFalseCall(m) : undefined,
      ),
      wanted: { atMost: 0.02 },
    },
    casualtyRow(
      GROUP,
      "lost within 15 min, each 3 min: warned 5 min before",
      each,
      (w) => (isLostSoon(w) ? isWarned(w) : undefined),
      { atLeast: 0.95 },
    ),
    casualtyRow(GROUP, "the same, by `leave now`", each, (w) => (isLostSoon(w) ? isWarned(w, ["now"]) : undefined)),
    casualtyRow(GROUP, "lost at any time, two soundings by then: warned 5 min before", all, (w) =>
      soundingsByThen(w, 0) >= ENOUGH_SOUNDINGS ? isWarned(w) : undefined,
    ),
    casualtyRow(GROUP, "lost too soon for two soundings: warned 5 min before", all, (w) =>
      soundingsByThen(w, 0) === 1 ? isWarned(w) : undefined,
    ),
    shareRow(GROUP, "of answers, `leave now` with more than 4 h left", all, (m) =>
      m.truth.left === null ? isCall(m) : undefined,
    ),
    shareRow(GROUP, "of answers with 10 min or less left, `leave now`", all, (m) =>
      hasLeft(m, 600) ? undefined : m.sheet.leave === "now",
    ),
    shareRow(GROUP, "of answers with 10 to 30 min left, be ready or now", all, (m) =>
      hasLeft(m, 600) && !hasLeft(m, FALSE_LEFT) ? m.sheet.leave !== "no-sign" : undefined,
    ),
    shareRow(GROUP, "of answers with more than 4 h left, `be ready`", all, (m) =>
      m.truth.left === null ? m.sheet.leave === "be-ready" : undefined,
    ),
    shareRow(GROUP, "the same, by what people saw", all, (m) => (m.truth.left === null ? isReady(m, true) : undefined)),
    shareRow(GROUP, "the same, by figures, while she is losing", all, (m) =>
      m.truth.left === null && isLosing(m) ? isReady(m, false) : undefined,
    ),
    shareRow(GROUP, "the same, by figures, while she is not", all, (m) =>
      m.truth.left === null && !isLosing(m) ? isReady(m, false) : undefined,
    ),
  ];
}

/** Told to leave now, by a figure. */
export function isCall({ sheet }: Moment): boolean {
  return sheet.leave === "now" && !sheet.leaveSeen;
}

/** A call with more than half an hour truly left. */
export function isFalseCall(moment: Moment): boolean {
  return isCall(moment) && hasLeft(moment, FALSE_LEFT);
}

/** Told to be ready, by what people saw or by figures alone. */
function isReady({ sheet }: Moment, bySight: boolean): boolean {
  return sheet.leave === "be-ready" && sheet.leaveSeen === bySight;
}

function hasLeft({ truth }: Moment, least: number): boolean {
  return truth.left === null || truth.left > least;
}

/** Soundings from a time on, up to five minutes before she is lost; 0 where she is not. */
function soundingsByThen({ lostAt, moments }: Watched, from: number): number {
  if (lostAt === null) return 0;
  return moments.filter(({ at }) => at >= from && at <= lostAt - BEFORE).length;
}

/** Within 15 minutes of the first sounding or of the last change, with two soundings since by five minutes before. */
function isLostSoon(watched: Watched): boolean {
  const { lostAt, changes } = watched;
  if (lostAt === null) return false;
  const starts = [0, changes.filter(({ at }) => at >= 0 && at < lostAt).at(-1)?.at ?? 0];
  return starts.some((from) => lostAt - from <= SOON && soundingsByThen(watched, from) >= ENOUGH_SOUNDINGS);
}

/** By the answer that stands five minutes before; she was still sounded then. */
function isWarned({ lostAt, moments }: Watched, by: readonly string[] = ["now", "be-ready"]): boolean {
  const standing = moments.findLast(({ at }) => at <= lostAt! - BEFORE);
  return standing !== undefined && by.includes(standing.sheet.leave);
}
