import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { stepNamed } from "#kit";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines, sealOn } from "./support/kits.ts";
import { allSent, signIn, slowClock, type AdjustableClock } from "./support/people.ts";
import { pictureOfLight } from "./support/picture.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern, TurnaroundHand } from "./support/turnaround-hand.ts";

/** From breaking the seal to the new seal on a phone whose station is gone, with photos, the app closed half-way. */

const pattern = shippedPattern("brinnet-450");
let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let clock: AdjustableClock;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  clock = await slowClock(phone, 3 * 3600);
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

/** Opens the kit by its seal as read off the container; the page must not give the number away. */
async function openKit(page: Page, kit: string, seal: string): Promise<void> {
  await page.goto(`${station.url}/kit/${kit}/turnaround`);
  await page.getByLabel(/^Seal number/).waitFor();
  expect(await page.evaluate(() => document.body.innerText)).not.toContain(seal);
  await page.getByLabel(/^Seal number/).fill(seal);
  await page.getByRole("button", { name: /^Routine/ }).click();
}

describe("a phone without its station", () => {
  test("does a whole turnaround with photos, is closed and reopened, and sends everything afterwards", async () => {
    let page = await phone.newPage();
    await signIn(page, station, "Mara Tolliver");
    const seal = await sealOn(page, "br-07");
    await station.kill();

    await openKit(page, "br-07", seal);
    const hand = new TurnaroundHand(page, pattern, clock, seal);
    await hand.workTo(stepNamed(pattern, "torch-open")!.line);
    await addPhoto(page);
    await hand.workTo(40);
    await page.close();

    page = await phone.newPage();
    await page.goto(`${station.url}/kit/br-07/turnaround`);
    const resumed = new TurnaroundHand(page, pattern, clock, seal);
    await page.getByRole("heading", { level: 1, name: /^Line 40\b/ }).waitFor();
    await resumed.workTo();
    await page.getByLabel("New seal number").fill("BR 20001");
    await page.getByLabel("Seal number again").fill("BR 20001");
    await page.getByRole("button", { name: "Sealed with BR 20001" }).click();
    await page.getByText(/Ready/).first().waitFor();
    await page
      .locator("a.send-mark")
      .getByText(/lines? not sent/)
      .waitFor();

    await station.restart();
    await allSent(page);
    await seenElsewhere();
  }, 600_000);
});

async function addPhoto(page: Page): Promise<void> {
  await page.getByText("Note or photo with this answer").click();
  await page
    .locator('input[type="file"]')
    .first()
    .setInputFiles({ name: "lid.png", mimeType: "image/png", buffer: pictureOfLight() });
  await page.locator(".photos img").first().waitFor();
}

/** On another device the new seal, the standing and the photo are there. */
async function seenElsewhere(): Promise<void> {
  const other = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await other.newPage();
  await signIn(page, station, "Petra Quill");
  const kept = (await exportedLines(page)).filter(({ subject }) => subject === "kit:br-07");
  const lines = kept.map((line) => JSON.stringify(line));
  expect(lines.filter((line) => line.includes("BR 20001"))).toHaveLength(1);
  const hash = lines.map((line) => /"hash":"([0-9a-f]{64})"/.exec(line)?.[1]).find(Boolean)!;
  const photo = await page.evaluate((name) => fetch(`/api/photos/${name}`).then((reply) => reply.status), hash);
  expect(photo).toBe(200);
  await other.close();
}
