import { useReady } from "#web/language/index.ts";

/** Waits for all that a turnaround says, so that no line of it is hidden later while words are fetched. */
export function useRunnerWords(): void {
  useReady("turnaround", "turnaroundLine", "turnaroundFit", "turnaroundEnd", "act");
  useReady("held", "standing", "dates", "kitLine", "kitView", "mending", "visits");
}
