import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { ShelvedSnapshot, SnapshotShelf } from "#station";

interface House {
  readonly open: () => Promise<SnapshotShelf & { close(): Promise<void> }>;
  readonly clear: () => Promise<unknown>;
  /** What was kept is there after closing and opening. */
  readonly lasting: boolean;
}

function snapshot(about: string, bytes: number): ShelvedSnapshot {
  return { about, seal: `seal of ${about}`, packed: Uint8Array.from({ length: bytes }, (_, at) => (at * 7) % 256) };
}

/** What every shelf of snapshots must hold. */
export function describeSnapshotShelf(name: string, newHouse: () => Promise<House>): void {
  describe(`a shelf of snapshots: ${name}`, () => {
    let house: House;
    let shelf: Awaited<ReturnType<House["open"]>>;

    beforeEach(async () => {
      house = await newHouse();
      shelf = await house.open();
    });
    afterEach(async () => {
      await shelf.close();
      await house.clear();
    });

    test("has none at first", async () => {
      expect(await shelf.shelvedSnapshot()).toBeUndefined();
    });

    test("STORE-13 gives back the newest, byte for byte, and no other", async () => {
      await shelf.shelveSnapshot(snapshot("one", 10));
      await shelf.shelveSnapshot(snapshot("two", 2_000_000));
      const { packed, ...rest } = (await shelf.shelvedSnapshot())!;
      const { packed: given, ...two } = snapshot("two", 2_000_000);
      expect([rest, Buffer.from(packed).equals(given)]).toEqual([two, true]);
    });

    test("forgets it when told, and takes another", async () => {
      await shelf.shelveSnapshot(snapshot("one", 10));
      await shelf.shelveSnapshot(undefined);
      expect(await shelf.shelvedSnapshot()).toBeUndefined();
      await shelf.shelveSnapshot(snapshot("two", 0));
      expect(await shelf.shelvedSnapshot()).toEqual(snapshot("two", 0));
    });

    test("has it after closing and opening, where anything lasts", async () => {
      await shelf.shelveSnapshot(snapshot("one", 300));
      if (!house.lasting) return;
      await shelf.close();
      shelf = await house.open();
      expect(await shelf.shelvedSnapshot()).toEqual(snapshot("one", 300));
    });
  });
}
