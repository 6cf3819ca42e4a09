import { fetchWords, type Speech, type WordGroup, type Words } from "#words";
import { use } from "react";
import { fetchAside, fetchPart } from "../loading/index.ts";
import { preferences, usePreferences } from "../theme/index.ts";

/** What is here already, or on its way. React reads `status`: what is fulfilled, nothing has to wait for. */
type Held<Value> = Promise<Value> | (Promise<Value> & { readonly status: "fulfilled"; readonly value: Value });

const held = new Map<string, Held<unknown>>();

/**
 * The messages of a group in the language of the person who sits here. The page waits for them the first time, as it
 * waits for its own code.
 */
export function useWords<Group extends WordGroup>(group: Group): Words[Group] {
  const { language } = usePreferences();
  return use(wordsIn(language, group));
}

/** A group for what no page waits for. */
export function wordsFor<Group extends WordGroup>(language: Speech, group: Group): Promise<Words[Group]> {
  return wordsIn(language, group, fetchAside);
}

/** Waits for several groups at once, so that no part of the page waits for its own once the page is used. */
export function useReady(...groups: readonly WordGroup[]): void {
  const { language } = usePreferences();
  const awaited = groups.map((group) => wordsIn(language, group) as Promise<unknown>);
  for (const one of awaited) use(one);
}

/** Fetches what the app itself says, so that its frame never waits and a failure can be told in words. */
export async function holdWords(...groups: readonly WordGroup[]): Promise<void> {
  const { language } = preferences.now();
  await Promise.all(groups.map((group) => wordsIn(language, group)));
}

function wordsIn<Group extends WordGroup>(language: Speech, group: Group, fetch = fetchPart): Held<Words[Group]> {
  const key = `${language}/${group}`;
  const known = held.get(key) as Held<Words[Group]> | undefined;
  if (known) return known;
  const fetched = fetch(() => fetchWords(language, group));
  held.set(key, fetched);
  fetched.then(
    (value) => Object.assign(fetched, { status: "fulfilled", value }),
    () => held.delete(key),
  );
  return fetched;
}
