import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { hashBytes } from "#log";
import { openSqliteStore } from "#store/sqlite";
import Database from "better-sqlite3";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { EntryMaker } from "#test/contracts/sample-log.ts";
import { runDrykeel } from "./run.ts";

const root = join(import.meta.dirname, "..", "..");
const now = "2027-03-14T12:00:00.000Z";
const folder = mkdtempSync(join(tmpdir(), "drykeel-verify-"));
const original = join(folder, "original.db");
const bytes = Uint8Array.from([0xff, 0xd8, 0xff, ...Array.from({ length: 2997 }, (_, at) => at % 256)]);
const photo = { hash: hashBytes(bytes), mime: "image/jpeg", bytes };

beforeAll(async () => {
  const store = await openSqliteStore(join(folder, "drykeel.db"));
  const make = new EntryMaker(1);
  await store.append([...make.many(8, { place: "a" }), ...make.many(4, { place: "b" })], now);
  await store.append(
    [make.next({ place: "a", body: { photos: [{ hash: photo.hash }, { hash: "ab".repeat(32) }] } })],
    now,
  );
  await store.putPhoto(photo);
  await store.backupTo(original);
  await store.close();
});
afterAll(() => rmSync(folder, { recursive: true }));

async function run(args: readonly string[], dataDir: string): Promise<{ exit: number; out: string; errors: string }> {
  const [out, errors]: [string[], string[]] = [[], []];
  const error = (line: string) => void errors.push(line);
  const terminal = { out: (line: string) => void out.push(line), error, readInput: async () => "" };
  const exit = await runDrykeel(args, terminal, { root, dataDir, now });
  return { exit, out: out.join("\n"), errors: errors.join("\n") };
}

/** Tables without which nothing is verified. */
const TABLES = [
  "log_entries",
  "chains",
  "places_seen",
  "photos",
  "photos_seen",
  "signed_heads",
  "signed_lists",
  "epochs",
];
const verify = (dataDir: string) => run(["verify"], dataDir);

describe("drykeel verify", () => {
  let copy: string;
  beforeEach(async () => {
    copy = mkdtempSync(join(folder, "copy-"));
    const source = new Database(original);
    await source.backup(join(copy, "drykeel.db"));
    source.close();
  });

  function change(statements: string): void {
    const raw = new Database(join(copy, "drykeel.db"));
    raw.exec(statements);
    expect(raw.prepare("select total_changes() as changes").get()).not.toEqual({ changes: 0 });
    raw.close();
  }

  it("finds nothing wrong with a log as it was kept, and tells of photos that are not there", async () => {
    const { exit, out } = await verify(copy);
    expect(out).toMatch(/^a {2}sound: 9 entries, last hash [0-9a-f]{64}; photos named that have not come yet: 1$/m);
    expect(out).toMatch(/^b {2}sound: 4 entries/m);
    expect(exit).toBe(0);
  });

  it.each([
    [
      "the last line deleted",
      "delete from log_entries where place = 'a' and seq = 9",
      /head kept with the place says line 9/,
    ],
    ["every line of a place deleted", "delete from log_entries where place = 'b'", /b +BROKEN.*the place had lines/],
    [
      "a line in the middle deleted",
      "delete from log_entries where place = 'a' and seq = 4",
      /number 4 was expected, 5/,
    ],
    ["the head zeroed", "update chains set seq = 0, hash = '' where place = 'a'", /says line 0, the last is line 9/],
    ["the head put back", "update chains set seq = 8 where place = 'a'", /says line 8, the last is line 9/],
    ["the head's hash changed", "update chains set hash = 'ff' where place = 'a'", /head kept .* another hash/],
    ["the head removed", "delete from chains where place = 'a'", /says line 0, the last is line 9/],
    [
      "a place removed, head and all",
      "delete from log_entries where place = 'b'; delete from chains where place = 'b'",
      /b +BROKEN.*the place had lines, and has none/,
    ],
    ["a place forgotten", "delete from places_seen where place = 'b'", /b +BROKEN.*not among those/],
    [
      "a time of receipt changed",
      "update log_entries set received = '2027-03-14T12:00:01.000Z' where place = 'a' and seq = 5",
      /BROKEN at entry 5: .*time of receipt/,
    ],
    [
      "the last time of receipt changed",
      "update log_entries set received = '2020-01-01T00:00:00.000Z' where place = 'a' and seq = 9",
      /BROKEN at entry 9: .*time of receipt/,
    ],
    [
      "an id changed",
      "update log_entries set id = 'other' where place = 'a' and seq = 2",
      /BROKEN at entry 2: .*under the id other/,
    ],
    [
      "a content hash changed",
      "update log_entries set content = 'other' where place = 'a' and seq = 2",
      /BROKEN at entry 2: .*content hash/,
    ],
    [
      "a chain hash changed",
      "update log_entries set hash = 'other' where place = 'a' and seq = 9",
      /BROKEN at entry 9/,
    ],
    [
      "an entry changed",
      "update log_entries set entry = replace(entry, '\"by\":\"', '\"by\":\"x') where place = 'a' and seq = 3",
      /BROKEN at entry 3/,
    ],
    [
      "an entry written otherwise with the same meaning",
      "update log_entries set entry = replace(entry, '{\"at\"', '{ \"at\"') where place = 'a' and seq = 3",
      /BROKEN at entry 3: its text is no entry in canonical form/,
    ],
    [
      "an entry that is no JSON",
      "update log_entries set entry = 'x' where place = 'a' and seq = 3",
      /BROKEN at entry 3/,
    ],
    [
      "a line moved to another place",
      "update log_entries set place = 'b', seq = 5 where place = 'a' and seq = 9",
      /b +BROKEN at entry 5: it belongs to place a/,
    ],
    [
      "two lines exchanged",
      "update log_entries set seq = 99 where place = 'a' and seq = 3; update log_entries set seq = 3 where place = 'a' and seq = 4; update log_entries set seq = 4 where place = 'a' and seq = 99",
      /BROKEN at entry 3/,
    ],
    [
      "a line moved before the first",
      "update log_entries set seq = 0 where place = 'a' and seq = 9; update chains set seq = 8, hash = (select hash from log_entries where place = 'a' and seq = 8) where place = 'a'",
      /a +BROKEN at entry 0: number 0 stands before the first line, where none can/,
    ],
    [
      "a line slipped in before the first",
      "insert into log_entries select place, -3, 'other', hash, content, received, entry from log_entries where place = 'b' and seq = 1",
      /b +BROKEN at entry -3: number -3 stands before the first line/,
    ],
    [
      "a false beginning of a place without a line",
      `insert into chains values ('c', 0, '${"0".repeat(64)}')`,
      /c +BROKEN at entry 0: the head kept with the place, before its first line, is not the beginning of its log/,
    ],
    [
      "a head before the beginning",
      `insert into chains values ('c', -1, '${"0".repeat(64)}')`,
      /c +BROKEN at entry -1: the head kept with the place says line -1/,
    ],
    ["a line beyond the head", "update chains set seq = 8 where place = 'a'", /says line 8, the last is line 9/],
    ["the bytes of a photo replaced", "update photos set bytes = x'0102'", /a +BROKEN at entry 9: the bytes of photo/],
    ["a photo put under another name", "update photos set hash = 'cd'", /BROKEN at entry 0: the bytes of photo cd/],
    ["a photo deleted", "delete from photos", /a +BROKEN at entry 9: photo [0-9a-f]{64} was here and is not any more/],
    [
      "a photo kept as something else",
      "update photos set mime = 'text/html'",
      /a +BROKEN at entry 9: photo [0-9a-f]{64} is image\/jpeg by its bytes, and is kept as text\/html/,
    ],
    [
      "a photo kept as something else in both tables",
      "update photos set mime = 'text/html'; update photos_seen set mime = 'text/html'",
      /a +BROKEN at entry 9: photo [0-9a-f]{64} is image\/jpeg by its bytes, and is kept as text\/html/,
    ],
    ["the lives of the database deleted", "delete from epochs", /BROKEN at entry 0: the database says of no life/],
    ["the voucher key changed", "update voucher_keys set secret = 'short'", /BROKEN at entry 0: the key of .*vouchers/],
    ["the voucher key deleted", "delete from voucher_keys", /BROKEN at entry 0: the key of the station's vouchers/],
    ["a photo forgotten", "delete from photos_seen", /BROKEN at entry 9: photo .* is not among those that ever came/],
  ])("finds %s", async (_, statements, said) => {
    change(statements);
    const { exit, out } = await verify(copy);
    expect(out).toMatch(said);
    expect(exit).toBe(1);
  });

  it.each([
    ["is no instant", "update log_entries set received = received || ' ' where place = 'a' and seq = 9"],
    ["is empty", "update log_entries set received = '' where place = 'a' and seq = 9"],
    ["is no text", "update log_entries set received = x'00' where place = 'a' and seq = 9"],
  ])(
    "LOG-9: a time of receipt that %s is a fault of its line, and all other places are judged",
    async (_, statement) => {
      change(statement);
      const { exit, out } = await verify(copy);
      expect(out).toMatch(/^a +BROKEN at entry 9: its time of receipt, .*, is no instant$/m);
      expect(out).toMatch(/^b +sound: 4 entries/m);
      expect(exit).toBe(1);
    },
  );

  it("LOG-9: a last line that is no JSON is a fault of that line, and all other places are judged", async () => {
    change("update log_entries set entry = 'x' where place = 'a' and seq = 9");
    const { exit, out } = await verify(copy);
    expect(out).toMatch(/^a +BROKEN at entry 9: its text is no entry in canonical form$/m);
    expect(out).toMatch(/^b +sound: 4 entries/m);
    expect(exit).toBe(1);
  });

  it.each([
    ...TABLES.map((table) => [`drop table ${table}`, `The table ${table} is missing`]),
    ["delete from kysely_migration where name = '0006-photos-seen'", "The row 0006-photos-seen is missing"],
    ["delete from kysely_migration where name = '0011-signed-lists'", "The row 0011-signed-lists is missing"],
    ["delete from kysely_migration", "The row 0001-log is missing"],
    ["drop table kysely_migration", "The row 0001-log is missing"],
  ])("STORE-20 of a database after %s says in words what is missing", async (statement, said) => {
    const raw = new Database(join(copy, "drykeel.db"));
    raw.exec(statement);
    raw.close();
    const { exit, errors } = await verify(copy);
    expect(errors).toContain(said);
    expect(exit).toBe(3);
  });

  it("stands behind a backup that is proved: opened elsewhere, and found sound or not", async () => {
    const good = await run(["backup", join(copy, "monday.db"), "--prove"], copy);
    expect(good.out).toContain("Proved: put back elsewhere it opens");
    expect(good.exit).toBe(0);
    change("delete from log_entries where place = 'b'");
    const bad = await run(["backup", join(copy, "tuesday.db"), "--prove"], copy);
    expect(bad.out).toMatch(/NOT PROVED: b, entry \d+: the place had lines/);
    expect(bad.exit).toBe(1);
  });
});
