import { InputError, printGiven, type Fault } from "#base";
import type { Document } from "yaml";
import { printPath, readDocument } from "../file/yaml-source.ts";
import { editValue, sameValue, type PatternEdit } from "./pattern-edit.ts";
import { fieldOrderAt } from "./field-order.ts";
import { spliceOf } from "./splice-edit.ts";
import type { Splice } from "./edit-source.ts";

/** A pattern's file under the pen: its text, and what it says. */
export class PatternDraft {
  readonly text: string;
  /** Plain values, not judged. */
  readonly value: unknown;
  readonly #document: Document;

  /** @throws InputError KI-100 too long, KI-101 broken YAML, a bomb of aliases among it */
  constructor(text: string) {
    const { source, document } = readDocument(text, "draft");
    this.text = text;
    this.value = source.value;
    this.#document = document;
  }

  /** What an edit puts where in the text; nothing where it has no such place. */
  splice(edit: PatternEdit): Splice | undefined {
    return spliceOf({ text: this.text, document: this.#document, orderAt: fieldOrderAt }, edit);
  }
}

/** An edit that was made, or why it was not. */
export type Edited =
  | { readonly kind: "edited"; readonly draft: PatternDraft; readonly undo: Splice }
  | { readonly kind: "refused"; readonly because: Fault };

/**
 * Takes a pattern's text under the pen. It need not be a sound pattern, only readable YAML.
 *
 * @param text - the file, at most 512 KiB
 * @throws InputError KI-100 too long, KI-101 broken YAML, a bomb of aliases among it
 * @example openDraft("id: my-kit # ours").value // { id: "my-kit" }
 */
export function openDraft(text: string): PatternDraft {
  return new PatternDraft(text);
}

/**
 * Makes one edit. Every line that it does not touch stays as it is, byte for byte, with its comments.
 *
 * @returns the draft after it and what undoes it; refused where the file has no such place, or is written there in a way
 *   that the edit cannot keep to (an alias, a list within a list's line)
 * @example editDraft(openDraft("version: 1 # ours"), { kind: "set", path: ["version"], value: 2 }).undo // { from: 9, to: 10, put: "1" }
 */
export function editDraft(draft: PatternDraft, edit: PatternEdit): Edited {
  const wanted = editValue(draft.value, edit);
  if (wanted === undefined) return refused(edit, "nothing there that this could change");
  const { text } = draft;
  const splice = draft.splice(edit);
  if (splice === undefined) return refused(edit, "written in a way that the form does not change");
  const after = tryOpening(text.slice(0, splice.from) + splice.put + text.slice(splice.to));
  if (after === undefined || !sameValue(after.value, wanted)) {
    return refused(edit, "written in a way that the form does not change");
  }
  return { kind: "edited", draft: after, undo: undoOf(text, splice) };
}

/** Takes an edit back: the text is again what it was, to the byte. */
export function undoEdit(draft: PatternDraft, { from, to, put }: Splice): PatternDraft {
  return openDraft(draft.text.slice(0, from) + put + draft.text.slice(to));
}

function undoOf(text: string, { from, to, put }: Splice): Splice {
  return { from, to: from + put.length, put: text.slice(from, to) };
}

function tryOpening(text: string): PatternDraft | undefined {
  try {
    return openDraft(text);
  } catch (thrown) {
    if (thrown instanceof InputError) return undefined;
    throw thrown;
  }
}

function refused({ kind, path }: PatternEdit, got: string): Edited {
  const remedy = "Download the file, change it there by hand, and open it again.";
  const field = printPath(path) || "the file";
  return {
    kind: "refused",
    because: { code: "KI-460", field, got: printGiven(`${kind}: ${got}`), allowed: ALLOWED, remedy },
  };
}

const ALLOWED = "a place of the file that stands on lines of its own";
