import type { Check } from "#kit";
import { isSameSeal, readQuarters, sayGivenSeen, type Value } from "#readiness";
import type { Words } from "#words";
import { matchRecord } from "./reading.ts";
import type { Typed } from "./typed-reading.ts";

/** A right answer that one tap gives without anything typed: what its button says, and the reading it stands for. */
export interface OneTap {
  readonly words: string;
  readonly value?: Value;
}

type ActWords = Words["act"];

/** What else is known where a check is asked. */
export interface Known {
  /** What stands on record for a check that is held against it. */
  readonly recorded?: string | undefined;
  /** The seal as it was read and entered when this turnaround was opened. */
  readonly openedSeal?: string | undefined;
  /** The same check as it was answered at an earlier line of this turnaround. */
  readonly earlier?: Value | undefined;
  /** It is measured once, and was. */
  readonly isMeasured?: boolean;
}

/**
 * The right answer as a button of its own: "Seen: 4 tight straps, all". The button says what was seen; nobody sees it
 * in a box beforehand. Nothing is offered once something was typed that it would write over.
 */
export function oneTapOf(check: Check | undefined, typed: Typed, known: Known, words: ActWords): OneTap | undefined {
  if (check?.kind === "count" && !typed.count) return allOf(check, words);
  if (check?.kind === "measure" && known.isMeasured && !typed.typed)
    return { words: sayGivenSeen(check, undefined, words) };
  if (check?.kind !== "match") return undefined;
  return oneTapOfMatch(check, typed, known, words);
}

/** A number on record is never offered: who has not read the tag would tap it all the same. */
function oneTapOfMatch(
  { against, reads }: Check & { readonly kind: "match" },
  typed: Typed,
  known: Known,
  words: ActWords,
) {
  if (against === undefined) return isReadAs(reads, typed) ? sameTwice(typed, known.earlier, words) : undefined;
  return against === "recorded-seal" ? asOpened(typed, known, words) : undefined;
}

/** What no gauge reads is not said of both of its sides either. */
function isReadAs(reads: "quarters" | undefined, { first = "" }: Typed): boolean {
  return reads === undefined || first.trim() === "" || readQuarters(first) !== undefined;
}

/** "Seen: 4 tight straps, all". */
function allOf({ exactly: count, of: things }: Check & { readonly kind: "count" }, words: ActWords): OneTap {
  return { words: words.seenAll({ count, things }), value: { kind: "count", count } };
}

/** The first is read and entered; that the second reads the same is said, not typed again. */
function sameTwice(
  { first = "", second = "" }: Typed,
  earlier: Value | undefined,
  words: ActWords,
): OneTap | undefined {
  const read = first.trim();
  if (read === "" && second.trim() === "" && earlier?.kind === "match" && earlier.first === earlier.second) {
    return { words: words.bothReadBefore({ number: earlier.first }), value: earlier };
  }
  if (read === "" || second.trim() !== "") return undefined;
  return { words: words.bothRead({ number: read }), value: { kind: "match", first: read, second: read } };
}

/** The seal was read minutes ago, when the kit was opened, and agreed with the record. */
function asOpened({ first = "" }: Typed, { recorded, openedSeal }: Known, words: ActWords): OneTap | undefined {
  if (first.trim() !== "" || recorded === undefined || openedSeal === undefined) return undefined;
  if (!isSameSeal(openedSeal, recorded)) return undefined;
  const value = matchRecord(openedSeal, recorded);
  return value && { words: words.seenAtOpening({ seal: openedSeal }), value };
}
