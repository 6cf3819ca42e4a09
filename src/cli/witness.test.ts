import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  canonicalText,
  emptyChain,
  extendChain,
  hashEntry,
  headCode,
  judgeHead,
  PlaceTrees,
  readHeads,
  signHead,
  signHeadList,
  type SignedHead,
} from "#log";
import { readKeyFile } from "#store/keys";
import { openSqliteStore } from "#store/sqlite";
import Database from "better-sqlite3";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { EntryMaker } from "#test/contracts/sample-log.ts";
import { runDrykeel } from "./run.ts";

const root = join(import.meta.dirname, "..", "..");
const now = "2027-03-14T12:00:00.000Z";
const folder = mkdtempSync(join(tmpdir(), "drykeel-witness-"));
const database = join(folder, "drykeel.db");
const file = join(folder, "heads.ndjson");
const keyFile = join(folder, "keys", "signing.json");
const make = new EntryMaker(1);

async function run(...args: string[]): Promise<{ exit: number; out: string; error: string }> {
  const [out, error]: [string[], string[]] = [[], []];
  const terminal = {
    out: (line: string) => void out.push(line),
    error: (line: string) => void error.push(line),
    readInput: async () => "",
  };
  const exit = await runDrykeel(args, terminal, { root, dataDir: folder, now });
  return { exit, out: out.join("\n"), error: error.join("\n") };
}

async function append(count: number): Promise<void> {
  const store = await openSqliteStore(database);
  await store.append([...make.many(count, { place: "a" }), ...make.many(count, { place: "b" })], now);
  await store.close();
}

/**
 * What somebody can do who has the database, the program and the signing key: change a line and compute everything that
 * follows from it anew, the chain, the heads and the signatures, so that nothing in the database contradicts anything.
 */
async function rewriteConsistently(change: (text: string) => string, upTo = Infinity): Promise<SignedHead[]> {
  const store = await openSqliteStore(database);
  const kept = await store.since(["a", "b"], {}, 1000);
  await store.close();
  const entries = kept
    .filter(({ seq }) => seq <= upTo)
    .map(({ entry }) => JSON.parse(change(JSON.stringify(entry))) as typeof entry);
  const lines = ["a", "b"].flatMap((place) =>
    extendChain(
      emptyChain(place),
      entries.filter((one) => one.place === place),
      now,
    ),
  );
  const trees = new PlaceTrees();
  trees.take(lines);
  const heads = trees.heads().map((head) => signHead(head, now, readKeyFile(keyFile)!.secret));
  const raw = new Database(database);
  raw.exec("delete from log_entries; delete from chains; delete from signed_heads; delete from places_seen");
  const insert = raw.prepare(
    "insert into log_entries (place, seq, id, hash, content, received, entry) values (?, ?, ?, ?, ?, ?, ?)",
  );
  for (const { entry, seq, hash, received } of lines) {
    insert.run(entry.place, seq, entry.id, hash, hashEntry(entry), received, canonicalText(entry));
  }
  for (const head of heads) {
    raw.prepare("insert into chains values (?, ?, ?)").run(head.place, head.number, head.hash);
    raw.prepare("insert into places_seen values (?)").run(head.place);
    raw.prepare("insert into signed_heads values (?, ?, ?)").run(head.place, head.number, JSON.stringify(head));
  }
  const list = signHeadList(heads, now, readKeyFile(keyFile)!.secret);
  raw.prepare("update signed_lists set list = ?").run(JSON.stringify(list));
  raw.close();
  return heads;
}

beforeAll(() => append(7));
afterAll(() => rmSync(folder, { recursive: true }));

describe("drykeel witness", () => {
  let early: SignedHead[];

  it("writes a signed head of every place to a file, adds to it later, and verify holds the log against all", async () => {
    const { exit, out } = await run("witness", file);
    expect([exit, out]).toEqual([
      0,
      expect.stringMatching(/heads.ndjson: a to line 7, b to line 7; signed with \w{4} /),
    ]);
    await append(6);
    expect((await run("witness", file)).exit).toBe(0);
    early = readHeads(readFileSync(file, "utf8"));
    expect(early.map(({ place, number }) => `${place}${number}`)).toEqual(["a7", "b7", "a13", "b13"]);
    const verified = await run("verify", "--witness", file);
    expect(verified.out).toMatch(
      /a +sound: 13 entries.*\nb +sound: 13 entries.*\nHeld against 4 heads of the witness, signed with/s,
    );
    expect(verified.exit).toBe(0);
    expect(statSync(keyFile).mode & 0o777).toBe(0o600);
  });

  it("writes codes to the terminal and a sheet for paper", async () => {
    const { out } = await run("witness", "-");
    expect(readHeads(out).map(({ number }) => number)).toEqual([13, 13]);
    const paper = join(folder, "heads.pdf");
    expect((await run("witness", paper)).exit).toBe(0);
    expect(readFileSync(paper).subarray(0, 5).toString()).toBe("%PDF-");
  });

  it("goes on under a new key that the old one vouches for, and the old heads stand", async () => {
    const { exit, out } = await run("witness", file, "--new-key");
    expect([exit, out]).toEqual([0, expect.stringMatching(/vouches for it/)]);
    expect(new Set(readHeads(readFileSync(file, "utf8")).map(({ key }) => key)).size).toBe(2);
    expect((await run("verify", "--witness", file)).exit).toBe(0);
  });

  it("finds a log cut off since, head and all", async () => {
    await append(1);
    await run("witness", join(folder, "last.ndjson"));
    const raw = new Database(database);
    raw.exec("delete from log_entries where place = 'b' and seq = 14");
    raw.exec(
      "update chains set seq = 13, hash = (select hash from log_entries where place = 'b' and seq = 13) where place = 'b'",
    );
    const alone = await run("verify");
    expect([alone.exit, alone.out]).toEqual([
      1,
      expect.stringMatching(/b +BROKEN at entry 14: the head signed .* has line 14/),
    ]);
    expect((await run("witness", "-")).error).toMatch(/nothing is signed/);
    raw.exec("delete from signed_heads");
    expect(await run("verify")).toMatchObject({ exit: 1, out: expect.stringMatching(/its signed head was removed/) });
    raw.exec("update signed_lists set list = null");
    raw.close();
    rmSync(`${keyFile}.since`);
    expect((await run("verify")).exit).toBe(0);
    const held = await run("verify", "--witness", join(folder, "last.ndjson"));
    expect([held.exit, held.out]).toEqual([
      1,
      expect.stringMatching(/b +BROKEN at entry 14: .*has line 14; the log ends at line 13/),
    ]);
  });

  it("an insider who computes everything anew, with the station's own key, is found out by file, by paper and by a device", async () => {
    const forged = await rewriteConsistently((text) =>
      text.replace('"device-1"', '"device-9"').replace('"person-1"', '"person-9"'),
    );
    const alone = await run("verify");
    expect([alone.exit, alone.out]).toEqual([0, expect.stringMatching(/against this database only/)]);
    const byFile = await run("verify", "--witness", file);
    expect([byFile.exit, byFile.out]).toEqual([
      1,
      expect.stringMatching(/a +BROKEN at entry 7: .* has another history up to line 7/),
    ]);
    expect((await run("witness", file)).error).toMatch(/nothing is signed/);
    const paper = join(folder, "scanned.txt");
    writeFileSync(paper, headCode(early[0]!).replaceAll(/(.{50})/g, "$1\n"));
    const byPaper = await run("verify", "--witness", paper);
    expect([byPaper.exit, byPaper.out]).toEqual([1, expect.stringMatching(/a +BROKEN at entry 7/)]);
    const keys = new Set(readKeyFile(keyFile)!.keys.map(({ key }) => key));
    expect(judgeHead(early[0], forged[0]!, [], keys)).toMatchObject({ kind: "another-history" });
  });

  it("an insider who leaves the last line out and computes everything anew is found out likewise", async () => {
    await rewriteConsistently((text) => text, 12);
    expect((await run("verify")).exit).toBe(0);
    expect((await run("verify", "--witness", file)).out).toMatch(
      /a +BROKEN at entry 13: .*has line 13; the log ends at line 12/,
    );
  });

  it("says what to do with a witness that is missing, cut short or none", async () => {
    expect(await run("verify", "--witness", join(folder, "none"))).toMatchObject({
      exit: 2,
      error: expect.stringMatching(/CL-101 witness: .*ENOENT.*drykeel witness/),
    });
    writeFileSync(join(folder, "cut"), readFileSync(file, "utf8").slice(0, -40));
    expect(await run("verify", "--witness", join(folder, "cut"))).toMatchObject({
      exit: 2,
      error: expect.stringMatching(/LG-171/),
    });
    writeFileSync(join(folder, "letter"), "Dear Sir");
    expect(await run("verify", "--witness", join(folder, "letter"))).toMatchObject({
      exit: 2,
      error: expect.stringMatching(/LG-171/),
    });
    expect(await run("witness", join(folder, "letter"))).toMatchObject({ exit: 2 });
    expect(readFileSync(join(folder, "letter"), "utf8")).toBe("Dear Sir");
    expect(await run("witness")).toMatchObject({ exit: 2, error: expect.stringMatching(/CL-101 FILE.*heads.pdf/) });
    expect(await run("verify", "--witless")).toMatchObject({ exit: 2, error: expect.stringMatching(/CL-101/) });
    expect(await run("witness", join(folder, "no", "such", "x"))).toMatchObject({
      exit: 2,
      error: expect.stringMatching(/ENOENT/),
    });
  });
});
