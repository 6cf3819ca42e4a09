import ICAL from "ical.js";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";

const make = async (of: Browser) => {
  const made = (await of.send("POST", "/api/calendar/links")).json<{ id: string; link: string }>();
  return { id: made.id, path: new URL(made.link).pathname };
};

/** What an attacker with the address of a calendar, or with none, gets to see; read with an independent parser. */
describe("the calendar of a person", () => {
  let station: StagedStation;
  let crew: Awaited<ReturnType<StagedStation["signedIn"]>>;
  let path: string;
  let id: string;
  const open = (url: string) => station.app.inject({ method: "GET", url });

  beforeAll(async () => {
    station = await stageStation();
    await station.signedIn("administrator");
    crew = await station.signedIn("crew");
    ({ id, path } = await make(crew));
  });
  afterAll(() => station.app.close());

  it("is a calendar file to whoever has its address, and tells caches nothing", async () => {
    const reply = await open(path);
    expect(reply.statusCode).toBe(200);
    expect(reply.headers["content-type"]).toBe("text/calendar; charset=utf-8");
    expect(reply.headers["cache-control"]).toBe("no-store");
    const calendar = new ICAL.Component(ICAL.parse(reply.body));
    expect(calendar.getFirstPropertyValue("version")).toBe("2.0");
    expect(path).toMatch(/^\/api\/calendar\/[\w-]{43}\.ics$/);
  });

  it.each([
    ["a guess of the right length", "A".repeat(43)],
    ["a part of a secret", "short"],
    ["the id of a link, which the list shows", "ID"],
    ["a person's id", "PERSON"],
    ["a wildcard", "%25"],
    ["a way out of the folder", "..%2f..%2fexport"],
    ["an inborn name", "__proto__"],
  ])("answers %s as it answers an address that is not there", async (_what, guess) => {
    const secret = guess === "ID" ? id : guess === "PERSON" ? crew.me.person.id : guess;
    const reply = await open(`/api/calendar/${secret}.ics`);
    const nowhere = await open("/api/nowhere.ics");
    const said = ({ statusCode, headers, body }: typeof reply) => {
      const { code, remedy } = JSON.parse(body) as { code: string; remedy: string };
      return { statusCode, type: headers["content-type"], code, remedy };
    };
    expect(said(reply)).toEqual(said(nowhere));
  });

  it("is opened by no secret that was made for a wall, and opens no wall", async () => {
    const keeper = await station.signedIn("keeper");
    const places = (await station.store.since(["station"], {}, 100)).find(({ entry }) => entry.kind === "place-set");
    const place = places!.entry.subject.slice("place:".length);
    const { link } = (await keeper.send("POST", "/api/wall/links", { place })).json<{ link: string }>();
    expect((await open(`/api/calendar/${link.split("#")[1]!}.ics`)).statusCode).toBe(404);
    const secret = /calendar\/(.+)\.ics/.exec(path)![1]!;
    const headers = { authorization: `Bearer ${secret}`, cookie: `session=${secret}; drykeel=${secret}` };
    for (const url of ["/api/wall", "/api/export.ndjson", "/api/calendar/links"]) {
      const reply = await station.app.inject({ method: "GET", url, headers });
      expect([url, [401, 404].includes(reply.statusCode)]).toEqual([url, true]);
    }
  });

  it("is made, listed and withdrawn by its person alone, and kept only as a hash", async () => {
    const other = await station.signedIn("administrator");
    expect((await other.send("GET", "/api/calendar/links")).json()).toEqual({ links: [] });
    expect((await other.send("DELETE", `/api/calendar/links/${id}`)).statusCode).toBe(404);
    const list = await crew.send("GET", "/api/calendar/links");
    const secret = /calendar\/(.+)\.ics/.exec(path)![1]!;
    expect(list.json()).toMatchObject({ links: [{ id }] });
    expect(list.body).not.toContain(secret);
    expect(JSON.stringify(await station.store.credentialsOf(`calendar:${crew.me.person.id}`))).not.toContain(secret);
    expect((await station.app.inject({ method: "POST", url: "/api/calendar/links" })).statusCode).toBe(401);
  });

  it("has at most ten addresses, each withdrawn on its own, and is nothing once withdrawn", async () => {
    const assessor = await station.signedIn("assessor");
    const made = [];
    for (let count = 0; count < 10; count += 1) made.push(await make(assessor));
    expect((await assessor.send("POST", "/api/calendar/links")).json()).toMatchObject({ code: "SV-211" });
    expect((await assessor.send("DELETE", `/api/calendar/links/${made[0]!.id}`)).statusCode).toBe(204);
    expect((await open(made[0]!.path)).statusCode).toBe(404);
    expect((await open(made[1]!.path)).statusCode).toBe(200);
  });

  it("is nothing once its person has left", async () => {
    const founder = await station.signedIn("administrator");
    expect((await open(path)).statusCode).toBe(200);
    const subject = `person:${crew.me.person.id}`;
    const left = station.line(founder.me, { subject, kind: "person-left", body: {} });
    await founder.send("POST", "/api/log/push", { entries: [left] });
    expect((await open(path)).statusCode).toBe(404);
  });
});
