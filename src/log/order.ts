import type { Entry } from "./entry.ts";
import { instantOf } from "./instant.ts";

/**
 * The one order in which entries are read: by instant, then by id.
 *
 * Instants are compared, not texts: 10:00+02:00 comes before 09:00Z. Ids settle equal milliseconds, so that every
 * device reads the same order whatever arrived first.
 *
 * @returns negative when `one` comes first, positive when `other` does, 0 only for the same id
 * @example
 * const late = { id: "a", at: "2027-01-02T10:00:00Z" }, early = { id: "b", at: "2027-01-02T09:00:00Z" };
 * [late, early].sort(compareEntries)[0].id; // "b"
 */
export function compareEntries(one: Entry, other: Entry): number {
  return instantOf(one.at) - instantOf(other.at) || compareText(one.id, other.id);
}

/** By UTF-16 code unit, never by locale: the same on every machine. */
export function compareText(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
