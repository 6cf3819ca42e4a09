import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { CasualtyPhone, putAway } from "./support/casualty-phone.ts";
import { opened, sounded } from "./support/casualty-seed.ts";
import { filmOf } from "./support/film.ts";
import { exportedLines } from "./support/kits.ts";
import { brightest } from "./support/luminance.ts";
import { allSent, signIn, signOut } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** Two devices without the station: they show each other the sheet by code and by file, and later agree with it. */

const RISING = [opened(20), sounded(14, 50), sounded(9, 62), sounded(5, 71)];

let browser: Browser;
let station: RunningStation;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "drykeel-handed-"));
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
});

afterEach(() => putAway(browser));

afterAll(async () => {
  await browser.close();
  await station.close();
  rmSync(folder, { recursive: true, force: true });
});

async function phoneOf(name: string): Promise<CasualtyPhone> {
  const phone = await CasualtyPhone.begin(browser, station);
  await phone.putCallsOff();
  if (name !== "Jonas Wick") {
    await phone.page.goto(`${station.url}/settings`);
    await signOut(phone.page);
    await signIn(phone.page, station, name);
  }
  return phone;
}

/** Opens a sheet on a phone without a network, as a crew would that was called by radio. */
async function openAlone({ context, page, hand }: CasualtyPhone, name: string): Promise<string> {
  await page.goto(`${station.url}/casualty`);
  await context.setOffline(true);
  await hand.askBeforeLaunch("Motor boat", "9 m", "5 nmi");
  await hand.openSheet(name);
  return page.url().split("/").at(-1)!;
}

/** Photos of every code as it stands on the screen. */
async function photosOf(page: Page): Promise<readonly Buffer[]> {
  const code = page.getByRole("img", { name: /^Code \d+ of \d+$/ });
  const label = await code.getAttribute("aria-label");
  const count = Number(label!.split(" ").at(-1));
  const photos: Buffer[] = [];
  for (let at = 0; at < count; at += 1) {
    if (count > 1) await page.getByRole("button", { name: "The next code" }).click();
    photos.push(await code.screenshot());
  }
  return photos;
}

function asFiles(photos: readonly Buffer[]) {
  return photos.map((buffer, at) => ({ name: `${at}.png`, mimeType: "image/png", buffer }));
}

const fileInput = (page: Page) => page.getByLabel("The file, or photos of the codes");

async function levelsOn(page: Page, id: string): Promise<readonly string[]> {
  await page.goto(`${station.url}/casualty/${id}`);
  await page.locator(".sheet").waitFor();
  await page.getByText("All lines").click();
  const rows = await page
    .getByRole("table", { name: "Entries, newest first" })
    .getByText(/^Sounded: /)
    .allInnerTexts();
  return rows.map((row) => /[\d.]+\scm/.exec(row)![0]);
}

test("a sheet goes over by code, comes back by file with a line more, and the station ends with each line once", async () => {
  const [jonas, mara] = [await phoneOf("Jonas Wick"), await phoneOf("Mara Tolliver")];
  const id = await openAlone(jonas, "Grey motor boat");
  await jonas.hand.sound(50);
  await jonas.page.getByRole("link", { name: "Hand over by code" }).click();
  const photos = await photosOf(jonas.page);

  await mara.page.goto(`${station.url}/casualty/read`);
  await mara.context.setOffline(true);
  await mara.page.reload();
  await mara.page.getByText("No camera to read with").waitFor();
  await fileInput(mara.page).setInputFiles(asFiles(photos.toReversed()));
  await mara.page.getByText("2 lines taken").waitFor();
  await mara.page.getByRole("link", { name: "Open the sheet" }).click();
  await mara.page.getByText("2 lines from another device, not proved").waitFor();
  await mara.hand.sound(55);

  await mara.page.getByRole("link", { name: "Hand over by code" }).click();
  const saved = mara.page.waitForEvent("download");
  await mara.hand.tap("Save the file");
  const path = await (await saved).path();
  expect(readFileSync(path, "utf8")).toMatch(/^DRYKEEL:1:/);
  await jonas.hand.tap("Read theirs");
  await fileInput(jonas.page).setInputFiles({ name: "s.txt", mimeType: "text/plain", buffer: readFileSync(path) });
  await jonas.page.getByText("1 line taken").waitFor();
  for (const { page } of [jonas, mara]) expect(await levelsOn(page, id)).toEqual(["55\u00a0cm", "50\u00a0cm"]);

  await mara.context.setOffline(false);
  await allSent(mara.page);
  const bySelf = (await exportedLines(mara.page)).filter(({ subject }) => subject === `casualty:${id}`);
  expect(bySelf.map(({ kind }) => kind)).toEqual(["sounding-taken"]);
  await jonas.context.setOffline(false);
  await allSent(jonas.page);
  await mara.page
    .getByText(/not proved/)
    .first()
    .waitFor({ state: "detached" });
  for (const { page } of [jonas, mara]) expect(await levelsOn(page, id)).toEqual(["55\u00a0cm", "50\u00a0cm"]);
  const lines = (await exportedLines(jonas.page)).filter(({ subject }) => subject === `casualty:${id}`);
  expect(lines.map(({ kind }) => kind).toSorted()).toEqual(["casualty-opened", "sounding-taken", "sounding-taken"]);
});

test("a camera reads the codes off the other screen, by night too, and at night the code is no lamp", async () => {
  const phone = await phoneOf("Jonas Wick");
  await phone.putCallsOff();
  const id = await phone.openSheet(...RISING);
  await phone.page.goto(`${station.url}/casualty/${id}/hand`);
  await phone.page.getByRole("img", { name: /^Code/ }).waitFor();
  const lamp = await (await browser.newContext()).newPage();
  const byDay = await brightest(phone.page, lamp, 1);
  await phone.night();
  expect(await brightest(phone.page, lamp, 1)).toBeLessThan(byDay / 8);
  const flags = await filmOf(await photosOf(phone.page), join(folder, "codes.y4m"), lamp);

  const other = await launchBrowser(flags);
  try {
    const page = await (await other.newContext({ viewport: { width: 390, height: 844 } })).newPage();
    await signIn(page, station, "Mara Tolliver");
    await page.context().setOffline(true);
    await page.goto(`${station.url}/casualty/read`);
    await page.getByText("Nothing new in it").waitFor();
    await page.getByText("4 of its lines were here already").waitFor();
  } finally {
    await other.close();
  }
});

test("two sheets opened apart for one boat are joined, and the list shows one, on every device", async () => {
  const [jonas, mara] = [await phoneOf("Jonas Wick"), await phoneOf("Mara Tolliver")];
  const id = await openAlone(jonas, "Sandpiper");
  await jonas.hand.sound(50);
  const other = await openAlone(mara, "Kittiwake");
  await mara.hand.sound(52);
  await mara.page.getByRole("link", { name: "Hand over by code" }).click();
  const photos = await photosOf(mara.page);
  await jonas.page.getByRole("link", { name: "Hand over by code" }).click();
  await jonas.hand.tap("Read theirs");
  await fileInput(jonas.page).setInputFiles(asFiles(photos));
  await jonas.page.getByText("2 lines taken").waitFor();
  await jonas.page.goto(`${station.url}/casualty`);
  await jonas.page.getByRole("link", { name: /Sandpiper/ }).click();
  await jonas.hand.tap(/^Same casualty as Kittiwake/);
  await jonas.hand.tap("One casualty: join the sheets");
  await jonas.page.getByText("One casualty, 2 sheets:").waitFor();
  expect(await levelsOn(jonas.page, id)).toEqual(["52\u00a0cm", "50\u00a0cm"]);

  for (const { context, page } of [jonas, mara, jonas]) {
    await context.setOffline(false);
    await allSent(page);
  }
  await mara.page.goto(`${station.url}/casualty/${other}`);
  await mara.page.getByText("One casualty, 2 sheets:").waitFor();
  await mara.page.goto(`${station.url}/casualty`);
  const open = mara.page.locator(".casualty-sheets").first().getByRole("link");
  await mara.page.getByRole("link", { name: /Sandpiper/ }).waitFor();
  expect(await open.count()).toBe(1);

  await jonas.hand.tap("They are two: part them again");
  await jonas.page.getByRole("dialog").getByLabel("Why").fill("Two boats.");
  await jonas.page
    .getByRole("dialog")
    .getByRole("button", { name: /Strike/ })
    .click();
  await jonas.page.getByRole("button", { name: /^Same casualty as Kittiwake/ }).waitFor();
}, 360_000);

test("what is not for everybody to read", async () => {
  const phone = await phoneOf("Jonas Wick");
  const id = await phone.openSheet(...RISING);
  await phone.page.goto(`${station.url}/casualty/${id}/hand`);
  await phone.page.getByRole("img", { name: /^Code/ }).waitFor();
  expect(await phone.faultsInBothPalettes()).toEqual([]);
  await phone.hand.tap(/^Day/);
  await phone.hand.tap("Read theirs");
  await phone.page.getByText("No camera to read with").waitFor();
  await fileInput(phone.page).setInputFiles({ name: "a.txt", mimeType: "text/plain", buffer: Buffer.from("a list") });
  await phone.page.getByText(/That is another code or file/).waitFor();
  expect(await phone.faultsInBothPalettes()).toEqual([]);
});
