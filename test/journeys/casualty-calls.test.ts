import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { CasualtyPhone, putAway } from "./support/casualty-phone.ts";
import { opened, pumped, sounded } from "./support/casualty-seed.ts";
import { brightest } from "./support/luminance.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** Calls of an open casualty, each scene on a phone of its own without a network. */

const BOAT = "Grey motor boat";
const SOUND = "Sound the water";
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

const newPhone = () => CasualtyPhone.begin(browser, station);

describe("a sounding that is due", () => {
  test("waits while soundings are taken over from paper: at their times, and for the next line of it", async () => {
    const { page, hand, clock, openSheet } = bound(await newPhone());
    await openSheet(opened(40), sounded(35, 60));
    const call = hand.alarm(SOUND);
    await call.waitFor();
    await hand.tap("Sound now");
    await hand.tap("Earlier?");
    await page.getByLabel("Or at this time").fill(await hand.clockIn(-30));
    await hand.typeLevel(62);
    await hand.tap(/sounded at/);
    await hand.written("62\u00a0cm sounded at");
    await hand.verdictFrom(2);
    await page.getByRole("list", { name: "Due next" }).getByText("over").waitFor();
    expect(await call.count()).toBe(0);
    await clock.pass(page, 60);
    await hand.tap("Earlier?");
    await clock.pass(page, 80);
    expect(await call.count()).toBe(0);
    await clock.pass(page, 15);
    await call.waitFor();
  });

  test("calls on any page and says for which boat; answered, it stays silent through a reload", async () => {
    const { page, hand, clock, openSheet } = bound(await newPhone());
    await openSheet(opened(3), sounded(2, 60), sounded(0.5, 62));
    await page.getByRole("link", { name: "Casualty" }).first().click();
    await page.getByRole("link", { name: "Findings" }).click();
    await clock.pass(page, 400);
    const call = hand.alarm(SOUND);
    await call.getByText(`Casualty sheet: ${BOAT}`).waitFor();
    await call.getByText("62\u00a0cm").waitFor();
    await hand.tap("Sound now");
    await call.waitFor({ state: "detached" });
    await page.getByRole("heading", { level: 1, name: BOAT }).waitFor();
    await page.reload();
    await page.getByRole("list", { name: "Due next" }).getByText("over").waitFor();
    expect(await call.count()).toBe(0);
  });

  test("is put off by a minute while a hand is on a pump, and calls again after it", async () => {
    const { page, hand, clock, openSheet } = bound(await newPhone());
    await openSheet(opened(3), sounded(2, 60), sounded(0.5, 62));
    await clock.pass(page, 400);
    const call = hand.alarm(SOUND);
    await call.waitFor();
    await hand.tap("In a minute");
    await call.waitFor({ state: "detached" });
    await page.getByRole("list", { name: "Due next" }).getByText("over").waitFor();
    expect(await call.count()).toBe(0);
    await clock.pass(page, 61);
    await call.waitFor();
  });

  test("waits a minute and a half for a level in hand, and no longer", async () => {
    const { page, hand, clock, openSheet } = bound(await newPhone());
    await openSheet(opened(3), sounded(2, 60), sounded(0.5, 62));
    const call = hand.alarm(SOUND);
    await clock.pass(page, 400);
    await call.waitFor();
    await hand.tap("Sound now");
    await hand.sound(63);
    await page.getByRole("list", { name: "Due next" }).getByRole("timer").first().waitFor();
    await clock.pass(page, 400);
    await call.waitFor();
    await hand.tap("In a minute");
    await hand.tap("Same");
    await clock.pass(page, 61);
    expect(await call.count()).toBe(0);
    await clock.pass(page, 30);
    await call.waitFor();
  });
});

test("at night a call gives no more light than the sheet it calls over, and still flashes", async () => {
  const phone = await newPhone();
  const { page, hand, clock } = phone;
  await phone.openSheet(opened(3), sounded(2, 60), sounded(0.5, 62));
  await phone.night();
  await page.getByRole("timer").first().waitFor();
  const lamp = await browser.newPage();
  const sheet = await brightest(page, lamp, 1);
  await clock.pass(page, 400);
  await hand.alarm(SOUND).waitFor();
  expect(await brightest(page, lamp)).toBeLessThanOrEqual(sheet);
  const moves = await page.locator(".alarm-words").evaluate((frame) => getComputedStyle(frame).animationName);
  expect(moves).toBe("alarm-frame");
});

test("a tank about to run dry calls by its pump's name, whatever is in hand", async () => {
  const { page, hand, clock, openSheet } = bound(await newPhone());
  await openSheet(opened(30), pumped(20, 300, { runtime: 1260 }), sounded(18, 60), sounded(1, 55));
  await hand.tap("Same");
  await clock.pass(page, 70);
  const call = hand.alarm("Refuel Pump 1: stop the engine first");
  await call.getByText(`Casualty sheet: ${BOAT}`).waitFor();
  await call.getByRole("button", { name: "Refuelled" }).click();
  await call.waitFor({ state: "detached" });
});

/** The phone with its way to a sheet, to be taken apart. */
function bound(phone: CasualtyPhone) {
  const { page, hand, clock } = phone;
  return { page, hand, clock, openSheet: phone.openSheet.bind(phone) };
}
