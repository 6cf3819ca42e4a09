import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { CasualtyPhone, putAway } from "./support/casualty-phone.ts";
import { opened, pumped, seen, sounded } from "./support/casualty-seed.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** What stands on the first screen of a sheet, and how large it is. */

/** 19 mm and 13 mm at the nominal 96 px to the inch. */
const GLOVE = 71.8;
const APART = 49;

const LOSING = [
  opened(20),
  sounded(18, 40),
  sounded(14, 50),
  pumped(12, 200, { runtime: 7200 }),
  sounded(9, 62),
  sounded(5, 71),
  sounded(1, 80),
  seen(1, { righting: "slowly", list: 0.17 }),
];

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

async function losingOn(width: number, height: number): Promise<CasualtyPhone> {
  const phone = await CasualtyPhone.begin(browser, station, [width, height]);
  await phone.putCallsOff();
  await phone.openSheet(...LOSING);
  await phone.page.locator(".verdict", { hasText: "TIME TO LEAVE HER" }).waitFor();
  await phone.page.getByRole("region", { name: "Gravest" }).locator(".caution-line").first().waitFor();
  return phone;
}

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

async function boxOf(one: Locator) {
  return (await one.boundingBox())!;
}

describe("the first screen of a phone", () => {
  test("has word, clocks, level row, Sounded now and a pump's buttons above the foot, whatever is warned of", async () => {
    const { page, hand } = await losingOn(390, 844);
    await page.getByRole("group", { name: "Lowest deck edge" }).getByRole("button", { name: "Under" }).click();
    await hand.written("deck edge under");
    await page.evaluate(() => scrollTo(0, 0));
    const foot = await boxOf(page.locator(".foot"));
    const parts = [
      page.locator(".verdict"),
      page.getByRole("list", { name: "Due next" }),
      button(page, "Higher by 5 cm"),
      button(page, "Sounded now"),
      button(page, "Water comes"),
      button(page, "Stopped"),
    ];
    for (const part of parts) {
      const { y, height } = await boxOf(part);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y + height).toBeLessThanOrEqual(foot.y);
    }
    expect(await page.evaluate(() => scrollY)).toBe(0);
  });

  test("says at most twelve words at the top, with one number, and why by a tap", async () => {
    const { page } = await losingOn(390, 844);
    const top = await page.locator(".verdict summary").innerText();
    expect(top.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word)).length).toBeLessThanOrEqual(12);
    expect(top.match(/\d+/g)?.length ?? 0).toBeLessThanOrEqual(1);
    await page.locator(".verdict summary").click();
    await page.getByText("The person in charge on scene decides.").first().waitFor();
  });

  test("has what writes at least 19 mm high and broad, and 13 mm from anything else that writes", async () => {
    const { page } = await losingOn(390, 844);
    const names = ["Sounded now", "Water comes", "Stopped", "Trouble, set"];
    const feet = ["Signs to leave her by", "Fuel smelt: stop all pumping"];
    const boxes = await Promise.all([...names, ...feet].map((name) => boxOf(button(page, name))));
    for (const { width, height } of boxes) expect(Math.min(width, height)).toBeGreaterThanOrEqual(GLOVE);
    const [sounded, water, stopped, trouble, signs, fuel] = boxes;
    for (const next of [water!, stopped!, trouble!]) {
      expect(next.y - sounded!.y - sounded!.height).toBeGreaterThanOrEqual(APART);
    }
    expect(stopped!.x - water!.x - water!.width).toBeGreaterThanOrEqual(APART - 4);
    expect(trouble!.x - stopped!.x - stopped!.width).toBeGreaterThanOrEqual(APART - 4);
    expect(fuel!.x - signs!.x - signs!.width).toBeGreaterThanOrEqual(APART - 4);
  });
});

test("nothing on it needs more than the breadth of a small phone, a phone, a tablet or a desk", async () => {
  for (const [width, height] of [
    [320, 640],
    [390, 844],
    [820, 1180],
    [1440, 900],
  ] as const) {
    const { page, context } = await losingOn(width, height);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await context.close();
  }
}, 300_000);

test("scrolled, the line at the top leaves the screen to the work, and a tap goes back", async () => {
  const { page } = await losingOn(390, 844);
  const bar = page.locator(".verdict-bar");
  await page.getByRole("heading", { name: "The hole" }).scrollIntoViewIfNeeded();
  await bar.waitFor();
  expect((await boxOf(bar)).height).toBeLessThanOrEqual(96);
  await bar.click();
  await bar.waitFor({ state: "detached" });
});
