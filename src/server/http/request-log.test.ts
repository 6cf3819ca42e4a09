import { describe, expect, it } from "vitest";
import { nameRequest } from "./request-log.ts";
import { PIN, stageStation } from "../start/staged-station.ts";

describe("a request's name", () => {
  it("is told in the answer, and is the proxy's own where that is plain", async () => {
    const station = await stageStation();
    const ask = (id: string) => station.browser().send("GET", "/api/health", undefined, { "x-request-id": id });
    expect((await ask("from-proxy.7")).headers["x-request-id"]).toBe("from-proxy.7");
    const [one, other] = [await ask("a\tb"), await ask("x".repeat(65))];
    expect(one.headers["x-request-id"]).toMatch(/^[\da-f-]{36}$/);
    expect(other.headers["x-request-id"]).not.toBe(one.headers["x-request-id"]);
    await station.app.close();
  });

  it("never carries an escape into a terminal", () => {
    const headers = { "x-request-id": "\u001b[31mred" };
    expect(nameRequest({ headers } as unknown as Parameters<typeof nameRequest>[0])).toMatch(/^[\da-f-]{36}$/);
  });
});

/** A station whose log lines are kept. */
async function watched(level: "info" | "warn") {
  const lines: Record<string, unknown>[] = [];
  const stream = { write: (line: string) => void lines.push(JSON.parse(line) as Record<string, unknown>) };
  const station = await stageStation({ log: { level, stream } });
  const events = () => lines.filter(({ msg }) => msg === "security");
  return { station, events, text: () => JSON.stringify(lines) };
}

describe("the log of security", () => {
  it("tells a wrong PIN, a call beyond one's role and too many tries, by ids only", async () => {
    const { station, events, text } = await watched("warn");
    const { send, device, me } = await station.signedIn("crew");
    const wrong = { name: me.person.name, pin: "111222", device, deviceName: "Phone" };
    await send("POST", "/api/sign-in", wrong);
    await send("POST", "/api/invites", { name: "Eve Ring", role: "crew" });
    const { id: person } = me.person;
    expect(events()).toMatchObject([
      { event: "sign-in failed", status: 401, route: "/api/sign-in", level: 40 },
      { event: "refused", status: 403, route: "/api/invites", person, device },
    ]);
    for (let time = 0; time < 25; time++) await send("POST", "/api/sign-in", wrong);
    expect(events().at(-1)).toMatchObject({ event: "slowed", status: 429 });
    for (const secret of ["111222", "482913", me.person.name, "Eve Ring"]) expect(text()).not.toContain(secret);
    await station.app.close();
  });

  it("tells who came in and out where every request is told", async () => {
    const { station, events, text } = await watched("info");
    const { send, device, me } = await station.signedIn("crew");
    await send("PUT", "/api/pin", { old: PIN, new: "739204" });
    await send("DELETE", "/api/session");
    const { id: person } = me.person;
    expect(events().slice(-3)).toMatchObject([
      { event: "sign-in done", route: "/api/invites/accept", level: 30 },
      { event: "change-own-pin done", person, device },
      { event: "sign-out done", person, device },
    ]);
    for (const secret of [PIN, "739204", me.person.name]) expect(text()).not.toContain(secret);
    await station.app.close();
  });
});
