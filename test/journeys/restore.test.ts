import { execFileSync } from "node:child_process";
import { copyFileSync, mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { stepNamed } from "#kit";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines, openKit, sealOn } from "./support/kits.ts";
import { allSent, signIn, slowClock } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern, TurnaroundHand } from "./support/turnaround-hand.ts";

/** A backup is put back under a phone that runs on, as the handbook's drill says. One story, told in order. */

const KIT = "br-09";
const pattern = shippedPattern("ossel-200");
const CABLE_LINE = stepNamed(pattern, "examine-cable")!.line;
const TITLE = "The station was put back to an earlier copy of its log";
const OTHER = "The station's log is not the one this device saw before";
const SHOTS = process.env["SHOTS"];
let browser: Browser;
let station: RunningStation;
let phone: Page;
let desk: Page;
let hand: TurnaroundHand;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  const pocket = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const clock = await slowClock(pocket, 3 * 3600);
  phone = await pocket.newPage();
  desk = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
  await signIn(phone, station, "Mara Tolliver");
  await signIn(desk, station, "Jonas Wick");
  hand = new TurnaroundHand(phone, pattern, clock, await sealOn(phone, KIT));
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const copy = () => join(station.dataDir, "copies", "monday.db");

function backUp(): void {
  const env = { ...process.env, DATA_DIR: station.dataDir };
  execFileSync(process.execPath, ["dist/cli/main.js", "backup", copy()], { env });
}

/** As `running.md` says: stop, the copy in place, the two files beside it away, start. */
async function putBack(): Promise<void> {
  await station.kill();
  const database = join(station.dataDir, "drykeel.db");
  for (const end of ["-wal", "-shm"]) rmSync(database + end, { force: true });
  copyFileSync(copy(), database);
  await station.restart();
}

/** Looked at on a phone and a tablet, by day and by night. */
async function picture(page: Page, name: string): Promise<void> {
  if (SHOTS === undefined) return;
  mkdirSync(SHOTS, { recursive: true });
  const before = page.viewportSize()!;
  for (const palette of ["Night", "Day"]) {
    await page.getByRole("button", { name: `${palette} colours` }).click();
    for (const size of [before, { width: 820, height: 1180 }]) {
      await page.setViewportSize(size);
      const file = `${name}-${size.width}-${palette}.png`;
      await page.screenshot({ path: join(SHOTS, file), fullPage: true });
    }
    await page.setViewportSize(before);
  }
}

/** Opens the page anew, so that it looks at the station's signed heads at its first exchange. */
async function lookAtHeads(page: Page): Promise<void> {
  const heads = page.waitForResponse((reply) => reply.url().includes("/api/log/heads"));
  await page.goto(`${station.url}/outbox`);
  await (await heads).finished();
}

const kindsOnStation = async () => (await exportedLines(phone)).map(({ kind }) => kind);
const findings = async () => (await kindsOnStation()).filter((kind) => kind === "finding-raised").length;

describe("a backup put back under a running phone", () => {
  let before: number;

  test("finds work on the phone that came after it, all of it sent", async () => {
    before = await findings();
    backUp();
    await openKit(phone, station, KIT);
    await hand.workTo(CABLE_LINE);
    await phone.getByRole("button", { name: "Found wrong" }).click();
    await phone.getByRole("dialog").getByRole("radio", { checked: true }).waitFor({ state: "attached" });
    await phone.getByRole("dialog").getByRole("button", { name: "Raise the finding" }).click();
    await phone.getByRole("dialog").waitFor({ state: "detached" });
    await allSent(phone);
    expect(await findings()).toBe(before + 1);
  });

  test("is told on the phone, which does not say that all is sent", async () => {
    await phone.route("**/api/log/bring-back", (route) => route.abort());
    await desk.route("**/api/log/bring-back", (route) => route.abort());
    await putBack();
    const mark = phone.getByRole("link", { name: /\d+ lines not sent since/ });
    await mark.waitFor();
    expect(await phone.getByRole("link", { name: "All sent" }).count()).toBe(0);
    await mark.click();
    await phone.getByText(TITLE).waitFor();
    await phone.getByText(/It lacks \d+ lines that are on this device/).waitFor();
    await phone.getByRole("heading", { name: "Lost by the station, going back" }).waitFor();
    expect(await phone.getByText(OTHER).count()).toBe(0);
    await picture(phone, "phone-lost");
    expect(await findings()).toBe(before);
  });

  test("has the lines again, says so, and its log says from where", async () => {
    await phone.unroute("**/api/log/bring-back");
    await phone.getByRole("button", { name: "Try to send now" }).click();
    await phone.getByText(/the station has every one of them again/).waitFor();
    await allSent(phone);
    expect(await findings()).toBe(before + 1);
    expect(await kindsOnStation()).toContain("lines-brought-back");
    await phone.getByRole("heading", { name: "Brought back by devices" }).waitFor();
    await picture(phone, "phone-back");
    await phone.getByRole("button", { name: "I have read this" }).click();
    await phone.getByText(TITLE).waitFor({ state: "detached" });
    await lookAtHeads(phone);
    expect(await phone.getByText(OTHER).count()).toBe(0);
  });

  test("leaves every device with the same lines, and each is told", async () => {
    await desk.unroute("**/api/log/bring-back");
    await desk.goto(`${station.url}/outbox`);
    await desk.getByText(TITLE).waitFor();
    await desk.getByRole("heading", { name: "Brought back by devices" }).waitFor();
    await allSent(desk);
    await picture(desk, "desk-told");
    await desk.goto(`${station.url}/kit/${KIT}`);
    await desk.getByText(/cable/i).first().waitFor();
  });

  test("is told as another history where others wrote before the phone was back", async () => {
    for (const page of [phone, desk]) await page.context().setOffline(true);
    await putBack();
    const other = await (await browser.newContext()).newPage();
    await signIn(other, station, "Mara Tolliver");
    await other.close();
    await phone.context().setOffline(false);
    await phone.getByText(/the station has every one of them again/).waitFor();
    await phone.getByText(OTHER).waitFor();
    await picture(phone, "phone-other-history");
    await phone.getByRole("button", { name: "They know: go on from here" }).click();
    await phone.getByText(OTHER).waitFor({ state: "detached" });
  }, 400_000);
});
