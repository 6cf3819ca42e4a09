export { makeFolder } from "./folder.ts";
export { openSqliteStore, SqliteStore, type SqliteOptions } from "./sqlite-store.ts";
