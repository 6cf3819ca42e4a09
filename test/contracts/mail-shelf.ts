import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { HasMail, Letter, MailShelf, MailWish } from "#station";

interface House {
  readonly open: () => Promise<HasMail & { close(): Promise<void> }>;
  readonly clear: () => Promise<unknown>;
  /** What was kept is there after closing and opening. */
  readonly lasting: boolean;
}

const wish = (person: string): MailWish => ({
  person,
  address: `${person}@station.example`,
  weekly: { weekday: 1, hour: 8 },
  isForShort: true,
  isForGrounds: false,
  since: "2027-03-01T00:00:00Z",
});
const letter = (id: string, person = "ann"): Letter => ({
  id,
  person,
  address: "ann@station.example",
  subject: `About ${id}`,
  text: "Two lines,\nand “signs” of every sort.",
});
const at = (minute: number): string => `2027-03-14T10:${String(minute).padStart(2, "0")}:00.000Z`;

/** What every shelf of mail must hold. */
export function describeMailShelf(name: string, newHouse: () => Promise<House>): void {
  describe(`a shelf of mail: ${name}`, () => {
    let house: House;
    let store: Awaited<ReturnType<House["open"]>>;
    let shelf: MailShelf;

    beforeEach(async () => {
      house = await newHouse();
      store = await house.open();
      shelf = store.mail;
    });
    afterEach(async () => {
      await store.close();
      await house.clear();
    });

    test("has no wish and no letter at first", async () => {
      expect([await shelf.wishes(), await shelf.takeLetter(at(0), at(10)), await shelf.lettersOf("ann", 5)]).toEqual([
        [],
        undefined,
        [],
      ]);
    });

    test("keeps one wish a person, the newest", async () => {
      await shelf.putWish(wish("bob"));
      await shelf.putWish(wish("ann"));
      const { weekly: _none, ...changed } = { ...wish("bob"), address: "b@station.example" };
      await shelf.putWish(changed);
      expect(await shelf.wishes()).toEqual([wish("ann"), changed]);
      await shelf.removeWish("ann");
      expect(await shelf.wishes()).toEqual([changed]);
    });

    test("removes with a wish the letters that wait, and no other", async () => {
      await shelf.putWish(wish("ann"));
      await shelf.post([letter("one")], at(0));
      await shelf.takeLetter(at(0), at(10));
      await shelf.post([letter("two"), letter("bobs", "bob")], at(1));
      await shelf.removeWish("ann");
      const left = [...(await shelf.lettersOf("ann", 5)), ...(await shelf.lettersOf("bob", 5))];
      expect(left.map(({ id }) => id)).toEqual(["one", "bobs"]);
    });

    test("keeps when a stretch began, until it has ended", async () => {
      expect(await shelf.beginStretch("short:slip", at(0))).toBe(at(0));
      expect(await shelf.beginStretch("short:slip", at(5))).toBe(at(0));
      await shelf.endStretch("short:slip");
      expect(await shelf.beginStretch("short:slip", at(9))).toBe(at(9));
    });

    test("STORE-14 takes a letter of one id once, whatever became of it", async () => {
      await shelf.post([letter("one"), letter("one")], at(0));
      const taken = await shelf.takeLetter(at(0), at(10));
      expect(taken).toMatchObject({ ...letter("one"), standing: "under-way", tries: 1, due: at(10) });
      await shelf.settleLetter("one", { kind: "sent", at: at(1) });
      await shelf.post([letter("one")], at(2));
      expect(await shelf.takeLetter(at(30), at(40))).toBeUndefined();
      expect(await shelf.lettersOf("ann", 5)).toMatchObject([{ id: "one", standing: "sent", at: at(1) }]);
    });

    test("STORE-15 gives a letter to one of two who ask at once", async () => {
      await shelf.post([letter("one"), letter("two")], at(0));
      const taken = await Promise.all([1, 2, 3, 4].map(() => shelf.takeLetter(at(0), at(10))));
      expect(taken.flatMap((one) => one?.id ?? []).toSorted()).toEqual(["one", "two"]);
    });

    test("hands out a letter again when it is due, with what was said of it, and what waits longest first", async () => {
      await shelf.post([letter("late")], at(1));
      await shelf.post([letter("early")], at(0));
      expect((await shelf.takeLetter(at(1), at(10)))?.id).toBe("early");
      await shelf.settleLetter("early", { kind: "waiting", at: at(1), due: at(6), said: "no answer" });
      expect((await shelf.takeLetter(at(5), at(10)))?.id).toBe("late");
      expect(await shelf.takeLetter(at(5), at(10))).toBeUndefined();
      expect(await shelf.takeLetter(at(6), at(15))).toMatchObject({ id: "early", tries: 2, said: "no answer" });
    });

    test("holds times that were given with other offsets in their order", async () => {
      await shelf.post([letter("one")], "2027-03-14T12:00:00+02:00");
      expect(await shelf.takeLetter("2027-03-14T09:59:59Z", at(10))).toBeUndefined();
      expect((await shelf.takeLetter("2027-03-14T11:00:00+01:00", at(10)))?.id).toBe("one");
    });

    test("doubts a letter whose carrier never came back, and lets no late word change that", async () => {
      await shelf.post([letter("one")], at(0));
      await shelf.takeLetter(at(0), at(10));
      await shelf.doubtLetters(at(9), "stopped");
      expect(await shelf.lettersOf("ann", 1)).toMatchObject([{ standing: "under-way" }]);
      await shelf.doubtLetters(at(10), "stopped");
      await shelf.settleLetter("one", { kind: "waiting", at: at(11), due: at(11), said: "late" });
      expect(await shelf.lettersOf("ann", 1)).toMatchObject([{ standing: "in-doubt", said: "stopped" }]);
      expect(await shelf.takeLetter(at(30), at(40))).toBeUndefined();
    });

    test("STORE-17 counts rounds upwards, past what a server remembers, and never twice the same", async () => {
      expect(await shelf.lastRound()).toBeUndefined();
      expect(await shelf.countRound(at(0), 0)).toBe(1);
      expect(await shelf.countRound(at(1), 0)).toBe(2);
      expect(await shelf.lastRound()).toEqual({ count: 2, at: at(1) });
      expect(await shelf.countRound(at(2), 40)).toBe(41);
      const counted = await Promise.all([1, 2, 3, 4].map(() => shelf.countRound(at(3), 7)));
      expect(counted.toSorted()).toEqual([42, 43, 44, 45]);
    });

    test("doubts every letter that waits, and no other", async () => {
      await shelf.post([letter("one"), letter("two")], at(0));
      const taken = (await shelf.takeLetter(at(0), at(10)))!;
      await shelf.doubtWaiting(at(1), "put back");
      expect(await shelf.takeLetter(at(2), at(10))).toBeUndefined();
      const told = (await shelf.lettersOf("ann", 5)).map(({ id, standing }) => [id, standing]);
      expect(Object.fromEntries(told)).toEqual({ one: "in-doubt", two: "in-doubt", [taken.id]: "under-way" });
    });

    test("STORE-14 has a letter in doubt wait again where its own person asks for it, once, and no other", async () => {
      await shelf.post([letter("one"), letter("two")], at(0));
      const taken = (await shelf.takeLetter(at(0), at(10)))!;
      await shelf.settleLetter(taken.id, { kind: "in-doubt", at: at(1), said: "silence" });
      const other = taken.id === "one" ? "two" : "one";
      expect(await shelf.sendAgain(taken.id, "bob", at(2))).toBe(false);
      expect(await shelf.sendAgain(other, "ann", at(2))).toBe(false);
      expect(await shelf.sendAgain("none", "ann", at(2))).toBe(false);
      const asked = await Promise.all([1, 2].map(() => shelf.sendAgain(taken.id, "ann", at(2))));
      expect(asked.toSorted()).toEqual([false, true]);
      await shelf.takeLetter(at(2), at(10));
      expect(await shelf.takeLetter(at(2), at(10))).toMatchObject({ id: taken.id, tries: 2, made: at(0) });
      await shelf.settleLetter(taken.id, { kind: "sent", at: at(3) });
      expect(await shelf.sendAgain(taken.id, "ann", at(4))).toBe(false);
    });

    test("forgets old letters, but none that waits", async () => {
      await shelf.post([letter("old"), letter("waits")], at(0));
      const taken = (await shelf.takeLetter(at(0), at(10)))!;
      await shelf.settleLetter(taken.id, { kind: "given-up", at: at(1), said: "no such box" });
      await shelf.forgetLetters(at(0));
      expect(await shelf.lettersOf("ann", 5)).toHaveLength(2);
      await shelf.forgetLetters(at(1));
      expect((await shelf.lettersOf("ann", 5)).map(({ standing }) => standing)).toEqual(["waiting"]);
    });

    test("has it all after closing and opening, where anything lasts", async () => {
      await shelf.putWish(wish("ann"));
      await shelf.post([letter("one")], at(0));
      if (!house.lasting) return;
      await store.close();
      store = await house.open();
      expect(await store.mail.wishes()).toEqual([wish("ann")]);
      expect(await store.mail.takeLetter(at(0), at(10))).toMatchObject(letter("one"));
    });
  });
}
