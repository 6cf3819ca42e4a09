import { hashEntry, type Entry, type KeptEntry } from "#log";
import type { Role } from "#readiness";
import { createServer } from "#server";
import { DEVICE_CLOCK_HEADER } from "#station";
import type { Ambient, HeadShelf, LogStore, SecretStore, SignedIn } from "#station";
import { readPatternFolders } from "#store/patterns";
import type { FastifyInstance } from "fastify";
import { makeSetupCode } from "../../src/server/sign-in/setup-routes.ts";
import type { Signing } from "../../src/server/heads/signing.ts";
import { createRoster } from "../../src/server/sign-in/roster.ts";

export const { patterns } = readPatternFolders(["patterns"]);

export type Store = LogStore & SecretStore & HeadShelf;

/** A database that can be copied, and put back to a copy. */
export interface Copies {
  open(): Promise<Store>;
  /** Copies the database while it is in use; the copy's number. */
  copy(store: Store): Promise<number>;
  /**
   * Puts a copy in the place of the database. What `open` gave before may be closed for it.
   * @returns the store to go on with
   */
  putBack(copy: number, store: Store): Promise<Store>;
  clear(): Promise<void>;
}

/** What a device needs to talk to the station. */
export interface Member {
  readonly me: SignedIn;
  readonly fetch: typeof fetch;
}

const PIN = "482913";

/** A real server over a real store, with a clock of its own, whose database may be put back to an earlier copy. */
export class PutBackStation {
  readonly #copies: Copies;
  /** False for a database that fails over under a server that runs on. */
  readonly #startsAnew: boolean;
  readonly ambient: Ambient;
  #store: Store;
  #app: FastifyInstance;
  #isDown = false;
  #busy = 0;
  #now = Date.parse("2027-03-14T10:00:00Z");
  /** Lines that the server said it keeps, over all its lives. */
  readonly acknowledged = new Map<string, string>();

  /** With what it signs its heads, where it does. */
  readonly #signing: Signing | undefined;

  private constructor(copies: Copies, startsAnew: boolean, newId: () => string, signing?: Signing) {
    this.#signing = signing;
    this.#copies = copies;
    this.#startsAnew = startsAnew;
    this.ambient = { now: () => new Date((this.#now += 10)).toISOString(), newId };
    this.#store = undefined as never;
    this.#app = undefined as never;
  }

  static async open(
    copies: Copies,
    newId: () => string,
    startsAnew = true,
    signing?: Signing,
  ): Promise<PutBackStation> {
    const station = new PutBackStation(copies, startsAnew, newId, signing);
    station.#store = await copies.open();
    await station.#start();
    return station;
  }

  get store(): Store {
    return this.#store;
  }

  get app(): FastifyInstance {
    return this.#app;
  }

  backup(): Promise<number> {
    return this.#copies.copy(this.#store);
  }

  /** What is being asked is answered first; what is asked meanwhile finds nobody there. */
  async putBack(copy: number): Promise<void> {
    this.#isDown = true;
    while (this.#busy > 0) await new Promise((resolve) => setTimeout(resolve, 1));
    if (this.#startsAnew) await this.#app.close();
    this.#store = await this.#copies.putBack(copy, this.#store);
    if (this.#startsAnew) await this.#start();
    this.#isDown = false;
  }

  async close(): Promise<void> {
    await this.#app.close();
    await this.#store.close();
    await this.#copies.clear();
  }

  /** The first administrator. */
  async found(device: string): Promise<Member> {
    const code = await makeSetupCode({
      secrets: this.#store,
      ambient: this.ambient,
      roster: createRoster(this.#store),
    });
    const place = { name: "North slip", strength: 2, zone: "Europe/London" };
    const names = { stationName: "Skerrow", name: "Ann Marr", place };
    return this.#join("/api/setup", { code, pin: PIN, device, deviceName: "Office", ...names });
  }

  async invite(by: Member, name: string, role: Role, device: string): Promise<Member> {
    const reply = await by.fetch("/api/invites", jsonBody({ name, role }));
    const { code } = (await reply.json()) as { code: string };
    return this.#join("/api/invites/accept", { code, pin: PIN, device, deviceName: `${name}'s phone` });
  }

  async kept(): Promise<readonly KeptEntry[]> {
    const heads = await this.#store.heads();
    return this.#store.since(
      heads.map(({ place }) => place),
      {},
      1_000_000,
    );
  }

  async place(): Promise<string> {
    const made = (await this.kept()).find(({ entry }) => entry.kind === "place-set");
    return made!.entry.subject.slice("place:".length);
  }

  /** A browser's way to this station, whichever server stands there now. */
  newFetch(): typeof fetch {
    const cookies: Record<string, string> = {};
    return async (address, init = {}) => {
      if (this.#isDown) throw new TypeError("nobody there");
      this.#busy += 1;
      const reply = await this.#ask(cookies, address, init).finally(() => (this.#busy -= 1));
      return reply;
    };
  }

  async #ask(
    cookies: Record<string, string>,
    address: Parameters<typeof fetch>[0],
    init: RequestInit,
  ): Promise<Response> {
    const body = init.body as string | undefined;
    // The browser's clock is the station's here, as the lines' times are.
    const headers = {
      ...(init.headers as Record<string, string> | undefined),
      [DEVICE_CLOCK_HEADER]: this.ambient.now(),
    };
    const reply = await this.#app.inject({
      method: (init.method ?? "GET") as "GET",
      url: String(address),
      cookies,
      headers,
      ...(body !== undefined && { payload: body }),
    });
    for (const { name, value } of reply.cookies) cookies[name] = value;
    this.#noteAcknowledged(String(address), body, reply.body);
    const empty = reply.statusCode === 204;
    return new Response(empty ? null : reply.body, {
      status: reply.statusCode,
      headers: { date: new Date(this.ambient.now()).toUTCString() },
    });
  }

  async #join(path: string, body: object): Promise<Member> {
    const fetchIt = this.newFetch();
    const reply = await fetchIt(path, jsonBody(body));
    const me = (await reply.json()) as SignedIn;
    if (!reply.ok) throw new Error(JSON.stringify(me));
    return { me, fetch: fetchIt };
  }

  async #start(): Promise<void> {
    const [store, signing] = [this.#store, this.#signing];
    const signer = signing && { signing, shelf: store };
    this.#app = await createServer({
      store,
      secrets: store,
      patterns,
      ambient: this.ambient,
      ...(signer && { signer }),
    });
  }

  #noteAcknowledged(address: string, asked: string | undefined, answered: string): void {
    if (address !== "/api/log/push" || asked === undefined) return;
    const { entries } = JSON.parse(asked) as { entries: Entry[] };
    const { verdicts = [] } = JSON.parse(answered) as { verdicts?: { verdict: string }[] };
    entries.forEach((entry, at) => {
      const { verdict } = verdicts[at] ?? {};
      if (verdict === "accepted" || verdict === "repeated") this.acknowledged.set(entry.id, hashEntry(entry));
    });
  }
}

export function jsonBody(body: unknown): RequestInit {
  return { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(body) };
}
