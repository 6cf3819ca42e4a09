import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines } from "./support/kits.ts";
import { PATIENCE_MS } from "./support/patience.ts";
import { signIn } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { scrollThroughGroup } from "./support/turnaround-hand.ts";

/** The shipped petrol pattern written anew by form, and walked. In order. */

const SHIPPED = readFileSync(join(import.meta.dirname, "..", "..", "patterns", "brinnet-450@2.yaml"), "utf8");
let browser: Browser;
let station: RunningStation;
let page: Page;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
  page.setDefaultTimeout(PATIENCE_MS);
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const parts = () => page.getByRole("navigation", { name: "Parts of the pattern" });
const form = () => page.getByRole("region", { name: "The chosen part" });
const lint = () => page.getByRole("region", { name: "What the lint finds" });
const show = (name: string | RegExp) => parts().getByRole("button", { name }).first().click();

/** Waits until the lint has gone over the last change. */
async function counts(said: RegExp): Promise<void> {
  await lint().locator("output").filter({ hasText: said }).filter({ hasNotText: "reading on" }).waitFor();
}

/** The file as it is downloaded now. */
async function downloaded(): Promise<string> {
  const coming = page.waitForEvent("download");
  await page.getByRole("button", { name: "Download the file" }).click();
  return readFileSync(await (await coming).path(), "utf8");
}

test("a draft is begun from the shipped petrol pattern as its next version, and the lint finds nothing", async () => {
  await signIn(page, station, "Ines Dunmore");
  await page.goto(`${station.url}/patterns`);
  await page.getByRole("button", { name: /next version of Brinnet/ }).click();
  await page.getByRole("heading", { name: /^Draft: Brinnet .* version 3$/ }).waitFor();
  await counts(/^No errors, no warnings, no notes$/);
  expect(await downloaded()).toBe(SHIPPED.replace("\nversion: 2\n", "\nversion: 3\n"));
});

test("a limit and a text are changed, and stay through a reload without a network", async () => {
  await show("Container");
  await form().getByLabel("Mass").fill("59 kg");
  await show("Case");
  await form().getByLabel("Name", { exact: true }).first().fill("Aluminium case");
  await counts(/^No errors/);
  await page.context().setOffline(true);
  await page.reload();
  await page.getByText("the station cannot be reached", { exact: false }).first().waitFor();
  await show("Aluminium case");
  expect(await form().getByLabel("Name", { exact: true }).first().inputValue()).toBe("Aluminium case");
  expect(await page.getByRole("button", { name: /^Issue version 3/ }).isDisabled()).toBe(true);
  await page.context().setOffline(false);
});

test("the file keeps every comment and every line that was not touched", async () => {
  const [old, now] = [SHIPPED.split("\n"), (await downloaded()).split("\n")];
  const gone = old.filter((line) => !now.includes(line));
  expect(gone.filter((line) => line.includes("#"))).toEqual([]);
  expect(gone.length).toBeLessThanOrEqual(5);
  expect(now).toContain("  mass: 59 kg");
});

test("two lines of it are walked on a phone, and nothing is written to the log", async () => {
  const before = (await exportedLines(page)).length;
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(`${station.url}/patterns/walk`);
  await page.getByRole("button", { name: /^On this device: brinnet-450, version 3/ }).click();
  for (const line of [1, 2, 3]) {
    await page.getByRole("heading", { level: 1, name: new RegExp(`^Line ${line}\\b`) }).waitFor();
    await page.getByText("nothing is written to the log").waitFor();
    if (line !== 3) await answerLine(line);
  }
  await page.getByRole("button", { name: "End it" }).click();
  expect((await exportedLines(page)).length).toBe(before);
  await page.setViewportSize({ width: 1440, height: 900 });
});

test("a fault that the lint finds is told with its way to the field, and bars the issue until it is mended", async () => {
  await page.goto(`${station.url}/patterns/draft`);
  await show("Container");
  await form().getByLabel("Mass").fill("900 kg");
  await counts(/error/);
  await counts(/^(?!No errors)/);
  const issue = page.getByRole("button", { name: /^Issue version 3/ });
  expect(await issue.isDisabled()).toBe(true);
  await form().getByLabel("Mass").fill("59 kg");
  await counts(/^No errors/);
});

test("it is issued without a restart, and a kit is moved to it once what differs was shown", async () => {
  const issue = page.getByRole("button", { name: /^Issue version 3/ });
  await issue.and(page.locator(":enabled")).click();
  await page.getByText(/ready with limits at most until a keeper moves each: .*Pump 1/).waitFor();
  await page.getByRole("button", { name: "Issue it" }).click();
  await page.getByRole("heading", { name: "brinnet-450@3 is issued" }).waitFor();
  const move = page.getByRole("link", { name: "Pump 1: what differs, and move it" });
  await move.click();
  await page.getByText(/version 3$/).click();
  await page.getByLabel("What was changed").fill("The case is another one.");
  await page.getByText(/^Version 3: 0 lines new, 0 gone, 0 done otherwise, 89 as before\./).waitFor();
  await page.getByText(/^All that differs: Items 1/).click();
  await page.getByText("Aluminium case").first().waitFor();
  await page.getByRole("button", { name: "It was rebuilt" }).click();
  await page.getByRole("heading", { level: 1, name: "Pump 1" }).waitFor();
  await expect
    .poll(async () => (await exportedLines(page)).filter(({ kind }) => kind === "kit-rebuilt").at(-1))
    .toMatchObject({ pattern: "brinnet-450@3", by: "ines-dunmore" });
});

/** Taps as seen what the line asks, until another line is shown. */
async function answerLine(line: number): Promise<void> {
  const heading = page.getByRole("heading", { level: 1, name: new RegExp(`^Line ${line}\\b`) });
  for (let taps = 0; taps < 6 && (await heading.isVisible()); taps += 1) {
    for (const box of await page.getByRole("textbox").all()) await box.fill("DRY-RUN");
    await page.evaluate(scrollThroughGroup);
    await page
      .getByRole("button", { name: /^(Seen|Done)/ })
      .first()
      .click();
  }
}
