/** A server's store, which keeps mail too. */
export interface HasMail {
  readonly mail: MailShelf;
}

/** What a person wants to be told by mail, and where. */
export interface MailWish {
  readonly person: string;
  readonly address: string;
  /** What is due, once a week; absent where it is not wanted. */
  readonly weekly?: WeeklyWish;
  /** When a place falls short of its strength. */
  readonly isForShort: boolean;
  /** When a finding grounds a kit. */
  readonly isForGrounds: boolean;
  /** From when it holds, RFC 3339: what was before is not told. */
  readonly since: string;
}

export interface WeeklyWish {
  /** Monday 1 to Sunday 7. */
  readonly weekday: number;
  /** Hour of the day at the station, 0 to 23. */
  readonly hour: number;
}

/** A letter to one person about one thing. */
export interface Letter {
  /** The same whenever and wherever it is written: who, and of what. No two letters have the same. */
  readonly id: string;
  readonly person: string;
  readonly address: string;
  readonly subject: string;
  readonly text: string;
}

/**
 * Where a letter stands: `waiting` to be sent, or to be tried again; `under-way` in the hands of a server; `sent` when the
 * mail server took it; `in-doubt` where it may have taken it and could not say so, which is sent again
 * only where its person asks for it; `given-up`.
 */
export type LetterStanding = "waiting" | "under-way" | "sent" | "in-doubt" | "given-up";

/** A letter as it is kept. */
export interface KeptLetter extends Letter {
  readonly standing: LetterStanding;
  /** How often it was tried. */
  readonly tries: number;
  /** RFC 3339. */
  readonly made: string;
  /** While it waits: when it is tried next. While it is under way: when whoever has it has surely ended. */
  readonly due: string;
  /** When it came to where it stands. */
  readonly at: string;
  /** What the mail server said, or why none could be reached; absent while nothing went wrong. */
  readonly said?: string;
}

/** How often servers went round the letters, and when last. */
export interface MailRound {
  readonly count: number;
  /** RFC 3339. */
  readonly at: string;
}

/**
 * What a server remembers outside its database: the greatest count of rounds that it ever saw there. A database that
 * counts fewer was put back.
 */
export interface RoundMemory {
  /** Absent where nothing is remembered. */
  greatest(): Promise<number | undefined>;
  /** On the disk when it resolves. */
  keep(count: number): Promise<void>;
}

/** What came of a try. */
export type LetterOutcome =
  | { readonly kind: "sent"; readonly at: string }
  | { readonly kind: "in-doubt" | "given-up"; readonly at: string; readonly said: string }
  | { readonly kind: "waiting"; readonly at: string; readonly said: string; readonly due: string };

/**
 * What people want to be told, and the letters. Beside the log, never in it: addresses are nobody else's business.
 * One contract suite (`test/contracts/mail-shelf`) runs over every implementation.
 */
export interface MailShelf {
  wishes(): Promise<readonly MailWish[]>;
  putWish(wish: MailWish): Promise<void>;
  /** Nothing is sent to that person any more: letters that wait are removed with it. */
  removeWish(person: string): Promise<void>;
  /** @returns when the stretch named began: now, unless it was begun before */
  beginStretch(key: string, at: string): Promise<string>;
  endStretch(key: string): Promise<void>;
  /** Keeps a letter to be sent; one of an id that was ever kept is left as it is. */
  post(letters: readonly Letter[], at: string): Promise<void>;
  /** Hands out the letter that waits longest and is due; of two who ask at once only one gets it. */
  takeLetter(at: string, until: string): Promise<KeptLetter | undefined>;
  settleLetter(id: string, outcome: LetterOutcome): Promise<void>;
  /**
   * Has a letter in doubt, or given up, wait to be sent once more, because its own person wants it all the same.
   *
   * @returns false where there is none such of theirs
   */
  sendAgain(id: string, person: string, at: string): Promise<boolean>;
  /** Letters whose carrier ended without a word by now are in doubt. */
  doubtLetters(at: string, said: string): Promise<void>;
  /** Every letter that waits is in doubt from now on. */
  doubtWaiting(at: string, said: string): Promise<void>;
  /** The newest round by any server; absent before the first. */
  lastRound(): Promise<MailRound | undefined>;
  /**
   * Counts one round more.
   *
   * @param past - the new count is above this too
   * @returns the new count
   */
  countRound(at: string, past: number): Promise<number>;
  /** Of one person, newest first. */
  lettersOf(person: string, limit: number): Promise<readonly KeptLetter[]>;
  /** Forgets letters made before, but not those that wait. */
  forgetLetters(before: string): Promise<void>;
}
