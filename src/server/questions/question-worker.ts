import { isInputError, type Fault } from "#base";
import { newestOf, type Pattern } from "#kit";
import { ask, usesSolver } from "#questions";
import { loadSolver } from "#solver";
import { parentPort, workerData } from "node:worker_threads";

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

/** Time for a solver, well within what the desk waits for an answer [s]. */
const SOLVER_SECONDS = 5;

parentPort?.on("message", (asked: Asked) => void answer(asked).then(say));
say({ kind: "ready" });

async function answer({ name, given }: Asked): Promise<Said> {
  try {
    const solver = usesSolver(name) ? { solver: await loadSolver(), mostSeconds: SOLVER_SECONDS } : {};
    const answered = ask(name, given, { patterns: (id) => newestOf(patterns, id), ...solver });
    return { kind: "answer", text: JSON.stringify(answered) };
  } catch (cause) {
    return isInputError(cause) ? { kind: "faults", faults: cause.faults } : { kind: "broken", cause };
  }
}

function say(said: Said): void {
  parentPort?.postMessage(said, []);
}
