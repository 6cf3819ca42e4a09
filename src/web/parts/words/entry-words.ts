import type { EntryKind } from "#readiness";
import type { Words } from "#words";

type Joined<Kind extends string> = Kind extends `${infer First}-${infer Rest}`
  ? `${First}${Capitalize<Joined<Rest>>}`
  : Kind;

/** Words of a kind of line; of one that only a newer version of the app knows, its name. */
export function sayKind(kind: string, words: Words["entryKinds"]): string {
  const key = kind.replaceAll(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  return Object.hasOwn(words, key) ? words[key as Joined<EntryKind>]() : kind;
}
