import { parseExport, verifyChain, type KeptEntry } from "#log";
import type { PatternsReply, QuestionsReply, SignedIn } from "#station";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stageStation, type Browser, type StagedStation } from "./start/staged-station.ts";

describe("reading from the server", () => {
  let station: StagedStation;
  let keeper: Browser & { readonly me: SignedIn };
  beforeAll(async () => {
    station = await stageStation();
    keeper = await station.signedIn("keeper");
  });
  afterAll(() => station.app.close());

  it("exports the whole log, as a file that proves itself whole", async () => {
    const lines = Array.from({ length: 1500 }, () => station.line(keeper.me, {}));
    await keeper.send("POST", "/api/log/push", { entries: lines });
    const reply = await keeper.send("GET", "/api/export.ndjson");
    expect(reply.headers["content-disposition"]).toContain("drykeel-log.ndjson");
    const kept: KeptEntry[] = [];
    for await (const item of parseExport(reply.body.split("\n"))) if (item.kind === "kept") kept.push(item.kept);
    expect(kept.length).toBe(await station.store.count());
    expect(verifyChain(kept)).toMatchObject({ kind: "sound", count: kept.length });
  });

  it("gives every pattern, in SI", async () => {
    const { patterns } = (await keeper.send("GET", "/api/patterns")).json<PatternsReply>();
    expect(patterns.length).toBeGreaterThanOrEqual(2);
    expect(patterns[0]?.container.mass).toBeGreaterThan(0);
  });

  it("answers every question it lists, on its own example", async () => {
    const { questions } = (await keeper.send("GET", "/api/questions")).json<QuestionsReply>();
    expect(questions.map(({ name }) => name)).toContain("due");
    for (const { name, example } of questions) {
      const reply = await keeper.send("POST", `/api/ask/${name}`, example as object);
      expect({ name, status: reply.statusCode }).toEqual({ name, status: 200 });
    }
  });

  it("says what is wrong with a question, fault by fault", async () => {
    const reply = await keeper.send("POST", "/api/ask/water", { temperature: "warm" });
    expect(reply.statusCode).toBe(400);
    expect(reply.json().faults.length).toBeGreaterThan(0);
    expect((await keeper.send("POST", "/api/ask/luck", {})).json()).toMatchObject({ code: "QU-100" });
  });

  it("says whether it stands, to anyone", async () => {
    const reply = await station.browser().send("GET", "/api/health");
    expect(reply.json()).toMatchObject({ ok: true, serverTime: station.ambient.now() });
  });
});
