/** What the embedded typeface has: Latin 1, a few letters and marks beyond it, general punctuation, euro, minus. */
const IN_TYPEFACE = /[\n\u0020-\u007e\u00a0-\u00ff\u0131\u0152\u0153\u02c6\u02da\u02dc\u2000-\u206f\u20ac\u2122\u2212]/;

/** Signs and letters that do not come apart into a plain one and its mark. */
const INSTEAD: Readonly<Record<string, string>> = {
  "\u03a9": "ohm",
  "\u2126": "ohm",
  "\u03bc": "\u00b5",
  "\u2264": "at most ",
  "\u2265": "at least ",
  "\u2192": "->",
  "\u0141": "L",
  "\u0142": "l",
  "\u0110": "D",
  "\u0111": "d",
};

/**
 * Text as the embedded typeface can print it. A unit or a name must never come out as an empty box: what the typeface
 * lacks is written out or loses its mark, and what has no plain letter at all becomes a question mark.
 *
 * @example printable("1.15 M\u03a9, \u017deljko") // "1.15 Mohm, Zeljko"
 */
export function printable(text: string): string {
  return [...text].map((sign) => (IN_TYPEFACE.test(sign) ? sign : (INSTEAD[sign] ?? withoutMark(sign)))).join("");
}

function withoutMark(sign: string): string {
  const [plain = "?"] = sign.normalize("NFKD");
  return IN_TYPEFACE.test(plain) ? plain : "?";
}
