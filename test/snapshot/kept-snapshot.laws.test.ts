import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeEach, describe, expect, test } from "vitest";
import { demoEntries } from "#demo";
import type { Pattern } from "#kit";
import { compareEntries } from "#log";
import {
  readSnapshot,
  sendSnapshot,
  SNAPSHOT_FORM,
  type LogStore,
  type SecretStore,
  type SnapshotReply,
  type SnapshotShelf,
} from "#station";
import { readPatternFolders } from "#store/patterns";
import { openPostgresStore } from "#store/postgres";
import { openSqliteStore } from "#store/sqlite";
import { WholeLog } from "../../src/server/log/whole-log.ts";
import { SnapshotDesk } from "../../src/server/snapshot/snapshot-desk.ts";
import { SnapshotKeeper, writeSnapshot } from "../../src/server/snapshot/snapshot-keeper.ts";
import { startPostgres } from "../contracts/postgres-server.ts";

type Store = LogStore & SecretStore & SnapshotShelf;
type Snapshot = SnapshotReply & { readonly kind: "snapshot" };

interface House {
  readonly open: () => Promise<Store>;
  readonly clear: () => Promise<unknown>;
}

const { patterns } = readPatternFolders(["patterns"]);
/** People, places and the first kits with their first months, in the order of their times. */
const LINES = demoEntries({ patterns, today: "2026-11-28", seed: 7 })
  .filter(({ subject }) => !/^(kit|casualty):/.test(subject) || /^kit:br-0[1-3]$/.test(subject))
  .toSorted(compareEntries)
  .slice(0, 900);
const [FIRST, LATER] = [LINES.slice(0, 600), LINES.slice(600)];
const RECEIVED = "2026-11-28T12:00:00.000Z";

const postgres = await startPostgres();
afterAll(async () => {
  if (postgres.kind === "running") await postgres.server.stop();
});

async function sqliteHouse(): Promise<House> {
  const folder = mkdtempSync(join(tmpdir(), "drykeel-snapshot-"));
  return {
    open: () => openSqliteStore(join(folder, "drykeel.db")),
    clear: async () => rmSync(folder, { recursive: true }),
  };
}

const houses: (readonly [string, () => Promise<House>])[] = [["SQLite", sqliteHouse]];
if (postgres.kind === "running") {
  const { server } = postgres;
  houses.push([
    "PostgreSQL",
    async () => {
      const url = await server.createDatabase();
      return { open: () => openPostgresStore(url), clear: () => server.dropDatabase(url) };
    },
  ]);
}

describe.each(houses)("the snapshot that a server keeps beside its log, in %s", (_, newHouse) => {
  let house: House;
  let store: Store;
  let failures: string[];

  beforeEach(async () => {
    house = await newHouse();
    store = await house.open();
    failures = [];
    await store.append(FIRST, RECEIVED);
    await startedAt("2027-01-01T00:00:00Z").warm();
  });
  afterEach(async () => {
    await store.close();
    await house.clear();
  });

  const keeperFor = (folded: readonly Pattern[] = patterns) =>
    new SnapshotKeeper({ shelf: store, secrets: store, patterns: () => folded });

  /** The desk of a server that has just started, by its clock. */
  function startedAt(now: string, folded: readonly Pattern[] = patterns): SnapshotDesk {
    return new SnapshotDesk({
      store,
      wholeLog: new WholeLog(store, () => folded),
      ambient: { now: () => now },
      keeper: keeperFor(folded),
      failed: (cause) => failures.push(String(cause)),
      fewLines: 10,
    });
  }

  async function reopen(): Promise<void> {
    await store.close();
    store = await house.open();
  }

  test("is what the first device is given after a restart, before the log was read", async () => {
    await reopen();
    const kept = (await store.shelvedSnapshot())!;
    const { text, brotli } = await startedAt("2027-02-02T00:00:00Z").written();
    const reply = JSON.parse(text) as Snapshot;
    expect([reply.lines, readSnapshot(reply.snapshot).at]).toEqual([600, "2027-01-01T00:00:00Z"]);
    expect(brotli).toEqual(kept.packed);
  });

  test("is given with the lines that came since, and the next start has those too", async () => {
    await store.append(LATER, RECEIVED);
    await reopen();
    const desk = startedAt("2027-02-02T00:00:00Z");
    expect(await desk.now()).toMatchObject({ lines: 600 });
    await desk.warm();
    const next = (await desk.now()) as Snapshot;
    expect([next.lines, readSnapshot(next.snapshot).at]).toEqual([900, "2027-02-02T00:00:00Z"]);
    expect(failures).toEqual([]);
    expect(await startedAt("2027-03-03T00:00:00Z").now()).toMatchObject({ lines: 900 });
  });

  test("STORE-13 is of no use where the log does not hold its heads: shorter, or another one", async () => {
    const kept = (await store.shelvedSnapshot())!;
    const key = await store.voucherKey();
    for (const log of [FIRST.slice(0, 599), [...FIRST.slice(0, -1), { ...FIRST.at(-1)!, by: "another" }]]) {
      const other = await newHouse();
      const put = await other.open();
      await put.append(log, RECEIVED);
      await put.shelveSnapshot(kept);
      const keeper = new SnapshotKeeper({
        shelf: put,
        secrets: { voucherKey: async () => key },
        patterns: () => patterns,
      });
      const failed = (cause: unknown) => void failures.push(String(cause));
      const wholeLog = new WholeLog(put, () => patterns);
      const ambient = { now: () => RECEIVED };
      const desk = new SnapshotDesk({ store: put, wholeLog, ambient, keeper, failed, fewLines: 10 });
      expect(await keeper.recall()).toBeDefined();
      expect(await desk.now()).toEqual({ kind: "none", because: "reading" });
      await desk.warm();
      expect(await desk.now()).toMatchObject({ lines: log.length });
      await put.close();
      await other.clear();
    }
  });

  test("is not read where one byte of it was changed, or it was sealed by another station", async () => {
    const kept = (await store.shelvedSnapshot())!;
    const flipped = kept.packed.map((byte, at) => (at === kept.packed.length >> 1 ? byte ^ 1 : byte));
    const seal = kept.seal.replace(/^./, (figure) => (figure === "0" ? "1" : "0"));
    for (const changed of [{ packed: flipped }, { seal }, { seal: "" }, { about: kept.about.replace("}", " }") }]) {
      await store.shelveSnapshot({ ...kept, ...changed });
      expect(await keeperFor().recall()).toBeUndefined();
      const desk = startedAt(RECEIVED);
      expect(await desk.now()).toEqual({ kind: "none", because: "reading" });
      await desk.warm();
    }
    await store.shelveSnapshot(kept);
    const stranger = { shelf: store, secrets: { voucherKey: async () => "0".repeat(64) }, patterns: () => patterns };
    expect(await new SnapshotKeeper(stranger).recall()).toBeUndefined();
    expect(await keeperFor().recall()).toBeDefined();
  });

  test("is not read where it was made by another form, or by a pattern that reads otherwise now", async () => {
    const kept = (await store.shelvedSnapshot())!;
    const changed = patterns.map((pattern, at) =>
      at === 0 ? { ...pattern, name: `${pattern.name} changed` } : pattern,
    );
    expect(await keeperFor(changed).recall()).toBeUndefined();
    expect(JSON.parse(kept.about)).toMatchObject({ form: SNAPSHOT_FORM });
    const older = kept.about.replace(`"form":${SNAPSHOT_FORM}`, `"form":${SNAPSHOT_FORM - 1}`);
    await store.shelveSnapshot({ ...kept, about: older });
    expect(await keeperFor().recall()).toBeUndefined();
  });

  test("that is sealed, of this log, and false, is found out once the log was read, said, and thrown away", async () => {
    const { reply } = (await keeperFor().recall())!;
    const told = readSnapshot(reply.snapshot);
    const [kit, ...others] = told.kits;
    const kits = [{ ...kit!, name: "A kit that never was" }, ...others];
    const lie: Snapshot = { ...reply, snapshot: sendSnapshot({ ...told, kits }) };
    await keeperFor().keep(await writeSnapshot(lie));
    await store.append(LATER, RECEIVED);
    const desk = startedAt("2027-02-02T00:00:00Z");
    expect(JSON.stringify(await desk.now())).toContain("A kit that never was");
    await desk.warm();
    expect(failures).toEqual([expect.stringContaining("is not what the log says")]);
    expect(JSON.stringify(await desk.now())).not.toContain("A kit that never was");
    expect(JSON.stringify((await keeperFor().recall())!.reply)).not.toContain("A kit that never was");
  });

  test("costs nobody anything where it cannot be read: the log is read as ever", async () => {
    const kept = (await store.shelvedSnapshot())!;
    const keeper = keeperFor();
    await keeper.keep({ text: "", brotli: Uint8Array.of(1, 2, 3) });
    const desk = startedAt("2027-02-02T00:00:00Z");
    expect(await desk.now()).toEqual({ kind: "none", because: "reading" });
    await desk.warm();
    expect(await desk.now()).toMatchObject({ kind: "snapshot", lines: 600 });
    expect(failures).toHaveLength(1);
    expect((await store.shelvedSnapshot())!.packed.length).toBeGreaterThan(kept.packed.length / 2);
  });
});

test("PostgreSQL takes part, where one could be started", () => {
  if (postgres.kind === "running") expect(houses.map(([name]) => name)).toEqual(["SQLite", "PostgreSQL"]);
  else expect(process.env["REQUIRE_POSTGRES"], postgres.because).toBeUndefined();
});
