import type { SessionReply, SignedIn } from "#station";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { PIN, stageStation, type Browser, type StagedStation } from "./start/staged-station.ts";

const WRONG = "918273";
const DAY = 86_400;
let station: StagedStation;
const stations: StagedStation[] = [];

beforeEach(async () => {
  station = await stageStation();
  stations.push(station);
});
afterAll(() => Promise.all(stations.map(({ app }) => app.close())));

function signIn(browser: Browser, name: string, pin: string) {
  return browser.send("POST", "/api/sign-in", { name, pin, device: browser.device, deviceName: "Phone" });
}

async function session(browser: Browser): Promise<SessionReply> {
  return (await browser.send("GET", "/api/session")).json();
}

describe("set-up of an empty station", () => {
  it("makes the first administrator once, with the terminal's code", async () => {
    expect(await session(station.browser())).toMatchObject({ kind: "signed-out", needsSetup: true, because: "never" });
    const founder = await station.signedIn("administrator");
    expect(founder.me).toMatchObject({ kind: "signed-in", stationName: "Skerrow", person: { role: "administrator" } });
    expect(await session(station.browser())).toMatchObject({ needsSetup: false, demo: [] });
  });

  it("takes no other code, and none once it is set up", async () => {
    const place = { name: "North slip", strength: 1, zone: "UTC" };
    const wish = { code: "AAAA-BBBB-CCCC", stationName: "S", name: "N", pin: PIN, place };
    const { device, send } = station.browser();
    const ask = () => send("POST", "/api/setup", { ...wish, device, deviceName: "Phone" });
    expect((await ask()).json()).toMatchObject({ code: "SV-133" });
    place.zone = "Nowhere/Land";
    expect((await ask()).json()).toMatchObject({ code: "SV-122", faults: [{ field: "place.zone" }] });
    place.zone = "UTC";
    await station.signedIn("administrator");
    expect((await ask()).json()).toMatchObject({ code: "SV-134" });
    expect(await station.store.count()).toBe(4);
  });
});

describe("name and PIN", () => {
  it("signs in whatever the capitals and spaces of the name, in a cookie that scripts cannot read", async () => {
    await station.signedIn("administrator");
    const reply = await signIn(station.browser(), "  ann  MARR ", PIN);
    expect(reply.statusCode).toBe(200);
    const cookie = String(reply.headers["set-cookie"]);
    expect(cookie).toMatch(/drykeel_session=[^;]{40,}; Max-Age=\d+; Path=\/; HttpOnly; SameSite=Strict/);
    expect(cookie).not.toContain("Secure");
  });

  it("says the same of a wrong PIN and of a name it does not know", async () => {
    await station.signedIn("administrator");
    const [wrong, unknown] = [
      await signIn(station.browser(), "Ann Marr", WRONG),
      await signIn(station.browser(), "Nobody", PIN),
    ];
    expect(wrong.statusCode).toBe(401);
    expect(unknown.json()).toEqual(wrong.json());
  });

  it("slows a person on one device after three failures, and tells the wait", async () => {
    await station.signedIn("administrator");
    const browser = station.browser();
    for (let i = 0; i < 3; i++) expect((await signIn(browser, "Ann Marr", WRONG)).json().wait).toBeUndefined();
    expect((await signIn(browser, "Ann Marr", WRONG)).json()).toMatchObject({ code: "SV-110", wait: 5 });
    const early = await signIn(browser, "Ann Marr", PIN);
    expect(early.json()).toMatchObject({ code: "SV-111", wait: 5 });
    expect(early.headers["retry-after"]).toBe("5");
    station.wait(5);
    expect((await signIn(browser, "Ann Marr", PIN)).statusCode).toBe(200);
  });

  it("lets no more through when many tries come at once", async () => {
    await station.signedIn("administrator");
    const browser = station.browser();
    const tries = await Promise.all(Array.from({ length: 12 }, () => signIn(browser, "Ann Marr", WRONG)));
    const judged = tries.filter((reply) => reply.json().code === "SV-110");
    expect(judged.length).toBeLessThanOrEqual(4);
  });

  it("locks the person on that device alone, and an invite leads back in at once", async () => {
    const founder = await station.signedIn("administrator");
    const browser = await station.signedIn("keeper");
    const { me, device, send } = browser;
    for (let i = 0; i < 10; i++) {
      station.wait(900);
      expect((await signIn(browser, me.person.name, WRONG)).json().code).toBe("SV-110");
    }
    station.wait(900);
    expect((await signIn(browser, me.person.name, PIN)).json()).toMatchObject({
      code: "SV-112",
      wait: 12 * 3600 - 900,
    });
    expect((await send("GET", "/api/log/pull")).statusCode).toBe(200);
    expect((await signIn(station.browser(), me.person.name, PIN)).statusCode).toBe(200);
    const invite = (await founder.send("POST", "/api/invites", { person: me.person.id })).json();
    await send("POST", "/api/invites/accept", { code: invite.code, pin: "730164", device, deviceName: "Phone" });
    expect((await signIn(browser, me.person.name, "730164")).statusCode).toBe(200);
  });

  it("opens the lock by itself after twelve hours", async () => {
    await station.signedIn("administrator");
    const browser = station.browser();
    for (let i = 0; i < 10; i++) {
      station.wait(900);
      await signIn(browser, "Ann Marr", WRONG);
    }
    station.wait(12 * 3600);
    expect((await signIn(browser, "Ann Marr", PIN)).statusCode).toBe(200);
  });

  it("gives made-up devices no more tries than one", async () => {
    await station.signedIn("administrator");
    const codes: string[] = [];
    for (let i = 0; i < 24; i++) {
      const reply = await station.app.inject({
        method: "POST",
        url: "/api/sign-in",
        remoteAddress: `10.0.0.${i}`,
        payload: { name: "Ann Marr", pin: WRONG, device: `made-up-${i}`, deviceName: "X" },
      });
      codes.push(reply.json().code);
    }
    expect(codes.slice(20)).toEqual(["SV-111", "SV-111", "SV-111", "SV-111"]);
  });

  it("changes one's own PIN, and takes no PIN that anyone would guess", async () => {
    const { send, me } = await station.signedIn("crew");
    const weak = await send("PUT", "/api/pin", { old: PIN, new: "123456" });
    expect(weak.json()).toMatchObject({ code: "SV-130", faults: [{ field: "pin" }] });
    expect((await send("PUT", "/api/pin", { old: PIN, new: "640917" })).statusCode).toBe(200);
    expect((await signIn(station.browser(), me.person.name, "640917")).statusCode).toBe(200);
  });

  it("limits the tries of one network address, whatever they claim to be", async () => {
    const replies = [];
    for (let i = 0; i < 25; i++) replies.push(await signIn(station.browser(), `Name ${i}`, PIN));
    expect(replies.at(-1)!.json()).toMatchObject({ code: "SV-111" });
    expect(replies.at(-1)!.statusCode).toBe(429);
  });
});

describe("sessions", () => {
  it("end half a year after they were last used, and use moves the end", async () => {
    const browser = await station.signedIn("crew");
    station.wait(170 * DAY);
    const renewed = (await session(browser)) as SignedIn;
    expect(renewed.expires > browser.me.expires).toBe(true);
    station.wait(179 * DAY);
    expect((await browser.send("GET", "/api/log/pull")).statusCode).toBe(200);
    station.wait(2 * DAY);
    expect((await browser.send("GET", "/api/log/pull")).json()).toMatchObject({ code: "SV-101" });
    expect(await session(browser)).toMatchObject({ kind: "signed-out", because: "expired" });
  });

  it("end at sign-out, for that browser alone", async () => {
    const one = await station.signedIn("crew");
    const other = await station.signedIn("keeper");
    expect((await one.send("DELETE", "/api/session")).statusCode).toBe(204);
    expect((await one.send("GET", "/api/log/pull")).statusCode).toBe(401);
    expect((await other.send("GET", "/api/log/pull")).statusCode).toBe(200);
  });

  it("end where another begins in the same browser: the token before opens nothing", async () => {
    const browser = await station.signedIn("crew");
    const old = station.browser();
    const token = String((await signIn(browser, browser.me.person.name, PIN)).headers["set-cookie"]);
    await signIn(browser, browser.me.person.name, PIN);
    const cookie = token.match(/drykeel_session=[^;]+/)![0];
    expect((await old.send("GET", "/api/log/pull", undefined, { cookie })).statusCode).toBe(401);
    expect((await browser.send("GET", "/api/log/pull")).statusCode).toBe(200);
  });

  it("take writes from no other site's pages", async () => {
    const { send } = await station.signedIn("administrator");
    const wish = { name: "Eve", role: "keeper" };
    const foreign = await send("POST", "/api/invites", wish, { origin: "https://elsewhere.example" });
    expect(foreign.json()).toMatchObject({ code: "SV-105" });
    expect((await send("POST", "/api/invites", wish, { origin: "http://localhost" })).statusCode).toBe(200);
  });
});

describe("a new name", () => {
  it.each(["Ines\u200bDunmore", "\u0406nes Dunmore", "Mara\u202erevillot", "\u001b[31mEvil\u0007"])(
    "that is not what it looks like is refused, on the list and on a device: %j",
    async (name) => {
      const founder = await station.signedIn("administrator");
      const invited = await founder.send("POST", "/api/invites", { name, role: "crew" });
      expect([invited.statusCode, invited.json()]).toMatchObject([400, { code: "SV-122" }]);
      const wish = { name: founder.me.person.name, pin: PIN, device: founder.device, deviceName: name };
      expect((await founder.send("POST", "/api/sign-in", wish)).json()).toMatchObject({
        faults: [{ field: "deviceName" }],
      });
    },
  );
});

describe("invites", () => {
  it("open once, however the code is typed", async () => {
    const { send } = await station.signedIn("administrator");
    const { code, link } = (await send("POST", "/api/invites", { name: "Bea Lund", role: "crew" })).json();
    expect(link).toBe(`http://localhost/invite#${code}`);
    const accept = (typed: string) => {
      const { device, send } = station.browser();
      return send("POST", "/api/invites/accept", { code: typed, pin: PIN, device, deviceName: "Phone" });
    };
    const first = await accept(` ${code.toLowerCase().replaceAll("-", " ")}`);
    expect(first.json()).toMatchObject({ kind: "signed-in", person: { name: "Bea Lund", role: "crew" } });
    expect((await accept(code)).json()).toMatchObject({ code: "SV-133" });
  });

  it("expire after a week", async () => {
    const { send } = await station.signedIn("administrator");
    const { code } = (await send("POST", "/api/invites", { name: "Bea Lund", role: "crew" })).json();
    station.wait(7 * DAY);
    const { device, send: accept } = station.browser();
    const reply = await accept("POST", "/api/invites/accept", { code, pin: PIN, device, deviceName: "Phone" });
    expect(reply.json()).toMatchObject({ code: "SV-133" });
  });

  it("give no two people one name", async () => {
    const { send } = await station.signedIn("administrator");
    expect((await send("POST", "/api/invites", { name: "ANN MARR", role: "crew" })).json()).toMatchObject({
      code: "SV-132",
    });
  });
});
