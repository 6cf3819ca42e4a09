import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFindings } from "./support/axe.ts";
import { launchBrowser } from "./support/browser.ts";
import { signIn, slowClock, type AdjustableClock } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** What a kit moves, how it primes, how long its fuel lasts, and a proof run measured: on a phone without a network. */

const KIT = "br-07";
const line = shippedPattern("brinnet-450")
  .stages.flatMap(({ steps }) => steps)
  .find(({ measuresDelivery }) => measuresDelivery)!.line;

let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let clock: AdjustableClock;
let page: Page;
let seal: string;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  clock = await slowClock(phone, 5 * 3600);
  page = await phone.newPage();
  await signIn(page, station, "Mara Tolliver");
  seal = await sealOn(KIT);
  await station.kill();
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

async function sealOn(kit: string): Promise<string> {
  const text = await page.evaluate(() => fetch("/api/export.ndjson").then((reply) => reply.text()));
  const sealings = text.split("\n").filter((one) => one.includes(`"kit:${kit}"`) && one.includes('"sealed"'));
  return (JSON.parse(sealings.at(-1)!) as { entry: { body: { seal: string } } }).entry.body.seal;
}

const answer = (): Promise<string> => page.locator(".delivery-answer").innerText();
const flowOf = (words: string): number => Number(/About\s+(\d+)/.exec(words)?.[1]);

describe("the delivery page, without a network", () => {
  beforeAll(async () => {
    await page.goto(`${station.url}/kit/${KIT}`);
    await page.getByRole("link", { name: "Delivery", exact: true }).click();
    await page.locator(".delivery-answer").waitFor();
  });

  test("answers in one line, and answers again as the lift is stepped and typed", async () => {
    const first = await answer();
    expect(first).toMatch(/^About \d+\sL\/min at 2\sm lift, likely \d+ to \d+$/);
    await page.getByRole("button", { name: "Suction lift: more" }).click();
    expect(await answer()).toContain("2.5\u00a0m lift");
    await page.getByLabel("Suction lift", { exact: true }).fill("13 ft");
    expect(await answer()).toContain("4\u00a0m lift");
    expect(flowOf(await answer())).toBeLessThan(flowOf(first));
    await page.getByLabel("Suction lift", { exact: true }).fill("6");
    expect(await answer()).toMatch(/^The suction hose does not reach/);
    await page.getByLabel("Suction lift", { exact: true }).fill("2");
    expect(await answer()).toBe(first);
  });

  test("calls for refuelling by the clock on the wall, also after a reload", async () => {
    await page.getByRole("button", { name: "Engine started now: remind me" }).click();
    await page.getByText(/^Refuel by \d\d:\d\d$/).waitFor();
    await page.reload();
    await page.getByText(/^Refuel by \d\d:\d\d$/).waitFor();
    await clock.pass(page, 4 * 3600);
    const call = page.getByRole("alertdialog");
    await call.getByText(/stop the engine and refuel/).waitFor();
    await call.getByRole("button", { name: "Stop the alarm" }).click();
    await call.waitFor({ state: "detached" });
    await page.getByRole("button", { name: "Engine stopped: no reminder" }).click();
    await page.getByRole("button", { name: "Engine started now: remind me" }).waitFor();
  });

  test.each(["day", "night"])("has nothing for axe to find by %s", async (palette) => {
    await usePalette(palette);
    const folded = page.locator("details:not([open]) > summary");
    while ((await folded.count()) > 0) await folded.first().click();
    expect(await axeFindings(page)).toEqual([]);
  });
});

describe("a proof run, measured in the runner without a network", () => {
  test("comes from a timed drum to a finding with its mode chosen, and into the kit's record", async () => {
    await page.goto(`${station.url}/kit/${KIT}/turnaround`);
    await page.getByLabel(/^Seal number/).fill(seal);
    await page.getByRole("button", { name: /^Routine/ }).click();
    await page.getByRole("heading", { level: 1, name: /^Line 1\b/ }).waitFor();
    await page.goto(`${station.url}/kit/${KIT}/turnaround?line=${line}`);
    const measure = page.getByRole("region", { name: "Delivery measured" });
    const writeDown = measure.getByRole("button", { name: "Write the measurement down" });
    await measure.getByText("Say which hoses were on.").waitFor();
    expect(await writeDown.isDisabled()).toBe(true);
    await measure.getByLabel("Suction lift").fill("2 m");
    await measure.getByLabel("Rise", { exact: true }).fill("1 m");
    await measure.getByText("The kit's own, as packed").click();
    await measure.getByText("Full throttle", { exact: true }).click();
    await measure.getByText("Timed fill of a drum").click();
    await measure.getByLabel("The drum holds").fill("200 L");
    await measure.getByLabel("First fill took").fill("40");
    await page.reload();
    await measure.getByLabel("Second fill took").fill("41 s");
    await measure.getByText(/this grounds the kit/).waitFor();
    await measure.getByLabel("Vacuum it holds").fill("27 inHg");
    await measure.getByText("The fault lies in hose, strainer or lift.").waitFor();
    await usePalette("day");
    expect(await axeFindings(page)).toEqual([]);
    await writeDown.click();
    await measure.getByRole("button", { name: /^Answer the check: 6\d\s% ?, found wrong$/ }).click();
    const sheet = page.getByRole("dialog");
    expect(await sheet.getByRole("radio", { name: /Delivers much less/ }).isChecked()).toBe(true);
    await sheet.getByRole("button", { name: "Raise the finding" }).click();
    await page.getByRole("button", { name: "Mend it now: say what was done" }).waitFor();
    await page.getByRole("heading", { level: 1, name: new RegExp(`^Line ${line}\\b`) }).waitFor();
    for (const way of ["Mend it now: say what was done", "Go on", "Set the kit aside: close it as grounded"]) {
      const box = (await page.getByRole("button", { name: way, exact: true }).boundingBox())!;
      expect([box.y >= 0, box.y + box.height <= 844], way).toEqual([true, true]);
    }
    await page.goto(`${station.url}/kit/${KIT}#runs`);
    await page.locator("#findings").getByText("Delivers much less than its curve").waitFor();
    await page
      .locator("#runs")
      .getByText(/Last 6\d(\.\d)?\s%/)
      .waitFor();
  });
});

async function usePalette(palette: string): Promise<void> {
  const now = await page.evaluate(() => document.documentElement.dataset["palette"] ?? "day");
  if (now !== palette) await page.getByRole("button", { name: /^(Night|Day)\s*colours$/ }).click();
  await page.waitForFunction((wanted) => document.documentElement.dataset["palette"] === wanted, palette);
}
