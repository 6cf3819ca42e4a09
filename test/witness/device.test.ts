import "fake-indexeddb/auto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { emptyChain, extendChain, readHeads, type KeptEntry } from "#log";
import { openBrowserStore, type BrowserStore } from "#store/browser";
import { openKeyFile, rotateKey } from "#store/keys";
import { openMemoryStore } from "#store/memory";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { signingFrom } from "../../src/server/heads/signing.ts";
import { stageStation, type Browser, type StagedStation } from "../../src/server/start/staged-station.ts";
import { HeadWitness } from "../../src/web/device/witness/head-witness.ts";
import type { Doubt } from "../../src/web/device/witness/witness-note.ts";
import { WitnessDesk } from "../../src/web/device/witness/witness-desk.ts";
import { EntryMaker } from "../contracts/sample-log.ts";

const NOW = "2027-03-14T09:00:00.000Z";
let run = 0;

/** A device's door to a station, whichever stands at the address just now. */
function doorTo(browser: () => Browser) {
  return {
    ask: async <Value>({ path }: { readonly path: string }) => {
      const reply = await browser().send("GET", path);
      return { kind: "answered" as const, value: reply.json<Value>() };
    },
  };
}

describe("a device as a witness", () => {
  let folder: string;
  let device: BrowserStore;
  let lines: KeptEntry[];
  let stations: StagedStation[];
  let browser: Browser;
  let witness: HeadWitness;
  const make = new EntryMaker(7);

  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), "drykeel-device-witness-"));
    device = await openBrowserStore(`witness-${(run += 1)}`);
    lines = extendChain(emptyChain("harbour"), make.many(9, { place: "harbour" }), NOW);
    stations = [];
    witness = new HeadWitness(
      doorTo(() => browser),
      device,
      () => NOW,
    );
    await standUp(lines);
    expect(await witness.look()).toEqual([]);
  });
  afterEach(async () => {
    for (const { app } of stations) await app.close();
    await device.close();
    rmSync(folder, { recursive: true });
  });

  /** A station with these lines behind the same address, and with the same signing key. */
  async function standUp(kept: readonly KeptEntry[], withKey = true): Promise<void> {
    const store = openMemoryStore();
    await store.retake(kept);
    const keyFile = join(folder, "key.json");
    const signing = signingFrom(keyFile, await openKeyFile(keyFile, NOW));
    const station = await stageStation({ store, ...(withKey ? { signer: { signing, shelf: store } } : {}) });
    stations.push(station);
    browser = await station.signedIn("crew");
  }

  /** The log with one line changed and everything after it computed anew. */
  function recomputed(count: number, changed?: number): KeptEntry[] {
    const entries = lines
      .slice(0, count)
      .map(({ entry }, at) => (at + 1 === changed ? { ...entry, by: "person-9" } : entry));
    return extendChain(emptyChain("harbour"), entries, NOW);
  }

  /** Each staged station has people and so a "station" log of its own: what is asked is about the harbour. */
  async function doubtsOfHarbour(): Promise<readonly Doubt[]> {
    return (await witness.look()).filter(({ place }) => place === "harbour");
  }

  test("lets a log go on", async () => {
    await standUp([...lines, ...extendChain(lines.at(-1)!, make.many(3, { place: "harbour" }), NOW)]);
    expect(await doubtsOfHarbour()).toEqual([]);
    expect(readHeads(await witness.file()).find(({ place }) => place === "harbour")?.number).toBe(12);
  });

  test("finds an insider who recomputed the chain, the tree and the signatures with the station's own key", async () => {
    for (const changed of [1, 5, 9]) {
      await standUp(recomputed(9, changed));
      expect(await witness.look()).toContainEqual(
        expect.objectContaining({ place: "harbour", kind: "another-history" }),
      );
      await witness.takeNote();
      await standUp(lines);
      await witness.look();
      await witness.takeNote();
      expect(await witness.look()).toEqual([]);
    }
  });

  test("keeps saying so after more lines came, when the page is opened again, and when the true log comes back", async () => {
    const forged = recomputed(9, 3);
    await standUp([...forged, ...extendChain(forged.at(-1)!, make.many(4, { place: "harbour" }), NOW)]);
    const [doubt] = await doubtsOfHarbour();
    expect(doubt?.because).toMatch(/does not begin with line 9 of harbour/);
    const reopened = new HeadWitness(
      doorTo(() => browser),
      device,
      () => NOW,
    );
    expect(await reopened.doubts()).toContainEqual(doubt);
    await standUp(lines);
    expect(await reopened.look()).toContainEqual(doubt);
    expect(readHeads(await reopened.file())).toContainEqual(doubt?.seen);
  });

  test("is silent on what passes while a station put back is mended, and speaks where the mended log contradicts", async () => {
    let told = 0;
    const tell = () => (told += 1);
    const desk = new WitnessDesk({
      door: doorTo(() => browser),
      store: device,
      now: () => NOW,
      tell,
      fail: (cause) => expect.fail(String(cause)),
    });
    await standUp(lines.slice(0, 6));
    await desk.exchanged(true);
    expect(await witness.doubts()).toContainEqual(expect.objectContaining({ place: "harbour", kind: "cut-off" }));
    expect(desk.alarms()).toEqual([]);
    await standUp(recomputed(9, 8));
    await desk.exchanged(false);
    expect(desk.alarms()).toMatchObject([{ kind: "other-history" }]);
    expect(await witness.doubts()).toContainEqual(
      expect.objectContaining({ place: "harbour", kind: "another-history" }),
    );
    expect(told).toBeGreaterThan(0);
  });

  test("lets go of what it found while a station was mended once the log goes on from what was seen", async () => {
    await standUp(lines.slice(0, 6));
    const found = await witness.look(true);
    expect(found.filter(({ place }) => place === "harbour")).toMatchObject([{ kind: "cut-off", isPassing: true }]);
    await standUp([...lines, ...extendChain(lines.at(-1)!, make.many(2, { place: "harbour" }), NOW)]);
    expect(await doubtsOfHarbour()).toEqual([]);
    expect(readHeads(await witness.file()).find(({ place }) => place === "harbour")?.number).toBe(11);
  });

  test("does not let what it found before pass as the mending of a station put back", async () => {
    await standUp(recomputed(9, 3));
    const [before] = await doubtsOfHarbour();
    await witness.look(true);
    await standUp(lines);
    expect(await witness.look()).toContainEqual(before);
  });

  test("finds a log cut off, a place taken away and a station that signs no more", async () => {
    await standUp(recomputed(8));
    expect(await witness.look()).toContainEqual(expect.objectContaining({ place: "harbour", kind: "cut-off" }));
    await witness.takeNote();
    await standUp(lines);
    await witness.look();
    await standUp([]);
    expect(await witness.look()).toContainEqual(
      expect.objectContaining({ place: "harbour", because: expect.stringMatching(/harbour is not shown any more/) }),
    );
    await witness.takeNote();
    await standUp(lines);
    await witness.look();
    await witness.takeNote();
    expect(await witness.look()).toEqual([]);
    await standUp(lines, false);
    const doubts = await witness.look();
    expect(doubts.map(({ place }) => place)).toContain("harbour");
    for (const { because } of doubts)
      expect(because).toMatch(/^the station shows no signed head any more; line \d+ of/);
  });

  test("goes on with a new key that the old one vouches for, and doubts one that nothing vouches for", async () => {
    await rotateKey(join(folder, "key.json"), NOW);
    await standUp(lines);
    expect(await doubtsOfHarbour()).toEqual([]);
    rmSync(join(folder, "key.json"));
    await standUp(lines);
    expect(await witness.look()).toContainEqual(expect.objectContaining({ place: "harbour", kind: "not-signed" }));
  });
});
