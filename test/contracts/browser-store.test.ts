import "fake-indexeddb/auto";
import { Dexie } from "dexie";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { emptyChain, extendChain, hashBytes, parseExport, type ExportItem } from "#log";
import { openBrowserStore, type BrowserStore, type OutboxLine } from "#store/browser";
import { describeLogStore } from "./log-store.ts";
import { EntryMaker } from "./sample-log.ts";

const RECEIVED = "2027-02-01T00:00:00.000Z";
const names = Array.from({ length: 1000 }, (_, at) => `drykeel-${at}`);

async function newHouse() {
  const name = names.pop() ?? "drykeel";
  return { open: () => openBrowserStore(name), clear: () => Dexie.delete(name), lasting: true, shared: true };
}

describeLogStore("browser", newHouse);

describe("a device's own store", () => {
  let name: string;
  let store: BrowserStore;
  let make: EntryMaker;

  beforeEach(async () => {
    name = names.pop() ?? "drykeel";
    store = await openBrowserStore(name);
    make = new EntryMaker(1);
  });
  afterEach(async () => {
    await store.close();
    await Dexie.delete(name);
  });

  function lineOf(change: Partial<OutboxLine> = {}): OutboxLine {
    return { entry: make.next(), state: "unsent", ...change };
  }

  test("keeps lines in the order they were written, over a reopening", async () => {
    const [one, two, three] = [lineOf(), lineOf(), lineOf()];
    await store.putOutbox([one, two]);
    await store.putOutbox([three]);
    await store.close();
    store = await openBrowserStore(name);
    expect(await store.outbox()).toEqual([one, two, three]);
  });

  test("keeps a refused line in its place, with the reason", async () => {
    const [one, two] = [lineOf(), lineOf()];
    await store.putOutbox([one, two]);
    const fault = { code: "LG-107", field: "at", got: "x", allowed: "y", remedy: "z" };
    const refused: OutboxLine = { ...one, state: "refused", faults: [fault], aheadMs: 9 };
    await store.putOutbox([refused]);
    expect(await store.outbox()).toEqual([refused, two]);
    const corrected = lineOf();
    await store.replaceOutbox([one.entry.id], [corrected]);
    expect(await store.outbox()).toEqual([two, corrected]);
  });

  test("takes what the station numbered, and takes it out of the outbox", async () => {
    const [one, two] = [lineOf(), lineOf()];
    await store.putOutbox([one, two]);
    const kept = extendChain(emptyChain(one.entry.place), [one.entry], RECEIVED);
    await store.takePulled(kept, { "harbour-1": 1 });
    await store.takePulled(kept, { "harbour-1": 1 });
    expect(await store.kept({})).toEqual(kept);
    expect(await store.kept({ "harbour-1": 1 })).toEqual([]);
    expect(await store.outbox()).toEqual([two]);
    expect(await store.cursor()).toEqual({ "harbour-1": 1 });
    expect(await store.heads()).toEqual([{ place: "harbour-1", seq: 1, hash: kept[0]?.hash }]);
  });

  test("says so when the station gives another line under a number held here, and changes nothing", async () => {
    const held = extendChain(emptyChain("harbour-1"), make.many(3), RECEIVED);
    await store.takePulled(held, { "harbour-1": 3 });
    const other = extendChain(held[1] ?? emptyChain("harbour-1"), make.many(2), RECEIVED);
    await expect(store.takePulled(other, { "harbour-1": 4 })).rejects.toThrow(/ST-143 Line 3 of place harbour-1/);
    expect(await store.kept({})).toEqual(held);
    expect(await store.cursor()).toEqual({ "harbour-1": 3 });
  });

  test("takes no line that does not follow on those held, or does not give its hash", async () => {
    const held = extendChain(emptyChain("harbour-1"), make.many(5), RECEIVED);
    await store.takePulled(held.slice(0, 2), { "harbour-1": 2 });
    const changed = held.map((one) => (one.seq === 4 ? { ...one, entry: { ...one.entry, by: "x" } } : one));
    await expect(store.takePulled(changed.slice(2), { "harbour-1": 5 })).rejects.toThrow(/ST-144 .* line 4 of place/);
    await expect(store.takePulled(held.slice(3), { "harbour-1": 5 })).rejects.toThrow(/ST-144 .* line 4 of place/);
    expect(await store.kept({})).toEqual(held.slice(0, 2));
    await store.takePulled(held.slice(2), { "harbour-1": 5 });
    expect(await store.kept({})).toEqual(held);
  });

  test("sets aside what the station does not have, counts it, and lets go of it once it is all there again", async () => {
    const lines = make.many(4);
    const held = extendChain(emptyChain("harbour-1"), lines, RECEIVED);
    const end = { place: "harbour-1", seq: 4, hash: held[3]!.hash, voucher: "epoch.mac" };
    await store.takePulled(held, { "harbour-1": 4 }, [end]);
    expect(await store.shelf.locate("harbour-1")).toEqual([1, 3, 4].map((seq) => ({ seq, hash: held[seq - 1]!.hash })));
    expect(await store.shelf.setAside({ "harbour-1": 2, elsewhere: 0 })).toBe(2);
    expect(await store.cursor()).toEqual({ "harbour-1": 2 });
    expect(await store.kept({})).toEqual(held.slice(0, 2));
    expect((await store.shelf.lost()).map(({ entry }) => entry)).toEqual(lines.slice(2));
    expect((await store.shelf.branches()).map(({ common, next, unvouched }) => [common.seq, next, unvouched])).toEqual([
      [2, { seq: 4, hash: end.hash, voucher: end.voucher }, false],
    ]);

    const anew = extendChain(held[1]!, [make.next(), ...lines.slice(2)], RECEIVED);
    await store.takePulled(anew.slice(0, 2), { "harbour-1": 4 });
    await store.shelf.settle();
    expect((await store.shelf.lost()).map(({ entry }) => entry)).toEqual(lines.slice(3));
    await store.takePulled(anew.slice(2), { "harbour-1": 5 });
    await store.shelf.settle();
    expect([await store.shelf.lost(), await store.shelf.isOpen()]).toEqual([[], false]);
  });

  test("knows which photos are still to be sent", async () => {
    const [one, two] = [Uint8Array.of(1), Uint8Array.of(2)].map((bytes) => ({
      hash: hashBytes(bytes),
      mime: "image/png",
      bytes,
    }));
    if (one === undefined || two === undefined) throw new Error("two photos");
    await store.putPhoto(two, "2027-01-02T00:00:00Z");
    await store.putPhoto(one, "2027-01-01T00:00:00Z");
    expect((await store.unsentPhotos()).map((photo) => photo.hash)).toEqual([one.hash, two.hash]);
    await store.markPhotoSent(one.hash);
    expect(await store.unsentPhotos()).toEqual([{ hash: two.hash, since: "2027-01-02T00:00:00Z" }]);
    expect(await store.photo(one.hash)).toEqual(one);
  });

  test("gives all it holds as a file that can be read back", async () => {
    const line = lineOf();
    const kept = extendChain(emptyChain("harbour-1"), make.many(2), RECEIVED);
    const bytes = Uint8Array.of(1, 2, 3);
    const photo = { hash: hashBytes(bytes), mime: "image/jpeg", bytes };
    await store.takePulled(kept, { "harbour-1": 2 });
    await store.putOutbox([line]);
    await store.putPhoto(photo, "2027-01-01T00:00:00Z");
    const items: ExportItem[] = [];
    for await (const item of parseExport(store.exportAll())) items.push(item);
    expect(items).toEqual([
      ...kept.map((one) => ({ kind: "kept", kept: one })),
      { kind: "unsent", entry: line.entry },
      { kind: "photo", ...photo },
    ]);
  });

  test("keeps notes, and erases everything", async () => {
    await store.putNote("who", { person: "ane" });
    await store.putOutbox([lineOf()]);
    await store.append([make.next()], RECEIVED);
    expect(await store.note("who")).toEqual({ person: "ane" });
    await store.erase();
    expect(await store.note("who")).toBeUndefined();
    expect([await store.outbox(), await store.kept({}), await store.heads()]).toEqual([[], [], []]);
  });

  test("lets go when another window brings the storage up to date, and says so", async () => {
    await store.close();
    const told = { superseded: 0 };
    store = await openBrowserStore(name, { onSuperseded: () => (told.superseded += 1) });
    const newer = new Dexie(name);
    newer.version(3).stores({ more: "id" });
    await newer.open();
    expect(told.superseded).toBe(1);
    await expect(store.outbox()).rejects.toThrow(/ST-141/);
    newer.close();
  });
});
