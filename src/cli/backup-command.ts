import { InputError } from "#base";
import type { Command } from "./command.ts";
import { openEmbedded, requireDatabase } from "./open-data.ts";
import { usageError } from "./usage-error.ts";

/** `drykeel backup`: a copy of the embedded database, also while the station runs. */
export const backupCommand: Command = {
  name: "backup",
  usage: "backup FILE",
  summary: "copy the embedded database, also while the station is running",
  options: {},
  run: async ({ words: [file], surroundings, terminal }) => {
    if (file === undefined) throw usageError("FILE", "nothing", "the name of a file", "Write: backup station.db");
    if (surroundings.databaseUrl !== undefined) throw notEmbedded();
    requireDatabase(surroundings);
    const store = await openEmbedded(surroundings);
    try {
      await store.backupTo(file);
    } finally {
      await store.close();
    }
    terminal.out(`${file}: a whole copy of one moment. It holds the sign-in secrets: keep it as such.`);
    return 0;
  },
};

function notEmbedded(): InputError {
  const remedy = "Use pg_dump, or drykeel export for the log alone.";
  return new InputError([
    { code: "CL-112", field: "DATABASE_URL", got: "PostgreSQL", allowed: "the embedded database", remedy },
  ]);
}
