/** What is seen or done is written down within so long [ms]: an older one is a slip of the date. */
const LATEST_WRITTEN_MS = 24 * 3_600_000;

/**
 * Holds the instant something was seen or done against the instant it is written down.
 *
 * @param taken - RFC 3339
 * @param written - RFC 3339
 * @returns "ahead" of the writing, "long-ago" where more than a day lies between, else "fits"
 */
export function judgeInstant(taken: string, written: string): "fits" | "ahead" | "long-ago" {
  const late = Date.parse(written) - Date.parse(taken);
  if (late < 0) return "ahead";
  return late <= LATEST_WRITTEN_MS ? "fits" : "long-ago";
}
