import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openSqliteStore } from "#store/sqlite";
import Database from "better-sqlite3";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { EntryMaker } from "#test/contracts/sample-log.ts";
import { runDrykeel } from "./run.ts";

const root = join(import.meta.dirname, "..", "..");
const early = "2027-03-14T12:00:00.000Z";
const late = "2027-03-15T12:00:00.000Z";
const folder = mkdtempSync(join(tmpdir(), "drykeel-verify-signed-"));
const original = join(folder, "original");
const make = new EntryMaker(1);

async function run(args: readonly string[], dataDir: string, now: string): Promise<{ exit: number; out: string }> {
  const out: string[] = [];
  const line = (text: string) => void out.push(text);
  const terminal = { out: line, error: line, readInput: async () => "" };
  const exit = await runDrykeel(args, terminal, { root, dataDir, now });
  return { exit, out: out.join("\n") };
}

async function append(dataDir: string, places: readonly string[], at: string): Promise<void> {
  const store = await openSqliteStore(join(dataDir, "drykeel.db"));
  await store.append(
    places.flatMap((place) => make.many(4, { place })),
    at,
  );
  await store.close();
}

const GONE = ["log_entries", "chains", "places_seen", "signed_heads"]
  .map((table) => `delete from ${table} where place = 'b'`)
  .join("; ");

describe("drykeel verify, alone, of a log that was signed", () => {
  let copy: string;

  beforeAll(async () => {
    await append(original, ["a", "b", "station"], early);
    expect((await run(["witness", "-"], original, early)).exit).toBe(0);
    await append(original, ["a"], late);
  });
  afterAll(() => rmSync(folder, { recursive: true }));
  beforeEach(() => {
    copy = mkdtempSync(join(folder, "copy-"));
    cpSync(original, copy, { recursive: true });
  });

  function change(statements: string): void {
    const raw = new Database(join(copy, "drykeel.db"));
    raw.exec(statements);
    raw.close();
  }

  it("LOG-16: calls no place sound whose signed head is gone", async () => {
    change("delete from signed_heads where place = 'b'");
    const { exit, out } = await run(["verify"], copy, late);
    expect([exit, out.match(/^b .*/gm)]).toEqual([1, [expect.stringMatching(/BROKEN.*signed head was removed/)]]);
    expect(out).toMatch(/^a +sound/m);
  });

  it("finds nothing wrong with it as it was kept", async () => {
    expect(await run(["verify"], copy, late)).toMatchObject({ exit: 0, out: expect.stringMatching(/^b +sound/m) });
  });

  it.each([
    [
      "the number beside a signed head raised, so that no newer one takes its place",
      "update signed_heads set seq = 99 where place = 'b'",
      /^b +BROKEN at entry 99: its signed head is of line 4/m,
    ],
    ["all signed heads deleted", "delete from signed_heads", /^a +BROKEN.*its signed head was removed/m],
    [
      "one signed head deleted",
      "delete from signed_heads where place = 'b'",
      /^b +BROKEN.*its signed head was removed/m,
    ],
    [
      "all signed heads deleted, and the list of them",
      "delete from signed_heads; delete from signed_lists",
      /BROKEN.*the list of signed heads is gone/,
    ],
    [
      "all signed heads deleted, and the list emptied as if nothing had ever been signed",
      "delete from signed_heads; update signed_lists set list = null",
      /BROKEN.*signed since 2027-03-14.*no list of signed heads is kept/,
    ],
    ["a whole place deleted, with all that belongs to it", GONE, /^b +BROKEN.*signed 2027-03-14.* has line 4/m],
    [
      "a whole place deleted, and the list emptied",
      `${GONE}; update signed_lists set list = null`,
      /BROKEN.*signed since 2027-03-14.*no list of signed heads is kept/,
    ],
    [
      "the list changed",
      `update signed_lists set list = replace(list, '"place":"b"', '"place":"c"')`,
      /BROKEN.*the list of signed heads was changed/,
    ],
  ])("LOG-16: finds %s", async (_, statements, said) => {
    change(statements);
    const { exit, out } = await run(["verify"], copy, late);
    expect(out).toMatch(said);
    expect(exit).toBe(1);
  });

  it("LOG-16: finds that a place was left out of the list, by an older list put in its place", async () => {
    const before = new Database(join(copy, "drykeel.db"));
    const { list } = before.prepare("select list from signed_lists").get() as { list: string };
    before.close();
    await append(copy, ["c"], late);
    expect((await run(["witness", "-"], copy, late)).exit).toBe(0);
    change(`update signed_lists set list = '${list}'`);
    const { exit, out } = await run(["verify"], copy, late);
    expect(out).toMatch(/^c +BROKEN.*the list signed 2027-03-14T12:00:00.000Z does not name/m);
    expect(exit).toBe(1);
  });

  it("LOG-16: signs nothing over what was removed, so that it is found later too", async () => {
    change("delete from signed_heads");
    expect((await run(["witness", "-"], copy, late)).out).toMatch(/nothing is signed/);
    expect((await run(["verify"], copy, late)).exit).toBe(1);
  });

  it("finds nothing wrong with what the version before signed, without a list, and names it in a list from then on", async () => {
    change("update signed_lists set list = null");
    rmSync(join(copy, "keys", "signing.json.since"));
    expect((await run(["verify"], copy, late)).exit).toBe(0);
    expect((await run(["witness", "-"], copy, late)).exit).toBe(0);
    change(GONE);
    expect((await run(["verify"], copy, late)).exit).toBe(1);
  });

  it("finds nothing wrong with a copy from before the first signing, nor with another database beside the key", async () => {
    change("delete from signed_heads; update signed_lists set list = null; delete from log_entries where seq > 4");
    change(
      "update chains set seq = 4, hash = (select hash from log_entries l where l.place = chains.place and seq = 4)",
    );
    change("update log_entries set received = received");
    const put = await run(["verify"], copy, late);
    expect(put.out).not.toMatch(/BROKEN/);
    rmSync(join(copy, "drykeel.db"));
    await append(copy, ["a"], late);
    expect((await run(["verify"], copy, late)).exit).toBe(0);
  });
});
