import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { stepOfCheck } from "#kit";
import { launchBrowser } from "./support/browser.ts";
import { enrolKit, setUpStation } from "./support/own-station.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** The first turnaround of a kit of which nothing is on record, on a phone in one hand. */

const pattern = shippedPattern("brinnet-450");
const lineOf = (check: string) => stepOfCheck(pattern, check)!.line;
let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let page: Page;
let turnaround: string;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation(["--empty"])]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  page = await phone.newPage();
  await setUpStation(page, station);
  await enrolKit(page, station, { pattern, name: "Pump 1", serial: "SN-1", seal: "00417" });
  await page.getByRole("link", { name: /Open for a turnaround/ }).click();
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const heading = (line: number) => page.getByRole("heading", { level: 1, name: new RegExp(`^Line ${line}\\b`) });
const bar = () => page.locator(".answer-bar");

async function goTo(check: string, isAlone = false): Promise<void> {
  const [line, step] = [lineOf(check), stepOfCheck(pattern, check)!.id];
  const ask = isAlone ? `&ask=${step}/${check}&alone=1` : "";
  await page.goto(`${turnaround}?line=${line}${ask}`);
  await heading(line).waitFor();
}

describe("a first turnaround", () => {
  test("is opened as what it is", async () => {
    await page.getByLabel(/^Seal number/).fill("00417");
    await page.getByRole("button", { name: /^First turnaround/ }).click();
    await heading(1).waitFor();
    turnaround = page.url().split("?", 1)[0]!;
  });

  test("says at a measurement made once that none is on record, and a refusal stands at the answers", async () => {
    await goTo("letters-lid", true);
    await page.getByText("None on record: measure it now.").waitFor();
    await bar().getByRole("button", { name: /^Seen/ }).click();
    const refusal = bar().getByText("Measure it and enter the reading.");
    await refusal.waitFor();
    const box = (await refusal.boundingBox())!;
    expect(box.y + box.height).toBeLessThanOrEqual(844);
  });

  test("has the answers below a date that is to be read first, and never over it", async () => {
    await goTo("lid-gasket-look");
    const date = page.getByRole("region", { name: "Date of Lid gasket" });
    await date.waitFor();
    for (const at of [0, 10_000]) {
      await page.evaluate((to) => scrollTo(0, to), at);
      const [read, answers] = [(await date.boundingBox())!, (await bar().boundingBox())!];
      expect(read.y + read.height).toBeLessThanOrEqual(answers.y);
    }
    await bar().getByRole("button", { name: /^Seen/ }).click();
    await bar()
      .getByText(/^Read the date of Lid gasket first/)
      .waitFor();
    await bar().getByRole("button", { name: "Found wrong" }).waitFor();
  });

  test("stays at the line where a finding was raised that grounds the kit, its ways out in sight", async () => {
    await goTo("clamp-look", true);
    await bar().getByRole("button", { name: "Found wrong" }).click();
    await page.getByRole("dialog").getByRole("button", { name: "Raise the finding" }).click();
    const mend = page.getByRole("button", { name: "Mend it now: say what was done" });
    await mend.waitFor();
    const box = (await mend.boundingBox())!;
    expect(box.y + box.height).toBeLessThanOrEqual(844);
    const aside = page.getByRole("button", { name: "Set the kit aside: close it as grounded" });
    await expect.poll(async () => (await aside.boundingBox())!.y).toBeLessThanOrEqual(792);
    await mend.click();
    const way = page.getByText("With a part: which, and how many.").first();
    await way.waitFor();
    await expect.poll(async () => (await way.boundingBox())!.y).toBeLessThanOrEqual(800);
  });
});
