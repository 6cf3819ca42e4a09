import "fake-indexeddb/auto";
import { createStationFold } from "#station";
import type { Entry } from "#log";
import fc from "fast-check";
import { uuidv7 } from "uuidv7";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { BranchMender } from "../../src/web/device/branch/branch-mender.ts";
import { ServerDoor } from "../../src/web/device/sync/server-door.ts";
import { heldFile } from "../../src/web/device/held/held-file.ts";
import { SheetDesk, type TakenSheet } from "../../src/web/device/handed/sheet-desk.ts";
import { memoryCopies } from "../restore/copies.ts";
import { Phone } from "../restore/phone.ts";
import { PutBackStation } from "../restore/put-back-station.ts";

/** Sheets handed from device to device of a real station, and what the station has of them in the end. */

const ENGINE = { id: "e1", name: "Engine room", sort: "engine-room", part: "aft" } as const;
const OPENING = { name: "Grey boat", boat: { kind: "motor boat", length: 9 }, space: ENGINE } as const;
const SHEET = "0192abcd-0000-7000-8000-00000000000c";
const SUBJECT = `casualty:${SHEET}`;

let station: PutBackStation;
/** Ana administers and keeps, Bo is crew. */
let ana: Phone;
let bo: Phone;

beforeEach(async () => {
  station = await PutBackStation.open(memoryCopies(), uuidv7);
  const founder = await station.found("phone-1");
  ana = await Phone.open(station, founder);
  bo = await Phone.open(station, await station.invite(founder, "Bo", "crew", "phone-2"));
  for (const one of [ana, bo, ana]) await one.sync();
});

afterEach(async () => {
  await Promise.all([ana.close(), bo.close()]);
  await station.close();
});

function open(phone: Phone): Promise<Entry> {
  return phone.write({ subject: SUBJECT, kind: "casualty-opened", body: OPENING, place: "station" });
}

function sound(phone: Phone, level: number): Promise<Entry> {
  const body = { space: "e1", level, text: `${level * 100} cm` };
  return phone.write({ subject: SUBJECT, kind: "sounding-taken", body, place: "station" });
}

function strike(phone: Phone, { id }: Entry): Promise<Entry> {
  return phone.write({ subject: SUBJECT, kind: "struck", body: { entry: id, reason: "Slip." }, place: "station" });
}

const nothing = () => undefined;

function deskOf({ store, log, member }: Phone): SheetDesk {
  const who = { person: member.me.person.id, device: member.me.device };
  return new SheetDesk({ store, log, who, now: station.ambient.now, onTaken: nothing, onDropped: nothing });
}

/** What a phone has of the sheet, its own and others'. */
async function linesOn(phone: Phone): Promise<readonly Entry[]> {
  const all = [...(await phone.entries()), ...phone.log.handed.map(({ entry }) => entry)];
  return all.filter(({ subject }) => subject === SUBJECT);
}

async function handOver(from: Phone, to: Phone): Promise<TakenSheet> {
  const pieces = await deskOf(from).pack(SHEET, await linesOn(from));
  return deskOf(to).takeText(pieces.toReversed().join("\n"));
}

function soundingsOf(entries: readonly Entry[]): readonly number[] {
  const fold = createStationFold([]);
  fold.add(entries);
  return fold.read().casualties.flatMap(({ soundings }) => soundings.map(({ level }) => level));
}

async function atStation(): Promise<readonly Entry[]> {
  const kept = await station.store.since(["station"], {}, 10_000);
  return kept.map(({ entry }) => entry).filter(({ subject }) => subject === SUBJECT);
}

async function agree(levels: readonly number[]): Promise<void> {
  for (const one of [ana, bo, ana, bo]) expect((await one.sync()).kind).toBe("online");
  const ids = (await atStation()).map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const one of [ana, bo]) {
    expect(one.log.handed).toEqual([]);
    expect(await one.store.outbox()).toEqual([]);
    expect((await linesOn(one)).map(({ id }) => id).toSorted()).toEqual(ids.toSorted());
    expect(soundingsOf(await linesOn(one))).toEqual(levels);
  }
  expect(soundingsOf(await atStation())).toEqual(levels);
}

describe("a sheet handed over without a network", () => {
  test("is on both devices, each line once, whoever reaches the station first", async () => {
    await open(bo);
    await sound(bo, 0.5);
    expect(await handOver(bo, ana)).toMatchObject({ known: 0, refused: [] });
    await sound(ana, 0.52);
    expect(await handOver(ana, bo)).toMatchObject({ known: 2, refused: [] });
    await sound(bo, 0.55);
    expect(soundingsOf(await linesOn(bo))).toEqual([0.5, 0.52, 0.55]);

    await ana.sync();
    expect(soundingsOf(await atStation())).toEqual([0.52]);
    expect(ana.log.handed.map(({ entry }) => entry.kind)).toEqual(["casualty-opened", "sounding-taken"]);
    await agree([0.5, 0.52, 0.55]);
  });

  test("keeps a strike of another's line back until the station has that line, and then it counts", async () => {
    await open(bo);
    const slip = await sound(bo, 5);
    await handOver(bo, ana);
    const struck = await strike(ana, slip);
    await strike(ana, struck);
    const again = await strike(ana, slip);
    await ana.sync();
    expect(await atStation()).toEqual([]);
    expect((await ana.store.outbox()).map(({ state }) => state)).toEqual(["unsent", "unsent", "unsent"]);
    await bo.sync();
    await ana.sync();
    expect((await atStation()).map(({ id }) => id)).not.toContain(again.id);
    await agree([]);
    expect((await atStation()).map(({ id }) => id)).toContain(again.id);
  });

  test("twice, or by code and by file, is taken once", async () => {
    await open(bo);
    await sound(bo, 0.5);
    await handOver(bo, ana);
    expect(await handOver(bo, ana)).toMatchObject({ fresh: [], known: 2 });
    await agree([0.5]);
  });

  test("goes on to a third device, and is in the file of everything held here", async () => {
    const cas = await Phone.open(station, await station.invite(ana.member, "Cas", "crew", "phone-3"));
    await cas.sync();
    await open(bo);
    const first = await sound(bo, 0.5);
    await handOver(bo, ana);
    await handOver(ana, cas);
    expect(soundingsOf(await linesOn(cas))).toEqual([0.5]);
    expect(await (await heldFile(cas.store)).text()).toContain(first.id);
    await agree([0.5]);
    await cas.close();
  });

  test("is still there after the device was started anew", async () => {
    await open(bo);
    await sound(bo, 0.5);
    await handOver(bo, ana);
    await ana.log.load();
    expect(soundingsOf(await linesOn(ana))).toEqual([0.5]);
  });

  test("law: in whatever order two devices write, hand over and reach the station, nothing is lost and nothing twice", async () => {
    const deeds = fc.array(
      fc.constantFrom("bo sounds", "ana sounds", "bo shows", "ana shows", "bo syncs", "ana syncs"),
      {
        maxLength: 10,
      },
    );
    await fc.assert(
      fc.asyncProperty(deeds, async (done) => {
        const before = soundingsOf(await atStation());
        const told: number[] = [];
        if (before.length === 0) await open(bo);
        for (const deed of done) {
          const [who, other] = deed.startsWith("bo") ? [bo, ana] : [ana, bo];
          if (deed.endsWith("syncs")) await who.sync();
          else if (deed.endsWith("shows")) await handOver(who, other);
          else told.push(((await sound(who, (told.length + 1) / 100)).body as { level: number }).level);
        }
        await agree([...before, ...told]);
      }),
      { seed: 21, numRuns: 12 },
    );
  });
});

/** As a member with bad intent would: stamped as the station's own, under somebody else's name. */
async function forge(line: Partial<Entry>): Promise<Entry> {
  const made = await sound(bo, 0.9);
  await bo.store.replaceOutbox([made.id], []);
  const forged = { ...made, ...line } as Entry;
  const pieces = await deskOf(bo).pack(SHEET, [forged]);
  await deskOf(ana).takeText(pieces.join("\n"));
  return forged;
}

describe("a sheet that was made up", () => {
  test("under another's name never reaches the station, however often the device that took it does", async () => {
    const { person, device } = ana.member.me;
    const forged = await forge({ by: person.id, device });
    expect(ana.log.handed.map(({ entry }) => entry.id)).toEqual([forged.id]);
    for (let time = 0; time < 3; time++) await ana.sync();
    await bo.sync();
    expect(await atStation()).toEqual([]);
    expect(ana.log.handed).toHaveLength(1);
    await deskOf(ana).drop(ana.log.handed);
    expect(await linesOn(ana)).toEqual([]);
  });

  test("as another's line, changed, gives way to what the station has of it", async () => {
    await open(bo);
    const true5 = await sound(bo, 0.5);
    await forge({ ...true5, body: { space: "e1", level: 0.1, text: "10 cm" } });
    expect(soundingsOf(await linesOn(ana))).toEqual([0.1]);
    await agree([0.5]);
    const fold = createStationFold([]);
    fold.add(await linesOn(ana));
    expect(ana.log.view({ ...lookingOf(ana) })?.casualties[0]?.soundings.map(({ level }) => level)).toEqual([0.5]);
  });
});

function lookingOf({ member }: Phone) {
  const person = { ...member.me.person, left: false };
  return { person, device: member.me.device, place: undefined, now: station.ambient.now(), units: "metric" } as const;
}

function menderOf({ member, store }: Phone): BranchMender {
  const who = { person: member.me.person.id, device: member.me.device };
  return new BranchMender({ door: new ServerDoor(member.fetch), store, who, now: station.ambient.now });
}

describe("lines whose own device is lost", () => {
  test("are taken by an administrator's word, and the log says whose; the device that comes after all repeats them", async () => {
    const opening = await open(bo);
    const sounding = await sound(bo, 0.5);
    await handOver(bo, ana);
    const lines = ana.log.handed.map(({ entry }) => entry);
    expect(await menderOf(ana).takeHanded(lines)).toMatchObject({ kind: "answered", value: { clashing: [] } });
    const told = (await station.store.since(["station"], {}, 10_000)).filter(
      ({ entry }) => entry.kind === "lines-handed-in",
    );
    expect(told.map(({ entry }) => [entry.by, entry.body])).toEqual([
      [ana.member.me.person.id, { lines: [opening.id, sounding.id] }],
    ]);
    await agree([0.5]);
  });

  test("are not taken by anybody else's word, and nothing but sheets is", async () => {
    await open(ana);
    await handOver(ana, bo);
    const lines = bo.log.handed.map(({ entry }) => entry);
    expect(await menderOf(bo).takeHanded(lines)).toMatchObject({ kind: "refused", problem: { code: "SV-196" } });
    const made = { ...lines[0]!, subject: `person:${bo.member.me.person.id}`, kind: "person-changed" };
    const raised = { ...made, body: { role: "administrator" } };
    const reply = await menderOf(ana).takeHanded([raised]);
    expect(JSON.stringify(reply)).toContain("SV-199");
    expect(await atStation()).toEqual([]);
  });
});
