import { stepNamed, type Pattern } from "#kit";
import type { Entry } from "#log";
import type { Bodies, EntryKind, StepAnswer } from "#readiness";
import type { Words } from "#words";

type TurnaroundWords = Words["turnaround"];

/** The last thing this person did here that can be taken back. */
export interface Undoable {
  readonly entry: Entry;
  /** Step it was done at. */
  readonly step: string | undefined;
}

/** What can be taken back, and what to call it. */
const KINDS: Partial<Readonly<Record<string, (words: TurnaroundWords) => string>>> = {
  "step-answered": (words) => words.undoAnswer(),
  "timer-started": (words) => words.undoStart(),
  "timer-stopped": (words) => words.undoStop(),
  "pulls-counted": (words) => words.undoPull(),
  "prime-timed": (words) => words.undoPrime(),
  "delivery-measured": (words) => words.undoDelivery(),
  "item-fitted": (words) => words.undoFitted(),
  "date-read": (words) => words.undoDate(),
  "finding-raised": (words) => words.undoFinding(),
} satisfies Partial<Record<EntryKind, (words: TurnaroundWords) => string>>;

/**
 * The newest entry of this turnaround that this person made on this device.
 *
 * @param entries - entries of the kit that count, oldest first
 * @param whose - turnaround, person and device
 */
export function lastUndoable(
  entries: readonly Entry[],
  whose: { readonly turnaround: string; readonly by: string; readonly device: string },
): Undoable | undefined {
  const entry = entries.findLast(
    (one) =>
      KINDS[one.kind] !== undefined &&
      one.by === whose.by &&
      one.device === whose.device &&
      (one.body as Partial<StepAnswer>).turnaround === whose.turnaround,
  );
  if (!entry) return undefined;
  return { entry, step: (entry.body as Partial<Bodies["item-fitted"]>).step };
}

/** "Undo answer at line 3": the pattern knows the number of the line. */
export function sayUndo({ entry, step }: Undoable, pattern: Pattern, words: TurnaroundWords): string {
  const what = KINDS[entry.kind]?.(words) ?? entry.kind;
  const line = step === undefined ? undefined : stepNamed(pattern, step)?.line;
  return line === undefined ? words.undo({ what }) : words.undoAtLine({ what, line });
}
