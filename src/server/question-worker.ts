import { isInputError, type Fault } from "#base";
import type { Pattern } from "#kit";
import { ask } from "#questions";
import { parentPort, workerData } from "node:worker_threads";
import { newestOf } from "./newest-pattern.ts";

/** The start file of the thread that answers questions: bundled beside the server's own. */

export interface Asked {
  readonly name: string;
  readonly given: unknown;
}

export type Said =
  | { readonly kind: "ready" }
  /** The answer as JSON. */
  | { readonly kind: "answer"; readonly text: string }
  | { readonly kind: "faults"; readonly faults: readonly Fault[] }
  | { readonly kind: "broken"; readonly cause: unknown };

const { patterns } = workerData as { readonly patterns: readonly Pattern[] };

parentPort?.on("message", (asked: Asked) => say(answer(asked)));
say({ kind: "ready" });

function answer({ name, given }: Asked): Said {
  try {
    return { kind: "answer", text: JSON.stringify(ask(name, given, { patterns: (id) => newestOf(patterns, id) })) };
  } catch (cause) {
    return isInputError(cause) ? { kind: "faults", faults: cause.faults } : { kind: "broken", cause };
  }
}

function say(said: Said): void {
  parentPort?.postMessage(said, []);
}
