import { judgeReading, type Value } from "#readiness";
import { useAskDraft } from "#web/act/use-ask-draft.ts";
import { sayDuration } from "#words";
import { itemToRead } from "./dates-at-line.tsx";
import type { Answering } from "./use-answering.ts";

/** What a clock or counter came to: the engine started, or water came after so many seconds. */
export type ClockOutcome = { readonly kind: "started" } | { readonly kind: "water"; readonly seconds: number };

/**
 * "Started on pull 2" and "Water" are what their line's one check asks to be seen: the same tap answers it, with the note and
 * photos entered there. A time outside its limit, a line already answered, with more checks or with a date still to be read is left to the person.
 */
export function useClockAnswer({ open, acts, line, ask, onAnswered }: Answering) {
  const kept = useAskDraft(open.turnaround.id, ask.key);
  return async (outcome: ClockOutcome): Promise<void> => {
    if (line.asks.length !== 1 || ask.answered || itemToRead(open, line.step) !== undefined) return;
    const value = valueOf(outcome);
    if (ask.check?.kind === "timed" && value === undefined) return;
    if (value && ask.check && judgeReading(ask.check, value, open.view)?.right !== true) return;
    const { note, photos } = kept.draft;
    await acts.answer({ turnaround: open.turnaround.id, step: line.step.id }, ask, "seen", {
      ...(value && ask.check?.kind === "timed" && { value }),
      ...(note.trim() !== "" && { note: note.trim() }),
      ...(photos.length > 0 && { photos }),
    });
    kept.clear();
    onAnswered();
  };
}

function valueOf(outcome: ClockOutcome): Value | undefined {
  if (outcome.kind === "started") return undefined;
  return { kind: "quantity", si: outcome.seconds, dimension: "time", text: sayDuration(outcome.seconds) };
}
