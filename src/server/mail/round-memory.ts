import type { RoundMemory } from "#station";
import { mkdir, readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { codeOf } from "../start/start-problem.ts";

/** Below the data folder, beside the database and never in it. */
const FILE = "mail-rounds";

/** Remembers rounds in a file of the data folder, which a database that is put back leaves alone. */
export class RoundFile implements RoundMemory {
  readonly #folder: string;

  constructor(folder: string) {
    this.#folder = folder;
  }

  /** A file that holds no count is taken for none. */
  async greatest(): Promise<number | undefined> {
    try {
      const count = Number(await readFile(join(this.#folder, FILE), "utf8"));
      return Number.isSafeInteger(count) && count > 0 ? count : undefined;
    } catch (cause) {
      if (codeOf(cause) === "ENOENT") return undefined;
      throw cause;
    }
  }

  /** Put in its place at one stroke: the file is never half a number. */
  async keep(count: number): Promise<void> {
    await mkdir(this.#folder, { recursive: true });
    const path = join(this.#folder, FILE);
    await writeFile(`${path}.new`, `${count}\n`, { mode: 0o600, flush: true });
    await rename(`${path}.new`, path);
  }
}

/** Remembers as long as the process lasts: where there is no data folder. */
export class ForgetfulRounds implements RoundMemory {
  #greatest: number | undefined;

  async greatest(): Promise<number | undefined> {
    return this.#greatest;
  }

  async keep(count: number): Promise<void> {
    this.#greatest = count;
  }
}
