import { canonicalText, type Entry } from "#log";
import type { PushReply } from "#station";
import { uuidv7 } from "uuidv7";

/** How a sending ended: the device was told so, or the network was cut. */
export interface Told {
  /** HTTP status and code by how often. */
  readonly answers: Map<string, number>;
}

/** One device: what it wrote, what it was told is kept, and its cookies. */
export class Device {
  readonly name: string;
  readonly person: string;
  readonly place: string;
  readonly #cookie: string;
  /** Every line it wrote, by id. */
  readonly written = new Map<string, Entry>();
  readonly acknowledged = new Set<string>();
  readonly told: Told = { answers: new Map() };
  readonly #waiting = new Set<string>();

  constructor(who: { name: string; person: string; place: string; cookie: string }) {
    this.name = who.name;
    this.person = who.person;
    this.place = who.place;
    this.#cookie = who.cookie;
  }

  /** Writes some lines; they wait to be sent. */
  write(count: number): void {
    for (let at = 0; at < count; at++) {
      const entry = this.#line();
      this.written.set(entry.id, entry);
      this.#waiting.add(entry.id);
    }
  }

  get waiting(): number {
    return this.#waiting.size;
  }

  /** Offers all that the station lacks, as a device does that finds it put back. */
  offerAgain(kept: ReadonlyMap<string, string>): number {
    const lost = [...this.acknowledged].filter((id) => !kept.has(id));
    for (const id of lost) this.#waiting.add(id);
    return lost.length;
  }

  /**
   * Sends some of what waits, in the order that chance gives, and notes what it is told.
   *
   * @param cut - ends the connection in the midst of it
   */
  async send(address: string, chance: () => number, cut?: AbortSignal): Promise<void> {
    const batch = [...this.#waiting].toSorted(() => chance() - 0.5).slice(0, 1 + Math.floor(chance() * 20));
    const entries = batch.map((id) => this.written.get(id)!);
    const headers = {
      "content-type": "application/json",
      cookie: this.#cookie,
      "x-device-clock": new Date().toISOString(),
    };
    const init = { method: "POST", headers, body: JSON.stringify({ entries }), ...(cut && { signal: cut }) };
    const reply = await fetch(`${address}/api/log/push`, init).catch(() => undefined);
    const text = await reply?.text().catch(() => undefined);
    if (reply === undefined || text === undefined) return this.#note("cut off");
    if (!reply.ok) return this.#note(`${reply.status} ${(JSON.parse(text) as { code: string }).code}`);
    for (const verdict of (JSON.parse(text) as PushReply).verdicts) this.#take(verdict);
  }

  /** Lines told to be kept that are not there, or not as they were written. */
  missing(kept: ReadonlyMap<string, string>): readonly string[] {
    return [...this.acknowledged].filter((id) => kept.get(id) !== canonicalText(this.written.get(id)));
  }

  #take(verdict: PushReply["verdicts"][0]): void {
    if (verdict.verdict === "refused") return this.#note(`refused ${verdict.faults[0]?.code}`);
    this.acknowledged.add(verdict.id);
    this.#waiting.delete(verdict.id);
  }

  #note(answer: string): void {
    this.told.answers.set(answer, (this.told.answers.get(answer) ?? 0) + 1);
  }

  #line(): Entry {
    const body = { sealSeen: "00417", containerSound: true, note: "x".repeat(700) };
    const where = { place: this.place, subject: `kit:${this.written.size % 5}`, kind: "mustered" };
    return { id: uuidv7(), ...where, at: new Date().toISOString(), by: this.person, device: this.name, body };
  }
}
