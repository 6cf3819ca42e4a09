import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** A pattern's file with the text of the files in the folder beside it, by name. */
interface Written {
  readonly text: string;
  readonly beside: Readonly<Record<string, string>>;
}

/** Files of patterns on disk, by "id@version": the shipped ones, the station's own, and those issued here. */
export class PatternFiles {
  readonly #folders: readonly string[];
  readonly #issued: string;

  /**
   * @param folders - folders to read from, with their subfolders; one that is not there holds none
   * @param issued - folder that issued versions are written to; made at need, and read first
   */
  constructor(folders: readonly string[], issued: string) {
    this.#folders = [issued, ...folders];
    this.#issued = issued;
  }

  /** The file of a version under its own name; nothing where there is none. */
  read(key: string): Written | undefined {
    const path = this.#folders.map((folder) => pathIn(folder, key)).find((one) => one !== undefined);
    return path === undefined ? undefined : readWritten(path, key);
  }

  /** As {@link read}, of versions issued here only. */
  readIssued(key: string): Written | undefined {
    const path = pathIn(this.#issued, key);
    return path === undefined ? undefined : readWritten(path, key);
  }

  /** Writes an issued version: what stands beside it first, then the file itself, whole or not at all. */
  write(key: string, { text, beside }: Written): void {
    const folder = join(this.#issued, key);
    mkdirSync(Object.keys(beside).length > 0 ? folder : this.#issued, { recursive: true });
    for (const [name, one] of Object.entries(beside)) writeWhole(join(folder, plainName(name)), one);
    writeWhole(join(this.#issued, `${key}.yaml`), text);
  }
}

function pathIn(folder: string, key: string): string | undefined {
  if (!existsSync(folder)) return undefined;
  const found = readdirSync(folder, { recursive: true, withFileTypes: true });
  const file = found.find((one) => !one.isDirectory() && one.name === `${key}.yaml`);
  return file && join(file.parentPath, file.name);
}

function readWritten(path: string, key: string): Written {
  const folder = join(path, "..", key);
  const names = existsSync(folder) ? readdirSync(folder, { withFileTypes: true }) : [];
  const files = names.filter((one) => one.isFile()).map(({ name }) => name);
  const beside = Object.fromEntries(files.map((name) => [name, readFileSync(join(folder, name), "utf8")]));
  return { text: readFileSync(path, "utf8"), beside };
}

/** Beside the place, then renamed: nobody ever reads half a file. */
function writeWhole(path: string, text: string): void {
  const part = `${path}.${process.pid}.part`;
  try {
    writeFileSync(part, text, { flush: true });
    renameSync(part, path);
  } catch (cause) {
    rmSync(part, { force: true });
    throw cause;
  }
}

/** @throws Error where a name would lead out of its folder */
function plainName(name: string): string {
  if (/^[a-z0-9]+([.-][a-z0-9]+)*$/.test(name)) return name;
  throw new Error(`Broken invariant: ${JSON.stringify(name)} is no name of a file beside a pattern`);
}
