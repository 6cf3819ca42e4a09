import { InputError } from "#base";
import type { Pattern } from "#kit";
import { wrap, type Remote } from "comlink";
import { useCallback, useEffect } from "react";
import { useStation } from "../device/index.ts";
import type { AskDesk } from "./ask-worker.ts";

/** One worker a window, begun at the first question. */
class AskLine {
  #desk: Remote<AskDesk> | undefined;
  #known: ReadonlyMap<string, Pattern> | undefined;

  async know(patterns: ReadonlyMap<string, Pattern>): Promise<void> {
    if (this.#known === patterns) return;
    this.#known = patterns;
    await this.#reach().know([...patterns.values()]);
  }

  async ask(name: string, input: unknown): Promise<unknown> {
    const outcome = await this.#reach().ask(name, input);
    if (outcome.kind === "refused") throw new InputError(outcome.faults);
    return outcome.answer;
  }

  #reach(): Remote<AskDesk> {
    this.#desk ??= wrap<AskDesk>(new Worker(new URL("ask-worker.ts", import.meta.url), { type: "module" }));
    return this.#desk;
  }
}

const line = new AskLine();

/**
 * Asks a named question of `#questions` off the page's thread, without a network.
 * @returns a function that resolves to the bare answer, and rejects with an InputError carrying every fault
 */
export function useAsk(): (name: string, input: unknown) => Promise<unknown> {
  const { patterns } = useStation();
  useEffect(() => void line.know(patterns), [patterns]);
  return useCallback((name, input) => line.ask(name, input), []);
}
