/** What a gauge reads without a figure, in the languages of the app, in quarters of a full tank. */
const WORDS: Readonly<Record<string, number>> = {
  empty: 0,
  vide: 0,
  half: 2,
  moitié: 2,
  full: 4,
  plein: 4,
};

/** Fractions that stand as one sign. */
const SIGNS: Readonly<Record<string, string>> = { "¼": "1/4", "½": "1/2", "¾": "3/4" };

/**
 * Reads a gauge: fractions of quarters ("0", "1/4", "1/2", "3/4", "4/4"), a word, a share from 0 to 1 or percent.
 *
 * @param text - as typed; a comma may stand for the point
 * @returns the nearest quarter, 0 to 4; undefined where no gauge reads so, such as "5/4", "9/9" or "2"
 */
export function readQuarters(text: string): number | undefined {
  const typed = text.trim().toLowerCase();
  const plain = (SIGNS[typed] ?? typed).replace(",", ".");
  const share = shareOf(plain);
  if (share === undefined) return WORDS[plain];
  return share <= 1 ? Math.round(4 * share) : undefined;
}

/** The share that was typed as a figure [1]; undefined where it was not, or by a fraction that no gauge has. */
function shareOf(plain: string): number | undefined {
  const [, of, parts] = /^(\d)\s*\/\s*([24])$/.exec(plain) ?? [];
  if (of !== undefined && parts !== undefined) return Number(of) / Number(parts);
  const [, figure, percent] = /^(\d{1,3}(?:\.\d{1,4})?)\s*(%?)$/.exec(plain) ?? [];
  return figure === undefined ? undefined : Number(figure) / (percent ? 100 : 1);
}
