import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { stepNamed } from "#kit";
import { launchBrowser } from "./support/browser.ts";
import { answerRight, answeredLines, goToLine, openKit } from "./support/kits.ts";
import { allSent, signIn } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** Two people on two devices at one kit. One story, told in order. */

const KIT = "br-06";
const pattern = shippedPattern("ossel-200");
/** Two lines that are answered with one tap. */
const HOSE_LINE = stepNamed(pattern, "rig-hose")!.line;
const WATER_LINE = stepNamed(pattern, "rig-water")!.line;
let browser: Browser;
let station: RunningStation;
/** Mara's phone and Jonas's tablet. */
let phone: Page;
let tablet: Page;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  phone = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
  tablet = await (await browser.newContext({ viewport: { width: 820, height: 1180 } })).newPage();
  await signIn(phone, station, "Mara Tolliver");
  await signIn(tablet, station, "Jonas Wick");
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

async function answerNotPossible(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Not possible", exact: true }).click();
  await page.getByText("Weather or light does not allow it").click();
  await page.getByRole("button", { name: "Not possible, for this reason" }).click();
}

describe("two devices at one kit", () => {
  test("see each other's lines as they are written", async () => {
    await openKit(phone, station, KIT);
    await tablet.goto(`${station.url}/kit/${KIT}/turnaround`);
    await tablet.getByRole("heading", { level: 1, name: /^Line 1\b/ }).waitFor();

    await answerRight(phone);
    await answeredLines(tablet, 1);
    await goToLine(tablet, HOSE_LINE);
    await answerRight(tablet);
    await answeredLines(phone, 2);
  });

  test("answer the same line differently without the station, and are told once it is back", async () => {
    await Promise.all([allSent(phone, 60_000), allSent(tablet, 60_000)]);
    await station.kill();
    for (const page of [phone, tablet]) await goToLine(page, WATER_LINE);
    await answerRight(phone);
    await answerNotPossible(tablet);
    for (const page of [phone, tablet]) {
      await page.getByRole("link", { name: /^1 line not sent/ }).waitFor();
      expect(await page.getByText("Two devices differ").count()).toBe(0);
    }

    await station.restart();
    for (const page of [phone, tablet]) {
      await page.getByText("The same line was answered differently on two devices.").waitFor();
      await page.getByText(`Line ${WATER_LINE}: Done as written`).waitFor();
      await page.getByText(`Line ${WATER_LINE}: Not possible: Weather or light does not allow it`).waitFor();
    }
  });

  test("agree once the keeper has looked and said which answer stands", async () => {
    await phone
      .locator(".settle-list li")
      .filter({ hasText: "Not possible" })
      .getByRole("button", { name: "Let this one stand" })
      .click();
    await phone.getByLabel("Why: what did you look at?").fill("Looked over the side together: too dark to tell.");
    await phone.getByRole("button", { name: "Settle it" }).click();
    for (const page of [phone, tablet]) {
      await page.getByText("Two devices differ").waitFor({ state: "detached" });
      await goToLine(page, WATER_LINE);
      await page.locator(".answered-words").getByText("Not possible: Weather or light does not allow it").waitFor();
    }
  });
});
