import { InputError } from "#base";
import { verifyLog } from "#station";
import { openSqliteStore } from "#store/sqlite";
import { statSync } from "node:fs";
import { copyFile, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Command } from "./command.ts";
import { DATABASE_FILE, openEmbedded, requireDatabase } from "./open-data.ts";
import { requireNew, requireOutside } from "./output-file.ts";
import { harmless, type Terminal } from "./terminal.ts";
import { usageError } from "./usage-error.ts";

/** `drykeel backup`: a copy of the embedded database, also while the station runs. */
export const backupCommand: Command = {
  name: "backup",
  usage: "backup FILE [--prove]",
  summary: "copy the embedded database, also while the station is running; --prove opens the copy and verifies it",
  options: { prove: false },
  run: async ({ words: [file], options, surroundings, terminal }) => {
    if (file === undefined) throw usageError("FILE", "nothing", "the name of a file", "Write: backup station.db");
    if (surroundings.databaseUrl !== undefined) throw notEmbedded();
    requireDatabase(surroundings);
    requireOutside(surroundings, file);
    requireNew(file);
    const store = await openEmbedded(surroundings);
    try {
      const { size } = statSync(join(surroundings.dataDir, DATABASE_FILE));
      terminal.out(`Copying about ${sayMegabytes(size)} in one step ...`);
      const { bytes } = await store.backupTo(file);
      terminal.out(`${sayMegabytes(bytes)} copied.`);
    } finally {
      await store.close();
    }
    terminal.out(`${file}: a whole copy of one moment. It holds the sign-in secrets: keep it as such.`);
    return options["prove"] === true && !(await prove(file, terminal)) ? 1 : 0;
  },
};

/** Puts the copy back in a folder of its own, as a restore would, and holds everything in it against everything else. */
async function prove(file: string, terminal: Terminal): Promise<boolean> {
  const folder = await mkdtemp(join(tmpdir(), "drykeel-prove-"));
  try {
    await copyFile(file, join(folder, DATABASE_FILE));
    const faults = await faultsOf(join(folder, DATABASE_FILE));
    for (const fault of faults) terminal.out(harmless(`NOT PROVED: ${fault}`));
    if (faults.length === 0)
      terminal.out("Proved: put back elsewhere it opens, and every line, head and photo in it is sound.");
    return faults.length === 0;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function faultsOf(database: string): Promise<readonly string[]> {
  const store = await openSqliteStore(database);
  try {
    const integrity = store.integrity();
    const verdicts = await verifyLog(store, []);
    const broken = verdicts.flatMap(({ place, verdict }) =>
      verdict.kind === "broken" ? [`${place}, entry ${verdict.seq}: ${verdict.because}`] : [],
    );
    return integrity === "ok" ? broken : [`the file itself: ${integrity}`, ...broken];
  } finally {
    await store.close();
  }
}

function sayMegabytes(bytes: number): string {
  return `${(bytes / 1e6).toFixed(1)} MB`;
}

function notEmbedded(): InputError {
  const remedy = "Use pg_dump, or drykeel export for the log alone.";
  return new InputError([
    { code: "CL-112", field: "DATABASE_URL", got: "PostgreSQL", allowed: "the embedded database", remedy },
  ]);
}
