import type { PatternEdit } from "#kit";
import { drafts, DRAFT_PREFIX } from "../device/lock/draft-drawer.ts";
import { readKept } from "./use-kept.ts";

/** The pattern that is being written on this device. One at a time. */
export interface PatternDraftKept {
  /** The file; empty where none is being written. */
  readonly text: string;
  /** "id@version" that it was begun from; empty where from nothing or from a file. */
  readonly base: string;
  /** Edits made and not yet in the text. */
  readonly pending: readonly PatternEdit[];
}

/** Text of the files beside the draft, by name. */
type Beside = Readonly<Record<string, string>>;

const EMPTY: PatternDraftKept = { text: "", base: "", pending: [] };
const DRAFT = `${DRAFT_PREFIX}pattern`;
const BESIDE = `${DRAFT_PREFIX}pattern-beside`;

/** What is kept on this device from the first letter on: it outlasts reloads and dead batteries, and needs no network. */
export const patternDraft = {
  read: (): PatternDraftKept => readKept(drafts.getItem(DRAFT), EMPTY),
  keep: (draft: PatternDraftKept): void => drafts.setItem(DRAFT, JSON.stringify(draft)),
  /** The drawings, apart: they are large and never change while one writes. */
  beside: (): Beside => readKept<Beside>(drafts.getItem(BESIDE), {}),
  begin: (draft: Pick<PatternDraftKept, "text" | "base">, beside: Beside): void => {
    drafts.setItem(BESIDE, JSON.stringify(beside));
    drafts.setItem(DRAFT, JSON.stringify({ ...draft, pending: [] }));
  },
  drop: (): void => {
    drafts.removeItem(DRAFT);
    drafts.removeItem(BESIDE);
  },
};
