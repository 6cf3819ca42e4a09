import { useWords } from "#web/language/index.ts";

/** Waits for all that a turnaround says, so that no line of it is hidden later while words are fetched. */
export function useRunnerWords(): void {
  useWords("turnaround");
  useWords("turnaroundLine");
  useWords("turnaroundFit");
  useWords("turnaroundEnd");
  useWords("kitLine");
}
