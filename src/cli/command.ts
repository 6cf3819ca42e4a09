import type { Terminal } from "./terminal.ts";

/** Folders and settings a command works in. */
export interface Surroundings {
  /** Root of the checkout: shipped patterns are found from it. */
  readonly root: string;
  readonly dataDir: string;
  readonly databaseUrl?: string;
  /** What the station signs with, where not in the data folder. */
  readonly keyFile?: string;
  /** What another station gave this one for keeping its heads there. */
  readonly witnessToken?: string;
  /** Now, RFC 3339. */
  readonly now: string;
}

/** One word of `drykeel`. */
export interface Command {
  readonly name: string;
  /** What may follow the name, as the usage prints it. */
  readonly usage: string;
  readonly summary: string;
  /** Options it knows, by long name without dashes; true where the option takes a value. */
  readonly options: Readonly<Record<string, boolean>>;
  /** @returns exit code: 0 answered, 1 looked and found something wrong, 2 bad input */
  run(call: Call): Promise<number>;
}

export interface Call {
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
  readonly terminal: Terminal;
  readonly surroundings: Surroundings;
}
