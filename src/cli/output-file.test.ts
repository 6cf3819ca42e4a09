import {
  chmodSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openSqliteStore } from "#store/sqlite";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { EntryMaker } from "#test/contracts/sample-log.ts";
import { runDrykeel } from "./run.ts";

const root = join(import.meta.dirname, "..", "..");
const now = "2027-03-14T12:00:00.000Z";
const folder = mkdtempSync(join(tmpdir(), "drykeel-output-"));
const OWN = [
  "drykeel.db",
  "drykeel.db-wal",
  "drykeel.db-shm",
  "drykeel.db-journal",
  "server.lock",
  "mail-rounds",
  join("elsewhere", "key.json.since"),
  "keys",
  "keys/signing.json",
  "keys/other.ndjson",
  "photos/one.csv",
  "patterns/own.yaml",
  "issued-patterns/own@2.yaml",
  "witnessed/other.ndjson",
  "elsewhere/key.json",
];
const WRITING = [["export"], ["table", "kits"], ["witness"], ["backup"]] as const;

afterAll(() => rmSync(folder, { recursive: true }));

describe("a file that a command writes", () => {
  let dataDir: string;
  beforeEach(async () => {
    dataDir = mkdtempSync(join(folder, "station-"));
    for (const own of ["keys", "photos", "patterns", "elsewhere", "sub"]) mkdirSync(join(dataDir, own));
    const store = await openSqliteStore(join(dataDir, "drykeel.db"));
    await store.append(new EntryMaker(1).many(3, { place: "a" }), now);
    await store.close();
    writeFileSync(join(dataDir, "keys", "signing.json"), "the key", { mode: 0o600 });
  });

  async function run(...args: readonly string[]): Promise<{ exit: number; error: string }> {
    const error: string[] = [];
    const terminal = { out: () => {}, error: (line: string) => void error.push(line), readInput: async () => "" };
    const keyFile = join(dataDir, "elsewhere", "key.json");
    const exit = await runDrykeel(args, terminal, { root, dataDir, keyFile, now });
    return { exit, error: error.join("\n") };
  }

  async function isWhole(): Promise<boolean> {
    return (
      (await run("verify")).exit === 0 && readFileSync(join(dataDir, "keys", "signing.json"), "utf8") === "the key"
    );
  }

  describe.each(WRITING)("by %s %s", (...words: readonly (string | undefined)[]) => {
    const command = words.filter((word) => word !== undefined);

    it.each(OWN)("is never the station's own %s", async (own) => {
      const { exit, error } = await run(...command, join(dataDir, own));
      expect(error).toMatch(/^CL-113 FILE: got .*; allowed: a file that is none of the station's own in /);
      expect(exit).toBe(2);
      expect(await isWhole()).toBe(true);
    });

    it("is none of them by a link, a way round or another name either", async () => {
      const database = join(dataDir, "drykeel.db");
      symlinkSync(database, join(dataDir, "sub", "link.csv"));
      symlinkSync(join("..", "server.lock"), join(dataDir, "sub", "to-come.csv"));
      symlinkSync(dataDir, join(folder, `to-${command[0]}`));
      symlinkSync(join(dataDir, "sub"), join(folder, `sub-${command[0]}`));
      linkSync(database, join(dataDir, "sub", "hard.pdf"));
      symlinkSync(database, join(dataDir, "sub", "beside.csv.part"));
      const inSub = ["link.csv", "to-come.csv", "hard.pdf", "beside.csv"].map((name) => join(dataDir, "sub", name));
      const round = [`${folder}/to-${command[0]}/drykeel.db`, `${folder}/sub-${command[0]}/../drykeel.db`];
      for (const file of [...inSub, ...round, `${dataDir}/sub/../keys/x.csv`]) {
        expect([file, (await run(...command, file)).error]).toEqual([file, expect.stringMatching(/^CL-113 /)]);
      }
      expect(await isWhole()).toBe(true);
    });

    it("is none of those in its folders by a hard link either", async () => {
      const own = join(dataDir, "keys", "signing.json");
      const link = join(folder, `hard-${command[0]}.ndjson`);
      linkSync(own, link);
      expect((await run(...command, link)).error).toMatch(/^CL-113 /);
      expect(await isWhole()).toBe(true);
    });

    it("may lie elsewhere in the data folder", async () => {
      const [before, file] = [readdirSync(dataDir), join(dataDir, "written.ndjson")];
      expect(await run(...command, file)).toEqual({ exit: 0, error: "" });
      expect(readdirSync(dataDir)).toEqual([...new Set([...before, "written.ndjson"])].sort());
    });
  });

  it("is an export over no file but an earlier export, and for its own account alone", async () => {
    const [backup, notes, log] = ["monday.db", "notes.txt", "log.ndjson"].map((name) => join(dataDir, "sub", name));
    expect((await run("backup", backup!)).exit).toBe(0);
    writeFileSync(notes!, "kept");
    for (const file of [backup!, notes!]) {
      const before = readFileSync(file);
      const { exit, error } = await run("export", file);
      expect(error).toMatch(
        /^CL-116 FILE: got .*, which is no export; allowed: the name of no file yet, or of an earlier/,
      );
      expect([exit, readFileSync(file).equals(before)]).toEqual([2, true]);
    }
    for (let time = 0; time < 2; time++) {
      expect(await run("export", log!)).toEqual({ exit: 0, error: "" });
      expect(statSync(log!).mode & 0o777).toBe(0o600);
      chmodSync(log!, 0o644);
    }
  });

  it("is a backup only under the name of no file yet", async () => {
    const file = join(dataDir, "sub", "monday.db");
    expect((await run("backup", file)).exit).toBe(0);
    const before = readFileSync(file);
    const { exit, error } = await run("backup", file);
    expect(error).toMatch(/^CL-114 FILE: got .*monday\.db, which is there; .*Name the copy anew/);
    expect(exit).toBe(2);
    expect(readFileSync(file).equals(before)).toBe(true);
  });
});
