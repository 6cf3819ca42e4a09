import "fake-indexeddb/auto";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import type { Entry, KeptEntry } from "#log";
import { allSteps, patternKey } from "#kit";
import { outlookOf } from "#readiness";
import { createStationFold, type LogStore } from "#station";
import { openBrowserStore } from "#store/browser";
import { readPatternFolders } from "#store/patterns";
import { openSqliteStore } from "#store/sqlite";
import { ENGLISH, inWords } from "#words";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { runDrykeel } from "../../src/cli/run.ts";
import { restoreDatabase, type DumpedDatabase } from "./restore-database.ts";

/* What version 0.1.0 wrote: the demo's log with two kits, as a data folder and as a device's storage, and its fold. */

const ROOT = join(import.meta.dirname, "..", "..");
const unpack = (name: string) => gunzipSync(readFileSync(join(import.meta.dirname, "0.1.0", name)));
const FOLD = JSON.parse(unpack("fold.json.gz").toString()) as Readonly<Record<string, unknown>>;
const LINES = 1717;
const NOW = "2027-03-14T12:00:00Z";
const { patterns } = readPatternFolders([join(ROOT, "patterns")]);

const NEW_LINE: Entry = {
  id: "0198f2c0-0000-7000-8000-00000000000b",
  place: "station",
  subject: "station",
  kind: "station-named",
  at: "2027-03-14T11:30:00+00:00",
  by: "somebody",
  device: "tablet",
  body: { name: "Another name" },
};

/** As the fold was written down: what is undefined is not there. New fields may have come since. */
function foldOf(kept: readonly KeptEntry[]): unknown {
  const fold = createStationFold(patterns);
  fold.add(kept.map(({ entry }) => entry));
  const { kits, casualties, people, places, boats, devices } = fold.read();
  return JSON.parse(JSON.stringify({ kits, casualties, people, places, boats, devices }));
}

async function everything(store: Pick<LogStore, "heads" | "since">): Promise<readonly KeptEntry[]> {
  const places = (await store.heads()).map(({ place }) => place);
  const pages = places.map((place) => store.since([place], {}, LINES));
  return (await Promise.all(pages)).flat();
}

describe("a data folder of version 0.1.0", () => {
  const folder = mkdtempSync(join(tmpdir(), "drykeel-golden-"));
  beforeAll(() => writeFileSync(join(folder, "drykeel.db"), unpack("drykeel.db.gz")));
  afterAll(() => rmSync(folder, { recursive: true }));

  it("opens with every line it held, and says of kits, casualties and people what it said", async () => {
    const store = await openSqliteStore(join(folder, "drykeel.db"));
    const kept = await everything(store);
    await store.close();
    expect(kept).toHaveLength(LINES);
    expect(foldOf(kept)).toMatchObject(FOLD);
  });

  it("passes drykeel verify", async () => {
    const said: string[] = [];
    const terminal = { out: (line: string) => void said.push(line), error: (line: string) => void said.push(line) };
    const surroundings = { root: ROOT, dataDir: folder, now: NOW };
    const exit = await runDrykeel(["verify"], { ...terminal, readInput: async () => "" }, surroundings);
    expect(`${exit} ${said.join(" ")}`).toMatch(/^0 /);
  });

  it("takes new lines", async () => {
    const store = await openSqliteStore(join(folder, "drykeel.db"));
    await store.append([NEW_LINE], NOW);
    expect(await store.count()).toBe(LINES + 1);
    await store.close();
  });
});

describe("a kit of version 0.1.0", () => {
  const log = JSON.parse(unpack("device.json.gz").toString()) as DumpedDatabase;
  beforeAll(() => restoreDatabase("golden-kit", log));

  it("stays on the version of the pattern it was built to, and says that another is current", async () => {
    const fold = createStationFold(patterns);
    fold.add((await everything(await openBrowserStore("golden-kit"))).map(({ entry }) => entry));
    const { kits, policy } = fold.read();
    const shelf = new Map(patterns.map((pattern) => [patternKey(pattern), pattern]));
    const ready = kits.filter(({ seal }) => seal !== undefined);
    expect(ready.length).toBeGreaterThan(0);
    for (const kit of ready) {
      expect(kit.pattern).toMatch(/@1$/);
      const own = shelf.get(kit.pattern)!;
      const { conditions } = outlookOf(kit, own, policy, { otherPatternVersions: patterns });
      const told = "Built to version 1 of its pattern; version 2 is current.";
      expect(conditions.filter(({ reason }) => inWords(reason.said, ENGLISH.standing) === told)).toMatchObject([
        { bears: "limits" },
      ]);
    }
  });

  it("is asked the lines of 0.1.0, not those of version 2", () => {
    const [one, two] = [1, 2].map((number) =>
      allSteps(patterns.find(({ id, version }) => id === "brinnet-450" && version === number)!).map(({ id }) => id),
    );
    expect(one).toContain("count-strips");
    expect(two).not.toEqual(one);
  });
});

describe("a device of version 0.1.0", () => {
  const dump = JSON.parse(unpack("device.json.gz").toString()) as DumpedDatabase;
  beforeAll(() => restoreDatabase("golden", dump));

  it("opens with every line it held and what it had not sent, and says of all what it said", async () => {
    const store = await openBrowserStore("golden");
    const kept = await everything(store);
    const outbox = await store.outbox();
    await store.close();
    expect(kept).toHaveLength(LINES);
    expect(outbox).toMatchObject([{ state: "unsent", entry: { kind: "mustered", body: { sealSeen: "00417" } } }]);
    expect(foldOf(kept)).toMatchObject(FOLD);
  });

  it("takes new lines", async () => {
    const store = await openBrowserStore("golden");
    await store.putOutbox([{ entry: NEW_LINE, state: "unsent" }]);
    expect(await store.outbox()).toHaveLength(2);
    await store.close();
  });
});
