import { InputError, printGiven } from "#base";
import { appendFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { dirname } from "node:path";

/** For the owner alone. */
const MODE = 0o600;
const LINE = /^(\S+) (\S+)$/;

/** Where that is kept: beside the key file. */
export function sinceFileOf(keyFile: string): string {
  return `${keyFile}.since`;
}

/**
 * Since when the log of one database is signed, kept beside the key and outside the database: whoever empties the tables
 * of what was signed does not empty this.
 */
export class SignedSince {
  readonly #path: string;
  readonly #life: string;

  /**
   * @param keyFile - the key file; the mark is beside it
   * @param life - the database's first life, which every copy of it has and no other database
   */
  constructor(keyFile: string, life: string) {
    this.#path = sinceFileOf(keyFile);
    this.#life = life;
  }

  /** RFC 3339 instant at which the log was first signed; undefined where it never was. */
  read(): string | undefined {
    if (!existsSync(this.#path)) return undefined;
    const lines = readFileSync(this.#path, "utf8")
      .split("\n")
      .map((line) => LINE.exec(line));
    return lines.find((line) => line?.[1] === this.#life)?.[2];
  }

  /**
   * Keeps when the log was first signed, once.
   *
   * @throws InputError ST-153 where it cannot be written
   */
  note(at: string): void {
    if (this.read() !== undefined) return;
    try {
      mkdirSync(dirname(this.#path), { recursive: true, mode: 0o700 });
      appendFileSync(this.#path, `${this.#life} ${at}\n`, { mode: MODE, flush: true });
    } catch (cause) {
      throw unwritable(this.#path, cause as Error);
    }
  }
}

function unwritable(path: string, cause: Error): InputError {
  const remedy =
    "Let the account running Drykeel write the folder of the key file, or set KEY_FILE to one where it can.";
  const allowed = "a file beside the key file that can be written";
  return new InputError([
    { code: "ST-153", field: "KEY_FILE", got: printGiven(`${path}: ${cause.message}`), allowed, remedy },
  ]);
}
