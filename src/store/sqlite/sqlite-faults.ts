import { InputError } from "#base";
import { StoreError } from "#station";
import { missingTable } from "#store/sql";

/** What SQLite throws, in words for whoever looks after the station's computer. */
export function translateSqlite(thrown: unknown): unknown {
  const code = codeOf(thrown);
  if (code.startsWith("SQLITE_BUSY") || code.startsWith("SQLITE_LOCKED")) {
    const remedy = "Close whatever else has it open, such as a database browser, and try again.";
    return new StoreError("ST-101", "The database is locked by another program.", remedy, thrown);
  }
  if (code.startsWith("SQLITE_FULL") || code === "ENOSPC" || code === "SQLITE_IOERR_WRITE") {
    const remedy = "Free some space; nothing that was kept before is lost, and devices will send again.";
    return new StoreError("ST-102", "The disk is full.", remedy, thrown);
  }
  if (code.startsWith("SQLITE_READONLY") || code === "EROFS") {
    const remedy = "Let the account that runs Drykeel write to the folder and the files in it.";
    return new StoreError("ST-103", "The database can be read but not written.", remedy, thrown);
  }
  if (code.startsWith("SQLITE_CORRUPT")) {
    const remedy = "Keep the file as it is, restore the last backup beside it, and let devices send again.";
    return new StoreError("ST-104", "The database file is damaged.", remedy, thrown);
  }
  if (code.startsWith("SQLITE_IOERR")) {
    const remedy = "Check the disk; nothing of what was just being written was kept.";
    return new StoreError("ST-105", "The disk failed to read or write.", remedy, thrown);
  }
  const [, table] = NO_TABLE.exec(thrown instanceof Error ? thrown.message : "") ?? [];
  return table === undefined ? thrown : missingTable(table, thrown);
}

/** SQLite says this with a code that says nothing. */
const NO_TABLE = /^no such table: (?:main\.)?(.+)$/;

/** What goes wrong while opening: mostly a path that cannot be. */
export function translateOpening(thrown: unknown, path: string): unknown {
  const code = codeOf(thrown);
  if (code === "SQLITE_NOTADB")
    return unusable("ST-111", path, "a Drykeel database, or a file that is not there yet", OTHER);
  const noFolder = ["EACCES", "EPERM", "ENOTDIR", "EEXIST", "ENOENT", "EISDIR", "ENAMETOOLONG", "EROFS"].includes(code);
  if (noFolder || code.startsWith("SQLITE_CANTOPEN"))
    return unusable("ST-110", path, "a file in a folder that can be written", WRITE);
  return translateSqlite(thrown);
}

const WRITE = "Let the account that runs Drykeel write to the folder, or set DATA_DIR to one that it may write to.";
const OTHER = "Move the file out of the way, or set DATA_DIR to another folder.";

function unusable(code: string, path: string, allowed: string, remedy: string): InputError {
  return new InputError([{ code, field: "database", got: path, allowed, remedy }]);
}

function codeOf(thrown: unknown): string {
  const code = (thrown as { code?: unknown } | null)?.code;
  return typeof code === "string" ? code : "";
}
