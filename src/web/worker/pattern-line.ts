import { wrap, type Remote } from "comlink";
import type { PatternBench } from "./pattern-worker.ts";

/** A bench of its own for one page; `leave` ends it. */
export interface PatternLine {
  readonly bench: Remote<PatternBench>;
  readonly leave: () => void;
}

/** Opens a bench for a pattern's draft, in a worker. */
export function openBench(): PatternLine {
  const worker = new Worker(new URL("pattern-worker.ts", import.meta.url), { type: "module" });
  return { bench: wrap<PatternBench>(worker), leave: () => worker.terminate() };
}
