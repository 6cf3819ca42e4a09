import { StoreError } from "#station";
import { openMemoryStore } from "#store/memory";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { createHealthProbe } from "./health.ts";
import { Metrics, serveMetrics } from "./metrics.ts";
import { readSettings } from "../start/settings.ts";
import { stageStation } from "../start/staged-station.ts";
import { startStation } from "../start.ts";

/** A sample line of the open text format: name, labels in braces, a number. */
const SAMPLE = /^[a-z_:][\w:]*(\{[^}]*\})? (-?[\d.e+-]+|NaN|\+Inf)$/i;

describe("metrics", () => {
  it("count requests by route, never by address, and are lines of the open text format", async () => {
    const store = openMemoryStore();
    const metrics = new Metrics(createHealthProbe(store));
    const station = await stageStation({ store, metrics });
    const keeper = await station.signedIn("keeper");
    await keeper.send("GET", "/api/log/pull?limit=10&secret=1");
    const text = await metrics.write();
    const samples = text.split("\n").filter((line) => line !== "" && !line.startsWith("#"));
    expect(samples.filter((line) => !SAMPLE.test(line))).toEqual([]);
    expect(text).toContain('drykeel_request_seconds_count{method="GET",route="/api/log/pull",status="200"} 1');
    expect(text).toContain("drykeel_store_up 1");
    for (const secret of ["secret", keeper.device, keeper.me.person.id, keeper.me.person.name])
      expect(text).not.toContain(secret);
    await station.app.close();
  });

  it("tell a store that fails, and are told all the same", async () => {
    const metrics = new Metrics(() => Promise.reject(new StoreError("ST-120", "Out of reach.", "Wait.")));
    const { port, stop } = await serveMetrics(metrics, { host: "127.0.0.1", port: 0 });
    const reply = await fetch(`http://127.0.0.1:${port}/metrics`);
    expect(reply.headers.get("content-type")).toMatch(/^text\/plain; version=0\.0\.4/);
    const text = await reply.text();
    expect(text).toContain("drykeel_store_up 0");
    expect(text).toMatch(/^drykeel_log_lines NaN$/im);
    expect((await fetch(`http://127.0.0.1:${port}/api/log/pull`)).status).toBe(404);
    await stop();
  });
});

describe("a start", () => {
  const folder = mkdtempSync(join(tmpdir(), "drykeel-metrics-"));
  afterAll(() => rmSync(folder, { recursive: true }));
  const start = (env: NodeJS.ProcessEnv) =>
    startStation(readSettings({ PORT: "0", DATA_DIR: folder, ...env }, ["--empty"]), process.cwd());

  it("tells metrics only where asked, and not through the station's own address", async () => {
    const running = await start({ METRICS: "127.0.0.1:0" });
    const address = running.lines[0]!.replace("Drykeel is at ", "");
    expect((await fetch(`${address}/metrics`)).headers.get("content-type")).not.toMatch(/^text\/plain/);
    await running.stop();
  });

  it("refuses an address for metrics that cannot be, and leaves the folder free", async () => {
    expect(() => readSettings({ METRICS: "everywhere" }, [])).toThrow("METRICS is everywhere; it must be an address");
    expect(() => readSettings({ METRICS: "127.0.0.1:70000" }, [])).toThrow("METRICS is 127.0.0.1:70000");
    await expect(start({ METRICS: "192.0.2.1:9464" })).rejects.toThrow(
      /METRICS is 192\.0\.2\.1:9464, where this server/,
    );
    await (await start({})).stop();
  });
});
