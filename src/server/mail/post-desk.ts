import {
  lettersDue,
  placesShort,
  trialLetter,
  type Ambient,
  type KeptLetter,
  type LetterOutcome,
  type MailShelf,
  type MailWish,
  type RoundMemory,
  type StationReading,
} from "#station";
import { secondsAfter } from "../start/hours.ts";
import type { WholeLog } from "../log/whole-log.ts";
import type { Carried, MailCarrier } from "./mail-carrier.ts";

/** Whoever takes a letter out has surely ended with it after this [s]: longer than any wait of a carrier. */
const CARRYING_SECONDS = 600;
/** Waits before the next try [s]; the last stands for all that follow. */
const WAITS = [60, 300, 1800, 7200, 21_600] as const;
/** A letter that cannot be sent for so long [s] is given up: it would be no news. */
const GIVEN_UP_SECONDS = 3 * 86_400;
/** Letters are kept for so long [s] after they were written, so that none is written again. */
const KEPT_SECONDS = 90 * 86_400;
/** A server that remembers no round holds a database for put back where nobody went round for so long [s]. */
const SILENT_SECONDS = 600;
const PUT_BACK =
  "The station's database may have been put back since. This may have arrived, so it is not sent again by itself.";
const STOPPED = "The server ended while it sent this. It may have arrived.";

/** What the desk works with. */
export interface PostDeskParts {
  readonly shelf: MailShelf;
  readonly memory: RoundMemory;
  readonly wholeLog: Pick<WholeLog, "read">;
  readonly ambient: Ambient;
  readonly carrier: Pick<MailCarrier, "carry">;
  /** Told where a round could not be made; the next is made all the same. */
  readonly failed: (cause: unknown) => void;
}

/** Writes the letters that there are reasons for, and sends what is due; several servers may do so side by side. */
export class PostDesk {
  readonly #parts: PostDeskParts;
  #running: Promise<void> = Promise.resolve();

  constructor(parts: PostDeskParts) {
    this.#parts = parts;
  }

  /** Once round, after any round under way. */
  round(): Promise<void> {
    this.#running = this.#running.then(
      () => this.#go(),
      () => this.#go(),
    );
    return this.#running;
  }

  /** Resolves when no round is under way, however that went. */
  async rest(): Promise<void> {
    await this.#running.catch(() => undefined);
  }

  /** Goes round without anybody's waiting for it. */
  soon(): void {
    void this.round().catch(this.#parts.failed);
  }

  /** Keeps a trial letter to be sent with the next round. */
  async trial(wish: MailWish): Promise<void> {
    const { shelf, wholeLog, ambient } = this.#parts;
    const reading = (await wholeLog.read()).read();
    await shelf.post([trialLetter(reading, wish, ambient.newId())], ambient.now());
  }

  async #go(): Promise<void> {
    const { shelf, ambient } = this.#parts;
    const isPutBack = await this.#isPutBack();
    await shelf.doubtLetters(ambient.now(), STOPPED);
    await this.#write();
    if (isPutBack) await shelf.doubtWaiting(ambient.now(), PUT_BACK);
    await this.#count();
    await this.#send();
    await shelf.forgetLetters(secondsAfter(ambient.now(), -KEPT_SECONDS));
  }

  /** Whether letters that wait here, and reasons that were told of, may be known already by a later life of the database. */
  async #isPutBack(): Promise<boolean> {
    const { shelf, memory, ambient } = this.#parts;
    const [last, greatest] = [await shelf.lastRound(), await memory.greatest()];
    if (greatest !== undefined) return (last?.count ?? 0) < greatest;
    return last !== undefined && secondsAfter(last.at, SILENT_SECONDS) < secondsAfter(ambient.now(), 0);
  }

  /** Remembered before a letter leaves: a copy of the database from before then counts fewer. */
  async #count(): Promise<void> {
    const { shelf, memory, ambient } = this.#parts;
    await memory.keep(await shelf.countRound(ambient.now(), (await memory.greatest()) ?? 0));
  }

  async #write(): Promise<void> {
    const { shelf, wholeLog, ambient } = this.#parts;
    const reading = (await wholeLog.read()).read();
    const wishes = await shelf.wishes();
    await this.#forgetWhoLeft(wishes, reading);
    const now = ambient.now();
    const shortSince = await this.#stretches(reading, now);
    if (wishes.length > 0) await shelf.post(lettersDue(reading, wishes, now, shortSince), now);
  }

  /** With a person who left goes the address, and what waits to be sent there. */
  async #forgetWhoLeft(wishes: readonly MailWish[], { people }: StationReading): Promise<void> {
    const { shelf } = this.#parts;
    const here = new Set(people.filter(({ left }) => !left).map(({ id }) => id));
    for (const { person } of wishes) if (!here.has(person)) await shelf.removeWish(person);
  }

  /** When each place that is short now began to be. */
  async #stretches(reading: StationReading, now: string): Promise<ReadonlyMap<string, string>> {
    const { shelf } = this.#parts;
    const short = new Set(placesShort(reading, now));
    const since = new Map<string, string>();
    for (const { id } of reading.places) {
      if (short.has(id)) since.set(id, await shelf.beginStretch(`short:${id}`, now));
      else await shelf.endStretch(`short:${id}`);
    }
    return since;
  }

  async #send(): Promise<void> {
    const { shelf, ambient, carrier } = this.#parts;
    for (;;) {
      const now = ambient.now();
      const letter = await shelf.takeLetter(now, secondsAfter(now, CARRYING_SECONDS));
      if (letter === undefined) return;
      await this.#count();
      const carried = await carrier.carry(letter);
      await shelf.settleLetter(letter.id, outcomeOf(letter, carried, ambient.now()));
    }
  }
}

function outcomeOf({ tries, made }: KeptLetter, carried: Carried, at: string): LetterOutcome {
  if (carried.kind === "sent") return { kind: "sent", at };
  const { said } = carried;
  if (carried.kind === "in-doubt") return { kind: "in-doubt", at, said };
  const isOld = Date.parse(at) - Date.parse(made) > GIVEN_UP_SECONDS * 1000;
  if (carried.kind === "refused" || isOld) return { kind: "given-up", at, said };
  const wait = WAITS[Math.min(tries, WAITS.length) - 1] ?? WAITS[0];
  return { kind: "waiting", at, said, due: secondsAfter(at, wait) };
}

/** Goes round once a minute [ms]. */
const ROUND_MS = 60_000;

/**
 * Has the desk go round now, and once a minute from then on.
 *
 * @returns stops it, and resolves when no round is under way
 */
export function keepPosting(desk: PostDesk): () => Promise<void> {
  desk.soon();
  const timer = setInterval(() => desk.soon(), ROUND_MS).unref();
  return () => {
    clearInterval(timer);
    return desk.rest();
  };
}
