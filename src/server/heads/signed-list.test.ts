import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { verifyLog } from "#station";
import { openKeyFile } from "#store/keys";
import { openSqliteStore, type SqliteStore } from "#store/sqlite";
import Database from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { EntryMaker } from "#test/contracts/sample-log.ts";
import { stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";
import { markOf } from "./signed-mark.ts";
import { signingFrom } from "./signing.ts";

const NOW = "2027-03-14T09:00:00.000Z";

async function askHeads(crew: Browser): Promise<void> {
  expect((await crew.send("GET", "/api/log/heads")).statusCode).toBe(200);
}

describe("the signed list of a server", () => {
  let folder: string;
  let store: SqliteStore;
  let stations: StagedStation[];
  const make = new EntryMaker(1);

  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), "drykeel-list-"));
    store = await openSqliteStore(join(folder, "drykeel.db"));
    stations = [];
    await store.append([...make.many(3, { place: "harbour" }), ...make.many(3, { place: "island" })], NOW);
  });
  afterEach(async () => {
    for (const { app } of stations) await app.close();
    await store.close();
    rmSync(folder, { recursive: true });
  });

  async function start(): Promise<StagedStation> {
    const keyFile = join(folder, "keys", "signing.json");
    const signing = signingFrom(keyFile, await openKeyFile(keyFile, NOW));
    const since = await markOf(keyFile, store, (line) => expect.fail(line));
    const station = await stageStation({ store, signer: { signing, shelf: store, since } });
    await station.app.listen({ port: 0, host: "127.0.0.1" });
    stations.push(station);
    return station;
  }

  function change(statements: string): void {
    const raw = new Database(join(folder, "drykeel.db"));
    raw.exec(statements);
    raw.close();
  }

  const since = async () => (await markOf(join(folder, "keys", "signing.json"), store, () => undefined)).read();
  const kinds = async () => (await verifyLog(store, [], await since())).map(({ verdict }) => verdict.kind);

  it("LOG-16: names every place from the start on, and again once a device asks", async () => {
    const station = await start();
    await vi.waitFor(async () => expect(await store.signedList()).toBeDefined());
    expect((await store.signedList())?.heads.map(({ place }) => place)).toEqual(["harbour", "island"]);
    expect(await since()).toBe(station.ambient.now());
    await askHeads(await station.signedIn("crew"));
    expect((await store.signedList())?.heads.map(({ place }) => place)).toEqual(["harbour", "island", "station"]);
    expect(new Set(await kinds())).toEqual(new Set(["sound"]));
  });

  it.each([
    ["all signed heads", "delete from signed_heads"],
    ["one signed head", "delete from signed_heads where place = 'island'"],
    ["the row of the list", "delete from signed_lists; delete from signed_heads"],
    ["the list and the signed heads", "update signed_lists set list = null; delete from signed_heads"],
    ["the list's own words", "update signed_lists set list = 'none'"],
    [
      "a place and all that is about it",
      ["log_entries", "chains", "places_seen", "signed_heads"]
        .map((table) => `delete from ${table} where place = 'island'`)
        .join("; "),
    ],
  ])("LOG-16: never covers up that %s went, while it runs or when it starts anew", async (_, statements) => {
    const station = await start();
    station.wait(60);
    const crew = await station.signedIn("crew");
    await askHeads(crew);
    await store.append(
      make.many(2, { place: "harbour" }),
      new Date(Date.parse(station.ambient.now()) + 1000).toISOString(),
    );
    change(statements);
    await askHeads(crew);
    expect(await kinds()).toContain("broken");
    await askHeads(crew.at(await start()));
    expect(await kinds()).toContain("broken");
  });
});
