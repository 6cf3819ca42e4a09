/**
 * A count with its word: the one place that knows when a word has no "s".
 *
 * @param number - how many
 * @param word - for one
 * @param words - for any other number, where it is not the word with an "s"
 * @example
 * sayCount(1, "entry", "entries"); // "1 entry"
 * sayCount(3, "line"); // "3 lines"
 */
export function sayCount(number: number, word: string, words: string = `${word}s`): string {
  return `${number} ${number === 1 ? word : words}`;
}
