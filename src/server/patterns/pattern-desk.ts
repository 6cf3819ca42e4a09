import { InputError, isInputError } from "#base";
import { loadPattern, type Pattern } from "#kit";
import { hashText } from "#log";
import type { IssuedPattern, PatternShelf, WrittenPattern } from "#station";
import type { PatternFiles } from "#store/patterns";
import { isDeepStrictEqual } from "node:util";

/** Where issued patterns are kept: shared by the servers of a database, and as files on this one's disk. */
export interface IssueParts {
  readonly shelf: PatternShelf;
  readonly files: PatternFiles;
}

/**
 * Which patterns the station has now: those it started with, and those issued since by this server or another of the
 * same database. An issued version stands before a shipped one of the same name: kits are built to it.
 */
export class PatternDesk {
  readonly #issuing: IssueParts | undefined;
  readonly #failed: (cause: unknown) => void;
  readonly #taken = new Set<string>();
  #patterns: readonly Pattern[];
  #mark: string;
  #looking: Promise<void> = Promise.resolve();

  /** @param failed - told of an issued pattern that cannot be read or written here */
  constructor(start: readonly Pattern[], issuing: IssueParts | undefined, failed: (cause: unknown) => void) {
    this.#patterns = start;
    this.#issuing = issuing;
    this.#failed = failed;
    this.#mark = markOf(start);
  }

  /** Higher versions first. The same list for as long as nothing was issued. */
  get now(): readonly Pattern[] {
    return this.#patterns;
  }

  /** Another text for every other set of patterns. */
  get mark(): string {
    return this.#mark;
  }

  get issuing(): IssueParts | undefined {
    return this.#issuing;
  }

  /** Takes in what any server has issued since. Cheap where nothing was. */
  catchUp(): Promise<void> {
    const next = this.#looking.then(() => this.#look());
    this.#looking = next.catch(() => undefined);
    return next;
  }

  /** Keeps a version for good; false where its number is taken. It is here, and on the disk, when this resolves. */
  async issue(pattern: IssuedPattern): Promise<boolean> {
    if (this.#issuing === undefined || !(await this.#issuing.shelf.issue(pattern))) return false;
    await this.catchUp();
    return true;
  }

  async #look(): Promise<void> {
    if (this.#issuing === undefined) return;
    for (const { id, version } of await this.#issuing.shelf.issued()) {
      if (!this.#taken.has(`${id}@${version}`)) await this.#take(this.#issuing, id, version);
    }
  }

  async #take({ shelf, files }: IssueParts, id: string, version: number): Promise<void> {
    const key = `${id}@${version}`;
    const onDisk = files.readIssued(key);
    const written = onDisk ?? (await shelf.issuedPattern(id, version));
    if (written === undefined) return;
    if (onDisk === undefined) this.#write(files, key, written);
    this.#taken.add(key);
    const pattern = this.#load(key, written);
    if (pattern !== undefined) this.#add(pattern);
  }

  /** A disk that takes no file is no reason not to go by what was issued: the next start writes it. */
  #write(files: PatternFiles, key: string, written: WrittenPattern): void {
    try {
      files.write(key, written);
    } catch (cause) {
      this.#failed(cause);
    }
  }

  #load(key: string, { text, beside }: WrittenPattern): Pattern | undefined {
    try {
      return loadPattern(text, `${key}.yaml`, (name) => readBeside(beside, name));
    } catch (cause) {
      if (!isInputError(cause)) throw cause;
      this.#failed(new InputError(cause.faults));
      return undefined;
    }
  }

  /** What a start has read already changes nothing: whoever goes by the list would read the whole log anew. */
  #add(pattern: Pattern): void {
    if (this.#patterns.some((one) => isDeepStrictEqual(one, pattern))) return;
    const others = this.#patterns.filter(({ id, version }) => id !== pattern.id || version !== pattern.version);
    this.#patterns = [pattern, ...others].toSorted((one, other) => other.version - one.version);
    this.#mark = markOf(this.#patterns);
  }
}

/** A pattern names what stands beside it as "id@version/name". */
export function readBeside(beside: WrittenPattern["beside"], name: string): string | undefined {
  const file = name.split("/").at(-1) ?? "";
  return Object.hasOwn(beside, file) ? beside[file] : undefined;
}

function markOf(patterns: readonly Pattern[]): string {
  const all = patterns.map((one) => JSON.stringify(one)).toSorted();
  return hashText(all.join("\n")).slice(0, 16);
}
