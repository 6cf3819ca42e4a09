/**
 * A name as it is compared: two are the same whatever their case and blanks.
 * @example plainName(" Pump  1 ") // "pump 1"
 */
export function plainName(text: string): string {
  return text.trim().replace(/\s+/g, " ").toLocaleLowerCase("en");
}
