import { PROBLEM, type LogStore, type Problem, type PushReply, type SecretStore, type SignedIn } from "#station";
import { openMemoryStore } from "#store/memory";
import { openPostgresStore } from "#store/postgres";
import { openSqliteStore } from "#store/sqlite";
import type { LightMyRequestResponse } from "fastify";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { startPostgres } from "#test/contracts/postgres-server.ts";
import { createRoster } from "./sign-in/roster.ts";
import { stageStation, type Browser, type StagedStation } from "./start/staged-station.ts";

type Store = LogStore & SecretStore;
type Office = Browser & { readonly me: SignedIn };

const postgres = await startPostgres();
const folder = mkdtempSync(join(tmpdir(), "drykeel-last-"));
afterAll(async () => {
  rmSync(folder, { recursive: true });
  if (postgres.kind === "running") await postgres.server.stop();
});
const ROUNDS = 4;

/** Stores by name, each opened twice: for two servers that stand beside one another, or one that is spoken to twice. */
const houses: Record<string, (round: number) => Promise<readonly [Store, Store]>> = {
  "one server, in memory": async () => {
    const store = openMemoryStore();
    return [store, store];
  },
  "one server on SQLite": async (round) => {
    const store = await openSqliteStore(join(folder, `${round}.db`));
    return [store, store];
  },
  ...(postgres.kind === "running"
    ? {
        "two servers on one PostgreSQL": async () => {
          const url = await postgres.server.createDatabase();
          return [await openPostgresStore(url), await openPostgresStore(url)];
        },
      }
    : {}),
};

describe.each(Object.entries(houses))("two administrators who remove each other at one moment: %s", (_, open) => {
  it("leave one of the two, and the other is told why", { timeout: 60_000 }, async () => {
    for (let round = 0; round < ROUNDS; round++) await removeEachOther(await open(round));
  });
});

if (postgres.kind === "unavailable") {
  it(`two servers on PostgreSQL were not tested, since none could be started: ${postgres.because}`, () => {
    expect(process.env["REQUIRE_POSTGRES"], "PostgreSQL is required here").toBeUndefined();
  });
}

async function removeEachOther([one, two]: readonly [Store, Store]): Promise<void> {
  const north = await stageStation({ store: one });
  const south = one === two ? north : await stageStation({ store: two });
  const ann = await north.signedIn("administrator");
  const bea = atServer(south, await north.signedIn("administrator", "office-2"));
  const replies = await Promise.all([remove(north, ann, bea), remove(south, bea, ann)]);
  const [done, refused] = replies.toSorted((a, b) => a.statusCode - b.statusCode);
  expect(done?.json<PushReply>().verdicts).toMatchObject([{ verdict: "accepted" }]);
  expect([refused?.statusCode, refused?.json<Problem>().code]).toEqual([403, PROBLEM.personLeft]);
  const roster = createRoster(one);
  await roster.catchUp();
  expect(roster.administratorsAfter([])).toHaveLength(1);
  for (const station of new Set([north, south])) await station.app.close();
  for (const store of new Set([one, two])) await store.close();
}

/** The same person in the same browser, at the other server. */
function atServer(station: StagedStation, who: Office): Office {
  return { ...who.at(station), me: who.me };
}

/** One push, of the line that removes the other. */
async function remove(station: StagedStation, who: Office, other: Office): Promise<LightMyRequestResponse> {
  const leave = { subject: `person:${other.me.person.id}`, kind: "person-left", body: {} };
  return who.send("POST", "/api/log/push", { entries: [station.line(who.me, leave)] });
}
