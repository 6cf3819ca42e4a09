import { isInputError } from "#base";
import { drawingFault, loadPattern, PICTURES_FILE, pictureFaults, type Beside, type Pattern } from "#kit";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/** Patterns found on disk, and what is wrong with those that could not be read. */
export interface PatternFolder {
  readonly patterns: readonly Pattern[];
  /** One text per bad file: its name, and every fault in it with line and column. A bad drawing is only left out. */
  readonly wrong: readonly string[];
}

/**
 * Reads every pattern in the given folders and their subfolders. A folder that is not there holds none.
 *
 * @param folders - the shipped patterns first, then the station's own
 * @returns what could be read, higher versions first, and what could not; the same pattern and version twice is a fault of the second file
 */
export function readPatternFolders(folders: readonly string[]): PatternFolder {
  const read = folders.filter((folder) => existsSync(folder)).flatMap(readFolder);
  const patterns = read.flatMap((one) => ("pattern" in one ? [one] : []));
  const first = new Map(patterns.toReversed().map((one) => [keyOf(one.pattern), one.file]));
  const twice = patterns.filter((one) => first.get(keyOf(one.pattern)) !== one.file);
  return {
    patterns: patterns
      .filter((one) => !twice.includes(one))
      .map((one) => one.pattern)
      .toSorted((one, other) => other.version - one.version),
    wrong: [
      ...read.flatMap((one) => ("wrong" in one ? [one.wrong] : one.undrawn)),
      ...twice.map(
        ({ file, pattern }) =>
          `${file}: ${keyOf(pattern)} is already in ${first.get(keyOf(pattern))}. Raise the version.`,
      ),
    ],
  };
}

export { PatternFiles } from "./pattern-files.ts";

/** Folder, within a station's, of the versions that were issued there; their names stand before shipped ones. */
export const ISSUED_FOLDER = "issued-patterns";

/** A station's patterns: the shipped ones and its own. */
export interface StationPatterns {
  readonly patterns: readonly Pattern[];
  /** What is wrong with shipped files: the checkout is not whole. */
  readonly broken: readonly string[];
  /** What is wrong with the station's own files; they are not among the patterns. */
  readonly leftOut: readonly string[];
}

/**
 * Reads the shipped patterns and the station's own, and tells faults of the one from faults of the other. A version
 * that was issued here stands before a shipped one of the same name: kits are built to it.
 *
 * @param shipped - folder of the shipped patterns
 * @param dataDir - the station's folder; its own patterns lie in `patterns`, issued ones in `issued-patterns`
 */
export function readStationPatterns(shipped: string, dataDir: string): StationPatterns {
  const { wrong: broken } = readPatternFolders([shipped]);
  const { patterns, wrong } = readPatternFolders([join(dataDir, ISSUED_FOLDER), shipped, join(dataDir, "patterns")]);
  return { patterns, broken, leftOut: wrong.filter((one) => !broken.includes(one)) };
}

type ReadFile =
  | { readonly file: string; readonly pattern: Pattern; readonly undrawn: readonly string[] }
  | { readonly file: string; readonly wrong: string };

function readFolder(folder: string): readonly ReadFile[] {
  try {
    return patternFiles(folder).map(readPatternFile);
  } catch (cause) {
    return [{ file: folder, wrong: `${folder}: this folder cannot be read (${systemCode(cause)}).` }];
  }
}

function patternFiles(folder: string): string[] {
  const found = readdirSync(folder, { recursive: true, withFileTypes: true });
  return found
    .filter((one) => !one.isDirectory() && /\.ya?ml$/.test(one.name))
    .map((one) => join(one.parentPath, one.name))
    .filter((file) => !isPictures(file))
    .toSorted();
}

/** The list of drawings in the folder beside a pattern, which is no pattern. */
function isPictures(file: string): boolean {
  return basename(file) === PICTURES_FILE && /@\d+$/.test(basename(dirname(file)));
}

function readPatternFile(file: string): ReadFile {
  try {
    return readAgain(file, readFileSync(file, "utf8"), filesBeside(file));
  } catch (cause) {
    return { file, wrong: `${file}: this file cannot be read (${systemCode(cause)}).` };
  }
}

/** What a file was read from, its own text and what it asked for of the files beside it, and what came of it. */
interface LastRead {
  readonly text: string;
  readonly asked: ReadonlyMap<string, string | undefined>;
  readonly read: ReadFile;
}

/** By file. A start reads the shipped patterns twice, and reading one takes a quarter of a second. */
const lastReads = new Map<string, LastRead>();

/** As it was read last, where none of the texts that it came from has changed since; else anew. */
function readAgain(file: string, text: string, beside: Beside): ReadFile {
  const last = lastReads.get(file);
  if (last?.text === text && [...last.asked].every(([name, had]) => beside(name) === had)) return last.read;
  const asked = new Map<string, string | undefined>();
  const read = readText(file, text, (name) => {
    const had = beside(name);
    asked.set(name, had);
    return had;
  });
  lastReads.set(file, { text, asked, read });
  return read;
}

function readText(file: string, text: string, beside: Beside): ReadFile {
  try {
    const pattern = loadPattern(text, file, beside);
    return { file, pattern, undrawn: undrawnIn(file, pattern, beside) };
  } catch (cause) {
    if (isInputError(cause)) return { file, wrong: `${file}: ${cause.message}` };
    throw cause;
  }
}

/** Reads the files that stand beside a pattern's own: its drawings and their list. */
export function filesBeside(file: string): Beside {
  return (name) => {
    const path = join(dirname(file), name);
    return existsSync(path) ? readFileSync(path, "utf8") : undefined;
  };
}

/** What is wrong with drawings that the pattern names; a step of its card that names none is the lint's affair. */
function undrawnIn(file: string, pattern: Pattern, beside: Beside): readonly string[] {
  const steps = pattern.stranger?.steps ?? [];
  const named = steps.filter((step) => step.file !== undefined && step.drawing === undefined);
  return [
    ...named.map((step) => `${file}: card, ${step.id}: ${drawingFault(step, beside)}`),
    ...pictureFaults(pattern, beside).map(
      ({ drawing = "their list", wrong }) => `${file}: drawings, ${drawing}: ${wrong}`,
    ),
  ];
}

/** Code of a failed system call, such as "EACCES"; what else is thrown is a bug and goes on. */
function systemCode(cause: unknown): string {
  const { code, syscall } = cause as NodeJS.ErrnoException;
  if (code === undefined || syscall === undefined) throw cause;
  return code;
}

function keyOf(pattern: Pattern): string {
  return `${pattern.id}@${pattern.version}`;
}
