import { FIRST_LOADERS, type Words } from "./made/index.ts";

/** A language that there are catalogues of. */
export type Language = keyof typeof FIRST_LOADERS;

/** A group of messages, such as `signIn`. */
export type WordGroup = keyof Words;

/** A language, or the made-up one that shows what is not yet in a catalogue. */
export type Speech = Language | "longer";

/** Languages there are catalogues of, in their own words. */
export const LANGUAGES: Readonly<Record<Language, string>> = { en: "English", fr: "Français" };

/** Languages in which every screen can be read. The others are under way, and nobody is offered half a language. */
export const WHOLE_LANGUAGES: readonly Language[] = ["en"];

/** Whether a word that was kept names a language, or the made-up one. */
export function isSpeech(kept: unknown): kept is Speech {
  return kept === "longer" || (typeof kept === "string" && Object.hasOwn(LANGUAGES, kept));
}

/** For dates and figures: the tag of the language by BCP 47, English as it is written in Britain. */
export function tagOf(speech: Speech): string {
  return speech === "fr" ? "fr" : "en-GB";
}

/** Fetches one group of messages in one language. */
export async function fetchWords<Group extends WordGroup>(speech: Speech, group: Group): Promise<Words[Group]> {
  const load = await loaderOf(speech === "longer" ? "en" : speech, group);
  const { default: words } = await load();
  return speech === "longer" ? lengthened(words) : words;
}

type Loaders = { readonly [Group in WordGroup]?: () => Promise<{ readonly default: Words[Group] }> };

async function loaderOf<Group extends WordGroup>(language: Language, group: Group) {
  const first: Loaders = FIRST_LOADERS[language];
  if (first[group]) return first[group];
  const later: Loaders = (await import("./made/later.ts")).LATER_LOADERS[language];
  return later[group]!;
}

/**
 * English made longer, accented and set in brackets: what stays plain on a screen is in no catalogue, and what has no
 * room for it has none for a longer language.
 */
export function lengthen(text: string): string {
  return text.replaceAll(BETWEEN_ELEMENTS, lengthenPiece);
}

/** Marks of elements (`withParts` of the web) stay bare; each piece between them has brackets of its own. */
const BETWEEN_ELEMENTS = /[^\uE000-\uE0FF]+/g;

function lengthenPiece(text: string): string {
  const accented = text.replaceAll(/[aeiouc]/gi, (letter) => ACCENTED[letter] ?? letter);
  return `⟦${accented}${" ~".repeat(Math.ceil(text.length / 10))}⟧`;
}

const ACCENTED: Readonly<Record<string, string>> = Object.fromEntries(
  Array.from("aáeéiíoöuücçAÁEÉIÍOÖUÜCÇ".matchAll(/(.)(.)/gu), ([, plain = "", accented = ""]) => [plain, accented]),
);

type Message = (d: never) => string;

function lengthened<Group extends object>(words: Group): Group {
  const entries = Object.entries(words as Record<string, Message>);
  return Object.fromEntries(entries.map(([key, say]) => [key, (d: never) => lengthen(say(d))])) as Group;
}
