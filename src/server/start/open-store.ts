import { isInputError } from "#base";
import {
  isStoreError,
  type HasMail,
  type HasPatterns,
  type HeadShelf,
  type LogStore,
  type SecretStore,
  type SnapshotShelf,
} from "#station";
import { openPostgresStore } from "#store/postgres";
import { openSqliteStore } from "#store/sqlite";
import { join } from "node:path";
import { takeDataFolder } from "../data-folder/data-folder.ts";
import type { DataLoss } from "../data-folder/data-loss.ts";
import { withoutPassword, type Settings } from "./settings.ts";
import { StartProblem } from "./start-problem.ts";

/** The station's data, open, and where it is. */
export interface OpenData {
  readonly store: LogStore & SecretStore & HeadShelf & SnapshotShelf & HasMail & HasPatterns;
  /** For the terminal. */
  readonly where: string;
  /** For a folder, which can be taken away under a server: whether it was, and the moment at which that is noticed. */
  readonly folder?: { loss(): DataLoss | undefined; readonly lost: Promise<DataLoss> };
  close(): Promise<void>;
}

/**
 * Opens the data where the settings say: a folder, taken for this server alone, or a PostgreSQL that many may share.
 *
 * @param say - told, in a line for the terminal, what is being waited for
 * @throws StartProblem in one line with what to do
 */
export function openData(settings: Settings, say: (line: string) => void): Promise<OpenData> {
  const { databaseUrl } = settings;
  return databaseUrl === undefined ? openFolder(settings.dataDir, say) : openDatabase(databaseUrl);
}

async function openFolder(dataDir: string, say: (line: string) => void): Promise<OpenData> {
  const folder = await takeDataFolder(dataDir, { say });
  const where = join(folder.path, "drykeel.db");
  try {
    const store = await openSqliteStore(where);
    folder.watch(where);
    return { store, where, folder, close: () => store.close().finally(() => folder.release()) };
  } catch (cause) {
    folder.release();
    throw storeProblem(cause);
  }
}

async function openDatabase(url: string): Promise<OpenData> {
  try {
    const store = await openPostgresStore(url);
    return { store, where: withoutPassword(url), close: () => store.close() };
  } catch (cause) {
    throw storeProblem(cause);
  }
}

function storeProblem(cause: unknown): unknown {
  return isStoreError(cause) || isInputError(cause) ? new StartProblem(cause.message) : cause;
}
