import type { PushReply, SignedIn } from "#station";
import { beforeEach, describe, expect, it } from "vitest";
import { PIN, stageStation, type Browser, type StagedStation } from "./start/staged-station.ts";

const WRONG = "918273";
let station: StagedStation;
let address = 0;
beforeEach(async () => {
  station = await stageStation();
  return () => station.app.close();
});

function signIn(browser: Browser, name: string, pin: string, device = browser.device) {
  return browser.send("POST", "/api/sign-in", { name, pin, device, deviceName: "Phone" });
}

/** From an address of its own each time, as somebody with many would. */
async function guess(name: string, device: string, pin = WRONG, browser = station.browser()) {
  const from = `10.${(address += 1) >> 16}.${(address >> 8) & 255}.${address & 255}`;
  const wish = { name, pin, device, deviceName: "X" };
  return (await browser.send("POST", "/api/sign-in", wish, {}, from)).json<{ code?: string; wait?: number }>();
}

/** Guesses patiently until nothing is taken any more; how many were. */
async function guessOn(name: string, makeDevice: (n: number) => string, most = 70): Promise<number> {
  let taken = 0;
  for (let n = 0; n < most; n += 1) {
    const { code } = await guess(name, makeDevice(n));
    if (code === "SV-110") taken += 1;
    station.wait(900);
  }
  return taken;
}

describe("a device's id, which stands in every copy of the log", () => {
  it("is no proof of being that device: who only knows it locks nobody out there", async () => {
    const keeper = await station.signedIn("keeper");
    for (let n = 0; n < 30; n += 1) await guess(keeper.me.person.name, keeper.device);
    await keeper.send("DELETE", "/api/session");
    expect((await signIn(keeper, keeper.me.person.name, PIN)).statusCode).toBe(200);
  });

  it("signs nobody in from another device, even with the right PIN", async () => {
    const keeper = await station.signedIn("keeper");
    const crew = await station.signedIn("crew");
    const stranger = station.browser();
    expect((await signIn(stranger, crew.me.person.name, PIN, keeper.device)).json()).toMatchObject({ code: "SV-113" });
    expect((await stranger.send("GET", "/api/log/pull")).statusCode).toBe(401);
  });

  it("cannot be put under a line by another device", async () => {
    const keeper = await station.signedIn("keeper");
    const crew = await station.signedIn("crew");
    await signIn(crew, crew.me.person.name, PIN, keeper.device);
    const line = { ...station.line(crew.me, {}), device: keeper.device };
    const { verdicts } = (await crew.send("POST", "/api/log/push", { entries: [line] })).json<PushReply>();
    expect(verdicts[0]).toMatchObject({ verdict: "refused", faults: [{ code: "SN-102" }] });
  });

  it("that lost its key comes back by an invite to somebody who signed in on it before, and by no other", async () => {
    const founder = await station.signedIn("administrator");
    const keeper = await station.signedIn("keeper");
    const crew = await station.signedIn("crew");
    const lost = { ...station.browser(), device: keeper.device };
    const accept = async (person: string) => {
      const { code } = (await founder.send("POST", "/api/invites", { person })).json<{ code: string }>();
      return lost.send("POST", "/api/invites/accept", { code, pin: "730164", device: keeper.device, deviceName: "P" });
    };
    expect((await accept(crew.me.person.id)).json()).toMatchObject({ code: "SV-113" });
    expect((await accept(keeper.me.person.id)).statusCode).toBe(200);
    expect((await signIn(lost, keeper.me.person.name, "730164")).statusCode).toBe(200);
  });

  it("of before there were keys gets one at the next visit of its session", async () => {
    const keeper = await station.signedIn("keeper");
    await station.store.removeCredential(`device:${keeper.device}`);
    await keeper.send("GET", "/api/session");
    expect((await signIn(station.browser(), keeper.me.person.name, PIN, keeper.device)).json()).toMatchObject({
      code: "SV-113",
    });
  });
});

describe("guesses at one PIN (NIST SP 800-63B: no more than 100 consecutive failed attempts on one account)", () => {
  it("are few from devices made up one after another, and then only an invite opens that way", async () => {
    const founder = await station.signedIn("administrator");
    const keeper = await station.signedIn("keeper");
    const { name, id } = keeper.me.person;
    expect(await guessOn(name, (n) => `made-up-${n}`)).toBe(60);
    station.wait(20 * 86_400);
    expect(await guess(name, "another-one", PIN)).toMatchObject({ code: "SV-114" });
    const { code } = (await founder.send("POST", "/api/invites", { person: id })).json<{ code: string }>();
    const fresh = station.browser();
    const wish = { code, pin: "730164", device: fresh.device, deviceName: "P" };
    expect((await fresh.send("POST", "/api/invites/accept", wish)).statusCode).toBe(200);
    expect((await signIn(station.browser(), name, "730164")).statusCode).toBe(200);
  });

  it("are no more for a member of the crew who signs in on new devices to guess from", async () => {
    const founder = await station.signedIn("administrator");
    const { name } = founder.me.person;
    const crew = await station.signedIn("crew");
    let taken = 0;
    for (let n = 0; n < 62; n += 1) {
      const device = `fresh-${n}`;
      await guess(crew.me.person.name, device, PIN);
      for (let k = 0; k < 4; k += 1) if ((await guess(name, device)).code === "SV-110") taken += 1;
      station.wait(900);
    }
    expect(taken).toBe(60);
  });

  it("never close a device on which the person signed in before", async () => {
    const keeper = await station.signedIn("keeper");
    await guessOn(keeper.me.person.name, (n) => `made-up-${n}`, 65);
    await keeper.send("DELETE", "/api/session");
    expect((await signIn(keeper, keeper.me.person.name, PIN)).statusCode).toBe(200);
  });

  it("on devices of one's own are 40 at the most, all of them together", async () => {
    const keeper = await station.signedIn("keeper");
    await keeper.send("DELETE", "/api/session");
    let taken = 0;
    for (let n = 0; n < 80; n += 1) {
      station.wait(12 * 3600);
      if ((await guess(keeper.me.person.name, keeper.device, WRONG, keeper)).code === "SV-110") taken += 1;
    }
    expect(taken).toBe(40);
    expect((await signIn(keeper, keeper.me.person.name, PIN)).json()).toMatchObject({ code: "SV-114" });
  });

  it("are told to the person and to the administrators", async () => {
    const founder = await station.signedIn("administrator");
    const keeper = await station.signedIn("keeper");
    for (let n = 0; n < 12; n += 1) {
      await guess(keeper.me.person.name, `made-up-${n}`);
      station.wait(900);
    }
    const mine = (await keeper.send("GET", "/api/session")).json<SignedIn>();
    expect(mine.wrongPins).toMatchObject({ elsewhere: 12, closed: false });
    const told = await founder.send("GET", "/api/people/wrong-pins");
    expect(told.json()).toMatchObject({ people: [{ person: keeper.me.person.id, elsewhere: 12, closed: false }] });
    expect((await keeper.send("GET", "/api/people/wrong-pins")).statusCode).toBe(403);
  });

  it("wait no longer for a clock that was years ahead and came back", async () => {
    const keeper = await station.signedIn("keeper");
    const stranger = station.browser();
    station.wait(10 * 365 * 86_400);
    for (let n = 0; n < 4; n += 1) await signIn(stranger, keeper.me.person.name, WRONG);
    station.wait(-10 * 365 * 86_400);
    expect((await signIn(stranger, keeper.me.person.name, PIN)).json()).toMatchObject({ code: "SV-111", wait: 5 });
    station.wait(5);
    expect((await signIn(stranger, keeper.me.person.name, PIN)).statusCode).toBe(200);
  });
});

async function isIn(browser: Browser): Promise<boolean> {
  return (await browser.send("GET", "/api/log/pull")).statusCode === 200;
}

async function onTwoDevices() {
  const one = await station.signedIn("keeper");
  const other = station.browser();
  await signIn(other, one.me.person.name, PIN);
  return { one, other };
}

describe("sessions elsewhere", () => {
  it.each([
    [true, false],
    [false, true],
  ])("end with a changed PIN where the person wishes (%s), and which did is said", async (endOthers, stays) => {
    const { one, other } = await onTwoDevices();
    const reply = await one.send("PUT", "/api/pin", { old: PIN, new: "640917", endOthers });
    expect(reply.json()).toEqual({ ended: endOthers ? [{ device: other.device, deviceName: "Phone" }] : [] });
    expect([await isIn(one), await isIn(other)]).toEqual([true, stays]);
  });

  it("end where an invite is accepted: the way back after a lost PIN", async () => {
    const founder = await station.signedIn("administrator");
    const { one, other } = await onTwoDevices();
    const { code } = (await founder.send("POST", "/api/invites", { person: one.me.person.id })).json<{
      code: string;
    }>();
    const fresh = station.browser();
    const wish = { code, pin: "730164", device: fresh.device, deviceName: "New" };
    await fresh.send("POST", "/api/invites/accept", wish);
    expect([await isIn(fresh), await isIn(one), await isIn(other)]).toEqual([true, false, false]);
  });
});
