import { inWords, type Saying, type Words } from "#words";
import type { Reason } from "../state.ts";

/** One thing that stands in the way of a seal, and where it can be put right. */
export interface Refusal extends Omit<Reason, "said"> {
  readonly said: Saying<"held">;
}

/** A refusal with no place of its own yet. */
export function refusal(rule: Refusal["rule"], said: Refusal["said"]): Refusal {
  return { rule, said };
}

/** What stands in the way, in words. */
export function sayRefusal({ said }: Pick<Refusal, "said">, words: Words["held"]): string {
  return inWords(said, words);
}
