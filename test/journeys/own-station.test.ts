import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { enrolKit, setUpStation } from "./support/own-station.ts";
import { slowClock, type AdjustableClock } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern, TurnaroundHand } from "./support/turnaround-hand.ts";

/** A station of one's own, from nothing: a kit taken on charge, turned round for the first time, and ready. In order. */

const pattern = shippedPattern("ossel-200");
let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let page: Page;
let clock: AdjustableClock;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation(["--empty"])]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  clock = await slowClock(phone, 3 * 3600);
  page = await phone.newPage();
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const enrol = (name: string, serial: string, seal: string) => enrolKit(page, station, { pattern, name, serial, seal });

test("a kit taken on charge with nothing read but its seal is new, and says what is to do", async () => {
  await setUpStation(page, station);
  await enrol("Pump 1", "SN-1", "00417");
  await page.locator(".kit-first").getByText("New, first turnaround to do.").waitFor();
  await page.getByText("More: year, dates, runs, contents, history").click();
  await page.getByText("Read when enrolled").waitFor();
});

test("a serial and a seal that another kit has are said at their fields, and nothing entered is lost", async () => {
  await enrol("Pump 2", "SN-1", "00417");
  await page.getByText("It is Pump 1's.").waitFor();
  await page.getByText("It was used on Pump 1.").waitFor();
  expect(await page.getByText("Not enrolled").count()).toBe(0);
  expect(await page.getByLabel("Serial").inputValue()).toBe("SN-1");
});

test("its first turnaround asks for the dates where the things are in the hand, and the kit becomes ready", async () => {
  await page.goto(station.url);
  await page
    .getByRole("link", { name: /Pump 1/ })
    .first()
    .click();
  await page.getByRole("link", { name: /Open for a turnaround/ }).click();
  await page.getByLabel(/^Seal number/).fill("00417");
  await page.getByRole("button", { name: /^First turnaround/ }).click();
  await page.getByRole("heading", { name: /^Line \d+\b/ }).waitFor();
  const hand = new TurnaroundHand(page, pattern, clock, "00417");
  hand.serial = "SN-1";
  await hand.workTo();
  await page.getByLabel("New seal number").fill("00418");
  await page.getByLabel("Seal number again").fill("00418");
  await page.getByRole("button", { name: "Sealed with 00418" }).click();
  await page.getByRole("link", { name: "Pump 1" }).first().click();
  await page.locator(".standing-ready").first().waitFor();
}, 600_000);
