import { InputError } from "#base";
import { readHeads, type SignedHead } from "#log";
import { harmless } from "../terminal.ts";

/** The most that another station's answer is read [byte]. */
const MOST_BYTES = 8 * 1024 * 1024;
const PATIENCE_MS = 30_000;
/** Heads sent at once. */
const PIECE = 100;

/** Another station that keeps heads, by the address that `drykeel keep-heads` printed there. */
export class OtherStation {
  readonly #url: string;
  readonly #token: string;

  /**
   * Only the operator's own shell calls out, and only to the address that the operator wrote.
   *
   * @param token - from the environment: an argument could be read by everybody on the computer
   * @throws InputError CL-130 for an address that is none, CL-131 without a token
   */
  constructor(url: string, token: string | undefined) {
    if (!isAddress(url)) throw noAddress(url);
    if (token === undefined || !/^[\w-]{1,100}$/.test(token)) throw noToken();
    this.#url = url;
    this.#token = token;
  }

  /** Every head kept there, each signed by the key it names. */
  async heads(): Promise<readonly SignedHead[]> {
    const text = await this.#ask({ method: "GET" });
    return text.trim() === "" ? [] : readHeads(text);
  }

  /** @returns how many are new there */
  async keep(heads: readonly SignedHead[]): Promise<number> {
    let kept = 0;
    for (let from = 0; from < heads.length; from += PIECE) {
      const body = JSON.stringify({ heads: heads.slice(from, from + PIECE) });
      const said: unknown = JSON.parse(
        await this.#ask({ method: "POST", body, headers: { "content-type": "application/json" } }),
      );
      kept += Number((said as { kept?: unknown }).kept ?? 0);
    }
    return kept;
  }

  async #ask(init: RequestInit): Promise<string> {
    const headers = { ...(init.headers as Record<string, string>), authorization: `Bearer ${this.#token}` };
    const signal = AbortSignal.timeout(PATIENCE_MS);
    try {
      const reply = await fetch(this.#url, { ...init, headers, signal, redirect: "error" });
      const text = await readBounded(reply);
      if (reply.ok) return text;
      throw notKept(this.#url, `${reply.status}: ${text.slice(0, 300)}`);
    } catch (cause) {
      if (cause instanceof InputError) throw cause;
      throw notKept(this.#url, `no answer: ${(cause as Error).message}`);
    }
  }
}

/** True for what is meant as an address and not as the name of a file. */
export function isUrl(given: string): boolean {
  return /^https?:\/\//i.test(given);
}

/** The token goes with each request: over plain HTTP everybody on the way could read it, so only on this computer. */
function isAddress(url: string): boolean {
  if (!URL.canParse(url)) return false;
  const { protocol, hostname, username, password } = new URL(url);
  const isHere = ["127.0.0.1", "localhost", "[::1]"].includes(hostname);
  return username === "" && password === "" && (protocol === "https:" || (protocol === "http:" && isHere));
}

async function readBounded(reply: Response): Promise<string> {
  const pieces: Uint8Array[] = [];
  let bytes = 0;
  for await (const piece of reply.body ?? []) {
    bytes += (piece as Uint8Array).length;
    if (bytes > MOST_BYTES) throw new Error(`more than ${MOST_BYTES} bytes`);
    pieces.push(piece as Uint8Array);
  }
  return Buffer.concat(pieces).toString("utf8");
}

function noAddress(got: string): InputError {
  const allowed = "https://..., or http:// on this computer, without user or password";
  const remedy = "Write the address as drykeel keep-heads printed it at the other station.";
  return new InputError([{ code: "CL-130", field: "URL", got: harmless(got), allowed, remedy }]);
}

function noToken(): InputError {
  const allowed = "the token that drykeel keep-heads printed at the other station";
  const remedy = "Give it in the environment: WITNESS_TOKEN=... npm run -s drykeel -- witness --to URL";
  return new InputError([{ code: "CL-131", field: "WITNESS_TOKEN", got: "nothing that is one", allowed, remedy }]);
}

function notKept(url: string, got: string): InputError {
  const remedy = `Check the address, the token and the other station: ${harmless(url)}`;
  return new InputError([
    { code: "CL-132", field: "URL", got: harmless(got), allowed: "an answer with heads", remedy },
  ]);
}
