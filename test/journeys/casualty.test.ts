import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { CasualtyPhone, putAway } from "./support/casualty-phone.ts";
import { opened, pumped, seen, sounded, type SeededLine } from "./support/casualty-seed.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** The sheet of a boat taking water, each scene on a phone of its own whose network is gone. */

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

/** A phone whose person is busy: every call is put off. */
async function busyPhone(): Promise<CasualtyPhone> {
  const phone = await CasualtyPhone.begin(browser, station);
  await phone.putCallsOff();
  return phone;
}

/** Rising, a pump, then falling. */
const FALLING = [
  opened(40),
  sounded(38, 60),
  sounded(34, 66),
  pumped(32, 420, { runtime: 7200 }),
  sounded(28, 64),
  sounded(22, 58),
  sounded(16, 51),
  sounded(8, 42),
  sounded(1, 33),
];
const RISING = [opened(20), sounded(14, 50), sounded(9, 62), sounded(5, 71), sounded(1, 80)];

describe("soundings", () => {
  test("Enter writes the level typed, and Undo takes it back", async () => {
    const { page, hand } = await withSheet(opened(3), sounded(2, 60));
    await hand.typeLevel(64);
    await page.getByLabel("Level in cm").press("Enter");
    await hand.written("64\u00a0cm sounded at ");
    await hand.verdictFrom(2);
    await hand.undo();
    await hand.verdictFrom(1);
  });

  test("one says that it is one and what to leave her by stands at hand, and no more", async () => {
    const { page, hand } = await withSheet(opened(3));
    expect(await hand.verdict()).toContain("NO SOUNDING YET");
    await hand.sound(60);
    expect(await hand.verdictFrom(1)).toMatch(/^ONE SOUNDING\n+sound again/);
    await page.getByRole("button", { name: "Signs to leave her by" }).waitFor();
    expect(await page.getByText(/Time to leave her|to hold or better/).count()).toBe(0);
  });

  test("rising ones say losing", async () => {
    const { hand } = await withSheet(...RISING);
    await hand.soundBySteps("Higher by 5 cm", 120);
    expect(await hand.verdictFrom(5)).toMatch(/^LOSING/);
  });

  test("falling ones say gaining with a time to dry, and a clock says when to refuel", async () => {
    const { page, hand } = await withSheet(...FALLING);
    await hand.soundBySteps("Lower by 5 cm", 120);
    expect(await hand.verdictFrom(8)).toMatch(/^GAINING\n+down to the strainer in about \d+\s(min|h)$/);
    await page.getByRole("list", { name: "Due next" }).getByText("Refuel Pump 1").waitFor();
    await page.getByRole("img", { name: /of freeboard left/ }).waitFor();
    await page.getByRole("img", { name: /forecast for an hour/ }).waitFor();
  });

  test("one read earlier is written where it was read, none ahead of the clock", async () => {
    const { page, hand } = await withSheet(opened(50), sounded(40, 60), sounded(35, 61));
    const last = () => page.getByRole("region", { name: "Sounding" }).getByRole("time").getAttribute("datetime");
    const before = Date.parse((await last())!);
    await hand.tap("Same");
    await hand.tap("Earlier?");
    await page.getByLabel("Or at this time").fill(await hand.clockIn(3));
    await page.getByText(/^This is in [23]\smin: .* Type when it was read, at most now\.$/).waitFor();
    expect(await page.getByRole("button", { name: /sounded$/ }).isDisabled()).toBe(true);
    await hand.tap("5 min ago");
    await hand.tap(/sounded 5\smin ago$/);
    await hand.written("cm sounded at ");
    const after = Date.parse((await last())!);
    const now = await page.evaluate(() => Date.now());
    expect((after - before) / 60_000).toBeGreaterThan(25);
    expect((now - after) / 60_000).toBeGreaterThanOrEqual(5);
    expect((now - after) / 60_000).toBeLessThan(9);
  });

  test("none for longer than half an hour: it says so by itself, and forecasts nothing", async () => {
    const { page, hand, clock } = await withSheet(...FALLING);
    await hand.verdictFrom(7);
    await clock.pass(page, 34 * 60);
    await page.locator(".verdict", { hasText: /NOT KNOWN/ }).waitFor();
    expect(await hand.verdict()).toMatch(/^NOT KNOWN\n+last sounding 3\d\smin ago\. Sound now/);
    await page.getByText("Nothing is forecast").waitFor();
    expect(await page.getByRole("img", { name: /forecast for an hour/ }).count()).toBe(0);
  });
});

describe("pumps", () => {
  test("a kit handed over is the first advice until water comes, and its hazards are said where the hand is", async () => {
    const { page, hand } = await withSheet(...RISING);
    await hand.tap("One more pump");
    const kit = await page.getByRole("region", { name: "One more pump" }).locator(".pick").first().innerText();
    await hand.tap(kit);
    await page.getByText("4 people at the lift, 58 kg; one calls it").waitFor();
    await hand.tap("On a line");
    await hand.tap(`${kit} handed over`);
    await hand.pump(kit).getByText("aboard, not started").waitFor();
    await page.getByText(`First: start ${kit}, aboard and not pumping.`).waitFor();
    await hand.pump(kit).getByText("exhaust downwind, clear of every hatch; nobody in the lee").waitFor();
    await hand.pump(kit).getByText("feet set, pull until it bites, then one long pull").waitFor();
    await hand.tap("Water comes");
    await hand
      .pump(kit)
      .getByText(/^pumping/)
      .waitFor();
    expect(await page.getByText(/^First: start/).count()).toBe(0);
    expect(await hand.pump(kit).getByText("exhaust downwind").count()).toBe(0);
    await hand.pump(kit).getByRole("button", { name: "Stopped", disabled: false }).waitFor();
  });

  test("a sign of a pump stands beside it with what to look at, also of some minutes ago, until water comes", async () => {
    const { hand } = await withSheet(...RISING, pumped(4, 300));
    await hand.tap("Trouble, set");
    await hand.tap("5 min ago");
    await hand.tap("No water");
    await hand.written("Pump 1: no water, at ");
    await hand.pump("Pump 1").getByText("pumping").waitFor();
    await hand.tap("Sucks air");
    await hand.pump("Pump 1").locator(".pump-past", { hasText: "sucks air" }).waitFor();
    await hand.pump("Pump 1").getByText("Strainer deeper.").waitFor();
    await hand.tap("Water comes");
    await hand.written("Pump 1: water comes");
    await hand.pump("Pump 1").locator(".pump-past").waitFor({ state: "detached" });
  });
});

describe("what people see", () => {
  test("a sign on the card calls to leave her at once, without any sounding", async () => {
    const { page, hand } = await withSheet(opened(3));
    await hand.tap("Signs to leave her by");
    const card = page.getByRole("dialog", { name: "Signs to leave her by" });
    await card.getByRole("button", { name: "List does not come back" }).click();
    await card.waitFor({ state: "detached" });
    await page.getByRole("region", { name: "Gravest" }).getByText("She may roll over").waitFor();
    expect(await hand.verdict()).toMatch(/^TIME TO LEAVE HER\n+what is seen outranks the stick/);
    await hand.tap("Signs to leave her by");
    await card.getByRole("button", { name: "List does not come back", pressed: true }).waitFor();
  });

  test("list and deck edge are written down by a tap, and the sheet is clean by day and by night with warnings", async () => {
    const phone = await withSheet(...RISING, seen(1, { righting: "slowly" }));
    const { page, hand } = phone;
    const edge = page.getByRole("group", { name: "Lowest deck edge" });
    await edge.getByRole("button", { name: "Awash" }).click();
    await hand.written("deck edge awash");
    await page.getByRole("region", { name: "Gravest" }).getByText("DANGER").first().waitFor();
    expect(await phone.faultsInBothPalettes()).toEqual([]);
  }, 240_000);

  test("fuel smelt stops every pump, and nothing on the sheet invites a start or a sounding until it is found clear", async () => {
    const { page, hand } = await withSheet(...RISING, pumped(4, 300));
    await hand.tap("Fuel smelt: stop all pumping");
    await page.getByText("Stop every pump and engine now.").waitFor();
    await hand.pump("Pump 1").getByText(/^off/).waitFor();
    expect(await hand.verdict()).toMatch(/^FUEL SMELT\n+every pump and engine off; people into open air/);
    for (const name of ["Water comes", "One more pump", "Refuelled", /[Ss]ounded/, "Half"]) {
      expect(await page.getByRole("button", { name }).count()).toBe(0);
    }
    await page.getByLabel(/^Found clear/).fill("Skipper: an oily rag, taken off.");
    await hand.tap("Found clear");
    await hand.tapAgain("Water comes", [100, 200, 200]);
    await hand
      .pump("Pump 1")
      .getByText(/^pumping/)
      .waitFor();
    await hand.pump("Pump 1").getByRole("button", { name: "Stopped", disabled: false }).waitFor();
  });
});

/** A busy phone with this sheet open on it. */
async function withSheet(...lines: readonly SeededLine[]) {
  const phone = await busyPhone();
  await phone.openSheet(...lines);
  const { page, hand, clock } = phone;
  return { page, hand, clock, faultsInBothPalettes: () => phone.faultsInBothPalettes() };
}
