import { stepNamed, type Pattern } from "#kit";
import type { Entry } from "#log";
import type { StepAnswer, Bodies, EntryKind } from "#readiness";

/** The last thing this person did here that can be taken back, and what to call it. */
export interface Undoable {
  readonly entry: Entry;
  readonly words: string;
  /** Step it was done at. */
  readonly step: string | undefined;
}

const KINDS: Partial<Readonly<Record<string, string>>> = {
  "step-answered": "answer",
  "timer-started": "start of the clock",
  "timer-stopped": "stop of the clock",
  "pulls-counted": "last pull",
  "prime-timed": "timed prime",
  "delivery-measured": "delivery measured",
  "item-fitted": "item fitted",
  "date-read": "date read",
  "finding-raised": "finding",
} satisfies Partial<Record<EntryKind, string>>;

/**
 * The newest entry of this turnaround that this person made on this device.
 *
 * @param entries - entries of the kit that count, oldest first
 * @param whose - turnaround, person and device
 * @param pattern - for the line's number
 */
export function lastUndoable(
  entries: readonly Entry[],
  whose: { readonly turnaround: string; readonly by: string; readonly device: string },
  pattern: Pattern,
): Undoable | undefined {
  const entry = entries.findLast(
    (one) =>
      KINDS[one.kind] !== undefined &&
      one.by === whose.by &&
      one.device === whose.device &&
      (one.body as Partial<StepAnswer>).turnaround === whose.turnaround,
  );
  if (!entry) return undefined;
  const { step } = entry.body as Partial<Bodies["item-fitted"]>;
  return { entry, step, words: `${KINDS[entry.kind]}${atLine(step, pattern)}` };
}

function atLine(step: string | undefined, pattern: Pattern): string {
  const found = step === undefined ? undefined : stepNamed(pattern, step);
  return found ? ` at line ${found.line}` : "";
}
