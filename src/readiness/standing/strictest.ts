import { shorterSpan, type Span } from "#base";

/** What holds for a kit: the pattern's own span, or the station's where that is shorter. */
export function strictest(pattern: Span | undefined, station: Span | undefined): Span | undefined {
  return shorterSpan(pattern, station);
}
