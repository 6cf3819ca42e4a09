import {
  DEVICE_CLOCK_HEADER,
  readStationClock,
  STATION_CLOCK_HEADER,
  type Problem,
  type StationClockOff,
} from "#station";

/** What came back from the server, or that nothing did. */
export type Reply<Value> =
  | { readonly kind: "answered"; readonly value: Value }
  | { readonly kind: "refused"; readonly status: number; readonly problem: Problem }
  | { readonly kind: "unreachable"; readonly because: string };

export interface Ask {
  readonly method: "GET" | "POST" | "PUT" | "DELETE";
  readonly path: string;
  readonly json?: unknown;
  readonly bytes?: { readonly mime: string; readonly content: Uint8Array };
  /** Secret of a link that opens one thing without a sign-in. */
  readonly bearer?: string;
  /** Gives up after so long [ms]; 20 s where absent. A dead network often answers nothing at all. */
  readonly patience?: number;
}

const PATIENCE_MS = 20_000;
const UNREADABLE: Problem = {
  code: "WE-101",
  message: "The server's answer could not be read.",
  remedy: "Try again. If it keeps happening, tell whoever looks after the server.",
};

/** The one way from the app to its server. Never throws: no network is an everyday answer at sea. */
export class ServerDoor {
  readonly #fetch: typeof fetch;
  readonly #onDate: (serverMs: number, askedMs: number, answeredMs: number) => void;
  readonly #onStationClock: (off: StationClockOff | undefined) => void;

  /**
   * @param onDate - told the server's time with each answer
   * @param onStationClock - told with each answer whether the station doubts its clock
   */
  constructor(
    fetchIt: typeof fetch,
    onDate: (serverMs: number, askedMs: number, answeredMs: number) => void = () => undefined,
    onStationClock: (off: StationClockOff | undefined) => void = () => undefined,
  ) {
    this.#fetch = fetchIt;
    this.#onDate = onDate;
    this.#onStationClock = onStationClock;
  }

  async ask<Value>(ask: Ask): Promise<Reply<Value>> {
    const reply = await this.#send(ask);
    if ("because" in reply) return reply;
    if (!reply.ok) return { kind: "refused", status: reply.status, problem: await readProblem(reply) };
    if (reply.status === 204) return { kind: "answered", value: undefined as Value };
    return readValue<Value>(reply);
  }

  /** The bytes of a file, such as a photo. */
  async bytes(path: string): Promise<Reply<{ readonly mime: string; readonly content: Uint8Array }>> {
    const reply = await this.#send({ method: "GET", path });
    if ("because" in reply) return reply;
    if (!reply.ok) return { kind: "refused", status: reply.status, problem: await readProblem(reply) };
    const mime = reply.headers.get("content-type") ?? "application/octet-stream";
    return { kind: "answered", value: { mime, content: new Uint8Array(await reply.arrayBuffer()) } };
  }

  async #send(ask: Ask): Promise<Response | { readonly kind: "unreachable"; readonly because: string }> {
    const asked = Date.now();
    try {
      const reply = await this.#fetch(ask.path, requestOf(ask));
      const date = Date.parse(reply.headers.get("date") ?? "");
      if (Number.isFinite(date)) this.#onDate(date, asked, Date.now());
      if (isFromGateway(reply)) return { kind: "unreachable", because: `the server is not there (${reply.status})` };
      this.#onStationClock(readStationClock(reply.headers.get(STATION_CLOCK_HEADER)));
      return reply;
    } catch (cause) {
      return { kind: "unreachable", because: cause instanceof Error ? cause.message : String(cause) };
    }
  }
}

/** A proxy in front of a server that is down answers in its place. */
function isFromGateway(reply: Response): boolean {
  return reply.status === 502 || reply.status === 503 || reply.status === 504;
}

function requestOf({ method, json, bytes, bearer, patience = PATIENCE_MS }: Ask): RequestInit {
  const signal = AbortSignal.timeout(patience);
  const shown = bearer === undefined ? {} : { authorization: `Bearer ${bearer}` };
  const clock = { [DEVICE_CLOCK_HEADER]: new Date().toISOString(), ...shown };
  const base = { method, signal, credentials: "same-origin", cache: "no-store" } as const;
  if (bytes) {
    const headers = { ...clock, "content-type": bytes.mime };
    return { ...base, headers, body: new Blob([bytes.content.slice()]) };
  }
  if (json === undefined) return { ...base, headers: clock };
  return { ...base, headers: { ...clock, "content-type": "application/json" }, body: JSON.stringify(json) };
}

async function readValue<Value>(reply: Response): Promise<Reply<Value>> {
  try {
    return { kind: "answered", value: (await reply.json()) as Value };
  } catch (cause) {
    if (cause instanceof SyntaxError) return { kind: "refused", status: reply.status, problem: UNREADABLE };
    return { kind: "unreachable", because: String(cause) };
  }
}

async function readProblem(reply: Response): Promise<Problem> {
  try {
    const problem: unknown = await reply.json();
    return isProblem(problem) ? problem : UNREADABLE;
  } catch (cause) {
    if (cause instanceof SyntaxError) return UNREADABLE;
    return { ...UNREADABLE, message: String(cause) };
  }
}

function isProblem(given: unknown): given is Problem {
  return typeof given === "object" && given !== null && "code" in given && "message" in given && "remedy" in given;
}
