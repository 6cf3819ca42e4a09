import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { HasPatterns, IssuedPattern, PatternShelf } from "#station";

interface House {
  readonly open: () => Promise<HasPatterns & { close(): Promise<void> }>;
  readonly clear: () => Promise<unknown>;
  /** What was kept is there after closing and opening. */
  readonly lasting: boolean;
}

const issued = (version: number, more: Partial<IssuedPattern> = {}): IssuedPattern => ({
  id: "my-kit",
  version,
  text: `# “ours”\nid: my-kit\nversion: ${version}\n`,
  beside: { "open.svg": "<svg/>" },
  by: "ann",
  at: "2027-03-14T10:00:00Z",
  ...more,
});

/** What every shelf of patterns must hold. */
export function describePatternShelf(name: string, newHouse: () => Promise<House>): void {
  describe(`a shelf of patterns: ${name}`, () => {
    let house: House;
    let store: Awaited<ReturnType<House["open"]>>;
    let shelf: PatternShelf;

    beforeEach(async () => {
      house = await newHouse();
      store = await house.open();
      shelf = store.patternShelf;
    });
    afterEach(async () => {
      await store.close();
      await house.clear();
    });

    test("STORE-16 keeps an issued version as it came, and never another under its number", async () => {
      expect(await shelf.issue(issued(10))).toBe(true);
      expect(await shelf.issue(issued(9))).toBe(true);
      expect(await shelf.issue(issued(10, { text: "other", by: "bob" }))).toBe(false);
      expect(await shelf.issued()).toEqual([
        { id: "my-kit", version: 9 },
        { id: "my-kit", version: 10 },
      ]);
      expect(await shelf.issuedPattern("my-kit", 10)).toEqual(issued(10));
      expect(await shelf.issuedPattern("my-kit", 11)).toBeUndefined();
    });

    test("STORE-16 of two who issue a version at once one is told no", async () => {
      const told = await Promise.all([shelf.issue(issued(3)), shelf.issue(issued(3, { by: "bob" }))]);
      expect(told.toSorted()).toEqual([false, true]);
      const kept = await shelf.issuedPattern("my-kit", 3);
      expect(kept?.by).toBe(told[0] ? "ann" : "bob");
    });

    test("keeps one draft a person, the newest, until it is taken in", async () => {
      const draft = { text: "id: a\n", beside: {}, by: "ann", at: "2027-03-14T10:00:00Z" };
      await shelf.layOut({ ...draft, by: "bob" });
      await shelf.layOut(draft);
      await shelf.layOut({ ...draft, text: "id: b\n", beside: { "a.svg": "x" } });
      expect(await shelf.laidOut()).toEqual([
        { ...draft, text: "id: b\n", beside: { "a.svg": "x" } },
        { ...draft, by: "bob" },
      ]);
      await shelf.takeIn("ann");
      await shelf.takeIn("nobody");
      expect((await shelf.laidOut()).map(({ by }) => by)).toEqual(["bob"]);
    });

    test("has them still when it is opened again", async () => {
      if (!house.lasting) return;
      await shelf.issue(issued(2));
      await store.close();
      store = await house.open();
      expect(await store.patternShelf.issuedPattern("my-kit", 2)).toEqual(issued(2));
    });
  });
}
