import { InputError, printGiven } from "#base";
import { headLine, readHeads, type SignedHead } from "#log";
import { createHash, randomBytes, timingSafeEqual } from "node:crypto";
import { appendFileSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** Below the data folder: heads that this station keeps for others. */
export const DEFAULT_KEPT_HEADS = "witnessed";

/** The most stations that heads are kept for, and the most heads of each: some 2.5 MB. */
const MOST_STATIONS = 100;
const MOST_HEADS = 5000;
const NAME = /^[a-z0-9][a-z0-9-]{0,39}$/;
const MODE = 0o600;

/**
 * Heads of other stations' logs, in files of this one's data folder: they are added and never changed. What lets another
 * station in is a token of 32 random bytes, of which only the hash is kept.
 */
export class KeptHeads {
  readonly #folder: string;

  constructor(folder: string) {
    this.#folder = folder;
  }

  /**
   * Lets another station keep its heads here, or gives it another token. Heads kept before stay.
   *
   * @param name - what it is called here: small letters, digits and hyphens, at most 40
   * @returns the token, shown this once
   * @throws InputError ST-160 for a name that cannot be one, ST-161 where there are too many
   */
  letIn(name: string): string {
    if (!NAME.test(name)) throw badName(name);
    mkdirSync(this.#folder, { recursive: true, mode: 0o700 });
    const known = readdirSync(this.#folder).filter((file) => file.endsWith(".token"));
    if (known.length >= MOST_STATIONS && !known.includes(`${name}.token`)) throw tooMany(known.length);
    const token = randomBytes(32).toString("base64url");
    writeFileSync(this.#path(name, "token"), `${hashOf(token).toString("hex")}\n`, { mode: MODE });
    return token;
  }

  /** Whether this token is the one given for this name. */
  isLetIn(name: string, token: string): boolean {
    if (!NAME.test(name) || !existsSync(this.#path(name, "token"))) return false;
    const held = Buffer.from(readFileSync(this.#path(name, "token"), "utf8").trim(), "hex");
    const given = hashOf(token);
    return held.length === given.length && timingSafeEqual(held, given);
  }

  /** Every head kept for a name, a line each, oldest first; "" where there is none. */
  text(name: string): string {
    const path = this.#path(name, "ndjson");
    return NAME.test(name) && existsSync(path) ? readFileSync(path, "utf8") : "";
  }

  /**
   * Keeps heads that are not kept already, on the disk when it returns.
   *
   * @param heads - each with its signature checked
   * @returns how many are new
   * @throws InputError ST-162 where no more are kept
   */
  keep(name: string, heads: readonly SignedHead[]): number {
    const text = this.text(name);
    const held = text === "" ? [] : readHeads(text);
    const known = new Set(held.map(headLine));
    const fresh = [...new Set(heads.map(headLine))].filter((line) => !known.has(line));
    if (held.length + fresh.length > MOST_HEADS) throw full(held.length);
    const lines = fresh.map((line) => `${line}\n`).join("");
    appendFileSync(this.#path(name, "ndjson"), lines, { mode: MODE, flush: true });
    return fresh.length;
  }

  #path(name: string, ending: "token" | "ndjson"): string {
    return join(this.#folder, `${name}.${ending}`);
  }
}

function hashOf(token: string): Buffer {
  return createHash("sha256").update(`drykeel witness token 1\n${token}`).digest();
}

function badName(name: string): InputError {
  const allowed = "small letters, digits and hyphens, at most 40";
  const remedy = "Name the other station so, such as north-harbour.";
  return new InputError([{ code: "ST-160", field: "NAME", got: printGiven(name), allowed, remedy }]);
}

function tooMany(count: number): InputError {
  const remedy = "Remove the token of a station that keeps no heads here any more.";
  const got = `${count} stations already`;
  return new InputError([{ code: "ST-161", field: "NAME", got, allowed: `at most ${MOST_STATIONS}`, remedy }]);
}

function full(count: number): InputError {
  const remedy = "At the station that keeps them, move the file to where it is kept for good; the next begins anew.";
  const got = `${count} heads already`;
  return new InputError([{ code: "ST-162", field: "heads", got, allowed: `at most ${MOST_HEADS}`, remedy }]);
}
