import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setImmediate as breathe } from "node:timers/promises";
import Database from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { verifyChain, type ChainHead } from "#log";
import { STEPS } from "#store/sql";
import { openSqliteStore } from "#store/sqlite";
import { describeLogStore } from "./log-store.ts";
import { EntryMaker } from "./sample-log.ts";
import { describeMailShelf } from "./mail-shelf.ts";
import { describePatternShelf } from "./pattern-shelf.ts";
import { describeSecretStore } from "./secret-store.ts";
import { describeHeadShelf } from "./head-shelf.ts";
import { describeSnapshotShelf } from "./snapshot-shelf.ts";

const RECEIVED = "2027-02-01T00:00:00.000Z";

async function newHouse() {
  const folder = await mkdtemp(join(tmpdir(), "drykeel-sqlite-"));
  const path = join(folder, "log.sqlite");
  const falsify = async (place: string, { seq, hash }: ChainHead) => {
    const raw = new Database(path);
    raw.prepare("insert into chains (place, seq, hash) values (?, ?, ?)").run(place, seq, hash);
    raw.close();
  };
  const clear = () => rm(folder, { recursive: true });
  return { open: () => openSqliteStore(path), clear, falsify, lasting: true, shared: true };
}

describeLogStore("SQLite", newHouse);
describeSecretStore("SQLite", newHouse);
describeSnapshotShelf("SQLite", newHouse);
describeHeadShelf("SQLite", newHouse);
describeMailShelf("SQLite", newHouse);
describePatternShelf("SQLite", newHouse);

describe("SQLite alone", () => {
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), "drykeel-sqlite-"));
  });
  afterEach(() => rm(folder, { recursive: true }));

  test("backs up while entries are being appended, to one sound moment of the log", async () => {
    const store = await openSqliteStore(join(folder, "log.sqlite"));
    const make = new EntryMaker(1);
    await store.append(make.many(5000), RECEIVED);
    const copying = store.backupTo(join(folder, "copies", "backup.sqlite"));
    for (let time = 0; time < 50; time++) await store.append(make.many(3), RECEIVED);
    await copying;
    await store.close();
    const copy = await openSqliteStore(join(folder, "copies", "backup.sqlite"));
    const kept = await copy.since([`harbour-1`], {}, 10_000);
    expect(kept.length).toBeGreaterThanOrEqual(5000);
    expect(verifyChain(kept)).toMatchObject({ kind: "sound", count: await copy.count() });
    await copy.close();
  });

  test("backs up while another program never stops appending", async () => {
    const path = join(folder, "log.sqlite");
    const [store, other] = await Promise.all([openSqliteStore(path), openSqliteStore(path)]);
    const make = new EntryMaker(1);
    await other.append(make.many(5000), RECEIVED);
    const done = new AbortController();
    const copying = store.backupTo(join(folder, "copy.sqlite")).finally(() => done.abort());
    while (!done.signal.aborted) {
      await other.append(make.many(1), RECEIVED);
      await breathe();
    }
    const { bytes } = await copying;
    expect(bytes).toBeGreaterThan(1_000_000);
    await Promise.all([store.close(), other.close()]);
  });

  test("says what to do where the folder cannot be", async () => {
    await writeFile(join(folder, "file"), "");
    const opening = openSqliteStore(join(folder, "file", "data", "log.sqlite"));
    await expect(opening).rejects.toThrow(/ST-110 database: got .*set DATA_DIR/);
  });

  test("says what to do where the file is something else, and leaves it alone", async () => {
    const path = join(folder, "log.sqlite");
    await writeFile(path, "This is a letter, not a database.".repeat(100));
    await expect(openSqliteStore(path)).rejects.toThrow(/ST-111/);
  });

  test("says so where another program holds the database, and works again when it lets go", async () => {
    const path = join(folder, "log.sqlite");
    const store = await openSqliteStore(path, { patience: 50 });
    const holder = new Database(path);
    holder.exec("begin immediate");
    const make = new EntryMaker(1);
    await expect(store.append([make.next()], RECEIVED)).rejects.toThrow(/ST-101 The database is locked/);
    holder.exec("rollback");
    holder.close();
    expect((await store.append([make.next()], RECEIVED)).accepted[0]?.seq).toBe(1);
    await store.close();
  });

  test("keeps nothing of an append when the disk is full, and says so", async () => {
    const store = await openSqliteStore(join(folder, "log.sqlite"), { limit: 300_000 });
    const make = new EntryMaker(1);
    const { accepted } = await store.append(make.many(3), RECEIVED);
    await expect(store.append(make.many(2000), RECEIVED)).rejects.toThrow(/ST-102 The disk is full/);
    expect(await store.since(["harbour-1"], {}, 10_000)).toEqual(accepted);
    await store.close();
  });

  test("refuses a database that a newer version has been at", async () => {
    const path = join(folder, "log.sqlite");
    await (await openSqliteStore(path)).close();
    const raw = new Database(path);
    raw.exec("insert into kysely_migration (name, timestamp) values ('9999-later', '2030-01-01')");
    raw.close();
    await expect(openSqliteStore(path)).rejects.toThrow(/ST-130/);
  });

  test("tells of what another program appended to the file, once", async () => {
    const path = join(folder, "log.sqlite");
    const [store, other] = await Promise.all([openSqliteStore(path), openSqliteStore(path)]);
    const heard: (readonly string[])[] = [];
    store.onAppend((places) => heard.push(places));
    await other.append(new EntryMaker(1).many(2), RECEIVED);
    await expect.poll(() => heard, { timeout: 10_000 }).toEqual([[]]);
    await store.append([new EntryMaker(2).next()], RECEIVED);
    expect(heard).toEqual([[], ["harbour-2"]]);
    await Promise.all([store.close(), other.close()]);
  });

  test("steps are numbered without gaps", () => {
    const numbers = STEPS.map(([name]) => Number(name.slice(0, 4)));
    expect(numbers).toEqual(STEPS.map((_, at) => at + 1));
  });

  test("opened twice at the same moment, one waits for the other to make the tables", async () => {
    const path = join(folder, "log.sqlite");
    const stores = await Promise.all([openSqliteStore(path), openSqliteStore(path)]);
    expect(await Promise.all(stores.map((store) => store.count()))).toEqual([0, 0]);
    await Promise.all(stores.map((store) => store.close()));
  });
});

describe("a line that lies outside its place's log", () => {
  test.each([0, -7, 99])("under number %i is not told as kept, and nothing is taken beside it", async (number) => {
    const folder = await mkdtemp(join(tmpdir(), "drykeel-sqlite-"));
    const path = join(folder, "log.sqlite");
    const make = new EntryMaker(1);
    const [first, second, third] = make.many(3);
    const store = await openSqliteStore(path);
    await store.append([first!, second!], RECEIVED);
    const raw = new Database(path);
    raw.prepare("update log_entries set seq = ? where seq = 2").run(number);
    raw.prepare("update chains set seq = 1, hash = (select hash from log_entries where seq = 1)").run();
    raw.close();
    await expect(store.find(second!.id)).rejects.toMatchObject({ code: "ST-129" });
    await expect(store.append([third!, second!], RECEIVED)).rejects.toMatchObject({ code: "ST-129" });
    expect((await store.append([first!], RECEIVED)).repeated).toEqual([first!.id]);
    expect(await store.find(third!.id)).toBeUndefined();
    await store.close();
    await rm(folder, { recursive: true });
  });
});
