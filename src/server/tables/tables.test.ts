import { demoEntries } from "#demo";
import { openMemoryStore } from "#store/memory";
import { readPatternFolders } from "#store/patterns";
import { readSheet, TABLE_IDS } from "#store/sheets";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openDemoAccounts } from "../start/demo-station.ts";
import { stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";

const { patterns } = readPatternFolders(["patterns"]);
const LINES = demoEntries({ patterns, today: "2027-03-14", seed: 7 });

describe("tables over HTTP, as comma-separated values by RFC 4180", () => {
  let station: StagedStation;
  let browser: Browser;
  beforeAll(async () => {
    const store = openMemoryStore();
    await store.append(LINES, "2027-03-14T09:00:00Z");
    const { ambient } = await stageStation({ store });
    const demo = await openDemoAccounts({ secrets: store, ambient }, () => true);
    station = await stageStation({ store, demo });
    browser = station.browser("workbench-tablet");
  });
  afterAll(() => station.app.close());

  it("are for who is signed in", async () => {
    expect((await browser.send("GET", "/api/table/kits.csv")).statusCode).toBe(401);
  });

  it.each(TABLE_IDS)("has %s, with headings in its first line and as many cells in every other", async (id) => {
    await browser.send("POST", "/api/sign-in", {
      name: "Mara Tolliver",
      pin: "200417",
      device: browser.device,
      deviceName: "T",
    });
    const reply = await browser.send("GET", `/api/table/${id}.csv`);
    expect(reply.statusCode).toBe(200);
    expect(reply.headers["content-type"]).toContain("text/csv");
    const lines = reply.body.split("\r\n");
    expect(lines.at(-1)).toBe("");
    if (id === "lines") expect(lines.length - 2).toBe(LINES.length);
    else {
      const { heads, rows } = await readSheet(new TextEncoder().encode(reply.body), `${id}.csv`);
      expect(new Set(rows.map(({ cells }) => cells.length))).toEqual(new Set([heads.length]));
    }
  });

  it("has no other", async () => {
    expect((await browser.send("GET", "/api/table/secrets.csv")).statusCode).toBe(400);
  });
});
