import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { FastifyInstance } from "fastify";
import { uuidv7 } from "uuidv7";
import type { Pattern } from "#kit";
import type { Entry } from "#log";
import { createServer } from "#server";
import type { PullPage, PushReply, SignedIn } from "#station";
import { openSqliteStore, type SqliteStore } from "#store/sqlite";
import { demoAccounts } from "#demo";
import { keepPin } from "../../src/server/sign-in/pins.ts";

/** Lines appended at once. */
const PAGE = 5000;
const TODAY = "2026-11-28T12:00:00.000Z";
const KEEPER = demoAccounts().find(({ role }) => role === "keeper")!;

/** A server over a long log in SQLite, with a keeper signed in; asked in process, so that no network is measured. */
export class GrownStation {
  readonly store: SqliteStore;
  readonly #app: FastifyInstance;
  readonly #folder: string;
  readonly #cookies: Record<string, string> = {};
  #me: SignedIn | undefined;

  private constructor(store: SqliteStore, app: FastifyInstance, folder: string) {
    [this.store, this.#app, this.#folder] = [store, app, folder];
  }

  static async open(lines: readonly Entry[], patterns: readonly Pattern[]): Promise<GrownStation> {
    const folder = mkdtempSync(join(tmpdir(), "drykeel-growth-"));
    const store = await openSqliteStore(join(folder, "drykeel.db"));
    for (let at = 0; at < lines.length; at += PAGE) await store.append(lines.slice(at, at + PAGE), TODAY);
    let now = Date.parse(TODAY);
    const ambient = { now: () => new Date((now += 10)).toISOString(), newId: uuidv7 };
    const app = await createServer({ store, secrets: store, patterns, ambient });
    const station = new GrownStation(store, app, folder);
    await keepPin({ secrets: store, ambient }, KEEPER.person, KEEPER.pin);
    const from = { device: "bench-phone", deviceName: "Bench" };
    station.#me = await station.#ask<SignedIn>("/api/sign-in", { name: KEEPER.name, pin: KEEPER.pin, ...from });
    return station;
  }

  /** Every line, page by page, as a new device asks for them. @returns how many there were */
  async pullAll(): Promise<number> {
    let count = 0;
    const held: Record<string, { seq: number; hash: string }> = {};
    for (let more = true; more;) {
      const page = await this.#ask<PullPage>("/api/log/pull", { held });
      for (const { entry, seq, hash } of page.entries) held[entry.place] = { seq, hash };
      count += page.entries.length;
      more = page.more;
    }
    return count;
  }

  /** One line, as a device writes it. */
  async push(): Promise<void> {
    const { person, device } = this.#me!;
    const body = { sealSeen: "as it is", containerSound: true };
    const about = { place: "boathouse", subject: "kit:br-01", kind: "mustered", at: TODAY, body };
    const entry = { id: uuidv7(), ...about, by: person.id, device };
    const { verdicts } = await this.#ask<PushReply>("/api/log/push", { entries: [entry] });
    if (verdicts[0]?.verdict !== "accepted") throw new Error(JSON.stringify(verdicts));
  }

  async close(): Promise<void> {
    await this.#app.close();
    await this.store.close();
    rmSync(this.#folder, { recursive: true });
  }

  async #ask<Reply>(url: string, payload: object): Promise<Reply> {
    const reply = await this.#app.inject({ method: "POST", url, cookies: this.#cookies, payload });
    for (const { name, value } of reply.cookies) this.#cookies[name] = value;
    if (reply.statusCode !== 200) throw new Error(`${url}: ${reply.statusCode} ${reply.body}`);
    return JSON.parse(reply.body) as Reply;
  }
}
