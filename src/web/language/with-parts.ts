import { createElement, Fragment, type ReactNode } from "react";

/** The first of the characters that stand for elements while a message is put together; no language uses them. */
const FIRST_MARK = 0xe0_00;
const MARK = /([\uE000-\uE0FF])/;

/**
 * A message with elements in it, such as a time or a strong word: each stands where the language puts it, as in
 * `withParts(words.madeOn, { at: <Timestamp at={made} /> })`.
 *
 * @param say - the message; under an element's name it takes a mark for it
 * @param parts - the elements by name
 */
export function withParts<Name extends string>(
  say: (marks: Readonly<Record<Name, string>>) => string,
  parts: Readonly<Record<Name, ReactNode>>,
): ReactNode {
  const names = Object.keys(parts) as Name[];
  const marks = Object.fromEntries(names.map((name, at) => [name, String.fromCodePoint(FIRST_MARK + at)]));
  const pieces = say(marks as Record<Name, string>).split(MARK);
  const elements = pieces.map((piece) =>
    MARK.test(piece) ? parts[names[piece.codePointAt(0)! - FIRST_MARK]!] : piece,
  );
  return createElement(Fragment, null, ...elements);
}
