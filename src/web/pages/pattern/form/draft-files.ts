import { InputError } from "#base";
import { editDraft, emptyPattern, nameOf, openDraft, type Pattern } from "#kit";
import type { PatternFileReply } from "#station";
import { patternDraft } from "#web/act/pattern-draft.ts";
import { saveFile } from "#web/device/index.ts";
import type { Reply, ServerDoor } from "#web/device/sync/server-door.ts";
import type { Words } from "#words";

/** Begins a draft from a version of the station, as the next one. @throws what stands against it, in words */
export async function beginFrom(
  door: Pick<ServerDoor, "ask">,
  base: Pick<Pattern, "id" | "version">,
  {
    patterns,
    words,
  }: { readonly patterns: Iterable<Pick<Pattern, "id" | "version">>; readonly words: Words["patterns"] },
): Promise<void> {
  const key = `${base.id}@${base.version}`;
  const reply = await door.ask<PatternFileReply>({ method: "GET", path: `/api/patterns/${key}/file` });
  if (reply.kind !== "answered") throw notFetched(reply, key, words);
  const next = Math.max(...[...patterns].filter(({ id }) => id === base.id).map(({ version }) => version)) + 1;
  const edited = editDraft(openDraft(reply.value.text), { kind: "set", path: ["version"], value: next });
  if (edited.kind === "refused") throw new InputError([edited.because]);
  patternDraft.begin({ text: edited.draft.text, base: key }, reply.value.beside);
}

/** Begins a draft from nothing but what every pattern must have. */
export function beginEmpty(id: string): void {
  patternDraft.begin({ text: emptyPattern(id), base: "" }, {});
}

/**
 * Takes a file that was edited by hand; the drawings stay those of the draft where it is of the same pattern.
 *
 * @throws InputError KI-100 too long, KI-101 broken YAML
 */
export async function beginFromFile(file: Blob): Promise<void> {
  const text = await file.text();
  const before = patternDraft.read();
  const isSame = before.text !== "" && idOf(before.text) === idOf(text);
  openDraft(text);
  patternDraft.begin({ text, base: isSame ? before.base : "" }, isSame ? patternDraft.beside() : {});
}

/** Hands the draft to the browser to save, comments and all. */
export function download(text: string): void {
  saveFile(new Blob([text], { type: "application/yaml" }), nameOf(openDraft(text).value));
}

function idOf(text: string): string {
  return nameOf(openDraft(text).value).replace(/@.*/, "");
}

function notFetched(
  reply: Exclude<Reply<unknown>, { kind: "answered" }>,
  key: string,
  words: Words["patterns"],
): Error {
  if (reply.kind === "refused")
    return Object.assign(new Error(reply.problem.message), { remedy: reply.problem.remedy });
  return Object.assign(new Error(words.notFetched({ pattern: key })), { remedy: words.notFetchedMore() });
}
