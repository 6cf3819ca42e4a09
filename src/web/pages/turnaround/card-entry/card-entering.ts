import type { Entry } from "#log";
import { barsAt, clockAt, dateWantedBy, recordedFor, seenGate, type Bar } from "#readiness";
import type { KitActs } from "#web/act/acts.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { drawnByItself } from "#web/kit-view/stock-view.ts";
import {
  readCell,
  readClockCell,
  readFittingCell,
  type CardAnswer,
  type CardClock,
  type Cell,
  type SayFault,
} from "./card-cell.ts";
import { isFilled, type CardRow } from "./card-rows.ts";

/** The turnaround a card is entered into, and when the card was filled in. */
export interface Entering {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly filledAt: string;
  /** The kit as it stands by now: a box may be typed before the one above it is drawn as taken. */
  readonly current: () => OpenKit;
  readonly turn: CardTurn;
}

/** Boxes are written down one after another, in the order of their Enter, however fast they are typed. */
export class CardTurn {
  #last: Promise<unknown> = Promise.resolve();
  #waiting = 0;

  /** True while a box above is still being written down. */
  get isBusy(): boolean {
    return this.#waiting > 0;
  }

  async run<Done>(work: () => Promise<Done>): Promise<Done> {
    this.#waiting += 1;
    const done = this.#last.then(work);
    this.#last = done.catch(() => undefined).then(() => (this.#waiting -= 1));
    return done;
  }
}

/** A box read: what to write down, or what to type instead. `wrong` where a finding should follow. */
export type Entered =
  | { readonly kind: "write"; readonly write: () => Promise<Entry>; readonly isWrong: boolean }
  | { readonly kind: "fault"; readonly fault: SayFault };

/**
 * Reads what was typed in a box into the entry it makes. While boxes above are still being written, the line's clock may be
 * among them: what waits for it is then judged in its turn, by the act.
 */
export function enterBox(entering: Entering, row: CardRow, text: string): Entered {
  if (row.kind === "timer") return written(readClockCell(row.timer, text), (clock) => writeClock(entering, row, clock));
  if (row.kind === "fitting") {
    const cell = readFittingCell(row.item.life.kind === "printed", text);
    return written(cell, ({ printed }) => writeFitting(entering, row, printed));
  }
  const { view, kit, turnaround, pattern } = entering.open;
  const wanted = row.check ? dateWantedBy(row.check, pattern, view.policy, view.today) : view.today;
  const around = { today: view.today, recorded: recordedFor(row.check, kit, turnaround), wanted };
  const cell = readCell(row.check, text, around);
  const isSeen = cell.kind === "read" && cell.meaning.answer === "seen";
  const early = isSeen && !entering.turn.isBusy && isTooEarlyOnCard({ open: entering.current() }, row);
  if (early) return { kind: "fault", fault: (words) => words.clockFirst() };
  const made = written(cell, (answer) => writeAnswer(entering, row, answer));
  return made.kind === "write" && cell.kind === "read" ? { ...made, isWrong: cell.meaning.answer === "wrong" } : made;
}

/** True where a box cannot be taken as seen yet: the card's clock of that step is still to be entered. */
export function isTooEarlyOnCard({ open }: Pick<Entering, "open">, { step }: CardRow): boolean {
  return !seenGate(step, clockAt(open, step.id), new Date().toISOString()).open;
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
  const { view, kit } = entering.open;
  const drawn = drawnByItself(view, kit, fitted.item);
  const of = { ...(printed !== undefined && { printed }), ...(drawn && { drawn }) };
  return entering.acts.fit(whereOf(entering, row), { ...fitted, ...of });
}

/** What an open finding bars at this box, as at the line itself: its work is not written down as done. */
export function barsAtBox({ open }: Pick<Entering, "open">, row: CardRow): readonly Bar[] {
  if (row.kind === "fitting" || isFilled(row)) return [];
  return barsAt(open, row.step.id, row.kind === "answer" ? row.check?.id : undefined);
}
