import "fake-indexeddb/auto";
import { uuidv7 } from "uuidv7";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { readSnapshot, sendSnapshot, type SnapshotReply } from "#station";
import type { StationView } from "../../src/web/device/sync/contract.ts";
import { memoryCopies, sqliteCopies } from "../restore/copies.ts";
import { Phone, readingOf } from "../restore/phone.ts";
import { patterns, PutBackStation, type Member } from "../restore/put-back-station.ts";

const [pattern] = patterns;
const built = `${pattern!.id}@${pattern!.version}`;
const KIT = "kit:k1";
const NONE = "nothing";

function muster(by: Phone, sealSeen: string) {
  return by.write({ subject: KIT, kind: "mustered", body: { sealSeen, containerSound: true } });
}

describe.each([
  ["memory", async () => memoryCopies()],
  ["SQLite", sqliteCopies],
])("a new phone at a station in %s", (_, open) => {
  let station: PutBackStation;
  let keeper: Phone;
  let place: string;
  let member: Member;
  let phone: Phone;
  /** A path that the network swallows. */
  let cut: string;
  /** What stands between the station and the phone, and may lie. */
  let bend: ((reply: SnapshotReply) => SnapshotReply) | undefined;

  beforeEach(async () => {
    [cut, bend] = [NONE, undefined];
    station = await PutBackStation.open(await open(), uuidv7);
    keeper = await Phone.open(station, await station.found("phone-1"));
    await keeper.sync();
    place = await station.place();
    const body = { name: "One", serial: "S-1", seal: "100", items: [] };
    await keeper.write({ subject: KIT, place, pattern: built, kind: "kit-enrolled", body });
    await muster(keeper, "100");
    await keeper.sync();
    member = await station.invite(keeper.member, "Bo", "keeper", "phone-2");
    const through: typeof fetch = async (address, init) => {
      if (String(address).startsWith(cut)) throw new TypeError("cut");
      const reply = await member.fetch(address, init);
      if (bend === undefined || String(address) !== "/api/log/snapshot") return reply;
      return new Response(JSON.stringify(bend((await reply.json()) as SnapshotReply)), { headers: reply.headers });
    };
    phone = await Phone.open(station, member, through);
  });
  afterEach(async () => {
    await Promise.all([keeper.close(), phone.close()]);
    await station.close();
  });

  const look = (by: Phone): StationView | undefined =>
    by.log.view({
      person: { ...by.member.me.person, left: false },
      device: by.member.me.device,
      place: undefined,
      now: station.ambient.now(),
      units: "metric",
    });

  /** The phone and the station tell the same, from the lines alone. */
  const agree = async () => {
    const kept = (await station.kept()).map(({ entry }) => entry);
    expect(readingOf(await phone.entries())).toEqual(readingOf(kept));
    expect(look(phone)?.kits).toEqual(readingOf(kept).kits);
    expect(look(phone)?.early).toBeUndefined();
  };

  test("shows the board before it has one line of the log, and says so", async () => {
    cut = "/api/log/pull";
    await phone.sync();
    expect(await phone.store.count()).toBe(0);
    const view = look(phone)!;
    expect(view.kits).toEqual(look(keeper)!.kits);
    expect(view.standings.get("k1")).toEqual(look(keeper)!.standings.get("k1"));
    expect(view.early).toEqual({ at: expect.any(String) as string, here: 0, of: (await station.kept()).length });
  });

  test("fetches the log all the same, finds the board borne out, and goes on from the lines alone", async () => {
    await phone.sync();
    await agree();
    expect(phone.log.falseSnapshot).toBeUndefined();
    await muster(keeper, "100");
    await keeper.sync();
    await phone.sync();
    await agree();
  });

  test("writes on the board as on the log: in sight of what stands there, seen at once, and never lost", async () => {
    cut = "/api/log/pull";
    await phone.sync();
    const before = look(phone)!.kits[0]!.heads;
    const line = await muster(phone, "999");
    expect(line.after).toEqual(before);
    expect(look(phone)!.kits[0]!.sealMismatch).toMatchObject({ expected: "100", seen: "999" });
    const next = await muster(phone, "998");
    expect(next.after).toEqual([line.id]);
    await phone.sync();
    cut = NONE;
    await phone.sync();
    await agree();
    expect(look(phone)!.kits[0]!.toSettle).toEqual([]);
    expect(phone.log.falseSnapshot).toBeUndefined();
  });

  test("shows what came after the board while the lines before it are on their way, also opened again", async () => {
    cut = "/api/log/pull";
    await phone.sync();
    await muster(keeper, "997");
    await keeper.sync();
    await phone.log.load();
    expect(look(phone)!.kits[0]!.sealMismatch).toBeUndefined();
    cut = NONE;
    await phone.sync();
    await agree();
    expect(look(phone)!.kits[0]!.sealMismatch).toMatchObject({ seen: "997" });
    expect(phone.log.falseSnapshot).toBeUndefined();
  });

  test("finds out a board that the lines do not bear out, says so, and throws it away", async () => {
    bend = (reply) => {
      if (reply.kind !== "snapshot") return reply;
      const told = readSnapshot(reply.snapshot);
      const kits = told.kits.map((kit) => ({ ...kit, seal: { ...kit.seal!, number: "666" } }));
      return { ...reply, snapshot: sendSnapshot({ ...told, kits }) };
    };
    cut = "/api/log/pull";
    await phone.sync();
    expect(look(phone)!.kits[0]!.seal?.number).toBe("666");
    cut = NONE;
    await phone.sync();
    expect(phone.log.falseSnapshot).toEqual(expect.any(String));
    await agree();
    expect(look(phone)!.kits[0]!.seal?.number).toBe("100");
    await phone.log.load();
    expect(phone.log.falseSnapshot).toEqual(expect.any(String));
    await phone.log.forgetFalseSnapshot();
    await phone.log.load();
    expect(phone.log.falseSnapshot).toBeUndefined();
  });

  test("finds out a board of other lines than those the station gives", async () => {
    bend = (reply) => {
      if (reply.kind !== "snapshot") return reply;
      const heads = reply.snapshot.heads.map((head) => ({ ...head, hash: "f".repeat(64) }));
      return { ...reply, snapshot: { ...reply.snapshot, heads } };
    };
    await phone.sync();
    expect(phone.log.falseSnapshot).toEqual(expect.any(String));
    await agree();
  });

  test("leaves alone a board that was folded by other rules or with other patterns", async () => {
    bend = (reply) => (reply.kind === "snapshot" ? { ...reply, snapshot: { ...reply.snapshot, form: 999 } } : reply);
    cut = "/api/log/pull";
    await phone.sync();
    expect(look(phone)).toBeUndefined();
    cut = NONE;
    await phone.sync();
    await agree();
    expect(phone.log.falseSnapshot).toBeUndefined();
  });

  test("gets the log as ever from a station that has no such board", async () => {
    bend = () => ({ kind: "none", because: "reading" });
    await phone.sync();
    await agree();
  });

  test("ends in the station's fold where that was put back while the board stood alone", async () => {
    const copy = await station.backup();
    await muster(keeper, "100");
    await keeper.sync();
    cut = "/api/log/pull";
    await phone.sync();
    expect(look(phone)).toBeDefined();
    await station.putBack(copy);
    await keeper.sync();
    cut = NONE;
    await phone.sync();
    await agree();
  });
});
