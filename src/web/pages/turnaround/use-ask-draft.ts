import { useState } from "react";
import type { PhotoRef } from "#readiness";
import type { Typed } from "./typed-reading.ts";

/** What was entered for an ask and not yet answered with: survives a reload on this device. */
export interface AskDraft {
  readonly typed: Typed;
  readonly note: string;
  readonly photos: readonly PhotoRef[];
}

const EMPTY: AskDraft = { typed: {}, note: "", photos: [] };
const PREFIX = "drykeel.ask.";

/** A draft and the ways to change it. */
export interface KeptDraft {
  readonly draft: AskDraft;
  readonly change: (part: Partial<AskDraft>) => void;
  /** Called once it is answered. */
  readonly clear: () => void;
}

/** Keeps the draft of one ask. */
export function useAskDraft(turnaround: string, key: string): KeptDraft {
  const place = `${PREFIX}${turnaround}.${key}`;
  const [draft, setDraft] = useState(() => readDraft(localStorage.getItem(place)));
  const change = (part: Partial<AskDraft>) => {
    const next = { ...draft, ...part };
    setDraft(next);
    localStorage.setItem(place, JSON.stringify(next));
  };
  const clear = () => {
    setDraft(EMPTY);
    localStorage.removeItem(place);
  };
  return { draft, change, clear };
}

/** A draft as kept; what cannot be read counts as none. */
export function readDraft(text: string | null): AskDraft {
  if (text === null) return EMPTY;
  try {
    return { ...EMPTY, ...(JSON.parse(text) as Partial<AskDraft>) };
  } catch (cause) {
    if (cause instanceof SyntaxError) return EMPTY;
    throw cause;
  }
}
