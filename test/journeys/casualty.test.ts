import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { CasualtyHand } from "./support/casualty-hand.ts";
import { allSent, signIn, slowClock } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** A boat taking water, on a phone whose station is gone: before launch, on scene, and what the station sees later. */

const BOAT = "Grey motor boat";
let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let page: Page;
let hand: CasualtyHand;
/** Somebody at the station, whose clock is right. */
let desk: Page;
let kit: string;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const clock = await slowClock(phone, 6 * 3600);
  page = await phone.newPage();
  hand = new CasualtyHand(page, clock);
  desk = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
  await signIn(page, station, "Jonas Wick");
  await signIn(desk, station, "Mara Tolliver");
  await station.kill();
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

async function accessibilityFaults(): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).setLegacyMode().analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`);
}

/** By day and by night. */
async function bothPalettes(): Promise<readonly string[]> {
  const day = await accessibilityFaults();
  await page.getByRole("button", { name: /Night/ }).click();
  const night = await accessibilityFaults();
  await page.getByRole("button", { name: /Day/ }).click();
  return [...day, ...night];
}

describe("without a network", () => {
  test("three taps from the board give a first answer, well within a minute", async () => {
    const begun = Date.now();
    const take = await hand.askBeforeLaunch("Motor boat", "9 m", "5 nmi");
    expect(Date.now() - begun).toBeLessThan(30_000);
    expect(take).toMatch(/^(Take \d kits|More than 6 kits)/);
    const first = page.getByRole("list").filter({ hasText: "How many people aboard" }).getByRole("listitem").first();
    expect(await first.innerText()).toContain("lifejacket");
    await page.getByRole("region", { name: "Answer" }).getByText("With the hole halved").waitFor();
  });

  test("more told changes the answer, and the page is clean by day and by night", async () => {
    await hand.tap(/^Larger/);
    await page.locator(".launch-take", { hasText: "More than 6 kits" }).waitFor();
    await hand.tap(/^Finger/);
    await page.locator(".launch-take", { hasText: "Take 2 kits" }).waitFor();
    expect(await bothPalettes()).toEqual([]);
  });

  test("far off and waist-deep, the headline says that she may be gone first", async () => {
    await hand.tap("20 nmi");
    await hand.tap(/^Fist/);
    await hand.tap(/^Waist/);
    await page.locator(".launch-take", { hasText: "she may be gone before you can pump" }).waitFor();
    await page
      .getByRole("region", { name: /^WARNING: She may be gone/ })
      .getByText("boats nearer")
      .waitFor();
    expect(await bothPalettes()).toEqual([]);
  });

  test("water is typed where no word fits, and is there after a reload", async () => {
    await hand.tap(/^Finger/);
    const water = page.getByRole("group", { name: "Water inside" });
    await water.getByRole("button", { name: "Other" }).click();
    await page.getByLabel("Level inside").fill("40");
    await page.reload();
    await page.locator(".launch-take").waitFor();
    expect(await water.locator('[aria-pressed="true"]').innerText()).toBe("Other: 40\u00a0cm");
  });

  test("one sounding says that it is one, when to sound again and what to leave her by, and no more", async () => {
    await hand.openSheet(BOAT);
    await page.getByText(/^Told by radio: 40.cm at/).waitFor();
    expect(await hand.verdict()).toContain("NO SOUNDING YET");
    await hand.sound(60);
    const words = await hand.verdictFrom(1);
    expect(words).toMatch(/^ONE SOUNDING\n+sound again in 2\smin\./);
    expect(words).toContain("neither rise nor fall");
    await page.getByRole("region", { name: /Signs to leave her by/ }).waitFor();
    expect(await page.getByText(/Time to leave her|to hold or better/).count()).toBe(0);
  });

  test("the next sounding calls when it is due, on any page, and stays silent once silenced", async () => {
    const call = hand.alarm("Sound the water");
    await hand.clock.pass(page, 130);
    await call.waitFor();
    await page.goto(`${station.url}/findings`);
    await call.getByText(BOAT).waitFor();
    await call.getByText("60\u00a0cm").waitFor();
    await hand.tap("Stop the alarm, sound now");
    await call.waitFor({ state: "detached" });
    await page.getByRole("heading", { level: 1, name: BOAT }).waitFor();
    await page.reload();
    await page.getByRole("list", { name: "Due next" }).getByText("over").waitFor();
    expect(await call.count()).toBe(0);
  });

  test("two more say losing", async () => {
    await hand.soundBySteps("Higher by 5 cm", 50);
    await hand.soundBySteps("Higher by 5 cm", 180);
    expect(await hand.verdictFrom(3)).toMatch(/^LOSING/);
  });

  test("a level half entered holds the call back for a minute and a half, and no longer", async () => {
    const call = hand.alarm("Sound the water");
    await hand.clock.pass(page, 60);
    await hand.tap("Same as last");
    await hand.clock.pass(page, 75);
    await page.getByRole("list", { name: "Due next" }).getByText("over").waitFor();
    expect(await call.count()).toBe(0);
    await hand.clock.pass(page, 20);
    await call.waitFor();
    await hand.tap("Stop the alarm, sound now");
    await call.waitFor({ state: "detached" });
  });

  test("a beam that no such boat has is said at its field, with what it may be", async () => {
    await hand.tap("Enter her measures");
    const dialog = page.getByRole("dialog", { name: "Her measures" });
    await dialog.getByLabel("Beam").fill("39");
    await dialog.getByText(/for a boat 9 m long/).waitFor();
    expect(await dialog.innerText()).not.toMatch(/[A-Z]{2}-\d{3}/);
    expect(await dialog.getByRole("button", { name: "Write her measures" }).isDisabled()).toBe(true);
    await hand.tap("Go back");
  });

  test("a kit handed over pumps, and four more soundings say gaining, when dry and when to refuel", async () => {
    kit = await hand.pumpWithKit();
    for (let i = 0; i < 4; i += 1) await hand.soundBySteps("Lower by 5 cm", 100);
    expect(await hand.verdictFrom(7)).toMatch(/^GAINING\n+dry in about \d+\s(min|h).*refuel at \d\d:\d\d/);
    await page.getByRole("list", { name: "Due next" }).getByText("Sound").waitFor();
    await page.getByRole("img", { name: /of freeboard left/ }).waitFor();
    await page.getByRole("img", { name: /forecast for an hour/ }).waitFor();
  });

  test("a wrong sounding is taken back by one tap", async () => {
    await hand.clock.pass(page, 20);
    await hand.sound(90);
    await hand.verdictFrom(8);
    await hand.undo();
    await hand.verdictFrom(7);
  });

  test("the sheet is clean by day and by night, with warnings on it", async () => {
    await hand.tap("Slowly");
    await page.getByText("Little stability").waitFor();
    expect(await bothPalettes()).toEqual([]);
  }, 240_000);

  test("scrolled, the line at the top leaves the screen to the work", async () => {
    const bar = page.locator(".verdict-bar");
    await page.getByRole("heading", { name: "The hole" }).scrollIntoViewIfNeeded();
    await bar.getByText("GAINING").waitFor();
    expect((await bar.boundingBox())!.height).toBeLessThanOrEqual(96);
    await bar.click();
    await bar.waitFor({ state: "detached" });
  });

  test("nobody sounds for longer than half an hour: it says so by itself, and forecasts nothing", async () => {
    await hand.clock.pass(page, 34 * 60);
    await hand.tap("Stop the alarm, sound now");
    await page.locator(".verdict", { hasText: /When last sounded, at \d\d:\d\d: GAINING/ }).waitFor();
    expect(await hand.verdict()).toMatch(/^NOT KNOWN\n+last sounding 3\d\smin ago\. Sound now\./);
    expect(await page.getByRole("img", { name: /forecast for an hour/ }).count()).toBe(0);
    await page.getByText("Nothing is forecast").waitFor();
  });

  test("a sounding read earlier is written where it was read", async () => {
    const last = () => page.getByRole("region", { name: "Sounding" }).getByRole("time").getAttribute("datetime");
    const before = Date.parse((await last())!);
    await hand.tap("Same as last");
    await hand.tap("Taken earlier?");
    await page.getByLabel("Or at this time").fill(await hand.clockIn(3));
    await page.getByText(/^This is in [23] minutes?: .* Type when it was read, at most now\.$/).waitFor();
    expect(await page.getByRole("button", { name: /sounded$/ }).isDisabled()).toBe(true);
    await hand.tap("5 min ago");
    await hand.tap(/sounded 5 min ago$/);
    await hand.verdictFrom(8);
    const after = Date.parse((await last())!);
    const now = await page.evaluate(() => Date.now());
    expect((after - before) / 60_000).toBeGreaterThan(25);
    expect((now - after) / 60_000).toBeGreaterThanOrEqual(5);
    expect((now - after) / 60_000).toBeLessThan(7);
    await hand.tap("Stop the alarm, sound now");
  });

  test("nothing on it needs more than the width of the phone", async () => {
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });

  test("fuel smelt stops every pump, and nothing on the sheet invites a start or a sounding", async () => {
    await hand.tap("Fuel smelt: stop all pumping");
    await page.getByText("Stop every pump and engine now.").waitFor();
    await page.getByText(/^off/).waitFor();
    expect(await hand.verdict()).toMatch(/^FUEL SMELT\n+every pump and engine off; people into open air/);
    for (const name of ["Water comes: pumping", "One more pump", "Refuelled", /[Ss]ounded/, "Half"]) {
      expect(await page.getByRole("button", { name }).count()).toBe(0);
    }
    expect(await page.locator(".due li").count()).toBe(0);
    await page.getByText("open hatches and doors by hand").waitFor();
  });

  test("found clear and by whom, pumps are started one by one; taps that follow each other write one line", async () => {
    await page.getByLabel(/^Found clear/).fill("Skipper: an oily rag, taken off.");
    await hand.tap("Found clear");
    await hand.tapAgain("Water comes: pumping", [100, 200, 200]);
    await page.getByText("pumping, about").waitFor();
    await page.waitForTimeout(2000);
    expect(await page.locator(".pump-head").innerText()).toContain("pumping, about");
    expect(await page.getByRole("button", { name: "Stopped" }).isEnabled()).toBe(true);
  });

  test("the card for strangers is there, eight lines, clean by day and by night", async () => {
    await page.goto(`${station.url}/card/read-do`);
    await page.locator(".card-line").nth(7).waitFor();
    expect(await page.locator(".card-line").count()).toBe(8);
    expect(await bothPalettes()).toEqual([]);
    await page.getByRole("link", { name: "This card as PDF" }).click();
    await page.getByText("Needs the station: not reached now.").waitFor();
    expect(await page.locator(".card-line").count()).toBe(8);
  });
});

describe("once there is a network", () => {
  test("the station has the sheet, the kit's custody and the timeline as a PDF", async () => {
    await station.restart();
    await page.goto(`${station.url}/casualty`);
    await allSent(page);
    const links = page.getByRole("navigation", { name: "Station" });
    await links.getByRole("link", { name: "Casualty: 1 open" }).waitFor();
    expect((await links.boundingBox())!.height).toBeLessThan(60);
    await desk.goto(`${station.url}/`);
    const at = new CasualtyHand(desk, hand.clock);
    await at.alarm("Sound the water").waitFor({ timeout: 60_000 });
    await at.tap("Stop the alarm, sound now");
    await at.alarm(/: stop the engine first$/).waitFor();
    await at.tap("Stop the alarm only");
    await desk.getByRole("heading", { level: 1, name: BOAT }).waitFor();
    await desk.getByText("pumping, about").waitFor();
    const paper = await desk.getByRole("link", { name: "Timeline as PDF" }).getAttribute("href");
    const type = await desk.evaluate((url) => fetch(url!).then((reply) => reply.headers.get("content-type")), paper);
    expect(type).toBe("application/pdf");
    const log = await desk.evaluate(() => fetch("/api/export.ndjson").then((reply) => reply.text()));
    const handed = log.split("\n").filter((line) => line.includes('"handed-over"') && line.includes(BOAT));
    expect(handed).toHaveLength(1);
    expect(kit).not.toBe("");
  });

  test("a sounding that another device has made impossible meanwhile is left out, said, and taken back by one tap", async () => {
    await page.getByRole("link", { name: new RegExp(BOAT) }).click();
    await phone.setOffline(true);
    await hand.sound(250);
    const at = new CasualtyHand(desk, hand.clock);
    await at.tap("Enter her measures");
    await desk.getByRole("dialog", { name: "Her measures" }).getByLabel("Keel to deck edge").fill("1.4");
    await at.tap("Write her measures");
    await desk.getByText("Written: the boat's measures.").waitFor();
    await allSent(desk);
    await phone.setOffline(false);
    const leftOut = page.getByRole("region", { name: /Left out of what is computed/ });
    await leftOut.getByText(/sounding of 250\scm at \d\d:\d\d cannot be/).waitFor({ timeout: 60_000 });
    expect(await hand.verdictFrom(8)).not.toMatch(/COMPUT|CHECK/);
    await hand.tapCalled(/^Take back 250/);
    await leftOut.waitFor({ state: "detached" });
  });

  test("closed, the sheet shows what was sounded: no forecast, no now, no pump beyond the last line", async () => {
    await hand.clock.pass(page, 3600);
    await hand.tapCalled("towed in");
    await hand.tapCalled("Close the sheet");
    await page.getByText(/^Closed/).waitFor();
    await hand.undo();
    await page.locator(".verdict").waitFor();
    await hand.tapCalled("towed in");
    await hand.tapCalled("Close the sheet");
    await page.getByText(/^Closed/).waitFor();
    await page.getByRole("heading", { name: "Soundings", exact: true }).waitFor();
    await page.locator(".soundings-run").first().waitFor();
    expect(await page.locator(".soundings-now").count()).toBe(0);
    expect(await page.getByRole("img", { name: /forecast/ }).count()).toBe(0);
    const [sounded, pumped] = await page.evaluate(whereDrawn);
    expect(pumped).toBeLessThan(sounded + 40);
  });
});

/** In the page: where the last sounding is drawn, and the end of the last pumping [px]. */
function whereDrawn(): readonly [sounded: number, pumped: number] {
  const [sounded, pumped] = ["trend-point-last", "soundings-run"].map((name) => {
    const marks = [...document.querySelectorAll(`svg[role=img] .${name}`)];
    return Math.max(...marks.map((one) => one.getBoundingClientRect().right));
  });
  return [sounded!, pumped!];
}
