import "fake-indexeddb/auto";
import { afterAll, describe, expect, test } from "vitest";
import { Client } from "pg";
import { openPostgresStore } from "#store/postgres";
import { startPostgres, type PostgresServer } from "../contracts/postgres-server.ts";
import type { Copies } from "./put-back-station.ts";
import { liveThrough } from "./three-devices.ts";

const start = await startPostgres();
if (start.kind === "running") describeAll(start.server);
else describeNone(start.because);

function describeNone(because: string): void {
  process.stderr.write(`Failing over with PostgreSQL was not tested: ${because}\n`);
  test(`failing over with PostgreSQL was not tested, since none could be started: ${because}`, () => {
    expect(process.env["REQUIRE_POSTGRES"], "PostgreSQL is required here").toBeUndefined();
  });
}

function describeAll(server: PostgresServer): void {
  afterAll(() => server.stop());

  describe("three devices and a PostgreSQL that fails over to one that lags behind, under a server that runs on", () => {
    test.each([201, 202, 203, 204])("lose nothing and agree, seed %i", async (seed) => {
      await liveThrough(seed, await laggingCopies(server), false);
    });
  });
}

/**
 * The station's tables as they were at an earlier moment, put back in one transaction between two requests: what the server
 * finds after a failover to a replica that had not yet received the last transactions.
 */
async function laggingCopies(server: PostgresServer): Promise<Copies> {
  const url = await server.createDatabase();
  let made = 0;
  return {
    open: () => openPostgresStore(url),
    copy: async () => {
      made += 1;
      const copy = `copy_${made}`;
      await inDatabase(url, async (client, tables) => {
        await client.query(`create schema ${copy}`);
        for (const table of tables) await client.query(`create table ${copy}.${table} as table public.${table}`);
      });
      return made;
    },
    putBack: async (copy, store) => {
      await inDatabase(url, async (client, tables) => {
        await client.query(`truncate ${tables.map((table) => `public.${table}`).join(", ")}`);
        for (const table of tables) await client.query(`insert into public.${table} table copy_${copy}.${table}`);
      });
      return store;
    },
    clear: () => server.dropDatabase(url),
  };
}

async function inDatabase(
  url: string,
  act: (client: Client, tables: readonly string[]) => Promise<void>,
): Promise<void> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    await client.query("begin isolation level repeatable read");
    const found = await client.query<{ name: string }>(
      "select tablename as name from pg_tables where schemaname = 'public' and tablename not like 'kysely%'",
    );
    await act(
      client,
      found.rows.map(({ name }) => name),
    );
    await client.query("commit");
  } finally {
    await client.end();
  }
}
