import { dayIn } from "#base";
import type { Entry } from "#log";
import type { StationFold } from "#station";
import type { TableSource } from "./table-source.ts";

/**
 * What tables are made of, from a whole log; the day is that of the first place.
 *
 * @param now - RFC 3339
 */
export function sourceOfFold(fold: StationFold, now: string): TableSource {
  const reading = fold.read();
  const today = dayIn(reading.places[0]?.zone ?? "UTC", now);
  return { ...reading, today, now, lines: () => linesOf(fold) };
}

/** Every line once: sheets of one casualty share theirs. */
function* linesOf(fold: StationFold): Generator<Entry> {
  const seen = new Set<string>();
  for (const subject of fold.subjects()) {
    for (const entry of fold.allEntriesOf(subject)) {
      if (!seen.has(entry.id)) yield entry;
      seen.add(entry.id);
    }
  }
}
