/**
 * A name as it is compared: two are the same whatever their case, blanks, encoding of accents and signs that nobody sees.
 * @example plainName(" Pump  1 ") // "pump 1"
 */
export function plainName(text: string): string {
  return text
    .normalize("NFKC")
    .replace(/\p{Cf}/gu, "")
    .trim()
    .replace(/\s+/g, " ")
    .toLocaleLowerCase("en");
}

/** Alphabets that share shapes of letters (Unicode UTS #39): one name keeps to one of them. */
const LOOK_ALIKE = [/\p{Script=Latin}/u, /\p{Script=Greek}/u, /\p{Script=Cyrillic}/u];

/** What nobody sees, steers a terminal or turns the order of letters; the joiner that Arabic script writes with is none. */
const UNSEEN = /\p{Cc}|\p{Cf}/u;
const JOINER = /(?<=\p{Script=Arabic})\u200c(?=\p{Script=Arabic})/gu;

/**
 * True of a name that is what it looks like: without control characters, marks that nobody sees and letters of two alphabets
 * that look alike.
 * @example isSeenName("\u0406nes Dunmore") // false
 */
export function isSeenName(text: string): boolean {
  const alphabets = LOOK_ALIKE.filter((letters) => letters.test(text));
  return !UNSEEN.test(text.replace(JOINER, "")) && alphabets.length <= 1;
}
