import { InputError } from "#base";
import type { Pattern } from "#kit";
import { usesSolver } from "#questions";
import { PROBLEM } from "#station";
import { once } from "node:events";
import { Worker } from "node:worker_threads";
import { Refusal } from "../http/problem.ts";
import type { Asked, Said } from "./question-worker.ts";
import { codeOf } from "../start/start-problem.ts";

/** A question that takes longer than this [ms] is stopped; the slowest that people ask takes a third of it. */
const LIMIT_MS = 10_000;
/**
 * The same for a question that asks a solver: the year of a hundred kits takes as long on a computer that has other things to
 * do, and whoever asks holds the quick plan meanwhile.
 */
const SOLVER_LIMIT_MS = 30_000;
/** Questions in hand at once, the one being answered among them. */
const LINE = 8;
/** The most memory for answering [MB]. */
const MEMORY_MB = 512;

export interface DeskLimits {
  readonly limitMs: number;
  /** For a question that asks a solver. */
  readonly solverLimitMs: number;
  readonly line: number;
  readonly memoryMb: number;
}

/** Answers questions beside the server's own work, one after another. */
export interface QuestionDesk {
  /**
   * @param asker - whoever asks: one question of each is in line at a time, so that nobody fills it
   * @returns the answer as JSON
   * @throws InputError with every fault in what was given
   * @throws Refusal where the line is too long, the asker is in it already, or the answer takes too long or too much
   */
  ask(name: string, given: unknown, asker: string): Promise<string>;
  close(): Promise<void>;
}

/** A desk whose thread starts with the first question: a server that is asked none pays nothing for it. */
export function createQuestionDesk(patterns: () => readonly Pattern[], limits: Partial<DeskLimits> = {}): QuestionDesk {
  return new ThreadDesk(patterns, {
    limitMs: LIMIT_MS,
    solverLimitMs: SOLVER_LIMIT_MS,
    line: LINE,
    memoryMb: MEMORY_MB,
    ...limits,
  });
}

class ThreadDesk implements QuestionDesk {
  readonly #patterns: () => readonly Pattern[];
  /** Those that the thread was started with. */
  #known: readonly Pattern[] | undefined;
  readonly #limits: DeskLimits;
  readonly #closing = new AbortController();
  #thread: Promise<Worker> | undefined;
  #line: Promise<unknown> = Promise.resolve();
  readonly #inLine = new Set<string>();

  constructor(patterns: () => readonly Pattern[], limits: DeskLimits) {
    this.#patterns = patterns;
    this.#limits = limits;
  }

  async ask(name: string, given: unknown, asker: string): Promise<string> {
    if (this.#inLine.has(asker)) throw inLineAlready(this.#limits);
    if (this.#inLine.size >= this.#limits.line) throw lineTooLong(this.#limits);
    this.#inLine.add(asker);
    const turn = this.#line.then(() => this.#answer({ name, given })).finally(() => this.#inLine.delete(asker));
    this.#line = turn.catch(() => undefined);
    return turn;
  }

  async close(): Promise<void> {
    this.#closing.abort();
    await this.#line;
    await this.#endThread();
  }

  async #answer(asked: Asked): Promise<string> {
    if (this.#closing.signal.aborted) throw closed();
    try {
      if (this.#known !== this.#patterns()) await this.#endThread();
      const thread = await (this.#thread ??= this.#startThread());
      hand(thread, asked);
      const timeout = AbortSignal.timeout(limitOf(asked.name, this.#limits));
      const [said] = await once(thread, "message", { signal: AbortSignal.any([timeout, this.#closing.signal]) });
      return readAnswer(said as Said);
    } catch (cause) {
      if (cause instanceof InputError) throw cause;
      await this.#endThread();
      throw this.#closing.signal.aborted ? closed() : whyStopped(cause, asked.name, this.#limits);
    }
  }

  /** Resolves once the questions are loaded, which the first asker waits for. */
  async #startThread(): Promise<Worker> {
    this.#known = this.#patterns();
    const thread = createThread(this.#known, this.#limits.memoryMb);
    thread.unref();
    thread.on("error", () => (this.#thread = undefined));
    await once(thread, "message");
    return thread;
  }

  async #endThread(): Promise<void> {
    const thread = await this.#thread?.catch(() => undefined);
    this.#thread = undefined;
    await thread?.terminate();
  }
}

function limitOf(name: string, { limitMs, solverLimitMs }: DeskLimits): number {
  return usesSolver(name) ? solverLimitMs : limitMs;
}

/** As built, the thread's file lies beside the server's; from sources the thread first learns to read those. */
function createThread(patterns: readonly Pattern[], memoryMb: number): Worker {
  const options = { workerData: { patterns }, resourceLimits: { maxOldGenerationSizeMb: memoryMb } };
  if (!import.meta.url.endsWith(".ts")) return new Worker(new URL("./question-worker.js", import.meta.url), options);
  const file = JSON.stringify(new URL("./question-worker.ts", import.meta.url).href);
  const code = `import("tsx/esm/api").then(({ register }) => { register(); return import(${file}); })`;
  return new Worker(code, { ...options, eval: true });
}

/** @throws InputError SV-184 where what was given is nested deeper than, or else nothing that, a thread can be handed */
function hand(thread: Worker, asked: Asked): void {
  try {
    thread.postMessage(asked, []);
  } catch (cause) {
    if (!cannotBeCopied(cause)) throw cause;
    const remedy = "Look at the question's example: npm run -s drykeel -- ask.";
    const allowed = "what the question's example shows, a few levels deep";
    throw new InputError([
      { code: "SV-184", field: "body", got: "something nested without end, or no JSON", allowed, remedy },
    ]);
  }
}

function cannotBeCopied(cause: unknown): boolean {
  return cause instanceof RangeError || (cause instanceof DOMException && cause.name === "DataCloneError");
}

function whyStopped(cause: unknown, name: string, limits: DeskLimits): unknown {
  if (cause instanceof Error && cause.name === "AbortError") return tookTooLong(name, limits);
  return codeOf(cause) === "ERR_WORKER_OUT_OF_MEMORY" ? tookTooMuch(name, limits) : cause;
}

function readAnswer(said: Said): string {
  if (said.kind === "answer") return said.text;
  if (said.kind === "faults") throw new InputError(said.faults);
  throw said.kind === "broken" ? said.cause : new Error("Broken invariant: a thread is ready once");
}

function inLineAlready({ limitMs }: DeskLimits): Refusal {
  return new Refusal("slowed", {
    code: "SV-186",
    message: "Another question of yours is being answered at this moment.",
    remedy: "Wait for its answer, then ask the next; a script asks one question at a time.",
    wait: limitMs / 1000,
  });
}

function lineTooLong({ limitMs }: DeskLimits): Refusal {
  return new Refusal("unavailable", {
    code: "SV-181",
    message: "Too many questions are being answered at this moment.",
    remedy: "Ask again shortly, one question at a time; a script waits for each answer before the next.",
    wait: limitMs / 1000,
  });
}

function tookTooLong(name: string, limits: DeskLimits): Refusal {
  return new Refusal("too-much", {
    code: PROBLEM.tookTooLong,
    message: `The question ${name} took longer than ${limitOf(name, limits) / 1000} s and was stopped.`,
    remedy: askForLess(name),
  });
}

function tookTooMuch(name: string, { memoryMb }: DeskLimits): Refusal {
  return new Refusal("too-much", {
    code: "SV-185",
    message: `The question ${name} took more than ${memoryMb} MB of memory and was stopped.`,
    remedy: askForLess(name),
  });
}

function askForLess(name: string): string {
  return `Ask for less: a shorter duration, a longer step, fewer openings or pumps. Without these limits: npm run -s drykeel -- ask ${name}`;
}

function closed(): Refusal {
  return new Refusal("unavailable", {
    code: "SV-183",
    message: "The server is stopping.",
    remedy: "Ask again once it is back.",
  });
}
