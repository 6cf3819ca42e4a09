import { isInputError, type Fault } from "#base";
import { newestOfEach, type Pattern } from "#kit";
import { ask } from "#questions";
import { expose } from "comlink";

/** What crosses from the worker: errors lose their faults on the way, so they travel as what they are. */
export type AskOutcome =
  | { readonly kind: "answered"; readonly answer: unknown }
  | { readonly kind: "refused"; readonly faults: readonly Fault[] };

/** The questions, answered off the page's own thread and without a network. */
class AskDesk {
  #patterns = new Map<string, Pattern>();

  /** Patterns that questions may name; of each the newest version given. */
  know(patterns: readonly Pattern[]): void {
    this.#patterns = new Map(newestOfEach(patterns).map((pattern) => [pattern.id, pattern]));
  }

  ask(name: string, input: unknown): AskOutcome {
    try {
      return { kind: "answered", answer: ask(name, input, { patterns: (id) => this.#patterns.get(id) }) };
    } catch (cause) {
      if (isInputError(cause)) return { kind: "refused", faults: cause.faults };
      throw cause;
    }
  }
}

export type { AskDesk };

expose(new AskDesk());
