import { spawnSync } from "node:child_process";
import { appendFileSync } from "node:fs";
import { join } from "node:path";
import { demoAccounts } from "#demo";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { signIn } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** Lines that no device ever sent, taken in at the station's terminal, and what a keeper reads of that. */

const ROOT = join(import.meta.dirname, "..", "..");
const CREW = demoAccounts().find(({ role }) => role === "crew")!;

let browser: Browser;
let station: RunningStation;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

function drykeel(...args: readonly string[]) {
  const main = join(ROOT, "dist", "cli", "main.js");
  const env = { ...process.env, DATA_DIR: station.dataDir };
  return spawnSync(process.execPath, [main, ...args], { env, encoding: "utf8" });
}

test("a line taken in from a file is in the settings: when, how many, written on what, by whose word", async () => {
  await station.kill();
  const body = { sealSeen: "BR 1", containerSound: true };
  const where = { place: "boathouse", subject: "kit:br-01", device: "drowned-phone" };
  const at = new Date(Date.now() - 3_600_000).toISOString();
  const entry = { id: "0198f2c0-0000-7000-8000-000000000001", ...where, kind: "mustered", at, by: CREW.person, body };
  const file = join(station.dataDir, "from-phone.ndjson");
  drykeel("export", file);
  appendFileSync(file, `${JSON.stringify({ entry })}\n`);
  const taken = drykeel("import", file, "--for", CREW.name);
  expect([taken.status, taken.stderr]).toEqual([0, ""]);
  await station.restart();
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await signIn(page, station, "Ines Dunmore");
  await page.goto(`${station.url}/settings`);
  const told = page.getByRole("table", { name: "Taken in from files" });
  await told.getByText("1 line", { exact: true }).waitFor();
  await told.getByText("drowned-phone").waitFor();
  await told.getByText(`${CREW.name}, who wrote them`).waitFor();
});
