import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { stepNamed } from "#kit";
import { launchBrowser } from "./support/browser.ts";
import { goToLine, openKit } from "./support/kits.ts";
import { signIn, slowClock, type AdjustableClock } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** A wait is counted from the instant it began, whatever becomes of the screen. One story, told in order. */

const KIT = "br-01";
/** Where the inner wrapping is vented for two minutes. */
const WAIT_LINE = stepNamed(shippedPattern("brinnet-450"), "vent")!.line;
let browser: Browser;
let station: RunningStation;
let device: BrowserContext;
let clock: AdjustableClock;
let page: Page;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  device = await browser.newContext({ viewport: { width: 390, height: 844 } });
  clock = await slowClock(device, 3600);
  page = await device.newPage();
  await signIn(page, station, "Mara Tolliver");
  await openKit(page, station, KIT);
  await goToLine(page, WAIT_LINE);
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const leftOnFace = async () => secondsOf(await page.getByRole("timer").innerText());
const alarm = () => page.getByRole("alertdialog");

function secondsOf(face: string): number {
  const [, minutes, seconds] = /(\d+):(\d{2})/.exec(face)!;
  return Number(minutes) * 60 + Number(seconds);
}

describe("a wait of two minutes", () => {
  test("counts down from when it was started", async () => {
    await page.getByRole("button", { name: /^Start the 2\smin wait/ }).click();
    await page.getByRole("timer").waitFor();
    expect(await leftOnFace()).toBeGreaterThan(90);
    await clock.pass(page, 40);
    await page.waitForFunction(() => /^[01]:[0-7]\d/.test(document.querySelector('[role="timer"]')?.textContent ?? ""));
    expect(await leftOnFace()).toBeLessThanOrEqual(80);
  });

  test("goes on through a reload", async () => {
    await clock.pass(page, 20);
    await page.reload();
    await page.getByRole("timer").waitFor();
    expect(await leftOnFace()).toBeLessThanOrEqual(60);
    expect(await alarm().count()).toBe(0);
  });

  test("is in sight at every other line", async () => {
    await page.goto(`${station.url}/kit/${KIT}/turnaround?line=${WAIT_LINE + 1}`);
    const strip = page.getByRole("complementary", { name: "Running clocks" });
    await strip.getByRole("button", { name: `Line ${WAIT_LINE}, wait` }).waitFor();
    await strip.getByText("left").waitFor();
  });

  test("leaves the list of lines, the sealing and the end open to see while it runs", async () => {
    for (const at of ["lines", "seal", "grounded", "done"]) {
      await page.goto(`${station.url}/kit/${KIT}/turnaround?at=${at}`);
      const strip = page.getByRole("complementary", { name: "Running clocks" });
      await strip.getByRole("button", { name: `Line ${WAIT_LINE}, wait` }).waitFor();
      expect(await page.getByText("This page failed").count(), at).toBe(0);
    }
  });

  test("calls when its time has come, though the app was closed, and says how far over it is", async () => {
    await page.close();
    page = await device.newPage();
    await page.goto(`${station.url}/kit/${KIT}/turnaround`);
    await page.getByRole("complementary", { name: "Running clocks" }).waitFor();
    await clock.pass(page, 240);
    await alarm()
      .getByRole("heading", { name: `The wait at line ${WAIT_LINE} is over.` })
      .waitFor();
    await alarm()
      .getByText(/^[23]\smin.* over$/)
      .waitFor();
  });

  test("goes on calling, at the same line, when Back is pressed under it", async () => {
    await page.goBack();
    await page.goBack();
    await alarm()
      .getByText(/ over$/)
      .waitFor();
    expect(new URL(page.url()).pathname).toBe(`/kit/${KIT}/turnaround`);
  });

  test("is stopped at its own line, and the time it really took is written down", async () => {
    await alarm()
      .getByRole("button", { name: `Stop the alarm, go to line ${WAIT_LINE}` })
      .click();
    await alarm().waitFor({ state: "detached" });
    await page.getByRole("button", { name: "Stop the clock" }).click();
    await page.getByText(/^5\smin.* timed, long enough\.$/).waitFor();
  });
});
