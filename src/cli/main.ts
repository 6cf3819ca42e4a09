import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { runDrykeel } from "./run.ts";
import { endWithReader, processTerminal } from "./terminal.ts";

// Built into dist/cli/main.js: the root is two folders up, as it is from src/cli.
const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const databaseUrl = process.env["DATABASE_URL"];
const keyFile = process.env["KEY_FILE"];
const witnessToken = process.env["WITNESS_TOKEN"];

endWithReader(process.stdout);
endWithReader(process.stderr);

process.exitCode = await runDrykeel(process.argv.slice(2), processTerminal, {
  root,
  dataDir: process.env["DATA_DIR"] || join(root, "data"),
  now: new Date().toISOString(),
  ...(databaseUrl ? { databaseUrl } : {}),
  ...(keyFile ? { keyFile } : {}),
  ...(witnessToken ? { witnessToken } : {}),
});
