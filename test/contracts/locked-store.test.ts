import "fake-indexeddb/auto";
import { Dexie } from "dexie";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { hashBytes } from "#log";
import { openBrowserStore, type BrowserStore } from "#store/browser";
import { describeLogStore } from "./log-store.ts";
import { EntryMaker } from "./sample-log.ts";

const RECEIVED = "2027-02-01T00:00:00.000Z";
const PIN = "805319";
const OWNER = { person: "0194-ane", memo: { name: "Ane Brask" } };
const names = Array.from({ length: 1000 }, (_, at) => `drykeel-locked-${at}`);

async function openUnlocked(name: string): Promise<BrowserStore> {
  const store = await openBrowserStore(name);
  if (store.lock.state.kind === "off") await store.lock.turnOn(OWNER, PIN);
  else await store.lock.openWithPin(PIN);
  return store;
}

async function newHouse() {
  const name = names.pop() ?? "drykeel";
  return { open: () => openUnlocked(name), clear: () => Dexie.delete(name), lasting: true, shared: true };
}

describeLogStore("browser, locked by a PIN", newHouse);

/** Everything that the browser has on its disk for a database, as text, read past the store. */
async function rawText(name: string): Promise<string> {
  const raw = new Dexie(name);
  await raw.open();
  const tables = await Promise.all(raw.tables.map(async (table) => [table.name, await table.toArray()]));
  raw.close();
  return JSON.stringify(tables, (_, value: unknown) => {
    if (value instanceof ArrayBuffer) return letters(Buffer.from(value));
    return value instanceof Uint8Array ? letters(value) : value;
  });
}

/** Bytes as letters, control characters as dots: JSON would write the byte 4 before "17" as "\\u000417", a seal's number. */
function letters(bytes: Uint8Array): string {
  return Buffer.from(bytes)
    .toString("latin1")
    .replaceAll(/\p{Cc}/gu, ".");
}

/** Runs a conversion and ends it after so many steps, as a kill would. @returns whether it was ended */
async function killedAfter(steps: number, convert: (onProgress: () => void) => Promise<void>): Promise<boolean> {
  let left = steps;
  const onProgress = () => {
    if (left === 0) throw new Error("killed");
    left -= 1;
  };
  const ended = await convert(onProgress).then(
    () => "done",
    (cause: Error) => cause.message,
  );
  return ended === "killed";
}

/** Words that stand in what is written below, in every table. */
const KNOWN = [
  "Dichtung",
  "00417",
  "person-1",
  "device-1",
  "mustered",
  "kit:one",
  "Ane Brask",
  "SECRETPICTURE",
  "draft of",
];

describe("a device's own store under a lock", () => {
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

  /** Fills every table; @returns all that can be read of it. */
  async function fill(lines = 450) {
    const bytes = new TextEncoder().encode("SECRETPICTURE".repeat(50));
    await store.append(make.many(lines), RECEIVED);
    await store.putOutbox([
      { entry: make.next(), state: "unsent" },
      { entry: make.next(), state: "sent", voucher: "v" },
    ]);
    await store.putPhoto({ hash: hashBytes(bytes), mime: "image/jpeg", bytes }, RECEIVED);
    await store.putNote("sitting", { person: OWNER.memo, draft: "draft of a finding" });
    await store.append(make.many(3, { place: "quay" }), RECEIVED);
    await store.shelf.setAside({ quay: 1 });
    return everything();
  }

  async function everything() {
    const photos = await Promise.all((await store.unsentPhotos()).map(({ hash }) => store.photo(hash)));
    return {
      kept: await store.kept({}),
      outbox: await store.outbox(),
      photos,
      sitting: await store.note("sitting"),
      branches: await store.shelf.branches(),
      heads: await store.heads(),
    };
  }

  async function reopen(): Promise<void> {
    await store.close();
    store = await openBrowserStore(name);
  }

  test("before it is turned on every known word lies in the clear", async () => {
    await fill(3);
    const raw = await rawText(name);
    for (const word of KNOWN) expect(raw).toContain(word);
  });

  test("STORE-12 turned on, no known word is left on the disk, and what is written later is sealed too", async () => {
    const before = await fill(3);
    await store.lock.turnOn(OWNER, PIN);
    await store.putOutbox([{ entry: make.next(), state: "unsent" }]);
    const raw = await rawText(name);
    for (const word of [...KNOWN, PIN]) expect(raw).not.toContain(word);
    expect(await everything()).toEqual({ ...before, outbox: [...before.outbox, expect.anything()] });
  });

  test("opened again it is locked: nothing is read or written, and a wrong PIN changes nothing", async () => {
    const before = await fill(3);
    await store.lock.turnOn(OWNER, PIN);
    await reopen();
    expect(store.lock.state).toEqual({ kind: "locked" });
    await expect(store.kept({})).rejects.toThrow(/ST-145/);
    await expect(store.outbox()).rejects.toThrow(/ST-145/);
    await expect(store.putNote("sitting", "x")).rejects.toThrow(/ST-145/);
    await expect(store.putOutbox([{ entry: make.next(), state: "unsent" }])).rejects.toThrow(/ST-145/);
    const raw = await rawText(name);
    expect(await store.lock.openWithPin("805318")).toBeUndefined();
    expect(await rawText(name)).toBe(raw);
    expect(await store.lock.openWithPin(PIN)).toMatchObject(OWNER);
    expect(await everything()).toEqual(before);
  });

  test("each person's PIN opens it, a changed PIN only as changed, and one who left not at all", async () => {
    const before = await fill(3);
    await store.lock.turnOn(OWNER, PIN);
    await store.lock.setPin({ person: "0194-bo", memo: {} }, "271996");
    await store.lock.setPin(OWNER, "118403");
    await reopen();
    expect(await store.lock.openWithPin(PIN)).toBeUndefined();
    expect(await store.lock.openWithPin("271996")).toMatchObject({ person: "0194-bo" });
    await store.lock.removePerson("0194-bo");
    await reopen();
    expect(await store.lock.openWithPin("271996")).toBeUndefined();
    expect(await store.lock.openWithPin("118403")).toMatchObject(OWNER);
    await store.lock.removePerson(OWNER.person);
    await reopen();
    expect(await store.lock.openWithPin("118403")).toMatchObject(OWNER);
    expect(await everything()).toEqual(before);
  });

  test("a passkey's secret opens it, and no other secret", async () => {
    const before = await fill(3);
    await store.lock.turnOn(OWNER, PIN);
    const salt = store.lock.makePasskeySalt();
    const secret = crypto.getRandomValues(new Uint8Array(32));
    await store.lock.addPasskey(OWNER, { credential: "cred", salt, secret });
    await reopen();
    expect(store.lock.passkeys).toMatchObject([{ credential: "cred", salt }]);
    expect(await store.lock.openWithPasskey({ credential: "cred", secret: new Uint8Array(32) })).toBeUndefined();
    expect(await store.lock.openWithPasskey({ credential: "cred", secret })).toMatchObject(OWNER);
    expect(await everything()).toEqual(before);
  });

  test("a row put in another's place from outside is found out", async () => {
    await fill(3);
    await store.lock.turnOn(OWNER, PIN);
    const raw = new Dexie(name);
    await raw.open();
    const [one, two] = (await raw.table("kept").toArray()) as { sealed: ArrayBuffer }[];
    await raw.table("kept").put({ ...one, sealed: two?.sealed });
    raw.close();
    await expect(store.kept({})).rejects.toThrow(/ST-146/);
  });

  test("killed at every step of turning on, nothing is lost, and it goes on to the end", async () => {
    const before = await fill();
    for (let steps = 0; ; steps++) {
      if (!(await killedAfter(steps, (onProgress) => store.lock.turnOn(OWNER, PIN, onProgress)))) break;
      await reopen();
      expect(store.lock.state).toEqual({ kind: "locked" });
      await expect(store.putNote("sitting", "x")).rejects.toThrow(/ST-145/);
      await store.lock.openWithPin(PIN);
      expect(await everything()).toEqual(before);
      await store.lock.finish();
      const raw = await rawText(name);
      for (const word of KNOWN) expect(raw).not.toContain(word);
      await store.lock.turnOff();
      await reopen();
      if (steps > 20) throw new Error("no end");
    }
    expect(await everything()).toEqual(before);
  });

  test("killed at every step of turning off, nothing is lost, and it goes on to the end", async () => {
    const before = await fill();
    await store.lock.turnOn(OWNER, PIN);
    for (let steps = 0; ; steps++) {
      if (!(await killedAfter(steps, (onProgress) => store.lock.turnOff(onProgress)))) break;
      await reopen();
      expect(store.lock.state).toEqual({ kind: "locked" });
      await store.lock.openWithPin(PIN);
      expect(await everything()).toEqual(before);
      await store.lock.finish();
      expect(store.lock.state).toEqual({ kind: "off" });
      await store.lock.turnOn(OWNER, PIN);
      if (steps > 20) throw new Error("no end");
    }
    await reopen();
    expect(store.lock.state).toEqual({ kind: "off" });
    expect(await everything()).toEqual(before);
    expect(await rawText(name)).toContain("Dichtung");
  });

  test("a line that another window wrote in the clear meanwhile is sealed at the next opening", async () => {
    await fill(3);
    const other = await openBrowserStore(name);
    await store.lock.turnOn(OWNER, PIN);
    const late = make.next({ body: { note: "LATEWORDS" } });
    await other.putOutbox([{ entry: late, state: "unsent" }]);
    await other.close();
    expect(await rawText(name)).toContain("LATEWORDS");
    await reopen();
    await store.lock.openWithPin(PIN);
    expect((await store.outbox()).at(-1)?.entry).toEqual(late);
    await store.lock.finish();
    expect(await rawText(name)).not.toContain("LATEWORDS");
    expect((await store.outbox()).at(-1)?.entry).toEqual(late);
  });

  test("can be emptied without a PIN, and is then a store like a new one", async () => {
    await fill(3);
    await store.lock.turnOn(OWNER, PIN);
    await reopen();
    await store.erase();
    expect(store.lock.state).toEqual({ kind: "off" });
    await store.putNote("sitting", 1);
    expect(await rawText(name)).toContain("sitting");
    await reopen();
    expect(await store.note("sitting")).toBe(1);
  });

  test("says of every table what stays in the clear", async () => {
    const { CLEAR } = await import("../../src/store/browser/lock/row-seal.ts");
    const raw = new Dexie(name);
    await raw.open();
    expect(raw.tables.map((table) => table.name).sort()).toEqual(Object.keys(CLEAR).sort());
    raw.close();
  });
});
