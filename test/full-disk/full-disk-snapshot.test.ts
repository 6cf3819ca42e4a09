import { mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { demoEntries } from "#demo";
import { compareEntries } from "#log";
import { readPatternFolders } from "#store/patterns";
import { openSqliteStore } from "#store/sqlite";
import { WholeLog } from "../../src/server/log/whole-log.ts";
import { SnapshotDesk } from "../../src/server/snapshot/snapshot-desk.ts";
import { SnapshotKeeper, writeSnapshot } from "../../src/server/snapshot/snapshot-keeper.ts";

const { patterns } = readPatternFolders(["patterns"]);
const LINES = demoEntries({ patterns, today: "2026-11-28", seed: 7 }).toSorted(compareEntries).slice(0, 600);
const RECEIVED = "2026-11-28T12:00:00.000Z";
const folder = mkdtempSync(join(tmpdir(), "drykeel-full-snapshot-"));
const path = join(folder, "drykeel.db");

type Store = Awaited<ReturnType<typeof openSqliteStore>>;

function deskOf(store: Store, failures: unknown[]): { desk: SnapshotDesk; keeper: SnapshotKeeper } {
  const keeper = new SnapshotKeeper({ shelf: store, secrets: store, patterns: () => patterns });
  const wholeLog = new WholeLog(store, () => patterns);
  const ambient = { now: () => "2026-11-28T12:00:00Z" };
  const failed = (cause: unknown) => void failures.push(cause);
  return { desk: new SnapshotDesk({ store, wholeLog, ambient, keeper, failed, fewLines: 10 }), keeper };
}

async function everyId(store: Store): Promise<ReadonlySet<string>> {
  const places = (await store.heads()).map(({ place }) => place);
  return new Set((await store.since(places, {}, LINES.length + 1)).map(({ entry }) => entry.id));
}

describe("a disk that fills while the summary for new devices is written", () => {
  afterAll(() => rmSync(folder, { recursive: true }));

  it("costs that one copy: it is told, the log stays whole, devices get their summary, and the next start with room keeps one", async () => {
    const roomy = await openSqliteStore(path);
    await roomy.append(LINES, RECEIVED);
    await roomy.close();
    const full = await openSqliteStore(path, { limit: statSync(path).size });
    const failures: unknown[] = [];
    const { desk, keeper } = deskOf(full, failures);
    await desk.warm();
    expect(failures).toMatchObject([{ code: "ST-102" }]);
    expect(await keeper.recall()).toBeUndefined();
    expect(await desk.now()).toMatchObject({ kind: "snapshot", lines: LINES.length });
    expect((await everyId(full)).size).toBe(LINES.length);
    await full.close();

    const again = await openSqliteStore(path);
    const after = deskOf(again, failures);
    await after.desk.warm();
    expect(failures).toHaveLength(1);
    expect(await after.keeper.recall()).toMatchObject({ reply: { lines: LINES.length } });
    await again.close();
  });

  it("leaves the copy before in its place, whole", async () => {
    const store = await openSqliteStore(path);
    const before = (await deskOf(store, []).keeper.recall())!;
    await store.close();
    const full = await openSqliteStore(path, { limit: statSync(path).size });
    const { keeper } = deskOf(full, []);
    const greater = { ...before.reply, padding: Array.from({ length: 60_000 }, (_, at) => String(Math.sin(at))) };
    await expect(keeper.keep(await writeSnapshot(greater))).rejects.toMatchObject({ code: "ST-102" });
    expect((await keeper.recall())?.written.text).toBe(before.written.text);
    await full.close();
  });
});
