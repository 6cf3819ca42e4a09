import { InputError } from "#base";
import { exportHeader, exportLine, parseExport, type Entry, type ExportItem } from "#log";
import { createStationFold, type LogStore, type StationFold } from "#station";
import { createReadStream } from "node:fs";
import { open, rename, type FileHandle } from "node:fs/promises";
import { createInterface } from "node:readline";
import type { Call, Command } from "./command.ts";
import { createImportJudge } from "./import-judge.ts";
import { requireDatabase, stationPatterns, withLog } from "./open-data.ts";
import { usageError } from "./usage-error.ts";
import { pagesOf, readWholeLog } from "./whole-log.ts";

const PAGE = 2000;

/** `drykeel export`: the whole log and its photos as lines of JSON. */
export const exportCommand: Command = {
  name: "export",
  usage: "export FILE",
  summary: "write the whole log, photos too, as lines of JSON",
  options: {},
  run: async (call) => {
    const file = requireFile(call, "export");
    requireDatabase(call.surroundings);
    const counts = await withLog(call.surroundings, (log) => exportTo(log, file));
    call.terminal.out(`${file}: ${counts.entries} entries and ${counts.photos} photos`);
    return 0;
  },
};

/** `drykeel import`: takes an exported log in; what is already kept is left as it is. */
export const importCommand: Command = {
  name: "import",
  usage: "import FILE",
  summary: "take in an exported log; what is already there stays as it is",
  options: {},
  run: async (call) => {
    const file = requireFile(call, "import");
    const { surroundings } = call;
    const counts = await withLog(surroundings, async (log) => {
      await judgeFile(log, file, createStationFold(stationPatterns(call)));
      return importFrom(log, file, surroundings.now);
    });
    call.terminal.out(
      `${file}: ${counts.accepted} entries taken in, ${counts.repeated} already there, ${counts.photos} photos`,
    );
    if (counts.clashing.length === 0) return 0;
    call.terminal.error(`Kept with other content, and left as they are: ${counts.clashing.join(", ")}`);
    return 1;
  },
};

function requireFile({ words }: Call, verb: string): string {
  const [file] = words;
  if (file === undefined) throw usageError("FILE", "nothing", "the name of a file", `Write: ${verb} station.ndjson`);
  return file;
}

/** Written beside the name and renamed when whole: a file of that name is never half a log. */
async function exportTo(log: LogStore, file: string): Promise<{ entries: number; photos: number }> {
  const part = `${file}.part`;
  const handle = await open(part, "w").catch((cause: Error) => {
    throw usageError("FILE", cause.message, "a file that can be written", "Name another folder.");
  });
  try {
    const counts = await writeLog(log, handle);
    await handle.sync();
    await rename(part, file);
    return counts;
  } finally {
    await handle.close();
  }
}

async function writeLog(log: LogStore, handle: FileHandle): Promise<{ entries: number; photos: number }> {
  const chains = await log.heads();
  await handle.write(`${exportHeader(chains)}\n`);
  const photos = new Set<string>();
  let entries = 0;
  for (const { place, seq } of chains) {
    for await (const page of pagesOf(log, place, seq)) {
      await handle.write(page.map((kept) => `${exportLine({ kind: "kept", kept })}\n`).join(""));
      for (const { entry } of page) for (const hash of photosNamed(entry)) photos.add(hash);
      entries += page.length;
    }
  }
  return { entries, photos: await writePhotos(log, handle, photos) };
}

/** Hashes of the photos that a body refers to. */
function photosNamed({ body }: Entry): string[] {
  const { photos } = (body ?? {}) as { photos?: readonly { readonly hash?: string }[] };
  return (Array.isArray(photos) ? photos : []).flatMap(({ hash }) => hash ?? []);
}

async function writePhotos(log: LogStore, handle: FileHandle, hashes: Iterable<string>): Promise<number> {
  let written = 0;
  for (const hash of hashes) {
    const photo = await log.photo(hash);
    if (photo === undefined) continue;
    await handle.write(`${exportLine({ kind: "photo", ...photo })}\n`);
    written += 1;
  }
  return written;
}

interface Imported {
  accepted: number;
  repeated: number;
  photos: number;
  readonly clashing: string[];
}

/** Reads the whole file before anything is taken in, so that a damaged or bad one changes nothing. */
async function judgeFile(log: LogStore, file: string, fold: StationFold): Promise<void> {
  await readWholeLog(log, fold);
  const judge = createImportJudge(fold);
  await readThrough(file, async (item) => judge.see(item));
  judge.finish();
}

async function importFrom(log: LogStore, file: string, received: string): Promise<Imported> {
  const counts: Imported = { accepted: 0, repeated: 0, photos: 0, clashing: [] };
  let waiting: Entry[] = [];
  const take = async (): Promise<void> => {
    const result = await log.append(waiting, received);
    counts.accepted += result.accepted.length;
    counts.repeated += result.repeated.length;
    counts.clashing.push(...result.clashing);
    waiting = [];
  };
  await readThrough(file, async (item) => {
    if (item.kind === "photo") {
      await log.putPhoto(item);
      counts.photos += 1;
    } else waiting.push(item.kind === "kept" ? item.kept.entry : item.entry);
    if (waiting.length >= PAGE) await take();
  });
  await take();
  return counts;
}

async function readThrough(file: string, visit: (item: ExportItem) => Promise<void>): Promise<void> {
  const lines = createInterface({ input: createReadStream(file), crlfDelay: Infinity });
  try {
    for await (const item of parseExport(lines)) await visit(item);
  } catch (cause) {
    throw (cause as NodeJS.ErrnoException).code === "ENOENT" ? missing(file) : cause;
  }
}

function missing(file: string): InputError {
  return usageError("FILE", file, "a file that is there", "Check the name; it is written by drykeel export.");
}
