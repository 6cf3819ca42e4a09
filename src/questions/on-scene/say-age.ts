/**
 * An age: counted, not estimated, so in full minutes.
 *
 * @param seconds - [s]
 * @example sayAge(7500) // "2 h 5 min"
 */
export function sayAge(seconds: number): string {
  const minutes = Math.floor(seconds / 60);
  if (minutes < 120) return `${minutes} min`;
  const rest = minutes % 60;
  return rest === 0 ? `${minutes / 60} h` : `${Math.floor(minutes / 60)} h ${rest} min`;
}
