export { missingTable } from "./damaged-tables.ts";
export { migrate, STEPS, type ColumnTypes } from "./migrations.ts";
export { SqlStore, type SqlEngine } from "./sql-store.ts";
export type { Tables } from "./tables.ts";
export { translateErrors, type Translate } from "./translating-dialect.ts";
