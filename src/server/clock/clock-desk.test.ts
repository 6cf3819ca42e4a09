import type { Entry } from "#log";
import type { HealthReply, PushReply, SignedIn } from "#station";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { PIN, stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";

/** By the true time, which the station's clock leaves. */
const TRUE_START = Date.parse("2027-03-14T10:00:00Z");
const HOUR = 3600;

/** A device whose clock is right, or off by so much [s], asks. */
function ask(browser: Browser, method: "GET" | "POST", url: string, body?: object, off = 0) {
  const clock = new Date(TRUE_START + off * 1000).toISOString();
  return browser.send(method, url, body, { "x-device-clock": clock });
}

describe("a station whose clock is wrong", () => {
  let station: StagedStation;
  let one: Browser & { readonly me: SignedIn };
  let other: Browser & { readonly me: SignedIn };

  beforeEach(async () => {
    station = await stageStation();
    one = await station.signedIn("keeper");
    other = await station.signedIn("crew");
  });
  afterEach(() => station.app.close());

  async function pushAt(
    browser: Browser & { readonly me: SignedIn },
    off = 0,
    clockOff = off,
  ): Promise<PushReply["verdicts"][0]> {
    const line: Entry = station.line(browser.me, { at: new Date(TRUE_START + off * 1000).toISOString() });
    const reply = await ask(browser, "POST", "/api/log/push", { entries: [line] }, clockOff);
    return reply.json<PushReply>().verdicts[0]!;
  }

  async function health(): Promise<HealthReply> {
    return (await station.browser().send("GET", "/api/health")).json<HealthReply>();
  }

  it("takes the lines of right devices once those of two people agree, and says so at /api/health and to them", async () => {
    station.wait(-HOUR);
    // Nothing newer than the station's own lines of an hour ahead is left to show it: the devices must.
    expect((await ask(one, "GET", "/api/log/pull")).headers["x-station-clock"]).toMatch(/^behind /);
    await ask(other, "GET", "/api/log/pull");
    const told = await ask(one, "GET", "/api/log/pull");
    expect(told.headers["x-station-clock"]).toBe("behind 3600000");
    expect((await health()).clock).toMatchObject({
      kind: "behind",
      byMs: 3_600_000,
      because: expect.stringContaining("60\u00a0min behind the devices"),
      remedy: expect.stringContaining("automatic"),
    });
    expect(await pushAt(one)).toMatchObject({ verdict: "accepted" });
    expect(await pushAt(other)).toMatchObject({ verdict: "accepted" });
    expect(await pushAt(one, 2 * HOUR, 0)).toMatchObject({ verdict: "refused", faults: [{ code: "SV-171" }] });
  });

  it("takes them from the first device on where its own log shows that it is behind, as after a dead battery", async () => {
    expect(await pushAt(one)).toMatchObject({ verdict: "accepted" });
    station.wait(-7 * 365 * 24 * HOUR);
    expect((await health()).clock).toMatchObject({
      kind: "behind",
      because: expect.stringContaining("before the newest line of the log was received"),
    });
    expect(await pushAt(one, 20 * 24 * HOUR)).toMatchObject({ verdict: "accepted" });
    expect(await pushAt(other, 2 * 365 * 24 * HOUR)).toMatchObject({ verdict: "refused" });
  });

  it("is not doubted for one device, nor for many of one person, and refuses what is ahead of it as ever", async () => {
    const again = station.browser();
    expect(await pushAt(one, 3 * HOUR)).toMatchObject({ verdict: "refused", faults: [{ code: "SV-171" }] });
    await ask(again, "GET", "/api/health", undefined, 3 * HOUR);
    expect((await ask(one, "GET", "/api/log/pull", undefined, 3 * HOUR)).headers["x-station-clock"]).toBeUndefined();
    expect((await health()).clock).toBeUndefined();
  });

  it("forgets what devices said as soon as its clock is set", async () => {
    station.wait(-HOUR);
    await ask(one, "GET", "/api/log/pull");
    await ask(other, "GET", "/api/log/pull");
    expect((await health()).clock).toMatchObject({ kind: "behind" });
    station.wait(HOUR);
    expect((await health()).clock).toBeUndefined();
    expect(await pushAt(one, 2 * HOUR)).toMatchObject({ verdict: "refused" });
  });

  it("ahead of the devices, is judged by them too: a device that joined by its wrong clock is not too early", async () => {
    station.wait(40 * 24 * HOUR);
    await ask(one, "GET", "/api/log/pull");
    await ask(other, "GET", "/api/log/pull");
    expect((await health()).clock).toMatchObject({ kind: "ahead" });
    const late = await station.signedIn("crew");
    expect(await pushAt(late)).toMatchObject({ verdict: "accepted" });
  });

  it("RULE-32 ahead by most of a year, signs nobody out: devices with their keys count though their sessions look ended", async () => {
    const third = await station.signedIn("crew");
    station.wait(300 * 24 * HOUR);
    expect((await ask(one, "GET", "/api/log/pull")).json()).toMatchObject({ code: "SV-101" });
    expect((await ask(other, "GET", "/api/log/pull")).statusCode).toBe(200);
    expect((await ask(third, "GET", "/api/log/pull")).statusCode).toBe(200);
    expect((await ask(one, "GET", "/api/log/pull")).statusCode).toBe(200);
    expect((await health()).clock).toMatchObject({ kind: "ahead", byMs: 300 * 24 * HOUR * 1000 });
    expect(await pushAt(one)).toMatchObject({ verdict: "accepted" });
    station.wait(-300 * 24 * HOUR);
    for (const browser of [one, other, third]) {
      expect((await ask(browser, "GET", "/api/log/pull")).statusCode).toBe(200);
    }
  });

  it("is not judged by sessions that ended on devices that cannot show their keys", async () => {
    for (const { device } of [one, other]) await station.store.removeCredential(`device:${device}`);
    station.wait(300 * 24 * HOUR);
    for (const browser of [one, other, one]) {
      expect((await ask(browser, "GET", "/api/log/pull")).statusCode).toBe(401);
    }
    expect((await health()).clock).toBeUndefined();
  });

  it("RULE-32 ahead by a month, ends no open invite for good", async () => {
    const founder = await station.signedIn("administrator");
    const invited = await founder.send("POST", "/api/invites", { name: "Di", role: "crew" });
    const browser = station.browser();
    const accept = () => {
      const { code } = invited.json<{ code: string }>();
      const { device } = browser;
      return browser.send("POST", "/api/invites/accept", { code, pin: PIN, device, deviceName: "Phone" });
    };
    station.wait(30 * 24 * HOUR);
    expect((await accept()).json()).toMatchObject({ code: "SV-133" });
    station.wait(-30 * 24 * HOUR);
    expect((await accept()).statusCode).toBe(200);
  });

  it("reads no clock that is none, and hears nobody who is not signed in", async () => {
    const stranger = station.browser();
    for (const clock of ["soon", "2027-99-99T00:00:00Z", "9".repeat(4000)]) {
      expect((await one.send("GET", "/api/log/pull", undefined, { "x-device-clock": clock })).statusCode).toBe(200);
      await stranger.send("GET", "/api/session", undefined, { "x-device-clock": "2031-03-14T10:00:00Z" });
    }
    expect((await health()).clock).toBeUndefined();
  });
});
