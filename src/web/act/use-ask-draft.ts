import type { PhotoRef } from "#readiness";
import type { Typed } from "./typed-reading.ts";
import { useKept } from "./use-kept.ts";

/** What was entered for an ask and not yet answered with. */
export interface AskDraft {
  readonly typed: Typed;
  readonly note: string;
  readonly photos: readonly PhotoRef[];
}

const EMPTY: AskDraft = { typed: {}, note: "", photos: [] };

/** A draft and the ways to change it. */
export interface KeptDraft {
  readonly draft: AskDraft;
  readonly change: (part: Partial<AskDraft>) => void;
  /** Called once it is answered. */
  readonly clear: () => void;
}

/** Keeps the draft of one ask. */
export function useAskDraft(turnaround: string, key: string): KeptDraft {
  const { value, change, clear } = useKept(`ask.${turnaround}.${key}`, EMPTY);
  return { draft: value, change: (part) => change({ ...value, ...part }), clear };
}
