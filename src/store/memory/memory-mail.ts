import { instantOf } from "#log";
import type { KeptLetter, Letter, LetterOutcome, MailRound, MailShelf, MailWish } from "#station";

/** Mail in memory: for tests. */
export class MemoryMail implements MailShelf {
  readonly #wishes = new Map<string, MailWish>();
  readonly #stretches = new Map<string, string>();
  readonly #letters = new Map<string, KeptLetter>();
  #round: MailRound | undefined;

  async wishes(): Promise<readonly MailWish[]> {
    return [...this.#wishes.values()].toSorted((one, other) => (one.person < other.person ? -1 : 1));
  }

  async putWish(wish: MailWish): Promise<void> {
    this.#wishes.set(wish.person, wish);
  }

  async removeWish(person: string): Promise<void> {
    this.#wishes.delete(person);
    this.#drop((letter) => letter.person === person && letter.standing === "waiting");
  }

  async beginStretch(key: string, at: string): Promise<string> {
    const begun = this.#stretches.get(key) ?? at;
    this.#stretches.set(key, begun);
    return begun;
  }

  async endStretch(key: string): Promise<void> {
    this.#stretches.delete(key);
  }

  async post(letters: readonly Letter[], at: string): Promise<void> {
    const instant = inUtc(at);
    for (const letter of letters) {
      if (this.#letters.has(letter.id)) continue;
      const kept = { ...letter, standing: "waiting" as const, tries: 0, made: instant, due: instant, at: instant };
      this.#letters.set(letter.id, kept);
    }
  }

  async takeLetter(at: string, until: string): Promise<KeptLetter | undefined> {
    const next = [...this.#letters.values()]
      .filter(({ standing, due }) => standing === "waiting" && instantOf(due) <= instantOf(at))
      .toSorted(byText(({ due, id }) => `${due}${id}`))[0];
    if (next === undefined) return undefined;
    const taken = { ...next, standing: "under-way" as const, tries: next.tries + 1, due: inUtc(until), at: inUtc(at) };
    this.#letters.set(next.id, taken);
    return taken;
  }

  async settleLetter(id: string, outcome: LetterOutcome): Promise<void> {
    const held = this.#letters.get(id);
    if (held?.standing !== "under-way") return;
    const { said: _before, ...rest } = held;
    const due = outcome.kind === "waiting" ? inUtc(outcome.due) : held.due;
    const said = outcome.kind === "sent" ? {} : { said: outcome.said };
    this.#letters.set(id, { ...rest, standing: outcome.kind, at: inUtc(outcome.at), due, ...said });
  }

  async sendAgain(id: string, person: string, at: string): Promise<boolean> {
    const held = this.#letters.get(id);
    if (held?.person !== person || (held.standing !== "in-doubt" && held.standing !== "given-up")) return false;
    this.#letters.set(id, { ...held, standing: "waiting", due: inUtc(at), at: inUtc(at) });
    return true;
  }

  async doubtLetters(at: string, said: string): Promise<void> {
    for (const letter of this.#letters.values()) {
      if (letter.standing !== "under-way" || instantOf(letter.due) > instantOf(at)) continue;
      this.#letters.set(letter.id, { ...letter, standing: "in-doubt", at: inUtc(at), said });
    }
  }

  async doubtWaiting(at: string, said: string): Promise<void> {
    for (const letter of this.#letters.values()) {
      if (letter.standing !== "waiting") continue;
      this.#letters.set(letter.id, { ...letter, standing: "in-doubt", at: inUtc(at), said });
    }
  }

  async lastRound(): Promise<MailRound | undefined> {
    return this.#round;
  }

  async countRound(at: string, past: number): Promise<number> {
    const count = Math.max(this.#round?.count ?? 0, past) + 1;
    this.#round = { count, at: inUtc(at) };
    return count;
  }

  async lettersOf(person: string, limit: number): Promise<readonly KeptLetter[]> {
    const own = [...this.#letters.values()].filter((letter) => letter.person === person);
    return own
      .toSorted(byText(({ made, id }) => `${made}${id}`))
      .reverse()
      .slice(0, limit);
  }

  async forgetLetters(before: string): Promise<void> {
    this.#drop(
      ({ standing, made }) => standing !== "waiting" && standing !== "under-way" && instantOf(made) < instantOf(before),
    );
  }

  #drop(fits: (letter: KeptLetter) => boolean): void {
    for (const letter of this.#letters.values()) if (fits(letter)) this.#letters.delete(letter.id);
  }
}

function byText(text: (letter: KeptLetter) => string) {
  return (one: KeptLetter, other: KeptLetter) => (text(one) < text(other) ? -1 : 1);
}

function inUtc(instant: string): string {
  return new Date(instant).toISOString();
}
