import { emptyChain, extendChain, hashBytes, verifyChain, type ChainHead, type Entry, type KeptEntry } from "#log";
import type { AppendListener, LogStore, Photo } from "#station";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { EntryMaker } from "./sample-log.ts";

/** One database that a test may open as often as it likes, as several processes would. */
export interface StoreHouse {
  open(): Promise<LogStore>;
  /** Removes the database. */
  clear(): Promise<void>;
  /** False for a store that forgets when closed. */
  readonly lasting: boolean;
  /** Writes where a place's chain stands past the store; absent where nothing but the store can write. */
  falsify?(place: string, head: ChainHead): Promise<void>;
  /** False for a store that no two processes share. */
  readonly shared: boolean;
}

const RECEIVED = "2027-02-01T00:00:00.000Z";
const EARLIER = "2026-12-24T00:00:00.000Z";

/** Entries as another log kept them, each place by itself, received earlier. */
function extendAll(entries: readonly Entry[]): KeptEntry[] {
  const places = [...new Set(entries.map(({ place }) => place))];
  return places.flatMap((place) =>
    extendChain(
      emptyChain(place),
      entries.filter((entry) => entry.place === place),
      EARLIER,
    ),
  );
}

/** What every store of the log must do, whatever it is made of. */
export function describeLogStore(name: string, newHouse: () => Promise<StoreHouse>): void {
  describe(`log store: ${name}`, () => {
    let house: StoreHouse;
    let store: LogStore;
    let make: EntryMaker;
    let run = 0;

    beforeEach(async () => {
      house = await newHouse();
      store = await house.open();
      make = new EntryMaker((run += 1));
    });
    afterEach(async () => {
      await store.close();
      await house.clear();
    });

    async function all(from: LogStore = store): Promise<readonly KeptEntry[]> {
      const heads = await from.heads();
      return from.since(
        heads.map((head) => head.place),
        {},
        1_000_000,
      );
    }

    test("begins empty", async () => {
      expect(await store.heads()).toEqual([]);
      expect(await store.count()).toBe(0);
      expect(await store.since(["harbour"], {}, 10)).toEqual([]);
      expect(await store.find(make.next().id)).toBeUndefined();
      expect(await store.append([], RECEIVED)).toEqual({ accepted: [], repeated: [], clashing: [] });
    });

    test("STORE-1 keeps what it accepts as it was, numbered and chained by place", async () => {
      const entries = [make.next({ place: "b" }), make.next({ place: "a" }), make.next({ place: "b" })];
      const { accepted } = await store.append(entries, RECEIVED);
      expect(accepted.map((kept) => kept.entry)).toEqual(entries);
      expect(accepted.map((kept) => kept.seq)).toEqual([1, 1, 2]);
      expect(accepted.every((kept) => kept.received === RECEIVED)).toBe(true);
      expect(await all()).toEqual([accepted[1], accepted[0], accepted[2]]);
      expect(await store.find(entries[2]?.id ?? "")).toEqual(accepted[2]);
      expect(await store.count()).toBe(3);
      expect(await store.heads()).toEqual([
        { place: "a", seq: 1, hash: accepted[1]?.hash },
        { place: "b", seq: 2, hash: accepted[2]?.hash },
      ]);
    });

    test("keeps optional fields, and their absence", async () => {
      const first = make.next();
      const second = make.next({ pattern: "harbour-pump@3", after: [first.id], body: {} });
      await store.append([first, second], RECEIVED);
      const [one, two] = await all();
      expect(one?.entry).toStrictEqual(first);
      expect(two?.entry).toStrictEqual(second);
    });

    test("STORE-2 keeps the same entry once, ten times sent, in calls and within one call", async () => {
      const entry = make.next();
      const turned = Object.fromEntries(Object.entries(entry).reverse()) as unknown as Entry;
      const first = await store.append([entry, turned], RECEIVED);
      expect(first).toMatchObject({ accepted: [{ seq: 1 }], repeated: [entry.id], clashing: [] });
      for (let time = 0; time < 9; time++) {
        const again = await store.append([turned], "2027-03-01T00:00:00.000Z");
        expect(again).toEqual({ accepted: [], repeated: [entry.id], clashing: [] });
      }
      expect(await all()).toEqual(first.accepted);
    });

    test("STORE-3 tells of a known id with other content, changes nothing kept, and keeps the rest", async () => {
      const entry = make.next();
      const forged = { ...entry, by: "person-2" };
      const moved = { ...entry, place: "elsewhere" };
      const other = make.next();
      await store.append([entry], RECEIVED);
      const result = await store.append([forged, moved, other], RECEIVED);
      expect(result).toMatchObject({ accepted: [{ entry: other, seq: 2 }], clashing: [entry.id, entry.id] });
      expect((await store.find(entry.id))?.entry).toEqual(entry);
      expect((await store.heads()).map((head) => head.place)).toEqual([entry.place]);
    });

    test("of two with one id in one call keeps the first", async () => {
      const entry = make.next();
      const result = await store.append([entry, { ...entry, by: "person-2" }], RECEIVED);
      expect(result).toMatchObject({ accepted: [{ entry }], repeated: [], clashing: [entry.id] });
    });

    test("STORE-8 gives pages by place then number, after the cursor, never more than the limit", async () => {
      await store.append([...make.many(5, { place: "b" }), ...make.many(4, { place: "a" })], RECEIVED);
      await store.append(make.many(2, { place: "c" }), RECEIVED);
      const cursor: Record<string, number> = { a: 1 };
      const pages: string[][] = [];
      for (;;) {
        const page = await store.since(["b", "a", "a", "none"], cursor, 3);
        if (page.length === 0) break;
        pages.push(page.map((kept) => `${kept.entry.place}${kept.seq}`));
        for (const kept of page) cursor[kept.entry.place] = kept.seq;
      }
      expect(pages).toEqual([
        ["a2", "a3", "a4"],
        ["b1", "b2", "b3"],
        ["b4", "b5"],
      ]);
    });

    test("orders places by code unit, not by language", async () => {
      for (const place of ["b", "B", "a", "_a", "Z"].map((name) => name.replace("_", "0"))) {
        await store.append([make.next({ place })], RECEIVED);
      }
      expect((await store.heads()).map((head) => head.place)).toEqual(["0a", "B", "Z", "a", "b"]);
      expect((await all()).map((kept) => kept.entry.place)).toEqual(["0a", "B", "Z", "a", "b"]);
    });

    test("takes ten thousand entries in one piece, into a sound chain", async () => {
      const entries = make.many(10_000);
      const { accepted } = await store.append(entries, RECEIVED);
      expect(accepted).toHaveLength(10_000);
      expect(await store.count()).toBe(10_000);
      expect(verifyChain(await all())).toMatchObject({ kind: "sound", count: 10_000 });
      expect((await store.append(entries, RECEIVED)).repeated).toHaveLength(10_000);
    });

    test("STORE-4 keeps nothing of an append in which one entry cannot be written", async () => {
      const poor = { ...make.next(), body: { value: Number.NaN } };
      await expect(store.append([make.next(), poor], RECEIVED)).rejects.toThrow(/LG-130/);
      expect(await store.count()).toBe(0);
      expect(await store.heads()).toEqual([]);
      expect((await store.append([make.next()], RECEIVED)).accepted).toHaveLength(1);
    });

    test("STORE-11 takes back lines kept before with number, hash and time of receipt, once, and goes on after them", async () => {
      const entries = [...make.many(3, { place: "a" }), make.next({ place: "b" })];
      const kept = extendAll(entries);
      expect((await store.retake(kept.slice(0, 2))).accepted).toEqual(kept.slice(0, 2));
      expect(await store.retake(kept)).toMatchObject({
        accepted: kept.slice(2),
        repeated: [kept[0]?.entry.id, kept[1]?.entry.id],
      });
      expect(await all()).toEqual(kept);
      await store.append([make.next({ place: "a" })], RECEIVED);
      expect(verifyChain((await all()).filter(({ entry }) => entry.place === "a"))).toMatchObject({ count: 4 });
      expect(await store.retake([])).toEqual({ accepted: [], repeated: [], clashing: [] });
    });

    test("takes lines that follow on something else after its own, with their time of receipt", async () => {
      await store.append([make.next({ place: "a" })], RECEIVED);
      const kept = extendAll(make.many(2, { place: "a" }));
      const { accepted } = await store.retake(kept);
      expect(accepted.map(({ seq, received }) => [seq, received])).toEqual([2, 3].map((seq) => [seq, EARLIER]));
      expect(verifyChain(await all())).toMatchObject({ kind: "sound", count: 3 });
    });

    test("STORE-5 appended at once from many sides, numbers have no gaps and the chain is sound", async () => {
      const others = house.shared ? await Promise.all([house.open(), house.open()]) : [store, store];
      const shared = make.next();
      const batches = Array.from({ length: 24 }, () => [...make.many(4), make.next({ place: "island" }), shared]);
      const stores = [store, ...others];
      const results = await Promise.all(batches.map((batch, at) => stores[at % 3]?.append(batch, RECEIVED)));
      expect(results.flatMap((result) => result?.accepted ?? [])).toHaveLength(24 * 5 + 1);
      expect(results.flatMap((result) => result?.clashing ?? [])).toEqual([]);
      const kept = await all();
      for (const place of ["island", `harbour-${run}`]) {
        const chain = kept.filter((one) => one.entry.place === place);
        expect(verifyChain(chain)).toMatchObject({ kind: "sound", count: place === "island" ? 24 : 97 });
      }
      if (house.shared) await Promise.all(others.map((other) => other.close()));
    });

    test("the same entry claimed for two places at once is kept in one of them", async () => {
      const other = house.shared ? await house.open() : store;
      for (let time = 0; time < 10; time++) {
        const entry = make.next({ place: "a" });
        const [one, two] = await Promise.all([
          store.append([entry], RECEIVED),
          other.append([{ ...entry, place: "b" }], RECEIVED),
        ]);
        expect([one.accepted.length + two.accepted.length, one.clashing.length + two.clashing.length]).toEqual([1, 1]);
      }
      expect(await store.count()).toBe(10);
      if (house.shared) await other.close();
    });

    test("STORE-6 keeps nothing where a place has moved on from where it must stand, and says which", async () => {
      const [first, second] = [make.next({ place: "a" }), make.next({ place: "b" })];
      expect((await store.append([first], RECEIVED, { a: 0, c: 0 })).accepted).toHaveLength(1);
      const late = await store.append([second], RECEIVED, { a: 0, c: 0 });
      expect(late).toEqual({ accepted: [], repeated: [], clashing: [], moved: ["a"] });
      expect(await store.count()).toBe(1);
      expect(await store.append([second], RECEIVED, { a: 1, c: 0 })).toMatchObject({ accepted: [{ seq: 1 }] });
      expect((await store.heads()).map((head) => head.place)).toEqual(["a", "b"]);
    });

    test("of many appends at once that must find a place where they saw it, keeps one", async () => {
      const others = house.shared ? await Promise.all([house.open(), house.open()]) : [store, store];
      const stores = [store, ...others];
      const tries = Array.from({ length: 12 }, (_, at) =>
        stores[at % 3]!.append([make.next({ place: at % 2 === 0 ? "a" : "b" })], RECEIVED, { a: 0, b: 0 }),
      );
      const results = await Promise.all(tries);
      expect(results.filter(({ accepted }) => accepted.length === 1)).toHaveLength(1);
      expect(results.filter(({ moved }) => moved?.length === 1)).toHaveLength(11);
      expect(await store.count()).toBe(1);
      if (house.shared) await Promise.all(others.map((other) => other.close()));
    });

    test("STORE-19 takes the first line of a place after its genesis, and after no other beginning", async () => {
      const [right, wrong, before] = [make.next({ place: "a" }), make.next({ place: "b" }), make.next({ place: "c" })];
      if (house.falsify !== undefined) {
        await house.falsify("b", { seq: 0, hash: "0".repeat(64) });
        await house.falsify("c", { seq: -1, hash: emptyChain("c").hash });
        await expect(store.append([right, wrong], RECEIVED)).rejects.toMatchObject({ code: "ST-131" });
        await expect(store.append([before], RECEIVED)).rejects.toMatchObject({ code: "ST-131" });
        await expect(store.retake(extendAll([wrong]))).rejects.toMatchObject({ code: "ST-131" });
        expect(await all()).toEqual([]);
      }
      await store.append([right], RECEIVED);
      expect(verifyChain(await all())).toMatchObject({ kind: "sound", count: 1 });
    });

    test("STORE-10 tells listeners which places grew, after they did, until they stop listening", async () => {
      const { heard, listener } = newEar();
      const stop = store.onAppend(listener);
      const [entry] = (await store.append([make.next({ place: "a" }), make.next({ place: "b" })], RECEIVED)).accepted;
      await waitFor(() => heard.some((places) => places.length === 0 || [...places].sort().join() === "a,b"));
      stop();
      const before = heard.length;
      await store.append([make.next(), entry?.entry ?? make.next()], RECEIVED);
      await new Promise((resolve) => setTimeout(resolve, 50));
      expect(heard).toHaveLength(before);
    });

    test("STORE-7 holds all after it is closed and opened again", async () => {
      const { accepted } = await store.append(make.many(20), RECEIVED);
      const photo = photoOf(1000);
      await store.putPhoto(photo);
      if (!house.lasting) return expect(await all()).toEqual(accepted);
      await store.close();
      store = await house.open();
      expect(await all()).toEqual(accepted);
      expect(await store.photo(photo.hash)).toEqual(photo);
      expect((await store.append([make.next()], RECEIVED)).accepted[0]?.seq).toBe(21);
    });

    test("keeps photos by their hash, once", async () => {
      const photo = photoOf(100_000);
      expect(await store.photo(photo.hash)).toBeUndefined();
      expect(await store.missingPhotos([photo.hash, photo.hash])).toEqual([photo.hash]);
      await store.putPhoto(photo);
      await store.putPhoto(photo);
      const found = await store.photo(photo.hash);
      expect(found).toEqual(photo);
      expect(found?.bytes.constructor).toBe(Uint8Array);
      expect(await store.missingPhotos([photo.hash])).toEqual([]);
      expect(await store.missingPhotos([])).toEqual([]);
    });

    test("STORE-9 refuses a photo that was cut short or changed", async () => {
      const photo = photoOf(100_000);
      await expect(store.putPhoto({ ...photo, bytes: photo.bytes.slice(0, 99_999) })).rejects.toThrow(/LG-150/);
      await expect(store.putPhoto({ ...photo, hash: hashBytes(new Uint8Array(3)) })).rejects.toThrow(/LG-150/);
      expect(await store.missingPhotos([photo.hash])).toEqual([photo.hash]);
    });

    test("finds which of many photos are missing", async () => {
      const photos = Array.from({ length: 3 }, (_, at) => photoOf(10 + at));
      for (const photo of photos) await store.putPhoto(photo);
      const absent = Array.from({ length: 1200 }, (_, at) => hashBytes(Uint8Array.of(at % 256, at >> 8)));
      const missing = await store.missingPhotos([...absent, ...photos.map((photo) => photo.hash)]);
      expect([...missing].sort()).toEqual([...absent].sort());
    });
  });
}

function photoOf(size: number): Photo {
  const bytes = Uint8Array.from({ length: size }, (_, at) => (at * 31 + size) % 256);
  return { hash: hashBytes(bytes), mime: "image/jpeg", bytes };
}

function newEar(): { heard: (readonly string[])[]; listener: AppendListener } {
  const heard: (readonly string[])[] = [];
  return { heard, listener: (places) => heard.push(places) };
}

async function waitFor(holds: () => boolean): Promise<void> {
  const patience = 5000;
  for (let waited = 0; !holds(); waited += 10) {
    if (waited > patience) throw new Error("waited in vain");
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}
