import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { CasualtyPhone, putAway } from "./support/casualty-phone.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** Before launching, each scene on a phone of its own whose network is gone. */

let browser: Browser;
let station: RunningStation;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
});

afterEach(() => putAway(browser));

afterAll(async () => {
  await browser.close();
  await station.close();
});

async function offline(): Promise<CasualtyPhone> {
  const phone = await CasualtyPhone.begin(browser, station);
  await phone.context.setOffline(true);
  return phone;
}

async function asked(distance = "5 nmi"): Promise<CasualtyPhone> {
  const phone = await offline();
  await phone.hand.askBeforeLaunch("Motor boat", "9 m", distance);
  return phone;
}

describe("before launching", () => {
  test("three taps from the board give a first answer, with what to ask first and what a patch is worth", async () => {
    const { page, hand } = await offline();
    const take = await hand.askBeforeLaunch("Motor boat", "9 m", "5 nmi");
    expect(take).toMatch(/^(Take \d (kits|now)|More than 6 kits|No kit to take|No pump of this station)/);
    const first = page.getByRole("list").filter({ hasText: "How many people aboard" }).getByRole("listitem").first();
    expect(await first.innerText()).toContain("lifejacket");
    await page.getByRole("region", { name: "Answer" }).getByText("With the hole halved").waitFor();
  });

  test("more told changes the answer, and the page is clean by day and by night", async () => {
    const phone = await asked();
    await phone.hand.tap(/^Larger/);
    await phone.page.locator(".launch-take", { hasText: /More than 6 kits|a patch, more to follow/ }).waitFor();
    await phone.hand.tap(/^Finger/);
    const smaller = { hasText: /Take \d/, hasNotText: /a patch|More than/ };
    await phone.page.locator(".launch-take", smaller).waitFor();
    expect(await phone.faultsInBothPalettes()).toEqual([]);
  });

  test("far off and waist-deep, the headline says that she may be gone first", async () => {
    const phone = await asked("20 nmi");
    await phone.hand.tap(/^Fist/);
    await phone.hand.tap(/^Waist/);
    await phone.page.locator(".launch-take", { hasText: "she may be gone before you can pump" }).waitFor();
    const warning = phone.page.getByRole("region", { name: /^WARNING: She may be gone/ });
    await warning.getByText("boats nearer").waitFor();
    expect(await phone.faultsInBothPalettes()).toEqual([]);
  });

  test("water is typed where no word fits, is there after a reload, and goes with the sheet as told", async () => {
    const { page, hand } = await asked();
    const water = page.getByRole("group", { name: "Water inside" });
    await water.getByRole("button", { name: "Other" }).click();
    await page.getByLabel("Level inside").fill("40");
    await page.reload();
    await page.locator(".launch-take").waitFor();
    expect(await water.locator('[aria-pressed="true"]').innerText()).toBe("Other: 40\u00a0cm");
    await hand.openSheet("Grey motor boat");
    await page.getByText(/^Told by radio: 40.cm at/).waitFor();
  });
});

test("the card for strangers is there offline, from the kit's pattern, in two languages, by day and by night", async () => {
  const phone = await offline();
  const { page } = phone;
  await page.goto(`${station.url}/card/read-do`);
  await page.locator(".card-line").first().waitFor();
  const drawn = await page.locator(".card-line .card-picture").count();
  expect(drawn).toBe(await page.locator(".card-line").count());
  expect(drawn).toBeGreaterThanOrEqual(20);
  await page.getByLabel("Language", { exact: true }).selectOption({ label: "Русский" });
  await page.getByLabel("Second language").selectOption({ label: "Tiếng Việt" });
  await page.getByLabel("Radio channel").fill("16 / 67");
  await page.getByText("Радиоканал / Kênh vô tuyến: 16 / 67").waitFor();
  await page.getByText("Ещё не прочитано носителем языка").waitFor();
  const faces = await page.evaluate(async () => {
    await document.fonts.ready;
    return [...document.fonts].filter(({ status }) => status === "loaded").map(({ family }) => family);
  });
  expect(faces.join()).toContain("Noto Sans");
  expect(await phone.faultsInBothPalettes()).toEqual([]);
  await page.getByRole("link", { name: "This card as PDF" }).click();
  await page.getByText("Needs the station: not reached now.").waitFor();
  expect(await page.locator(".card-line").count()).toBe(drawn);
});
