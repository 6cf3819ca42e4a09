import type { Entry } from "../entry.ts";

/** An id with the shape of a UUIDv7, numbered so that ids sort as their numbers. */
export function idOf(number: number): string {
  const hex = number.toString(16).padStart(12, "0");
  return `01920000-0000-7000-8000-${hex}`;
}

/** An entry for tests, made `number` seconds after midnight of 1 January 2027, unless told otherwise. */
export function makeEntry(number: number, change: Partial<Entry> = {}): Entry {
  return {
    id: idOf(number),
    place: "harbour",
    subject: "kit:one",
    kind: "noted",
    at: new Date(Date.UTC(2027, 0, 1) + number * 1000).toISOString(),
    by: "person-1",
    device: "device-1",
    body: { number },
    ...change,
  };
}

/** A strike by entry `number` of entry `target`. */
export function makeStrike(number: number, target: number, change: Partial<Entry> = {}): Entry {
  return makeEntry(number, { kind: "struck", body: { entry: idOf(target), reason: "written in error" }, ...change });
}
