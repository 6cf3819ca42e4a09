import "fake-indexeddb/auto";
import { uuidv7 } from "uuidv7";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { extendChain, type ChainHead, type KeptEntry } from "#log";
import { memoryCopies, sqliteCopies } from "./copies.ts";
import { Phone, readingOf } from "./phone.ts";
import { jsonBody, patterns, PutBackStation } from "./put-back-station.ts";

const [pattern] = patterns;
const grounding = pattern!.modes.find(({ effect }) => effect === "grounds")!;
const built = `${pattern!.id}@${pattern!.version}`;
const KIT = "kit:k1";

describe.each([
  ["memory", async () => memoryCopies()],
  ["SQLite", sqliteCopies],
])("a station in %s that is put back to an earlier copy", (_, open) => {
  let station: PutBackStation;
  let phone: Phone;
  let place: string;

  beforeEach(async () => {
    station = await PutBackStation.open(await open(), uuidv7);
    const member = await station.found("phone-1");
    cut = undefined;
    const through: typeof fetch = (address, init) =>
      String(address).startsWith(cut ?? "none") ? Promise.reject(new TypeError("cut")) : member.fetch(address, init);
    phone = await Phone.open(station, member, through);
    await phone.sync();
    place = await station.place();
    await phone.write({
      subject: KIT,
      place,
      pattern: built,
      kind: "kit-enrolled",
      body: { name: "One", serial: "S-1", items: [] },
    });
    await phone.sync();
  });
  afterEach(async () => {
    await phone.close();
    await station.close();
  });

  /** A path that the network swallows. */
  let cut: string | undefined;

  const join = async (name: string, device: string) => {
    const other = await Phone.open(station, await station.invite(phone.member, name, "keeper", device));
    await other.sync();
    return other;
  };

  /** The phone and the station tell the same, and no line that was ever acknowledged is missing. */
  const agree = async () => {
    await phone.sync();
    const kept = (await station.kept()).map(({ entry }) => entry);
    expect(readingOf(await phone.entries())).toEqual(readingOf(kept));
    const ids = new Set(kept.map(({ id }) => id));
    expect([...station.acknowledged.keys()].filter((id) => !ids.has(id))).toEqual([]);
    expect(phone.flaw).toBeUndefined();
  };

  const raise = () =>
    phone.write({
      subject: KIT,
      kind: "finding-raised",
      body: { finding: uuidv7(), item: grounding.item, mode: grounding.id, effect: "grounds", photos: [] },
    });
  const rename = (name: string) => phone.write({ subject: KIT, kind: "kit-renamed", body: { name } });

  test("has the phone's later lines again, a grounding finding among them", async () => {
    const copy = await station.backup();
    const lines = [await raise(), await rename("Two")];
    await phone.sync();
    await station.putBack(copy);
    expect(await station.store.find(lines[0]!.id)).toBeUndefined();
    await phone.sync();
    for (const line of lines) expect((await station.store.find(line.id))?.entry).toEqual(line);
    expect(await phone.store.shelf.isOpen()).toBe(false);
    expect(phone.sendState).toEqual({ kind: "sent" });
    await agree();
  });

  test("is not said to have what it lacks, from the moment the phone hears of it", async () => {
    const copy = await station.backup();
    const lines = [await raise(), await rename("Two")];
    await phone.sync();
    await station.putBack(copy);
    cut = "/api/log/bring-back";
    await phone.sync();
    expect(phone.sendState).toMatchObject({ kind: "waiting", lines: 2 });
    expect(phone.log.lost.map(({ entry }) => entry.id).toSorted()).toEqual(lines.map(({ id }) => id).toSorted());
    expect(phone.log.putBack).toMatchObject({ lines: 2 });
    expect(readingOf(await phone.entries()).kits[0]).toMatchObject({ name: "Two", findings: [{ effect: "grounds" }] });
    cut = undefined;
    await phone.sync();
    expect(phone.sendState).toEqual({ kind: "sent" });
    await agree();
  });

  test("says in its log which lines came back, from which device, and begins a new epoch once", async () => {
    const copy = await station.backup();
    const lines = [await raise(), await rename("Two")];
    await phone.sync();
    await station.putBack(copy);
    await phone.sync();
    const { broughtBack } = readingOf((await station.kept()).map(({ entry }) => entry));
    const back = broughtBack.map(({ lines: ids, device, by, how }) => ({ ids, device, by, how }));
    const { person, device } = phone.member.me;
    expect(back).toEqual([{ ids: lines.map(({ id }) => id), device, by: person.id, how: "vouched" }]);
    await phone.sync();
    expect((await station.store.epochs()).map(({ because }) => because)).toEqual(["made", "put-back"]);
  });

  test("has lines again that others wrote and only this phone had pulled", async () => {
    const other = await join("Bo", "phone-2");
    const copy = await station.backup();
    const line = await other.write({ subject: KIT, kind: "kit-renamed", body: { name: "By Bo" } });
    await other.sync();
    await phone.sync();
    await other.close();
    await station.putBack(copy);
    await phone.sync();
    expect((await station.store.find(line.id))?.entry).toEqual(line);
    await agree();
  });

  test("has a line again that was acknowledged and never pulled, though others have taken its number since", async () => {
    const other = await join("Bo", "phone-2");
    await phone.sync();
    const copy = await station.backup();
    const line = await raise();
    cut = "/api/log/pull";
    await phone.sync();
    expect(await station.store.find(line.id)).toBeDefined();
    await station.putBack(copy);
    cut = undefined;
    for (const name of ["a", "b"]) await other.write({ subject: KIT, kind: "kit-renamed", body: { name } });
    await other.sync();
    for (let time = 0; time < 2; time++) await phone.sync();
    expect((await station.store.find(line.id))?.entry).toEqual(line);
    await other.sync();
    await other.close();
    await agree();
  });

  test("is told nothing new by a phone that holds no more than the copy", async () => {
    const copy = await station.backup();
    await station.putBack(copy);
    await phone.sync();
    expect((await station.store.epochs()).length).toBe(1);
    expect(phone.log.putBack).toBeUndefined();
    await agree();
  });

  test("has a person back who joined after the copy was made, before that person's lines", async () => {
    const copy = await station.backup();
    const other = await join("Bo", "phone-2");
    const line = await other.write({ subject: KIT, kind: "kit-renamed", body: { name: "By Bo" } });
    await other.sync();
    await other.close();
    await phone.sync();
    await station.putBack(copy);
    await phone.sync();
    const { people } = readingOf((await station.kept()).map(({ entry }) => entry));
    expect(people.map(({ name }) => name)).toEqual(["Ann Marr", "Bo"]);
    expect(await station.store.find(line.id)).toBeDefined();
    await agree();
  });
});

const answers = [
  ["a line slipped into a run", (run: Run) => ({ ...run, lines: [...run.lines, invented(run)] })],
  ["a line of a run changed", (run: Run) => ({ ...run, lines: [{ ...run.lines[0]!, entry: invented(run).entry }] })],
  ["a run under a voucher for another head", (run: Run) => ({ ...run, lines: [invented(run)] })],
  ["an epoch put before a voucher", (run: Run) => ({ ...run, voucher: `other.${run.voucher.split(".")[1]}` })],
] as const;

describe("a station is not told lines that it never had", () => {
  let station: PutBackStation;
  let keeper: Phone;
  let administrator: Phone;

  beforeEach(async () => {
    station = await PutBackStation.open(memoryCopies(), uuidv7);
    const founder = await station.found("phone-1");
    administrator = await Phone.open(station, founder);
    keeper = await Phone.open(station, await station.invite(founder, "Kim", "keeper", "phone-2"));
    for (const phone of [administrator, keeper]) await phone.sync();
  });
  afterEach(async () => {
    for (const phone of [administrator, keeper]) await phone.close();
    await station.close();
  });

  /** A run that the station itself vouched for, as a device holds it after the station was put back. */
  const heldRun = async (): Promise<Run> => {
    const copy = await station.backup();
    await keeper.write({ subject: "pattern:brinnet-450", kind: "step-reported", body: { step: "a", what: "unclear" } });
    await keeper.sync();
    const [end] = (await keeper.store.ends()).filter(({ place }) => place === "station");
    const [before, line] = (await keeper.store.kept({ station: end!.seq - 2 })).filter(
      ({ entry }) => entry.place === "station",
    );
    await station.putBack(copy);
    return { by: "run", before: { seq: before!.seq, hash: before!.hash }, lines: [line!], voucher: end!.voucher! };
  };

  test.each(answers)("by %s", async (_, forge) => {
    const run = await heldRun();
    const count = await station.store.count();
    expect(await ask(keeper, forge(run))).toMatchObject({ status: 409, code: "SV-195" });
    expect(await station.store.count()).toBe(count);
    expect(await ask(keeper, run)).toMatchObject({ status: 200, kept: [run.lines[0]!.entry.id] });
  });

  test("by a voucher for another line", async () => {
    const run = await heldRun();
    const lines = [{ entry: invented(run).entry, voucher: run.voucher }];
    expect(await ask(keeper, { by: "lines", lines })).toMatchObject({ status: 409, code: "SV-195" });
  });

  test("by anybody's word but an administrator's, and then it says so", async () => {
    const run = await heldRun();
    const { entry } = invented(run);
    expect(await ask(keeper, { by: "word", lines: [{ entry }] })).toMatchObject({ status: 403, code: "SV-196" });
    const ahead = { ...entry, id: uuidv7(), at: "2031-01-01T00:00:00Z" };
    expect(await ask(administrator, { by: "word", lines: [{ entry: ahead }] })).toMatchObject({ status: 400 });
    expect(await ask(administrator, { by: "word", lines: [{ entry }] })).toMatchObject({ kept: [entry.id] });
    const { broughtBack } = readingOf((await station.kept()).map((kept) => kept.entry));
    expect(broughtBack).toMatchObject([{ lines: [entry.id], how: "word", device: "phone-1" }]);
    expect((await station.store.epochs()).length).toBe(1);
  });

  test("nor of what it keeps another content", async () => {
    const run = await heldRun();
    await ask(keeper, run);
    const [{ entry }] = run.lines as [KeptEntry];
    const other = { ...entry, body: { step: "b", what: "wrong" } };
    expect(await ask(administrator, { by: "word", lines: [{ entry: other }] })).toMatchObject({
      kept: [],
      clashing: [entry.id],
    });
    expect((await station.store.find(entry.id))?.entry).toEqual(entry);
  });
});

async function ask(who: Phone, body: object) {
  const reply = await who.member.fetch("/api/log/bring-back", jsonBody(body));
  return {
    status: reply.status,
    ...((await reply.json()) as { code?: string; kept?: string[]; clashing?: string[] }),
  };
}

interface Run {
  readonly by: "run";
  readonly before: ChainHead;
  readonly lines: readonly KeptEntry[];
  readonly voucher: string;
}

/** A line in another's name, chained as it should be. */
function invented({ lines }: Run): KeptEntry {
  const last = lines.at(-1)!;
  const entry = { ...last.entry, id: uuidv7(), by: "somebody-else" };
  return extendChain(last, [entry], last.received)[0]!;
}
