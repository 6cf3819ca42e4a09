import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { WallView } from "#station";
import { stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";

/** What an attacker with a link, or with none, gets to see. */
describe("the wall of a place", () => {
  let station: StagedStation;
  let keeper: Browser;
  let place: string;
  let secret: string;
  let id: string;
  const wall = (token: string, app: FastifyInstance = station.app) =>
    app.inject({ method: "GET", url: "/api/wall", headers: { authorization: `Bearer ${token}` } });

  beforeAll(async () => {
    station = await stageStation();
    const founder = await station.signedIn("administrator");
    keeper = await station.signedIn("keeper");
    const placeLine = (await station.store.since(["station"], {}, 100)).find(({ entry }) => entry.kind === "place-set");
    place = placeLine!.entry.subject.slice("place:".length);
    const second = station.line(founder.me, {
      subject: "place:other",
      kind: "place-set",
      body: { name: "Hidden quay", strength: 7, zone: "UTC" },
    });
    await founder.send("POST", "/api/log/push", { entries: [second] });
    const made = await keeper.send("POST", "/api/wall/links", { place });
    const { link, ...rest } = made.json<{ id: string; link: string }>();
    id = rest.id;
    secret = link.split("#")[1]!;
  });
  afterAll(() => station.app.close());

  it("shows its own place, to whoever has the whole secret, and tells caches nothing", async () => {
    const reply = await wall(secret);
    expect(reply.statusCode).toBe(200);
    expect(reply.json<WallView>()).toMatchObject({
      placeName: "North slip",
      strength: { must: 2, holds: 0, short: 2 },
    });
    expect(reply.headers["cache-control"]).toBe("no-store");
    expect(secret).toHaveLength(43);
  });

  it("shows nothing of another place, of people or of what opens the station", async () => {
    const text = (await wall(secret)).body;
    for (const hidden of ["Hidden quay", "Ann Marr", secret, id, "pin", "person"]) expect(text).not.toContain(hidden);
  });

  it("opens no other route of the server, as a bearer or as a cookie", async () => {
    const routes = station.app.listedRoutes.filter(({ url, method, permission }) => {
      const open = [
        "open-app",
        "see-health",
        "see-session",
        "sign-in",
        "sign-out",
        "see-wall",
        "see-calendar",
        "keep-heads",
      ];
      return method !== "HEAD" && !open.includes(permission) && url.startsWith("/api");
    });
    expect(routes.length).toBeGreaterThan(15);
    for (const { method, url } of routes) {
      const filled = url.replace(/:\w+/g, "none");
      const headers = { authorization: `Bearer ${secret}`, cookie: `session=${secret}; drykeel=${secret}` };
      const reply = await station.app.inject({ method: method as "GET", url: filled, headers });
      expect([method, url, reply.statusCode]).toEqual([method, url, 401]);
    }
  });

  it.each([
    ["none at all", ""],
    ["a guess of the right length", "A".repeat(43)],
    ["a part of a secret", "short"],
    ["the id of a link, which the list shows", "ID"],
    ["a wildcard", "%"],
    ["an inborn name", "__proto__"],
  ])("answers %s as it answers an address that is not there", async (_what, token) => {
    const reply = await wall(token === "ID" ? id : token);
    const nowhere = await station.app.inject({ method: "GET", url: "/api/nowhere" });
    expect([reply.statusCode, reply.json<{ code: string }>().code]).toEqual([
      404,
      nowhere.json<{ code: string }>().code,
    ]);
  });

  it("is not opened by a secret that was made for something else", async () => {
    const session = await station.app.inject({ method: "GET", url: `/api/wall?token=${secret}` });
    expect(session.statusCode).toBe(404);
  });

  it.each(["crew", "assessor", "commander"] as const)("lets no %s make, list or withdraw links", async (role) => {
    const person = await station.signedIn(role);
    expect((await person.send("POST", "/api/wall/links", { place })).statusCode).toBe(403);
    expect((await person.send("GET", "/api/wall/links")).statusCode).toBe(403);
    expect((await person.send("DELETE", `/api/wall/links/${id}`)).statusCode).toBe(403);
    expect((await wall(secret)).statusCode).toBe(200);
  });

  it("makes no link to a place that is not there, and at most ten to one", async () => {
    expect((await keeper.send("POST", "/api/wall/links", { place: "nowhere" })).json()).toMatchObject({
      code: "SV-210",
    });
    const replies = [];
    for (let made = 0; made < 10; made += 1)
      replies.push(await keeper.send("POST", "/api/wall/links", { place: "other" }));
    expect(replies.map(({ statusCode }) => statusCode)).toEqual(Array.from({ length: 10 }, () => 200));
    expect((await keeper.send("POST", "/api/wall/links", { place: "other" })).json()).toMatchObject({ code: "SV-211" });
  });

  it("never shows a secret again, and keeps only its hash", async () => {
    const list = await keeper.send("GET", "/api/wall/links");
    expect(list.json()).toMatchObject({ links: expect.arrayContaining([expect.objectContaining({ id, place })]) });
    expect(list.body).not.toContain(secret);
    expect(JSON.stringify(await station.store.credentialsOf(`wall:${place}`))).not.toContain(secret);
  });

  it("shows nothing once it was withdrawn, nor once its place is closed", async () => {
    expect((await keeper.send("DELETE", `/api/wall/links/${id}`)).statusCode).toBe(204);
    expect((await wall(secret)).statusCode).toBe(404);
    expect((await keeper.send("DELETE", `/api/wall/links/${id}`)).statusCode).toBe(404);
    const made = await keeper.send("POST", "/api/wall/links", { place });
    const next = made.json<{ link: string }>().link.split("#")[1]!;
    expect((await wall(next)).statusCode).toBe(200);
    const founder = await station.signedIn("administrator");
    const close = station.line(founder.me, {
      subject: `place:${place}`,
      kind: "place-closed",
      body: { reason: "Sold." },
    });
    await founder.send("POST", "/api/log/push", { entries: [close] });
    expect((await wall(next)).statusCode).toBe(404);
  });
});
