import { InputError, isInputError } from "#base";
import { createExportReader } from "#log";
import { DEFAULT_KEPT_HEADS, sinceFileOf } from "#store/keys";
import { ISSUED_FOLDER } from "#store/patterns";
import { createReadStream, lstatSync, readdirSync, readlinkSync, realpathSync, statSync } from "node:fs";
import { basename, dirname, isAbsolute, join, resolve, sep } from "node:path";
import { createInterface } from "node:readline";
import type { Surroundings } from "./command.ts";
import { DATABASE_FILE, keyFileOf } from "./open-data.ts";

/** What SQLite lays beside a database, by the end of its name. */
const BESIDE = ["", "-wal", "-shm", "-journal"];
/** Folders in the data folder that are the station's own, to the last file. */
const OWN_FOLDERS = ["keys", "photos", "patterns", ISSUED_FOLDER, DEFAULT_KEPT_HEADS];
/** Files in the data folder that are the station's own. */
const OWN_FILES = [...BESIDE.map((end) => `${DATABASE_FILE}${end}`), "server.lock", "mail-rounds"];
/** Symbolic links that are followed from one to the next before they count as a ring. */
const MOST_LINKS = 40;
/** Of a file the first so many bytes are read for the header of an export: one of some thousands of places. */
const MOST_HEADER = 1_000_000;

/**
 * Refuses to write a file where the station keeps its own: the database and what lies beside it, its lock, its keys, its
 * photos, its patterns, and heads kept for others. Symbolic and hard links are followed, also those of the name under
 * which a file is first written.
 *
 * @param file - as it was named at the terminal
 * @throws InputError CL-113
 */
export function requireOutside(surroundings: Surroundings, file: string): void {
  const places = [file, resolve(file)].flatMap((path) => [path, `${path}.part`]);
  if (places.some((place) => isOwn(surroundings, place))) throw stationsOwn(surroundings, file);
}

/**
 * Refuses to write a file over another, whatever that holds.
 *
 * @throws InputError CL-114
 */
export function requireNew(file: string): void {
  if (lstatSync(file, { throwIfNoEntry: false }) === undefined) return;
  const remedy =
    "Name the copy anew, by its day for instance, and remove old ones yourself once the new one is proved.";
  throw new InputError([
    { code: "CL-114", field: "FILE", got: `${file}, which is there`, allowed: "the name of no file yet", remedy },
  ]);
}

/**
 * Refuses to write an export over a file that holds anything but an earlier export, so that a call repeated by the clock
 * keeps its name, and a backup stays.
 *
 * @throws InputError CL-116
 */
export async function requireExportOrNew(file: string): Promise<void> {
  const found = ofSystem(() => statSync(file));
  if (found === undefined && lstatSync(file, { throwIfNoEntry: false }) === undefined) return;
  if (found?.isFile() && (found.size === 0 || (await isExport(file)))) return;
  const remedy = "Name another file. Nothing was written.";
  const allowed = "the name of no file yet, or of an earlier export";
  throw new InputError([{ code: "CL-116", field: "FILE", got: `${file}, which is no export`, allowed, remedy }]);
}

/** By its header alone: the rest may be damaged, which a new export mends. */
async function isExport(file: string): Promise<boolean> {
  const start = createReadStream(file, { encoding: "utf8", end: MOST_HEADER });
  try {
    for await (const line of createInterface({ input: start })) {
      createExportReader().read(line);
      return true;
    }
    return false;
  } catch (cause) {
    if (!isInputError(cause) && (cause as NodeJS.ErrnoException).code === undefined) throw cause;
    return false;
  } finally {
    start.destroy();
  }
}

function isOwn(surroundings: Surroundings, file: string): boolean {
  const { dataDir, root } = surroundings;
  const at = wholePath(file);
  const files = [...OWN_FILES.map((name) => join(dataDir, name)), ...keysOf(surroundings)];
  const folders = [...OWN_FOLDERS.map((name) => join(dataDir, name)), join(root, "patterns")];
  return files.some((own) => at === wholePath(own) || isSameFile(at, own)) || folders.some((own) => isIn(at, own));
}

/** By its path, or as another name of a file that lies in there. */
function isIn(at: string, folder: string): boolean {
  if (isWithin(at, folder)) return true;
  const names = ofSystem(() => readdirSync(folder, { recursive: true, encoding: "utf8" })) ?? [];
  return names.some((name) => isSameFile(at, join(folder, name)));
}

function keysOf(surroundings: Surroundings): readonly string[] {
  const keyFile = keyFileOf(surroundings);
  return [keyFile, sinceFileOf(keyFile)];
}

function isWithin(at: string, folder: string): boolean {
  const whole = wholePath(folder);
  return at === whole || at.startsWith(`${whole}${sep}`);
}

/** Two names of one file: a hard link, or letters large and small where the disk does not tell them apart. */
function isSameFile(one: string, other: string): boolean {
  const [first, second] = [one, other].map((path) => ofSystem(() => statSync(path, { bigint: true })));
  return first !== undefined && first.dev === second?.dev && first.ino === second.ino;
}

/** The path as the system goes it, link by link; also of what is not there yet, and of a link to it. */
function wholePath(path: string, links = MOST_LINKS): string {
  const real = ofSystem(() => realpathSync.native(path));
  if (real !== undefined) return real;
  const target = ofSystem(() => readlinkSync(path));
  if (target !== undefined && links > 0) {
    return wholePath(isAbsolute(target) ? target : `${dirname(path)}${sep}${target}`, links - 1);
  }
  const above = dirname(path);
  return above === path ? resolve(path) : join(wholePath(above, links), basename(path));
}

/** What the system says; undefined where it says nothing. Whoever writes there next says what is wrong. */
function ofSystem<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === undefined) throw cause;
    return undefined;
  }
}

function stationsOwn({ dataDir }: Surroundings, got: string): InputError {
  const allowed = `a file that is none of the station's own in ${dataDir}`;
  const remedy = "Name another file, best in a folder of its own. Nothing was written.";
  return new InputError([{ code: "CL-113", field: "FILE", got, allowed, remedy }]);
}
