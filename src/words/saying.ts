import { dateParts, type PlainDate, type Span } from "#base";
import type { WordGroup } from "./language.ts";
import type { Words } from "./made/index.ts";

/**
 * What a pure room means to say, in no language yet: the key of a message, and what it is said of. A part of it may be
 * such a saying itself, of the same group.
 */
export type Saying<Group extends WordGroup> = {
  readonly [Key in keyof Words[Group]]: Words[Group][Key] extends () => string
    ? { readonly say: Key }
    : Words[Group][Key] extends (of: infer Of) => string
      ? { readonly say: Key; readonly of: Parts<Group, Of> }
      : never;
}[keyof Words[Group]];

type Parts<Group extends WordGroup, Of> = {
  readonly [Name in keyof Of]: string extends Of[Name] ? Of[Name] | Saying<Group> : Of[Name];
};

interface Loose {
  readonly say: string;
  readonly of?: Readonly<Record<string, string | number | Loose>>;
}

type Loosened = Readonly<Record<string, (of: object) => string>>;

/** A saying as text, in the language of the words. */
export function inWords<Group extends WordGroup>(saying: Saying<Group>, words: Words[Group]): string {
  return say(saying as Loose, words as unknown as Loosened);
}

function say({ say: key, of = {} }: Loose, words: Loosened): string {
  const parts = Object.entries(of).map(([name, part]) => [name, typeof part === "object" ? say(part, words) : part]);
  return words[key]!(Object.fromEntries(parts));
}

/** A calendar day, for a group that says days. */
export function dayToSay(date: PlainDate) {
  const { day, month, year } = dateParts(date);
  return { say: "day", of: { day, month: String(month), year } } as const;
}

/** A span in its largest whole unit, for a group that says spans. */
export function spanToSay(span: Span) {
  if ("days" in span) return { say: "days", of: { count: span.days } } as const;
  const isYears = span.months !== 0 && span.months % 12 === 0;
  return isYears
    ? ({ say: "years", of: { count: span.months / 12 } } as const)
    : ({ say: "months", of: { count: span.months } } as const);
}
