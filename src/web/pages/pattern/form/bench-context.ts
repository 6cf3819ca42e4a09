import { fieldAt, patternForm, type FieldBlock, type FilePath, type FormField } from "#kit";
import { createContext, useContext } from "react";
import type { FormWords } from "./form-words.ts";
import type { Bench } from "./use-bench.ts";

/** What every part of the form works with. */
export interface Writing {
  readonly bench: Bench;
  readonly words: FormWords;
  readonly form: FieldBlock;
  /** The part that is shown; the way to another. */
  readonly shown: FilePath;
  readonly show: (path: FilePath) => void;
}

export const WritingContext = createContext<Writing | undefined>(undefined);

export function useWriting(): Writing {
  const writing = useContext(WritingContext);
  if (writing === undefined) throw new Error("Broken invariant: a form outside a draft");
  return writing;
}

/** The form of every pattern. */
export const FORM = patternForm();

/** The schema's field at a path. */
export function formAt(path: FilePath): FormField | undefined {
  return path.length === 0 ? FORM : fieldAt(path, FORM);
}

export function isUnder(path: FilePath, over: FilePath): boolean {
  return over.every((part, at) => path[at] === part);
}
