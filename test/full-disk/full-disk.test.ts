import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openSqliteStore } from "#store/sqlite";
import type { PushReply } from "#station";
import { afterAll, describe, expect, it } from "vitest";
import { stageStation } from "../../src/server/start/staged-station.ts";

const folder = mkdtempSync(join(tmpdir(), "drykeel-full-"));

describe("a station whose disk is full", () => {
  afterAll(() => rmSync(folder, { recursive: true }));

  it("says 503 and that the disk is full, keeps every line that it acknowledged, and goes on when there is room", async () => {
    const path = join(folder, "drykeel.db");
    const store = await openSqliteStore(path, { limit: 600 * 1024 });
    const station = await stageStation({ store });
    const keeper = await station.signedIn("keeper");
    const acknowledged: string[] = [];
    const push = async () => {
      const what = { step: "vent-wrapping", what: "unclear", note: "x".repeat(900) };
      const entries = Array.from({ length: 50 }, () => station.line(keeper.me, { body: what }));
      const reply = await keeper.send("POST", "/api/log/push", { entries });
      if (reply.statusCode === 200) for (const one of reply.json<PushReply>().verdicts) acknowledged.push(one.id);
      return reply;
    };
    let reply = await push();
    for (let tries = 0; reply.statusCode === 200 && tries < 30; tries++) reply = await push();
    expect([reply.statusCode, reply.json<object>()]).toEqual([
      503,
      expect.objectContaining({ code: "ST-102", message: expect.stringContaining("The disk is full") }),
    ]);
    expect((await keeper.send("GET", "/api/health")).statusCode).toBe(200);
    for (const id of acknowledged) expect((await store.find(id))?.entry.id).toBe(id);
    await station.app.close();
    await store.close();
    const roomy = await openSqliteStore(path);
    const again = await stageStation({ store: roomy });
    const line = again.line(keeper.me, {});
    expect((await keeper.at(again).send("POST", "/api/log/push", { entries: [line] })).statusCode).toBe(200);
    expect(acknowledged.length).toBeGreaterThan(0);
    await again.app.close();
    await roomy.close();
  });

  it("says so too where a real limit on files ends the transaction under it", () => {
    const child = join(import.meta.dirname, "quota-child.ts");
    const command = 'ulimit -f 1200 && exec "$0" --import tsx "$1" "$2"';
    const run = spawnSync("sh", ["-c", command, process.execPath, child, join(folder, "quota.db")], {
      encoding: "utf8",
    });
    expect(run.stderr).toBe("");
    expect(JSON.parse(run.stdout)).toMatchObject({ status: 503, code: "ST-102", missing: 0 });
  });
});
