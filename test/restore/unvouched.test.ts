import "fake-indexeddb/auto";
import { uuidv7 } from "uuidv7";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { BranchMender } from "../../src/web/device/branch/branch-mender.ts";
import { ServerDoor } from "../../src/web/device/sync/server-door.ts";
import { memoryCopies } from "./copies.ts";
import { Phone } from "./phone.ts";
import { PutBackStation, type Member } from "./put-back-station.ts";

/** A network on which the station's vouchers get lost, as if it had never given any. */
function withoutVouchers({ fetch: fetchIt }: Member): typeof fetch {
  return async (address, init) => {
    const reply = await fetchIt(address, init);
    if (String(address) !== "/api/log/pull" && String(address) !== "/api/log/push") return reply;
    const text = (await reply.text()).replace(/"voucher":"[^"]*"/g, '"voucher":"lost"');
    return new Response(text, { status: reply.status, headers: reply.headers });
  };
}

function report(one: Phone, step: string) {
  return one.write({ subject: "pattern:brinnet-450", kind: "step-reported", body: { step, what: "unclear" } });
}

describe("lines that nothing vouches for", () => {
  let station: PutBackStation;
  let phone: Phone;
  let other: Phone;

  beforeEach(async () => {
    station = await PutBackStation.open(memoryCopies(), uuidv7);
    const founder = await station.found("phone-1");
    phone = await Phone.open(station, founder, withoutVouchers(founder));
    other = await Phone.open(station, await station.invite(founder, "Bo", "keeper", "phone-2"));
    for (const one of [phone, other]) await one.sync();
  });
  afterEach(async () => {
    await Promise.all([phone.close(), other.close()]);
    await station.close();
  });

  test("go as pushes where one's own; others' stay, counted, until an administrator says they are genuine", async () => {
    const copy = await station.backup();
    const theirs = await report(other, "theirs");
    await other.sync();
    const mine = await report(phone, "mine");
    await phone.sync();
    await station.putBack(copy);
    for (let time = 0; time < 2; time++) await phone.sync();
    expect((await station.store.find(mine.id))?.entry).toEqual(mine);
    expect(await station.store.find(theirs.id)).toBeUndefined();
    expect(phone.log.lost).toEqual([{ entry: theirs, why: "unvouched" }]);
    expect(phone.sendState).toMatchObject({ kind: "waiting", lines: 1 });

    const { person, device } = phone.member.me;
    const door = new ServerDoor(phone.member.fetch);
    const who = { person: person.id, device };
    const mender = new BranchMender({ door, store: phone.store, who, now: station.ambient.now });
    expect(await mender.takeByWord()).toMatchObject({ kind: "answered", value: { kept: [theirs.id] } });
    await phone.sync();
    expect((await station.store.find(theirs.id))?.entry).toEqual(theirs);
    expect([phone.log.lost, phone.sendState]).toEqual([[], { kind: "sent" }]);
  });
});
