import type { Entry } from "#log";
import type { KitActs } from "./acts.ts";
import type { OpenKit } from "./at-hand.ts";
import { readCell, readClockCell, readFittingCell, type CardAnswer, type CardClock, type Cell } from "./card-cell.ts";
import type { CardRow } from "./card-rows.ts";

/** The turnaround a card is entered into, and when the card was filled in. */
export interface Entering {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly filledAt: string;
}

/** A box read: what to write down, or what to type instead. `wrong` where a finding should follow. */
export type Entered =
  | { readonly kind: "write"; readonly write: () => Promise<Entry>; readonly isWrong: boolean }
  | { readonly kind: "fault"; readonly fault: string };

/** Reads what was typed in a box into the entry it makes. */
export function enterBox(entering: Entering, row: CardRow, text: string, units: "metric" | "us"): Entered {
  if (row.kind === "timer") return written(readClockCell(row.timer, text), (clock) => writeClock(entering, row, clock));
  if (row.kind === "fitting") {
    const cell = readFittingCell(row.item.life.kind === "printed", text);
    return written(cell, ({ printed }) => writeFitting(entering, row, printed));
  }
  const { view, turnaround } = entering.open;
  const around = { today: view.today, units, recordedSeal: turnaround.opened.sealOnRecord };
  const cell = readCell(row.check, text, around);
  const made = written(cell, (answer) => writeAnswer(entering, row, answer));
  return made.kind === "write" && cell.kind === "read" ? { ...made, isWrong: cell.meaning.answer === "wrong" } : made;
}

/** Writes a box down as a stroke of the pen: seen, or fitted new. */
export function enterTick(entering: Entering, row: CardRow): Promise<Entry> {
  if (row.kind === "fitting") return writeFitting(entering, row, undefined);
  return writeAnswer(entering, row, { answer: "seen" });
}

function written<Meaning>(cell: Cell<Meaning>, write: (meaning: Meaning) => Promise<Entry>): Entered {
  return cell.kind === "fault" ? cell : { kind: "write", write: () => write(cell.meaning), isWrong: false };
}

function whereOf({ open }: Entering, row: CardRow) {
  return { turnaround: open.turnaround.id, step: row.step.id };
}

function writeAnswer(entering: Entering, row: CardRow, { answer, ...details }: CardAnswer): Promise<Entry> {
  const ask = row.kind === "answer" && row.check ? { check: row.check } : {};
  const card = { fromCard: true, cardAt: entering.filledAt };
  return entering.acts.answer(whereOf(entering, row), ask, answer, { ...details, ...card });
}

function writeClock(entering: Entering, row: CardRow, clock: CardClock): Promise<Entry> {
  const where = whereOf(entering, row);
  if (clock.kind === "pulls") return entering.acts.countPulls(where, clock.pulls, "started");
  if (row.step.timer?.kind === "prime") {
    return entering.acts.timePrime(where, { seconds: clock.seconds, primed: true });
  }
  return entering.acts.stopTimer(where, { started: entering.filledAt, seconds: clock.seconds, reached: true });
}

function writeFitting(entering: Entering, row: CardRow, printed: string | undefined): Promise<Entry> {
  const item = row.kind === "fitting" ? row.item : undefined;
  const fitted = { item: item?.id ?? "", fitted: entering.filledAt.slice(0, 10), quantity: item?.quantity ?? 0 };
  return entering.acts.fit(whereOf(entering, row), printed === undefined ? fitted : { ...fitted, printed });
}
