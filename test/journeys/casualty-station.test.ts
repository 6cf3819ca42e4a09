import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { CasualtyHand } from "./support/casualty-hand.ts";
import { CasualtyPhone, putAway, putCallsOff } from "./support/casualty-phone.ts";
import { opened, pumped, sounded, type SeededLine } from "./support/casualty-seed.ts";
import { exportedLines } from "./support/kits.ts";
import { allSent, signIn } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** What the station sees of a casualty, and what comes of two devices and of the closing. */

const BOAT = "Grey motor boat";
const RISING = [opened(20), sounded(14, 50), sounded(9, 62), sounded(5, 71), sounded(1, 80)];

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

async function busyPhone(): Promise<CasualtyPhone> {
  const phone = await CasualtyPhone.begin(browser, station);
  await phone.putCallsOff();
  return phone;
}

/** Somebody at the station, whose clock is right: there every sounding of the phone is hours old, and calls. */
async function deskOf(): Promise<{ readonly desk: Page; readonly hand: CasualtyHand }> {
  const desk = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
  const hand = new CasualtyHand(desk, { pass: async () => undefined, look: async () => undefined });
  await putCallsOff(desk);
  await signIn(desk, station, "Mara Tolliver");
  return { desk, hand };
}

test("the station has what was written without a network: the sheet, the kit's custody once, the timeline", async () => {
  const { page, hand, context, ...phone } = await sheetOn(...RISING);
  const kit = await hand.pumpWithKit();
  await context.setOffline(false);
  await allSent(page);
  const { desk } = await deskOf();
  await desk.goto(`${station.url}/casualty/${phone.id}`);
  await desk.getByRole("heading", { level: 1, name: BOAT }).waitFor();
  await desk
    .getByRole("region", { name: kit })
    .getByText(/^pumping|^By the log/)
    .first()
    .waitFor();
  const paper = await desk.getByRole("link", { name: "Timeline as PDF" }).getAttribute("href");
  const type = await desk.evaluate((url) => fetch(url!).then((reply) => reply.headers.get("content-type")), paper);
  expect(type).toBe("application/pdf");
  const lines = await exportedLines(desk);
  const handed = lines.filter(({ kind, body }) => kind === "handed-over" && body["casualty"] === phone.id);
  expect(handed).toHaveLength(1);
});

test("a sounding that another device has made impossible meanwhile is left out, said, and taken back by one tap", async () => {
  const { page, hand, context, ...phone } = await sheetOn(...RISING);
  await hand.sound(250);
  const { desk, hand: at } = await deskOf();
  await desk.goto(`${station.url}/casualty/${phone.id}`);
  await at.tap("Enter her measures");
  await desk.getByRole("dialog", { name: "Her measures" }).getByLabel("Keel to deck edge").fill("1.4");
  await at.tap("Write her measures");
  await at.written("the boat's measures");
  await allSent(desk);
  await context.setOffline(false);
  const leftOut = page.getByRole("region", { name: /Left out of what is computed/ });
  await leftOut.getByText(/sounding of 250\scm at \d\d:\d\d cannot be/).waitFor();
  expect(await hand.verdictFrom(4)).not.toMatch(/COMPUT|CHECK/);
  await hand.tap(/^Take back 250/);
  await leftOut.waitFor({ state: "detached" });
});

test("closing asks of every running pump and every kit aboard, can be undone, and then shows only what was", async () => {
  const { page, hand, clock } = await sheetOn(...RISING, pumped(4, 300, { name: "Her own pump" }));
  const kit = await hand.pumpWithKit();
  await clock.pass(page, 3600);
  const close = page.getByRole("button", { name: "Close the sheet", exact: true });
  await hand.tap("towed in");
  const asks = (name: string) => page.getByRole("group", { name });
  await asks("Her own pump, by the log it runs").getByRole("button", { name: "Left running" }).click();
  await asks(`${kit}, by the log it runs`).getByRole("button", { name: "Stopped" }).click();
  expect(await close.isDisabled()).toBe(true);
  await asks(`${kit}, aboard`).getByRole("button", { name: "Comes with us" }).click();
  await close.click();
  await page.getByText(/^Closed/).waitFor();
  await page.getByText("Left running: Her own pump.").waitFor();
  await page.getByRole("link", { name: `Take ${kit} back` }).waitFor();
  expect(await page.getByRole("img", { name: /forecast/ }).count()).toBe(0);
  expect(await page.locator(".soundings-now").count()).toBe(0);
  await hand.undo();
  await page.locator(".verdict").waitFor();
  await hand.pump(kit).getByText(/^off/).waitFor();
});

test("afterwards, without a network: back with salt and no strainer, flushed in time, its run kept, the timeline told", async () => {
  const { page, hand, clock } = await sheetOn(...RISING);
  const kit = await hand.pumpWithKit();
  await hand.pump(kit).getByRole("button", { name: "Trouble, set" }).click();
  await hand.pump(kit).getByRole("group", { name: "Pulls to start it" }).getByRole("button", { name: "3" }).click();
  await hand.written("pulls, 3");
  await clock.pass(page, 600);
  await hand.sound(84);
  await closeWith(hand, kit);
  await page.getByRole("link", { name: "Timeline", exact: true }).click();
  const track = page.getByRole("table", { name: kit, exact: true });
  await track.getByText(`${kit}: 3 pulls to start`).waitFor();
  await page
    .getByRole("cell", { name: /in 100|sound again/ })
    .first()
    .waitFor();
  await page.goBack();
  await page.getByRole("link", { name: `Take ${kit} back` }).click();
  await takeBackWithout(hand, "Strainer with cage, weight and line");
  const flush = page.getByRole("region", { name: "First flush" });
  await flush.getByText(/^First flush: (1\sh|1\d\d\smin|2\sh|\d\d\smin).* left/).waitFor();
  await page.getByText("Strainer missing").first().waitFor();
  await page.getByText("More: year, dates, runs, contents, history").click();
  const run = page.getByRole("table", { name: "Runs on casualties" });
  await run.getByText("3 pulls").waitFor();
  await clock.pass(page, 3 * 3600);
  await flush.getByText(/^First flush overdue by/).waitFor();
  await hand.tap("Flushed now");
  await flush.waitFor({ state: "detached" });
});

/** Closes the sheet with this kit stopped and taken along. */
async function closeWith(hand: CasualtyHand, kit: string): Promise<void> {
  const { page } = hand;
  await hand.tap("towed in");
  const asks = (name: string) => page.getByRole("group", { name });
  await asks(`${kit}, by the log it runs`).getByRole("button", { name: "Stopped" }).click();
  await asks(`${kit}, aboard`).getByRole("button", { name: "Comes with us" }).click();
  await page.getByRole("button", { name: "Close the sheet", exact: true }).click();
  await page.getByText(/^Closed/).waitFor();
}

/** Takes the kit of this page back from salt water, counted, with one item missing. */
async function takeBackWithout(hand: CasualtyHand, missing: string): Promise<void> {
  const { page } = hand;
  const pick = (group: string | RegExp, name: string | RegExp) =>
    page.getByRole("group", { name: group, exact: true }).getByRole("button", { name }).click();
  await pick("Salt water", "Yes");
  for (const what of ["Oil", "Sewage", "Fuel"]) await pick(what, "No");
  await pick("When did it last pump?", /by her sheet/);
  await pick(/^Count it/, "Missing or damaged");
  await pick(missing, "Missing");
  await hand.tap(/^The other \d+ are there$/);
  await hand.tap("It is back");
}

/** A busy phone with this sheet open on it, and its id. */
async function sheetOn(...lines: readonly SeededLine[]) {
  const phone = await busyPhone();
  const id = await phone.openSheet(...lines);
  const { page, hand, clock, context } = phone;
  return { page, hand, clock, context, id };
}
