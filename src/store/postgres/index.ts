export { openPostgresStore, type PostgresOptions } from "./postgres-store.ts";
