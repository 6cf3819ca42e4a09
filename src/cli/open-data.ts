import { InputError, type Fault } from "#base";
import type { Pattern } from "#kit";
import type { HeadShelf, LogStore, SecretStore, StoredLog } from "#station";
import { DEFAULT_KEY_FILE, SignedSince } from "#store/keys";
import { readStationPatterns } from "#store/patterns";
import { openPostgresStore } from "#store/postgres";
import { openSqliteStore, type SqliteStore } from "#store/sqlite";
import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Call, Surroundings } from "./command.ts";

/** The database file below DATA_DIR. */
export const DATABASE_FILE = "drykeel.db";

/** What the station signs the heads of its log with. */
export function keyFileOf({ dataDir, keyFile }: Surroundings): string {
  return keyFile ?? join(dataDir, DEFAULT_KEY_FILE);
}

/** Since when the log of this database is signed, as it is kept beside the key. */
export async function signedSince(surroundings: Surroundings, log: StationLog): Promise<SignedSince | undefined> {
  const [life] = (await log.storedLives()).epochs;
  return life === undefined ? undefined : new SignedSince(keyFileOf(surroundings), life);
}

/** The station's log with its tables and the signed heads beside it. */
export type StationLog = LogStore & StoredLog & HeadShelf;

/** Opens the station's log, works with it, and closes it whatever happens. */
export async function withLog<T>(surroundings: Surroundings, work: (log: StationLog) => Promise<T>): Promise<T> {
  const { databaseUrl } = surroundings;
  const log = databaseUrl === undefined ? await openEmbedded(surroundings) : await openPostgresStore(databaseUrl);
  try {
    return await work(log);
  } finally {
    await log.close();
  }
}

/** As {@link withLog}, with the secrets beside the log: sessions, invites, hashes of PINs. */
export async function withSecrets<T>(
  surroundings: Surroundings,
  work: (store: LogStore & SecretStore) => Promise<T>,
): Promise<T> {
  const { databaseUrl } = surroundings;
  const store = databaseUrl === undefined ? await openEmbedded(surroundings) : await openPostgresStore(databaseUrl);
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

/** Opens the station's embedded database. */
export async function openEmbedded(surroundings: Surroundings): Promise<SqliteStore> {
  return openSqliteStore(join(surroundings.dataDir, DATABASE_FILE));
}

/** @throws InputError CL-110 where the station has no embedded database to read */
export function requireDatabase({ dataDir, databaseUrl }: Surroundings): void {
  const file = join(dataDir, DATABASE_FILE);
  if (databaseUrl !== undefined || existsSync(file)) return;
  const remedy =
    "Start the station once with npm start, or name its folder: DATA_DIR=/some/folder npm run -s drykeel -- ...";
  throw new InputError([
    { code: "CL-110", field: "DATA_DIR", got: dataDir, allowed: `a folder with ${DATABASE_FILE} in it`, remedy },
  ]);
}

/**
 * Shipped patterns and the station's own. A bad file of the station's own is left out, and named on the error stream.
 *
 * @throws InputError CL-111 naming every shipped file that cannot be read
 */
export function stationPatterns({ surroundings, terminal }: Call): readonly Pattern[] {
  const { root, dataDir } = surroundings;
  const { patterns, broken, leftOut } = readStationPatterns(join(root, "patterns"), dataDir);
  if (broken.length > 0) throw new InputError(broken.map(brokenPattern));
  for (const one of leftOut) terminal.error(`WARNING: pattern file left out. ${one}`);
  return patterns;
}

function brokenPattern(got: string): Fault {
  const remedy = "Put the shipped file back; npm run -s drykeel -- pattern lint FILE goes through it.";
  return { code: "CL-111", field: "patterns", got, allowed: "each pattern once, readable", remedy };
}
