import type { Entry } from "#log";
import type { Role } from "#readiness";
import type { Ambient, LogStore, SecretStore, SignedIn } from "#station";
import { openMemoryStore } from "#store/memory";
import type { FastifyInstance, HTTPMethods, InjectOptions, LightMyRequestResponse } from "fastify";
import { uuidv7 } from "uuidv7";
import { readPatternFolders } from "#store/patterns";
import type { ServerOptions } from "../parts.ts";
import { createRoster } from "../sign-in/roster.ts";
import { createServer } from "../server.ts";
import { makeSetupCode } from "../sign-in/setup-routes.ts";

/** A real station with a clock that stands still, for tests: nothing in it is pretended but the time. */
export interface StagedStation {
  readonly app: FastifyInstance;
  readonly store: LogStore & SecretStore;
  readonly ambient: Ambient;
  /** Lets so many seconds pass. */
  wait(seconds: number): void;
  /** A browser of its own, with cookies. */
  browser(device?: string): Browser;
  /** A browser signed in as a new person of this role; the first administrator is made at need. */
  signedIn(role: Role, device?: string): Promise<Browser & { readonly me: SignedIn }>;
  /** A well-formed line by this person on their device. */
  line(me: SignedIn, more: Partial<Entry>): Entry;
}

export interface Browser {
  readonly device: string;
  send(
    method: HTTPMethods,
    url: string,
    body?: InjectOptions["payload"],
    headers?: Record<string, string>,
    remoteAddress?: string,
  ): Promise<LightMyRequestResponse>;
  /** Calls and hangs up; the problem's code is "" where there is none. */
  open(method: HTTPMethods, url: string): Promise<{ readonly status: number; readonly code: string }>;
  /** The same browser, with all its cookies, at another server of its station. */
  at(server: Pick<StagedStation, "app">): Browser;
}

export const PIN = "482913";
const START = Date.parse("2027-03-14T10:00:00Z");
let people = 0;

export async function stageStation(
  options: Partial<ServerOptions> & { readonly store?: LogStore & SecretStore } = {},
): Promise<StagedStation> {
  let now = START;
  const store = options.store ?? openMemoryStore();
  const ambient: Ambient = { now: () => new Date(now).toISOString(), newId: uuidv7 };
  const { patterns } = readPatternFolders(["patterns"]);
  const app = await createServer({ secrets: store, patterns, ambient, ...options, store });
  const administrator = once(() => foundStation({ app, store, ambient }));
  return {
    app,
    store,
    ambient,
    wait: (seconds) => void (now += seconds * 1000),
    browser: (device = `device-${uuidv7()}`) => openBrowser(app, device),
    async signedIn(role, device) {
      const founder = await administrator();
      return role === "administrator" && device === undefined ? founder : joinStation(app, founder, role, device);
    },
    line: (me, more) => makeLine(me, ambient, more),
  };
}

function once<T>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | undefined;
  return () => (made ??= make());
}

async function foundStation({
  app,
  store,
  ambient,
}: {
  app: FastifyInstance;
  store: LogStore & SecretStore;
  ambient: Ambient;
}) {
  const code = await makeSetupCode({ secrets: store, ambient, roster: createRoster(store) });
  const browser = openBrowser(app, `device-${uuidv7()}`);
  const place = { name: "North slip", strength: 2, zone: "Europe/London" };
  const reply = await browser.send("POST", "/api/setup", {
    code,
    stationName: "Skerrow",
    name: "Ann Marr",
    pin: PIN,
    place,
    device: browser.device,
    deviceName: "Office",
  });
  return { ...browser, me: reply.json<SignedIn>() };
}

async function joinStation(app: FastifyInstance, founder: Browser, role: Role, device = `device-${uuidv7()}`) {
  const invite = await founder.send("POST", "/api/invites", { name: `Person ${(people += 1)}`, role });
  const browser = openBrowser(app, device);
  const { code } = invite.json<{ code: string }>();
  const accept = { code, pin: PIN, device, deviceName: "Phone" };
  const reply = await browser.send("POST", "/api/invites/accept", accept);
  return { ...browser, me: reply.json<SignedIn>() };
}

function openBrowser(app: FastifyInstance, device: string, cookies: Record<string, string> = {}): Browser {
  return {
    device,
    at: (server) => openBrowser(server.app, device, cookies),
    async send(method, url, body, headers = {}, remoteAddress = "127.0.0.1") {
      const payload = body === undefined ? {} : { payload: body };
      const reply = await app.inject({ method: method as "GET", url, cookies, headers, remoteAddress, ...payload });
      for (const { name, value } of reply.cookies) cookies[name] = value;
      return reply;
    },
    async open(method, url) {
      const reply = await app.inject({ method: method as "GET", url, cookies, payloadAsStream: true });
      const stream = reply.stream();
      const isProblem = reply.statusCode >= 400 && method !== "HEAD";
      const text = isProblem ? Buffer.concat(await stream.toArray()).toString() : "{}";
      stream.destroy();
      return { status: reply.statusCode, code: (JSON.parse(text) as { code?: string }).code ?? "" };
    },
  };
}

function makeLine(me: SignedIn, ambient: Ambient, more: Partial<Entry>): Entry {
  const subject = "pattern:brinnet-450";
  const body = { step: "vent-wrapping", what: "unclear" };
  const who = { by: me.person.id, device: me.device };
  return {
    id: ambient.newId(),
    place: "station",
    subject,
    kind: "step-reported",
    at: ambient.now(),
    ...who,
    body,
    ...more,
  };
}
