import { isInputError, type Fault } from "#base";
import {
  editDraft,
  lintDraft,
  openDraft,
  undoEdit,
  type DraftFault,
  type PatternDraft,
  type PatternEdit,
  type Splice,
} from "#kit";
import { expose } from "comlink";

/** A draft as the page shows it. */
export interface DraftNow {
  readonly text: string;
  readonly value: unknown;
  readonly undos: number;
}

/** What crosses from the worker: errors lose their faults on the way, so they travel as what they are. */
export type DraftOutcome =
  { readonly kind: "now"; readonly now: DraftNow } | { readonly kind: "refused"; readonly faults: readonly Fault[] };

/** A pattern's file under the pen, off the page's own thread: a long one takes some tenths of a second to read. */
class PatternBench {
  #draft: PatternDraft | undefined;
  #beside: Readonly<Record<string, string>> = {};
  #undos: Splice[] = [];

  open(text: string, beside: Readonly<Record<string, string>>): DraftOutcome {
    this.#undos = [];
    this.#beside = beside;
    try {
      this.#draft = openDraft(text);
      return this.#now(this.#draft);
    } catch (cause) {
      if (isInputError(cause)) return { kind: "refused", faults: cause.faults };
      throw cause;
    }
  }

  edit(edit: PatternEdit): DraftOutcome {
    const edited = editDraft(this.#held, edit);
    if (edited.kind === "refused") return { kind: "refused", faults: [edited.because] };
    this.#undos.push(edited.undo);
    this.#draft = edited.draft;
    return this.#now(edited.draft);
  }

  undo(): DraftOutcome {
    const last = this.#undos.pop();
    if (last !== undefined) this.#draft = undoEdit(this.#held, last);
    return this.#now(this.#held);
  }

  lint(): readonly DraftFault[] {
    return lintDraft(this.#held, (name) => {
      const file = name.split("/").at(-1) ?? "";
      return Object.hasOwn(this.#beside, file) ? this.#beside[file] : undefined;
    });
  }

  get #held(): PatternDraft {
    if (this.#draft === undefined) throw new Error("Broken invariant: no draft is open");
    return this.#draft;
  }

  #now({ text, value }: PatternDraft): DraftOutcome {
    return { kind: "now", now: { text, value, undos: this.#undos.length } };
  }
}

export type { PatternBench };

expose(new PatternBench());
