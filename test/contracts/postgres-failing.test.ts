import { openPostgresStore } from "#store/postgres";
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { spawnServer, type SpawnedServer } from "../../src/server/spawned-server.ts";
import { startPostgres, type PostgresServer } from "./postgres-server.ts";
import { createLoad, type PushingLoad } from "./pushing-load.ts";

/** Two servers on one PostgreSQL that fails in the ways PostgreSQL fails, while four devices push. */

const start = await startPostgres();
if (start.kind === "running") describeFailing(start.server);
else describeNone(start.because);

function describeNone(because: string): void {
  process.stderr.write(`A failing PostgreSQL was not tested: ${because}\n`);
  test(`a failing PostgreSQL was not tested, since none could be started: ${because}`, () => {
    expect(process.env["REQUIRE_POSTGRES"], "PostgreSQL is required here").toBeUndefined();
  });
}

function describeFailing(postgres: PostgresServer): void {
  describe("two servers on a PostgreSQL that fails", () => {
    const folder = mkdtempSync(join(tmpdir(), "drykeel-failing-"));
    let url: string;
    let servers: readonly SpawnedServer[];
    let load: PushingLoad;

    beforeAll(async () => {
      url = await postgres.createDatabase();
      servers = await spawnTwo(folder, url);
      load = await createLoad(servers);
    }, 120_000);

    afterAll(async () => {
      await Promise.all(servers.map((server) => server.kill()));
      await postgres.stop();
      rmSync(folder, { recursive: true });
    });

    test.each<[string, () => Promise<void>]>([
      ["is restarted", () => postgres.restart("fast")],
      ["loses its power", () => postgres.restart("immediate")],
      ["ends every connection, those lent out too", () => again(5, () => terminateAll(url))],
      ["holds a lock for longer than anybody waits, and ends the connections that wait", () => lockAndTerminate(url)],
    ])("keeps all it acknowledged and comes back by itself where it %s", { timeout: 120_000 }, async (_, fail) => {
      await load.during(fail);
      await expectHeld(servers, load, url);
    });

    test(
      "answers its health while the database is frozen, and goes on when it thaws",
      { timeout: 120_000 },
      async () => {
        await load.during(async () => {
          postgres.freeze();
          try {
            for (const { address } of servers) expect((await fetch(`${address}/api/health`)).status).toBe(503);
          } finally {
            postgres.thaw();
          }
        });
        await expectHeld(servers, load, url);
        for (const { address } of servers) expect((await fetch(`${address}/api/health`)).status).toBe(200);
      },
    );
  });
}

describe("a server on a PostgreSQL without room", () => {
  const folder = mkdtempSync(join(tmpdir(), "drykeel-full-"));
  const small = mountSmall(folder);

  if (small === undefined)
    test("was not tried: no small file system can be made here", () => {
      expect(process.env["REQUIRE_POSTGRES"], "a full database is required here").toBeUndefined();
    });
  else test("refuses with 503 until there is room", { timeout: 180_000 }, () => fillAndFree(small, folder));

  afterAll(() => {
    if (small !== undefined) execFileSync("umount", ["-l", small]);
    rmSync(folder, { recursive: true });
  });
});

async function fillAndFree(small: string, folder: string): Promise<void> {
  const full = await startPostgres(small);
  if (full.kind !== "running") throw new Error(full.because);
  const url = await full.server.createDatabase();
  const server = await spawnServer(join(folder, "data"), { DATABASE_URL: url });
  const load = await createLoad([server], "x".repeat(900));
  const filler = join(small, "filler");
  await load.during(async () => {
    fillUp(filler);
    await expect.poll(() => load.refusals(), { timeout: 90_000 }).toBeGreaterThan(20);
    rmSync(filler);
    await full.server.restart("fast");
  });
  await expectHeld([server], load, url);
  await server.kill();
  await full.server.stop();
}

async function spawnTwo(folder: string, url: string): Promise<readonly SpawnedServer[]> {
  const first = await spawnServer(join(folder, "one"), { DATABASE_URL: url });
  return [first, await spawnServer(join(folder, "two"), { DATABASE_URL: url })];
}

async function expectHeld(servers: readonly SpawnedServer[], load: PushingLoad, url: string): Promise<void> {
  expect(load.wrong).toEqual([]);
  for (const server of servers) expect(await Promise.race([server.ended, "runs"]), server.output()).toBe("runs");
  expect(load.acknowledged.size).toBeGreaterThan(0);
  const store = await openPostgresStore(url);
  const found = await Promise.all([...load.acknowledged].map((id) => store.find(id)));
  await store.close();
  expect(found.filter((kept) => kept === undefined)).toEqual([]);
}

async function again(times: number, work: () => Promise<unknown>): Promise<void> {
  for (let k = 0; k < times; k += 1) await work();
}

async function terminateAll(url: string): Promise<void> {
  await ask(
    url,
    "select pg_terminate_backend(pid) from pg_stat_activity where datname = current_database() and pid <> pg_backend_pid()",
  );
}

/** Appends wait inside their transactions, each with a connection lent out: there is when a lost one ended the process. */
async function lockAndTerminate(url: string): Promise<void> {
  const client = await connect(url);
  await client.query("begin");
  await client.query("select * from chains for update");
  const waiting = "select count(*) as n from pg_stat_activity where wait_event_type = 'Lock'";
  await expect.poll(async () => Number((await client.query<{ n: string }>(waiting)).rows[0]?.n)).toBeGreaterThan(0);
  await client.query(
    "select pg_terminate_backend(pid) from pg_stat_activity where wait_event_type = 'Lock' and pid <> pg_backend_pid()",
  );
  await client.query("rollback");
  await client.end();
}

async function ask(url: string, text: string): Promise<void> {
  const client = await connect(url);
  await client.query(text);
  await client.end();
}

/** A connection that may be ended under it: what it says of that, nobody needs. */
async function connect(url: string): Promise<Client> {
  const client = new Client({ connectionString: url });
  client.on("error", () => undefined);
  await client.connect();
  return client;
}

/** A file system of 96 MB; undefined where this user or this computer cannot mount one. */
function mountSmall(folder: string): string | undefined {
  try {
    execFileSync("mount", ["-t", "tmpfs", "-o", "size=96m,mode=0777", "tmpfs", folder], { stdio: "pipe" });
    return folder;
  } catch {
    return undefined;
  }
}

function fillUp(file: string): void {
  for (const size of [1 << 20, 1 << 14]) {
    try {
      for (;;) writeFileSync(file, Buffer.alloc(size), { flag: "a" });
    } catch (thrown) {
      if ((thrown as { code?: string }).code !== "ENOSPC") throw thrown;
    }
  }
}
