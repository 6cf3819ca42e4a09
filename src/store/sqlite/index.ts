export { openSqliteStore, SqliteStore, type SqliteOptions } from "./sqlite-store.ts";
