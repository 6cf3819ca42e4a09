/** "1 line", "3 lines". */
export function sayCount(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? "" : "s"}`;
}
