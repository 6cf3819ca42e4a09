import { openMemoryStore } from "#store/memory";
import { PatternFiles, readStationPatterns } from "#store/patterns";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { PatternDesk } from "./pattern-desk.ts";
import { stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";

const fail = (cause: unknown) => {
  throw cause;
};
const OSSEL = readFileSync("patterns/ossel-200@2.yaml", "utf8");
const NEXT = OSSEL.replace("\nversion: 2\n", "\nversion: 3\n");

describe("issuing a pattern", () => {
  let folder: string;
  let store: ReturnType<typeof openMemoryStore>;
  const stations: StagedStation[] = [];

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "issue-"));
    store = openMemoryStore();
  });
  afterEach(async () => {
    await Promise.all(stations.splice(0).map(({ app }) => app.close()));
    rmSync(folder, { recursive: true });
  });

  async function station(name = "one"): Promise<StagedStation> {
    const issued = join(folder, name, "issued-patterns");
    const issuing = { shelf: store.patternShelf, files: new PatternFiles(["patterns"], issued) };
    const made = await stageStation({ store, issuing });
    stations.push(made);
    return made;
  }
  it("FORM-4 takes a new version without a restart, as a file, with the drawings of the one before", async () => {
    const keeper = await (await station()).signedIn("keeper");
    const before = (await keeper.send("POST", "/api/log/pull", { held: {} })).json<{ patterns: string }>().patterns;
    const reply = await keeper.send("POST", "/api/patterns/issue", { text: NEXT, base: "ossel-200@2" });
    expect([reply.statusCode, reply.json()]).toEqual([
      201,
      { pattern: "ossel-200@3", by: keeper.me.person.id, at: expect.any(String) },
    ]);
    expect(await keysOf(keeper)).toContain("ossel-200@3");
    const after = (await keeper.send("POST", "/api/log/pull", { held: {} })).json<{ patterns: string }>().patterns;
    expect(after).not.toBe(before);
    expect(readFileSync(join(folder, "one", "issued-patterns", "ossel-200@3.yaml"), "utf8")).toBe(NEXT);
    const { patterns } = readStationPatterns("patterns", join(folder, "one"));
    expect(
      patterns.find(({ id, version }) => id === "ossel-200" && version === 3)?.stranger?.steps[0]?.drawing,
    ).toBeDefined();
    const file = await keeper.send("GET", "/api/patterns/ossel-200@3/file");
    expect(file.json<{ text: string }>().text).toBe(NEXT);
  });

  it("FORM-4 is known to a start that read its file: the list stays the same, and nothing is folded anew", async () => {
    const keeper = await (await station()).signedIn("keeper");
    await keeper.send("POST", "/api/patterns/issue", { text: NEXT, base: "ossel-200@2" });
    const issued = join(folder, "one", "issued-patterns");
    const { patterns } = readStationPatterns("patterns", join(folder, "one"));
    const desk = new PatternDesk(patterns, { shelf: store.patternShelf, files: new PatternFiles([], issued) }, fail);
    await desk.catchUp();
    expect(desk.now).toBe(patterns);
  });

  it("FORM-4 is learnt by a second server of the same database, which judges lines by it and writes its own file", async () => {
    const first = await station();
    const keeper = await first.signedIn("keeper");
    const second = await station("two");
    const there = keeper.at(second);
    await there.send("GET", "/api/patterns");
    await keeper.send("POST", "/api/patterns/issue", { text: NEXT, base: "ossel-200@2" });
    const body = { name: "K", serial: "S-9", seal: "1", items: [] };
    const line = first.line(keeper.me, {
      kind: "kit-enrolled",
      subject: "kit:k9",
      pattern: "ossel-200@3",
      place: await placeOf(there),
      body,
    });
    const pushed = await there.send("POST", "/api/log/push", { entries: [line] });
    expect(pushed.json()).toMatchObject({ verdicts: [{ verdict: "accepted" }] });
    expect(await keysOf(there)).toContain("ossel-200@3");
    expect(existsSync(join(folder, "two", "issued-patterns", "ossel-200@3.yaml"))).toBe(true);
  });

  it("FORM-5 refuses the second of two who issue one version, and says what to do", async () => {
    const one = await station();
    const keeper = await one.signedIn("keeper");
    const other = keeper.at(await station("two"));
    const texts = [NEXT, NEXT.replace("name: ", "name: The other ")];
    const told = await Promise.all([
      keeper.send("POST", "/api/patterns/issue", { text: texts[0], base: "ossel-200@2" }),
      other.send("POST", "/api/patterns/issue", { text: texts[1], base: "ossel-200@2" }),
    ]);
    expect(told.map(({ statusCode }) => statusCode).toSorted()).toEqual([201, 409]);
    expect(told.find(({ statusCode }) => statusCode === 409)?.json()).toMatchObject({
      code: "SV-462",
      remedy: expect.stringContaining("write version 4"),
      nextVersion: 4,
    });
  });

  it("FORM-5 refuses a version that is not the next, an error of the lint, and a base that is not here", async () => {
    const keeper = await (await station()).signedIn("keeper");
    const codeOf = async (text: string, base = "ossel-200@2") =>
      (await keeper.send("POST", "/api/patterns/issue", { text, base })).json<{ code: string }>().code;
    expect(await codeOf(OSSEL)).toBe("SV-462");
    const ahead = { text: OSSEL.replace("\nversion: 2\n", "\nversion: 5\n"), base: "ossel-200@2" };
    const refused = await keeper.send("POST", "/api/patterns/issue", ahead);
    expect(refused.json()).toMatchObject({ code: "SV-462", nextVersion: 3 });
    expect(await codeOf(NEXT.replace(/mass: .*/, "mass: 900 kg"))).toBe("SV-461");
    expect(await codeOf(NEXT.replace(/mass: .*/, "mass: heavy"))).toBe("SV-461");
    expect(await codeOf("a: [", "ossel-200@2")).toBe("KI-101");
    expect(await codeOf(NEXT, "no-such@1")).toBe("SV-463");
  });

  it("FORM-5 lets keepers and administrators issue, and nobody else", async () => {
    const made = await station();
    for (const role of ["crew", "assessor", "commander"] as const) {
      const browser = await made.signedIn(role);
      expect((await browser.send("POST", "/api/patterns/issue", { text: NEXT })).statusCode).toBe(403);
    }
  });

  it("stands up to what is no pattern: too large, a bomb of aliases, __proto__, 10,000 items, script", async () => {
    const keeper = await (await station()).signedIn("keeper");
    const send = (text: string) => keeper.send("POST", "/api/patterns/issue", { text, base: "ossel-200@2" });
    expect((await send("x".repeat(600_000))).statusCode).toBe(400);
    expect((await send("x".repeat(4_000_000))).statusCode).toBe(413);
    const bomb = [
      "a: &a [x]",
      ..."bcdefghi".split("").map((name, at) => `${name}: &${name} [${`*${"abcdefgh"[at]}, `.repeat(9)}]`),
    ];
    expect((await send(bomb.join("\n"))).json()).toMatchObject({ code: "KI-101" });
    expect((await send(`${NEXT}\n__proto__: { polluted: 1 }\n`)).json()).toMatchObject({ code: "SV-461" });
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
    const many = Array.from({ length: 10_000 }, (_, at) => `  - { id: i${at}, name: I, place: frame }`).join("\n");
    expect((await send(NEXT.replace("\nitems:\n", `\nitems:\n${many}\n`))).json()).toMatchObject({ code: "SV-461" });
    const script = await send(NEXT.replace(/\nname: .*/, '\nname: "<script>alert(1)</script>"'));
    expect(script.statusCode).toBe(201);
    const reply = await keeper.send("GET", "/api/patterns/ossel-200@3/file");
    expect(reply.headers["content-type"]).toMatch(/^application\/json/);
    for (const path of ["..%2F..%2Fpackage@1", "ossel-200@2.yaml"]) {
      expect((await keeper.send("GET", `/api/patterns/${path}/file`)).statusCode).toBe(400);
    }
  });

  it("FORM-6 lays one draft a person out for the station's devices", async () => {
    const made = await station();
    const keeper = await made.signedIn("keeper");
    const crew = await made.signedIn("crew");
    expect((await keeper.send("PUT", "/api/patterns/draft", { text: "id: a", base: "ossel-200@2" })).statusCode).toBe(
      204,
    );
    const { drafts } = (await crew.send("GET", "/api/patterns/drafts")).json<{
      drafts: { by: string; beside: object }[];
    }>();
    expect(drafts.map(({ by }) => by)).toEqual([keeper.me.person.id]);
    expect(Object.keys(drafts[0]?.beside ?? {}).length).toBeGreaterThan(3);
    expect((await keeper.send("DELETE", "/api/patterns/draft")).statusCode).toBe(204);
    expect((await crew.send("GET", "/api/patterns/drafts")).json()).toEqual({ drafts: [] });
  });
});

async function placeOf(browser: Browser): Promise<string> {
  const reply = await browser.send("POST", "/api/log/pull", { held: {} });
  const { entries } = reply.json<{ entries: { entry: { kind: string; subject: string } }[] }>();
  return entries.find(({ entry }) => entry.kind === "place-set")?.entry.subject.slice("place:".length) ?? "";
}

async function keysOf(browser: Browser): Promise<readonly string[]> {
  const reply = await browser.send("GET", "/api/patterns");
  const { patterns } = reply.json<{ patterns: { id: string; version: number }[] }>();
  return patterns.map(({ id, version }) => `${id}@${version}`);
}
