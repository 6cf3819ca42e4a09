import { sayCount } from "#base";
import type { Entry } from "#log";
import { exportWhole, type ExportCounts, type LogStore, type SecretStore } from "#station";
import type { FileHandle } from "node:fs/promises";
import type { Call, Command } from "./command.ts";
import { readSaid } from "./import/consent.ts";
import { importFile, type Imported } from "./import/import-file.ts";
import { requireDatabase, withLog, withSecrets, type StationLog } from "./open-data.ts";
import { requireExportOrNew, requireOutside } from "./output-file.ts";
import { harmless, type Terminal } from "./terminal.ts";
import { usageError } from "./usage-error.ts";
import { writeWhole } from "./whole-file.ts";
import { readPeople } from "./whole-log.ts";

const PHOTO_PAGE = 5000;

/** The most that is told one by one. */
const MOST_TOLD = 20;

/** `drykeel export`: the whole log and its photos as lines of JSON. */
export const exportCommand: Command = {
  name: "export",
  usage: "export FILE",
  summary: "write the whole log, photos too, as lines of JSON",
  options: {},
  run: async (call) => {
    const file = requireFile(call, "export");
    requireDatabase(call.surroundings);
    requireOutside(call.surroundings, file);
    await requireExportOrNew(file);
    const { terminal } = call;
    await withLog(call.surroundings, async (log) => {
      const counts = await writeWhole(file, (handle) => writeLog(log, handle));
      terminal.out(`${file}: ${sayCount(counts.entries, "entry", "entries")} and ${sayCount(counts.photos, "photo")}`);
      const unnamed = (await countPhotos(log)) - counts.photos;
      if (unnamed > 0) terminal.out(sayUnnamed(unnamed));
    });
    return 0;
  },
};

/** `drykeel import`: takes an exported log in; what is already kept is left as it is. */
export const importCommand: Command = {
  name: "import",
  usage: "import FILE [--for NAME | --word NAME]",
  summary:
    "take in an exported log; lines that nothing shows the station had only for NAME, who brings them, or by the word of NAME, an administrator",
  options: { for: true, word: true },
  run: async (call) => {
    const file = requireFile(call, "import");
    const said = readSaid(call.options);
    const { imported, hasWayIn } = await withSecrets(call.surroundings, async (store) => {
      const imported = await importFile(call, store, file, said);
      return { imported, hasWayIn: await canAnybodySignIn(store) };
    });
    return report(call.terminal, file, imported, hasWayIn);
  },
};

function requireFile({ words }: Call, verb: string): string {
  const [file] = words;
  if (file === undefined) throw usageError("FILE", "nothing", "the name of a file", `Write: ${verb} station.ndjson`);
  return file;
}

async function countPhotos(log: StationLog): Promise<number> {
  for (let [count, after] = [0, ""]; ;) {
    const page = await log.photoHashes(after, PHOTO_PAGE);
    count += page.length;
    if (page.length < PHOTO_PAGE) return count;
    after = page.at(-1)!;
  }
}

/** A photo that came before its line, or whose line never came: it proves nothing, and is in a backup only. */
function sayUnnamed(count: number): string {
  const these = count === 1 ? "1 photo that no line names is" : `${count} photos that no line names are`;
  return `${these} left out: a line that names it may still come; drykeel backup copies all.`;
}

async function writeLog(log: LogStore, handle: FileHandle): Promise<ExportCounts> {
  const counts = { entries: 0, photos: 0 };
  for await (const piece of exportWhole(log, counts)) await handle.appendFile(piece);
  return counts;
}

/** An export brings no PINs and no passkeys: somebody must be let in first. */
async function canAnybodySignIn(store: LogStore & SecretStore): Promise<boolean> {
  for (const { id } of await readPeople(store)) {
    const held = await store.credentialsOf(id);
    if (held.some(({ kind }) => kind !== "device")) return true;
  }
  return false;
}

function report(terminal: Terminal, file: string, imported: Imported, hasWayIn: boolean): number {
  const { accepted, repeated, photos, clashing, missing, leftOut } = imported;
  terminal.out(
    `${file}: ${sayCount(accepted, "entry", "entries")} taken in, ${repeated} already there, ${sayCount(photos, "photo")}`,
  );
  for (const line of [...missingLines(missing), ...leftOutLines(leftOut)]) terminal.error(harmless(line));
  if (clashing.length > 0) {
    terminal.error(harmless(`Kept with other content, and left as they are: ${clashing.join(", ")}`));
  }
  if (!hasWayIn)
    terminal.out("Nobody can sign in here yet: drykeel invite NAME prints a code for a person of the station.");
  return clashing.length > 0 || leftOut.length > 0 ? 1 : 0;
}

function missingLines(missing: Imported["missing"]): readonly string[] {
  if (missing.length === 0) return [];
  const told = missing.slice(0, MOST_TOLD).map(({ hash, entry: { subject, kind, at, by } }) => {
    return `  ${hash}, named by ${kind} of ${subject}, ${at}, by ${by}`;
  });
  const more = missing.length > MOST_TOLD ? [`  and ${missing.length - MOST_TOLD} more`] : [];
  return [`Photos that lines name and that are neither in the file nor here: ${missing.length}`, ...told, ...more];
}

function leftOutLines(leftOut: readonly Entry[]): readonly string[] {
  if (leftOut.length === 0) return [];
  const writers = [...new Set(leftOut.map(({ by }) => by))].map(
    (by) => `${by} (${leftOut.filter((entry) => entry.by === by).length})`,
  );
  return [
    `Left out, since nothing shows that this station had them and nobody spoke for them: ${sayCount(leftOut.length, "line")}, by ${writers.join(", ")}.`,
    "Whoever brings the file takes in their own with --for NAME; an administrator takes in all with --word NAME.",
  ];
}
