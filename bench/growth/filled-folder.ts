import { existsSync } from "node:fs";
import { join } from "node:path";
import { readPatternFolders } from "#store/patterns";
import { openSqliteStore } from "#store/sqlite";
import { longLog } from "./long-log.ts";

/** Lines appended at once. */
const PAGE = 5000;
export const ROOT = join(import.meta.dirname, "..", "..");

/** Puts a long log into a data folder, unless it has a database already. */
export async function fillFolder(folder: string, lines: number): Promise<void> {
  if (existsSync(join(folder, "drykeel.db"))) return;
  const log = longLog(lines, readPatternFolders([join(ROOT, "patterns")]).patterns);
  const store = await openSqliteStore(join(folder, "drykeel.db"));
  for (let at = 0; at < log.length; at += PAGE) {
    await store.append(log.slice(at, at + PAGE), "2026-11-28T12:00:00.000Z");
  }
  await store.close();
}
