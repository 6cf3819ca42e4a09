import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { allSteps } from "#kit";
import { axeFindings } from "./support/axe.ts";
import { launchBrowser } from "./support/browser.ts";
import { allSent, signIn } from "./support/people.ts";
import { pictureOfLight } from "./support/picture.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** Pictures where hands look: each line's drawing, and a keeper's own photos beside it, without a network too. */

const pattern = shippedPattern("brinnet-450");
const LINE = allSteps(pattern).find(({ id }) => id === "dry-plugs")?.line;

let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let page: Page;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  page = await phone.newPage();
  await signIn(page, station, "Mara Tolliver");
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

test("a line shows its drawing with the part lit, says so to readers, and shows it large on a tap", async () => {
  await goToLine(page);
  const small = page.getByRole("button", {
    name: /^Enlarge the drawing\. Two drain plugs.*Lit: Drain plug of the casing/,
  });
  await small.waitFor();
  expect(await page.locator(".line-pictures .look-lit").count()).toBeGreaterThan(1);
  const strip = await small.boundingBox();
  expect(strip?.height).toBeGreaterThanOrEqual(76);
  expect(strip?.height).toBeLessThanOrEqual(160);
  await small.click();
  const large = page.getByRole("dialog").getByRole("img", { name: /^Two drain plugs/ });
  await large.waitFor();
  expect((await large.boundingBox())?.width).toBeGreaterThan(260);
  expect(await axeFindings(page, { within: ".dialog" })).toEqual([]);
  await page.getByRole("button", { name: "Close the drawing" }).click();
  await large.waitFor({ state: "detached" });
});

test("the Back button closes an enlarged drawing, and leaves the line only where none is open", async () => {
  await page.goto(`${station.url}/kit/br-05`);
  await page
    .getByRole("link", { name: /^Go on: Pump 5/ })
    .first()
    .click();
  await page.getByRole("heading", { level: 1, name: /^Line \d+\b/ }).waitFor();
  const line = new URL(page.url()).search;
  const dialog = page.getByRole("dialog");
  await page
    .getByRole("button", { name: /^Enlarge the drawing/ })
    .first()
    .click();
  await dialog.waitFor();
  await page.goBack();
  await dialog.waitFor({ state: "detached" });
  expect(new URL(page.url())).toMatchObject({ pathname: "/kit/br-05/turnaround", search: line });
  await page
    .getByRole("button", { name: /^Enlarge the drawing/ })
    .first()
    .click();
  await page.getByRole("button", { name: "Close the drawing" }).click();
  await dialog.waitFor({ state: "detached" });
  await page.getByRole("button", { name: /^All lines,/ }).click();
  await page.locator(".stage-line").first().waitFor();
  await page.goBack();
  await page.getByRole("heading", { level: 1, name: /^Line \d+\b/ }).waitFor();
  expect(new URL(page.url()).search).toBe(line);
  await page.goBack();
  await page.waitForURL(`${station.url}/kit/br-05`);
});

test("a reload under an enlarged drawing leaves no Back that does nothing", async () => {
  await page
    .getByRole("link", { name: /^Go on: Pump 5/ })
    .first()
    .click();
  await page
    .getByRole("button", { name: /^Enlarge the drawing/ })
    .first()
    .click();
  await page.getByRole("dialog").waitFor();
  await page.reload();
  await page.getByRole("heading", { level: 1, name: /^Line \d+\b/ }).waitFor();
  expect(await page.getByRole("dialog").count()).toBe(0);
  await page.goBack();
  await page.waitForURL(`${station.url}/kit/br-05`);
});

test("RULE-25 a keeper puts an own photo to a line; another device shows it there without a network; struck it is gone", async () => {
  await goToLine(page);
  await page.getByText("Photos of our own for this line").click();
  await page.getByRole("button", { name: "It shows what is right" }).click();
  await page.getByLabel("What to look at, if you wish").fill("Both washers on.");
  const form = page.locator("details", { hasText: "Photos of our own for this line" });
  const picture = { name: "plugs.png", mimeType: "image/png", buffer: pictureOfLight() };
  await form.locator("input[type=file]").setInputFiles(picture);
  await page.getByRole("img", { name: "Our own photo of what is right: Both washers on." }).waitFor();
  await allSent(page);
  const tablet = await browser.newContext({ viewport: { width: 820, height: 1180 } });
  const other = await tablet.newPage();
  const fetched = other.waitForResponse((reply) => reply.url().includes("/api/photos/") && reply.ok());
  await signIn(other, station, "Ede Sorrell");
  await (await fetched).finished();
  await goToLine(other);
  await shown(other).waitFor();
  await tablet.setOffline(true);
  await other.reload();
  await shown(other).waitFor();
  await other.getByRole("button", { name: /^Enlarge the drawing\. Two drain plugs/ }).waitFor();
  expect(await other.getByText("Photos of our own for this line").count()).toBe(0);
  await tablet.close();
  await page.getByRole("button", { name: /^Strike our own photo/ }).click();
  await page.getByLabel("Why").fill("Out of focus.");
  await page.getByRole("button", { name: "Strike the line" }).click();
  await shown(page).waitFor({ state: "detached" });
});

function shown(on: Page) {
  return on.getByRole("img", { name: /^Our own photo of what is right/ });
}

async function goToLine(on: Page): Promise<void> {
  await on.goto(`${station.url}/kit/br-05/turnaround?line=${LINE}`);
  await on.getByRole("heading", { level: 1, name: new RegExp(`^Line ${LINE}\\b`) }).waitFor();
}
