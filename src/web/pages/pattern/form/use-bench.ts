import { InputError } from "#base";
import { editValue, type DraftFault, type PatternEdit } from "#kit";
import { useCallback, useEffect, useRef, useState } from "react";
import { patternDraft } from "#web/act/pattern-draft.ts";
import { openBench, type PatternLine } from "#web/worker/pattern-line.ts";
import type { DraftOutcome } from "#web/worker/pattern-worker.ts";

/** How long nothing is typed before the lint goes over it [ms]. */
const LINT_MS = 300;

export interface BenchNow {
  /** The file's values with every edit, also those not yet written into it; undefined until it was read. */
  readonly value: unknown;
  /** Undefined until the lint has gone over it once. */
  readonly faults: readonly DraftFault[] | undefined;
  /** True where the faults are of what stood before the last edit. */
  readonly isBehind: boolean;
  readonly undos: number;
  readonly error: unknown;
}

export interface Bench extends BenchNow {
  readonly change: (edit: PatternEdit) => void;
  readonly undo: () => void;
  /** The file with every edit made so far. */
  readonly settled: () => Promise<string>;
}

const START: BenchNow = { value: undefined, faults: undefined, isBehind: true, undos: 0, error: undefined };

/** The draft of this device under the pen: each edit shows at once, and is written into the file beside the page. */
export function useBench(): Bench {
  const [now, setNow] = useState(START);
  const desk = useRef<Desk>(undefined);
  useEffect(() => {
    const opened = new Desk(openBench(), (more) => setNow((before) => ({ ...before, ...more })));
    desk.current = opened;
    void opened.begin();
    return () => opened.leave();
  }, []);
  const change = useCallback((edit: PatternEdit) => {
    setNow((before) => ({ ...before, value: editValue(before.value, edit) ?? before.value, isBehind: true }));
    desk.current?.change(edit);
  }, []);
  const undo = useCallback(() => void desk.current?.undo(), []);
  const settled = useCallback(async () => (await desk.current?.settled()) ?? "", []);
  return { ...now, change, undo, settled };
}

/** Writes edits into the file one after the other; of one field typed in fast only the last. */
class Desk {
  readonly #line: PatternLine;
  readonly #tell: (more: Partial<BenchNow>) => void;
  readonly #base = patternDraft.read().base;
  #text = patternDraft.read().text;
  #pending: PatternEdit[] = [...patternDraft.read().pending];
  #writing: Promise<void> = Promise.resolve();
  #isWriting = false;
  #lintSoon: ReturnType<typeof setTimeout> | undefined;

  constructor(line: PatternLine, tell: (more: Partial<BenchNow>) => void) {
    this.#line = line;
    this.#tell = tell;
  }

  async begin(): Promise<void> {
    this.#take(await this.#line.bench.open(this.#text, patternDraft.beside()));
    this.#write();
    this.#lint();
  }

  leave(): void {
    clearTimeout(this.#lintSoon);
    this.#line.leave();
  }

  change(edit: PatternEdit): void {
    const last = this.#pending.at(-1);
    // The first in line may be on its way already.
    const isAgain = this.#pending.length > 1 && last?.kind === "set" && edit.kind === "set" && isSame(last, edit);
    if (isAgain) this.#pending.pop();
    this.#pending.push(edit);
    this.#keep();
    this.#write();
  }

  async undo(): Promise<void> {
    await this.settled();
    this.#take(await this.#line.bench.undo());
    this.#keep();
    this.#lint();
  }

  async settled(): Promise<string> {
    await this.#writing;
    return this.#text;
  }

  #write(): void {
    if (this.#isWriting || this.#pending.length === 0) return;
    this.#isWriting = true;
    this.#writing = this.#writeAll().finally(() => (this.#isWriting = false));
  }

  async #writeAll(): Promise<void> {
    for (let edit = this.#pending[0]; edit !== undefined; edit = this.#pending[0]) {
      const outcome = await this.#line.bench.edit(edit);
      this.#pending.shift();
      this.#take(outcome, this.#pending);
      this.#keep();
    }
    this.#lint();
  }

  #take(outcome: DraftOutcome, ahead: readonly PatternEdit[] = []): void {
    if (outcome.kind === "refused") return this.#tell({ error: new InputError(outcome.faults) });
    const { text, value, undos } = outcome.now;
    this.#text = text;
    const shown = ahead.reduce<unknown>((before, edit) => editValue(before, edit) ?? before, value);
    this.#tell({ value: shown, undos, error: undefined });
  }

  #keep(): void {
    patternDraft.keep({ text: this.#text, base: this.#base, pending: this.#pending });
  }

  #lint(): void {
    clearTimeout(this.#lintSoon);
    this.#lintSoon = setTimeout(() => void this.#lintNow(), LINT_MS);
  }

  async #lintNow(): Promise<void> {
    if (this.#text === "") return;
    const faults = await this.#line.bench.lint();
    this.#tell({ faults, isBehind: this.#pending.length > 0 });
  }
}

function isSame(one: PatternEdit, other: PatternEdit): boolean {
  return one.path.join("/") === other.path.join("/");
}
