import {
  emptyChain,
  extendChain,
  PlaceTrees,
  signHead,
  signHeadList,
  type SignedHead,
  type SignedHeadList,
} from "#log";
import type { HeadShelf } from "#station";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { EntryMaker } from "./sample-log.ts";

interface House {
  readonly open: () => Promise<HeadShelf & { close(): Promise<void> }>;
  readonly clear: () => Promise<unknown>;
  /** What was kept is there after closing and opening. */
  readonly lasting: boolean;
}

const NOW = "2027-02-01T00:00:00.000Z";
const secret = new Uint8Array(32).fill(7);
const make = new EntryMaker(1);
const lines = new Map(
  ["a", "b"].map((place) => [place, extendChain(emptyChain(place), make.many(9, { place }), NOW)] as const),
);

/** What a station signs where its places have so many lines. */
function signedAt(counts: Readonly<Record<string, number>>): { list: SignedHeadList; heads: SignedHead[] } {
  const trees = new PlaceTrees();
  for (const [place, count] of Object.entries(counts)) trees.take(lines.get(place)!.slice(0, count));
  const heads = trees.heads().map((head) => signHead(head, NOW, secret));
  return { list: signHeadList(heads, NOW, secret), heads };
}

/** What every shelf of signed heads must hold. */
export function describeHeadShelf(name: string, newHouse: () => Promise<House>): void {
  describe(`a shelf of signed heads: ${name}`, () => {
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

    async function keep(counts: Readonly<Record<string, number>>): Promise<void> {
      const { list, heads } = signedAt(counts);
      await shelf.keepSigned(list, heads);
    }

    async function kept(): Promise<{ list: SignedHeadList | undefined; heads: readonly SignedHead[] }> {
      return { list: await shelf.signedList(), heads: await shelf.signedHeads() };
    }

    test("has none at first", async () => {
      expect(await kept()).toEqual({ list: undefined, heads: [] });
    });

    test("STORE-18 keeps the newest list and the heads it names", async () => {
      await keep({ a: 3 });
      await keep({ a: 5, b: 2 });
      expect(await kept()).toEqual(signedAt({ a: 5, b: 2 }));
    });

    test("STORE-18 keeps nothing of a list that is behind in one place, or lacks one", async () => {
      await keep({ a: 5, b: 2 });
      await keep({ a: 4, b: 6 });
      await keep({ a: 9 });
      expect(await kept()).toEqual(signedAt({ a: 5, b: 2 }));
    });

    test("STORE-18 keeps one list of many that come at once, and the heads of that one", async () => {
      await Promise.all(Array.from({ length: 8 }, (_, at) => keep({ a: 1 + at, b: 8 - at })));
      const { list, heads } = await kept();
      expect(heads.map(({ place, number }) => [place, number])).toEqual(
        list?.heads.map(({ place, number }) => [place, number]),
      );
    });

    test("STORE-18 has them after it was closed and opened again", async () => {
      await keep({ a: 5, b: 2 });
      if (house.lasting) {
        await shelf.close();
        shelf = await house.open();
      }
      expect(await kept()).toEqual(signedAt({ a: 5, b: 2 }));
    });
  });
}
