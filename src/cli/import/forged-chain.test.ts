import { demoAccounts, demoEntries } from "#demo";
import { chainHash, emptyChain, exportLines, type Entry, type KeptEntry } from "#log";
import { readPatternFolders } from "#store/patterns";
import { openSqliteStore } from "#store/sqlite";
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { runDrykeel } from "../run.ts";

const root = join(import.meta.dirname, "..", "..", "..");
const NOW = "2027-03-14T12:00:00Z";
const EARLIER = "2027-03-01T08:00:00Z";
const folder = mkdtempSync(join(tmpdir(), "drykeel-forged-"));
const { patterns } = readPatternFolders([join(root, "patterns")]);
const ADMINISTRATOR = demoAccounts().find(({ role }) => role === "administrator")!;
const CREW = demoAccounts().find(({ role }) => role === "crew")!;
const isWanted = ({ subject, kind }: Entry) => !/^(kit|casualty):/.test(subject) || kind === "kit-enrolled";

let lines = 0;
function entry(more: Partial<Entry>): Entry {
  const id = `0198f2c0-0000-7000-8000-${String((lines += 1)).padStart(12, "0")}`;
  const where = { place: "boathouse", subject: "kit:br-01", device: "phone" };
  const body = { sealSeen: "BR 1", containerSound: true };
  return { id, ...where, kind: "mustered", at: "2027-02-28T10:00:00Z", by: CREW.person, body, ...more };
}

function eve(): Entry {
  const said = { place: "station", subject: "person:eve", kind: "person-joined", by: ADMINISTRATOR.person };
  return entry({ ...said, body: { name: "Eve Forger", role: "administrator" } });
}

/** A chain as anybody can make one: on what they read, or on nothing. */
function chained(before: readonly KeptEntry[], added: readonly Entry[]): readonly KeptEntry[] {
  const all = [...before];
  for (const one of added) {
    const head = all.findLast((kept) => kept.entry.place === one.place) ?? emptyChain(one.place);
    const hash = chainHash(head.hash, one, EARLIER);
    all.push({ entry: one, seq: head.seq + 1, hash, received: EARLIER });
  }
  return all;
}

describe("a file with a chain that anybody can make, into a station that has a log", () => {
  let dataDir: string;
  let held: readonly KeptEntry[];

  beforeAll(async () => {
    const store = await openSqliteStore(join(folder, "original.db"));
    await store.append(demoEntries({ patterns, today: "2027-03-14", seed: 7 }).filter(isWanted), NOW);
    held = await store.since(
      (await store.heads()).map(({ place }) => place),
      {},
      100_000,
    );
    await store.close();
  });
  beforeEach(() => {
    dataDir = mkdtempSync(join(folder, "station-"));
    copyFileSync(join(folder, "original.db"), join(dataDir, "drykeel.db"));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  async function run(...args: readonly string[]): Promise<{ exit: number; out: string; error: string }> {
    const said = { out: [] as string[], error: [] as string[] };
    const out = (line: string) => void said.out.push(line);
    const terminal = { out, error: (line: string) => void said.error.push(line), readInput: async () => "" };
    const exit = await runDrykeel(args, terminal, { root, dataDir, now: NOW });
    return { exit, out: said.out.join("\n"), error: said.error.join("\n") };
  }

  function fileOf(kept: readonly KeptEntry[]): string {
    const file = join(dataDir, "given.ndjson");
    writeFileSync(file, [...exportLines(kept)].map((line) => `${line}\n`).join(""));
    return file;
  }

  async function added(): Promise<readonly KeptEntry[]> {
    const store = await openSqliteStore(join(dataDir, "drykeel.db"));
    const kept = await store.since(
      (await store.heads()).map(({ place }) => place),
      {},
      100_000,
    );
    await store.close();
    const before = new Set(held.map(({ entry: { id } }) => id));
    return kept.filter(({ entry: { id } }) => !before.has(id));
  }

  const forged: readonly [string, () => readonly KeptEntry[]][] = [
    ["begun anew", () => chained([], [eve()])],
    ["begun anew, of a place that the station has not", () => chained([], [entry({ place: "nowhere" })])],
    ["gone on with from the station's own export", () => chained(held, [eve()])],
    [
      "that leaves the station's own midway",
      () =>
        chained(
          held.filter(({ seq }) => seq < 3),
          [eve()],
        ),
    ],
  ];

  it.each(forged)("takes none of one %s where nobody speaks for it", async (_, make) => {
    const { exit, out, error } = await run("import", fileOf(make()));
    expect(out).toMatch(/: 0 entries taken in/);
    expect(error).toMatch(/nothing shows that this station had them and nobody spoke for them: 1 line, by /);
    expect([exit, await added()]).toEqual([1, []]);
  });

  it("lets nobody speak whom the file itself brings", async () => {
    const { exit, error } = await run("import", fileOf(chained([], [eve()])), "--word", "Eve Forger");
    expect([exit, error]).toEqual([2, expect.stringMatching(/^CL-123 NAME/)]);
    expect(await added()).toEqual([]);
  });

  it("lets whoever brings it have no more than the server would let them", async () => {
    const file = fileOf(chained([], [{ ...eve(), by: CREW.person }]));
    expect((await run("import", file, "--for", CREW.name)).error).toMatch(/SN-1\d\d .*entry /);
    expect(await added()).toEqual([]);
  });

  it("tells of lines taken for who brings them, received now", async () => {
    const own = entry({});
    expect((await run("import", fileOf(chained([], [own])), "--for", CREW.name)).exit).toBe(0);
    const told = { kind: "lines-imported", by: CREW.person, body: { lines: [own.id], by: "bringer", from: ["phone"] } };
    const kept = await added();
    expect(kept).toMatchObject([{ entry: own, received: NOW }, { entry: told }]);
    expect((await run("verify")).exit).toBe(0);
  });

  it("takes what follows on as the file has it, by an administrator's word, and tells of it", async () => {
    const more = [...Array.from({ length: 600 }, () => entry({})), eve(), entry({ place: "new" })];
    const file = fileOf(chained(held, more));
    expect((await run("import", file)).exit).toBe(1);
    const { exit, out } = await run("import", file, "--word", ADMINISTRATOR.name);
    expect([exit, out]).toEqual([0, expect.stringContaining(`: ${more.length} entries taken in`)]);
    const kept = await added();
    const told = kept.filter(({ entry: { kind } }) => kind === "lines-imported");
    const given = new Map(chained(held, more).map((one) => [one.entry.id, one]));
    for (const one of kept.filter((line) => !told.includes(line))) expect(one).toEqual(given.get(one.entry.id));
    const named = told.flatMap(({ entry: { body } }) => (body as { lines: string[] }).lines);
    expect(named.sort()).toEqual(more.map(({ id }) => id).sort());
    expect((await run("verify")).exit).toBe(0);
    expect((await run("import", file)).out).toMatch(/: 0 entries taken in/);
    expect(readFileSync(file, "utf8")).toContain("Eve Forger");
  });
});
