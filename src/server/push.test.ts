import type { Entry } from "#log";
import { PROBLEM, PUSH_LIMIT, type Problem, type PullReply, type PushReply, type SignedIn } from "#station";
import { openSqliteStore } from "#store/sqlite";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stageStation, type Browser, type StagedStation } from "./start/staged-station.ts";

type Member = Browser & { readonly me: SignedIn };

const folder = mkdtempSync(join(tmpdir(), "drykeel-push-"));
afterAll(() => rmSync(folder, { recursive: true }));

const stores = {
  memory: async () => ({}),
  SQLite: async () => ({ store: await openSqliteStore(join(folder, "log.db")) }),
};

describe.each(Object.entries(stores))("a push, kept in %s", (_, open) => {
  let station: StagedStation;
  let keeper: Member;
  beforeAll(async () => {
    station = await stageStation(await open());
    keeper = await station.signedIn("keeper");
  });
  afterAll(() => station.app.close().then(() => station.store.close()));

  const push = async (entries: readonly unknown[], who: Browser = keeper): Promise<PushReply["verdicts"]> => {
    const reply = await who.send("POST", "/api/log/push", { entries });
    expect(reply.statusCode).toBe(200);
    return reply.json<PushReply>().verdicts;
  };
  const line = (more: Partial<Entry> = {}, me = keeper.me) => station.line(me, more);
  const codesOf = async (entry: unknown) => {
    const [verdict] = await push([entry]);
    return verdict?.verdict === "refused" ? verdict.faults.map(({ code }) => code) : verdict?.verdict;
  };

  it("SYNC-2 keeps the good and refuses the rest, each with its reasons", async () => {
    const [good, alsoGood] = [line(), line()];
    const verdicts = await push([good, { id: "no" }, line({ by: "someone-else" }), alsoGood]);
    expect(verdicts.map(({ verdict }) => verdict)).toEqual(["accepted", "refused", "refused", "accepted"]);
    expect(verdicts[1]).toMatchObject({ id: "no" });
    expect(await station.store.find(alsoGood.id)).toMatchObject({ entry: alsoGood });
  });

  it("SYNC-1 keeps an entry once, sent ten times, together or apart", async () => {
    const [entry, before] = [line(), await station.store.count()];
    const together = await push(Array.from({ length: 10 }, () => entry));
    expect(together.map(({ verdict }) => verdict)).toEqual(["accepted", ...Array(9).fill("repeated")]);
    for (let i = 0; i < 10; i++) expect(await codesOf(entry)).toBe("repeated");
    expect(await station.store.count()).toBe(before + 1);
  });

  it("takes lines on top of one dated years ahead, and a strike of it, whatever clock once let it in", async () => {
    const future = line({ at: "2031-03-14T10:00:00Z" });
    await station.store.append([future], station.ambient.now());
    expect(await codesOf(future)).toBe("repeated");
    expect(await codesOf(line({ after: [future.id] }))).toBe("accepted");
    const strike = { kind: "struck", body: { entry: future.id, reason: "Its clock was years ahead." } };
    expect(await codesOf(line({ ...strike, after: [future.id] }))).toBe("accepted");
  });

  it("SYNC-3 never lets other content take a kept id", async () => {
    const entry = line();
    await push([entry]);
    expect(await codesOf({ ...entry, body: { step: "other", what: "wrong" } })).toEqual(["SV-170"]);
    expect(await station.store.find(entry.id)).toMatchObject({ entry });
  });

  it("RULE-30 refuses an interval between openings that is longer than the manual's, as the screen does", async () => {
    const set = { subject: "station", place: "station", kind: "opening-interval-set" };
    const every = (span: string) => line({ ...set, body: { pattern: "ossel-200", every: span } });
    expect(await codesOf(every("90 years"))).toEqual(["SN-261"]);
    expect(await codesOf(every("1 month"))).toBe("accepted");
  });

  it("refuses a forged writer, another device, a foreign place, an unknown kind and a body that is none", async () => {
    expect(await codesOf(line({ by: "ann" }))).toEqual(["SN-101"]);
    expect(await codesOf(line({ device: "other-device" }))).toEqual(["SN-102"]);
    const kit = { subject: "kit:7f3k", kind: "kit-renamed", body: { name: "Kit 7" } };
    expect(await codesOf(line({ ...kit, place: "elsewhere" }))).toEqual(["SN-104"]);
    expect(await codesOf(line({ kind: "step-praised" }))).toEqual(["RD-101"]);
    expect(await codesOf(line({ body: { step: 7 } }))).toContain("RD-102");
  });

  it("refuses a clock a year off, either way, and says how to set it", async () => {
    const [late] = await push([line({ at: "2028-03-14T10:00:00Z" })]);
    expect(late).toMatchObject({ verdict: "refused", faults: [{ code: "SV-171", field: "at" }] });
    expect(JSON.stringify(late)).toContain("366 days ahead");
    expect(await codesOf(line({ at: "2026-03-14T10:00:00Z" }))).toEqual(["SV-171"]);
  });

  it("refuses a clock months behind on a device that was here then, and what was written on top of such a line", async () => {
    const here = line();
    await push([here]);
    station.wait(100 * 86_400);
    const last = line();
    await push([last]);
    const first = line({ at: here.at, after: [last.id] });
    const second = line({ at: here.at, after: [first.id] });
    const verdicts = await push([first, second, line({ after: [last.id] })]);
    expect(verdicts).toMatchObject([
      { verdict: "refused", faults: [{ code: "SV-171", remedy: expect.stringContaining("automatic") }] },
      { verdict: "refused", faults: [{ code: "SV-171" }] },
      { verdict: "accepted" },
    ]);
  });

  it("answers an entry with very many faults in few words", async () => {
    const many = Array.from({ length: 100_000 }, (_, at) => [`extra${at}`, 1]);
    const reply = await keeper.send("POST", "/api/log/push", { entries: [{ ...line(), ...Object.fromEntries(many) }] });
    expect(reply.json<PushReply>().verdicts).toMatchObject([{ verdict: "refused" }]);
    expect(reply.body.length).toBeLessThan(10_000);
  });

  it.each([
    ["__proto__", '"__proto__": {"role": "administrator"}'],
    ["constructor", '"constructor": {"prototype": {"role": "administrator"}}'],
    ["prototype", '"prototype": {}'],
  ])("refuses only the line with the key %s, in the line or in its body, and keeps the rest", async (_name, key) => {
    const [first, atTop, inBody, last] = [line(), line(), line(), line()];
    const spoil = (entry: Entry, where: string) => JSON.stringify(entry).replace(where, `${where}${key},`);
    const texts = [JSON.stringify(first), spoil(atTop, "{"), spoil(inBody, '"body":{'), JSON.stringify(last)];
    const payload = `{"entries": [${texts.join(",")}]}`;
    const reply = await keeper.send("POST", "/api/log/push", payload, { "content-type": "application/json" });
    expect(reply.statusCode).toBe(200);
    expect(reply.json<PushReply>().verdicts).toMatchObject([
      { verdict: "accepted", id: first.id },
      { verdict: "refused", id: atTop.id, faults: [{ code: "LG-102" }] },
      { verdict: "refused", id: inBody.id },
      { verdict: "accepted", id: last.id },
    ]);
    expect(await station.store.find(inBody.id)).toBeUndefined();
    expect(({} as Record<string, unknown>)["role"]).toBeUndefined();
  });

  it("refuses an entry beyond its size", async () => {
    expect(await codesOf(line({ body: { step: "vent", what: "wrong", note: "x".repeat(70_000) } }))).toEqual([
      "LG-113",
    ]);
  });

  it("refuses what a role may not write", async () => {
    const commander = await station.signedIn("commander");
    const shutOut = { subject: "device:x123", kind: "device-shut-out", body: { reason: "lost" } };
    const [verdict] = await push([station.line(commander.me, shutOut)], commander);
    expect(verdict).toMatchObject({ verdict: "refused", faults: [{ code: "SN-103" }] });
  });

  it("SYNC-4 lets an entry rest on an earlier one of the same push", async () => {
    const founder = await station.signedIn("administrator");
    const place = line(
      { subject: "place:south", kind: "place-set", body: { name: "South", strength: 1, zone: "UTC" } },
      founder.me,
    );
    const slip = line({}, founder.me);
    const strike = line(
      { kind: "struck", subject: slip.subject, body: { entry: slip.id, reason: "slip" } },
      founder.me,
    );
    const moved = line(
      { subject: "kit:7f3k", place: "south", kind: "kit-renamed", body: { name: "Kit 7" } },
      founder.me,
    );
    const verdicts = await push([place, moved, slip, strike], founder);
    expect(verdicts.map(({ verdict }) => verdict)).toEqual(Array(4).fill("accepted"));
  });

  it("keeps the station its last administrator", async () => {
    const founder = await station.signedIn("administrator");
    const left = { subject: `person:${founder.me.person.id}`, kind: "person-left", body: {} };
    const [verdict] = await push([line(left, founder.me)], founder);
    expect(verdict).toMatchObject({ verdict: "refused", faults: [{ code: "SV-172" }] });
  });

  it("keeps it one administrator, however they would go: by a strike, or both in one push", async () => {
    const founder = await station.signedIn("administrator");
    const second = await station.signedIn("administrator", "second-office");
    const subject = `person:${founder.me.person.id}`;
    const leave = (id: string) => line({ subject: `person:${id}`, kind: "person-left", body: {} }, founder.me);
    const both = await push([leave(second.me.person.id), leave(founder.me.person.id)], founder);
    expect(both).toMatchObject([{ verdict: "accepted" }, { verdict: "refused", faults: [{ code: "SV-172" }] }]);
    const pulled = await founder.send("GET", "/api/log/pull?limit=5000");
    const { entries } = pulled.json<PullReply>();
    const joined = entries.find(({ entry }) => entry.subject === subject)!.entry;
    const strike = { subject, kind: "struck", body: { entry: joined.id, reason: "slip" } };
    expect(await push([line(strike, founder.me)], founder)).toMatchObject([
      { verdict: "refused", faults: [{ code: "SV-172" }] },
    ]);
  });

  it("lets no keeper undo what only an administrator may do", async () => {
    const founder = await station.signedIn("administrator");
    const crew = await station.signedIn("crew");
    const subject = `person:${crew.me.person.id}`;
    const raised = line({ subject, kind: "person-changed", body: { role: "assessor" } }, founder.me);
    await push([raised], founder);
    const strike = line({ subject, kind: "struck", body: { entry: raised.id, reason: "slip" } });
    expect(await codesOf(strike)).toEqual(["SN-106"]);
  });

  it("gives no two people one name", async () => {
    const founder = await station.signedIn("administrator");
    const other = await station.signedIn("crew");
    const subject = `person:${other.me.person.id}`;
    const renamed = line({ subject, kind: "person-changed", body: { name: "ANN  marr" } }, founder.me);
    expect(await push([renamed], founder)).toMatchObject([{ verdict: "refused", faults: [{ code: "SV-173" }] }]);
  });

  it("takes no id that every object answers to: no board could be read again", async () => {
    const body = { turnaround: "t", step: "constructor", answer: "seen" };
    expect(await codesOf(line({ subject: "kit:7f3k", kind: "step-answered", body }))).toContain("RD-102");
  });

  it("takes 10,000 entries at once, and names the limit for more", async () => {
    const before = await station.store.count();
    const many = Array.from({ length: PUSH_LIMIT }, () => line());
    const verdicts = await push(many);
    expect(new Set(verdicts.map(({ verdict }) => verdict))).toEqual(new Set(["accepted"]));
    expect(await station.store.count()).toBe(before + PUSH_LIMIT);
    const over = await keeper.send("POST", "/api/log/push", { entries: [...many, line()] });
    expect(over.json()).toMatchObject({
      code: "SV-122",
      faults: [{ field: "entries", allowed: expect.stringContaining("another push") }],
    });
  });

  it("refuses a push too large to read, and tells to send in parts", async () => {
    const big = { entries: [{ note: "x".repeat(17 * 1024 * 1024) }] };
    const reply = await keeper.send("POST", "/api/log/push", big);
    expect(reply.statusCode).toBe(413);
    expect(reply.json()).toMatchObject({ code: "SV-120", remedy: expect.stringContaining("in parts") });
  });

  it("SYNC-5 takes nothing of a push that is cut off", async () => {
    const before = await station.store.count();
    const text = JSON.stringify({ entries: [line(), line()] }).slice(0, -20);
    const reply = await keeper.send("POST", "/api/log/push", text, { "content-type": "application/json" });
    expect(reply.statusCode).toBe(400);
    expect(reply.json()).toMatchObject({ code: "SV-124" });
    expect(await station.store.count()).toBe(before);
  });

  it("SYNC-6 gives everything back page by page, and after a cursor only what is new", async () => {
    const seen: unknown[] = [];
    let cursor = "{}";
    for (let more = true; more;) {
      const reply = await keeper.send("GET", `/api/log/pull?limit=4000&cursor=${encodeURIComponent(cursor)}`);
      const page = reply.json();
      seen.push(...page.entries);
      cursor = JSON.stringify(page.cursor);
      more = page.more;
    }
    expect(seen.length).toBe(await station.store.count());
    const bad = await keeper.send("GET", "/api/log/pull?cursor=12");
    expect(bad.json()).toMatchObject({ code: "SV-150" });
  });

  it("SYNC-7 shuts a device out at once: its session ends, its entries are refused with the reason", async () => {
    const lost = await station.signedIn("crew");
    const shutOut = { subject: `device:${lost.device}`, kind: "device-shut-out", body: { reason: "left on a quay" } };
    expect(await codesOf(line(shutOut))).toBe("accepted");
    const reply = await lost.send("POST", "/api/log/push", { entries: [station.line(lost.me, {})] });
    expect(reply.statusCode).toBe(403);
    expect(reply.json()).toMatchObject({ code: "SV-102", message: expect.stringContaining("shut out") });
    expect((await lost.send("GET", "/api/session")).json()).toMatchObject({ because: "device-shut-out" });
    const back = { name: lost.me.person.name, pin: "482913", device: lost.device, deviceName: "Phone" };
    expect((await lost.send("POST", "/api/sign-in", back)).json()).toMatchObject({ code: "SV-102" });
  });

  it("tells a person who was taken off the list so, on every device of theirs", async () => {
    const founder = await station.signedIn("administrator");
    const crew = await station.signedIn("crew");
    await push([line(listed(crew, "person-left", {}), founder.me)], founder);
    const pull = await crew.send("GET", "/api/log/pull");
    expect([pull.statusCode, pull.json<Problem>().code]).toEqual([403, PROBLEM.personLeft]);
    expect((await crew.send("GET", "/api/session")).json()).toMatchObject({ because: "person-left" });
  });

  it("wakes no session of a person who left and joins again", async () => {
    const founder = await station.signedIn("administrator");
    const crew = await station.signedIn("crew");
    const again = listed(crew, "person-joined", { name: crew.me.person.name, role: "crew" });
    await push([line(listed(crew, "person-left", {}), founder.me)], founder);
    await push([line(again, founder.me)], founder);
    expect((await crew.send("GET", "/api/log/pull")).statusCode).toBe(401);
  });
});

const listed = (who: Member, kind: string, body: object) => ({ subject: `person:${who.me.person.id}`, kind, body });
