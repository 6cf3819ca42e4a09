import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { CasualtyPhone } from "./support/casualty-phone.ts";
import { opened, seedCasualty, sounded } from "./support/casualty-seed.ts";
import { allSent, signIn } from "./support/people.ts";
import { addAuthenticator, pinOf, storedText } from "./support/locked-device.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { PATIENCE_MS } from "./support/patience.ts";

/** A device whose memory is locked by a PIN. One story, told in order. */

let browser: Browser;
let station: RunningStation;
let device: BrowserContext;
let page: Page;
let pin: string;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  device = await browser.newContext({ viewport: { width: 390, height: 844 } });
  page = await device.newPage();
  pin = await pinOf(station, "Ines Dunmore");
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

async function addPlace(name: string): Promise<void> {
  await page.getByRole("button", { name: "Add a place" }).click();
  await page.getByLabel("Name", { exact: true }).fill(name);
  await page.getByLabel("Strength").fill("1");
  await page.getByRole("button", { name: "Save the place" }).click();
  await page.getByRole("rowheader", { name }).waitFor();
}

async function openWith(figures: string, on = page): Promise<void> {
  await on.getByRole("heading", { name: "This device is locked" }).waitFor();
  await on.getByLabel("Your PIN", { exact: true }).fill(figures);
  await on.getByRole("button", { name: "Open this device" }).click();
}

/** Some 15,000 rows are written anew, on a machine that does much else. */
const PATIENT = { timeout: PATIENCE_MS };

const KNOWN = ["Ines Dunmore", "Jonas Wick", "North quay", "kit-enrolled", "step-answered"];

describe("a device that is locked by a PIN", () => {
  test("keeps its lines in the clear before", async () => {
    await signIn(page, station, "Ines Dunmore");
    await page.goto(`${station.url}/settings`);
    await addPlace("North quay");
    await allSent(page);
    const stored = await storedText(page, "drykeel");
    expect(KNOWN.filter((word) => !stored.includes(word))).toEqual([]);
  });

  test("is locked once the station has said that the PIN is right", async () => {
    await page.getByLabel("Your PIN, to change the lock").fill("000111");
    await page.getByRole("button", { name: "Lock this device by PIN" }).click();
    await page.getByText(/Name or PIN is wrong/).waitFor();
    await page.getByLabel("Your PIN, to change the lock").fill(pin);
    await page.getByRole("button", { name: "Lock this device by PIN" }).click();
    await page.getByRole("button", { name: "Turn the lock off" }).waitFor(PATIENT);
    const stored = await storedText(page, "drykeel");
    expect([...KNOWN, pin].filter((word) => stored.includes(word))).toEqual([]);
  });

  test("shows nothing after a reload, says that a wrong PIN is wrong, and opens with the right one", async () => {
    await page.reload();
    await openWith("000111");
    await page.getByRole("alert").getByText("This PIN does not open this device").waitFor();
    expect(await page.getByText("North quay").count()).toBe(0);
    await openWith(pin);
    await page.getByRole("rowheader", { name: "North quay" }).waitFor();
    await allSent(page);
  });

  test("ends the session while it is locked: who finds it cannot fetch the log by it", async () => {
    await page.reload();
    await page.getByRole("heading", { name: "This device is locked" }).waitFor();
    await expect
      .poll(() => page.evaluate(async () => ((await (await fetch("/api/session")).json()) as { kind: string }).kind))
      .toBe("signed-out");
  });

  test("opens, writes and is opened again without a network, and sends by itself once there is one", async () => {
    await station.kill();
    await openWith(pin);
    await page.getByRole("rowheader", { name: "North quay" }).waitFor();
    await addPlace("South quay");
    await page.reload();
    await openWith(pin);
    await page.getByRole("rowheader", { name: "South quay" }).waitFor();
    await page.locator("a.send-mark").getByText("1 line not sent").waitFor();
    await station.restart();
    await allSent(page, 90_000);
  });

  test("lends its key to a second window, and locks both at once", async () => {
    const second = await device.newPage();
    await second.goto(`${station.url}/settings`);
    await second.getByRole("rowheader", { name: "South quay" }).waitFor();
    await second.getByRole("button", { name: "Lock now" }).click();
    for (const window of [second, page]) await window.getByRole("heading", { name: "This device is locked" }).waitFor();
    await second.close();
  });

  test("writes a casualty sheet without being opened, through a reload, and takes it in when it is opened", async () => {
    await page.getByRole("button", { name: "Boat taking water" }).click();
    await page.getByRole("heading", { name: "Before launch: how many kits?" }).waitFor();
    await page.getByRole("complementary", { name: "This device is locked" }).waitFor();
    expect(await page.getByText("This device's memory was emptied").count()).toBe(0);
    await page.getByRole("button", { name: "5 nmi", exact: true }).click();
    await page.getByRole("textbox", { name: /Her name/ }).fill("Blind Passenger");
    await page.getByRole("button", { name: "Open her sheet" }).click();
    await page.getByText("Blind Passenger").first().waitFor();
    await page.reload();
    await page.getByText("Blind Passenger").first().waitFor();
    await page.goto(`${station.url}/people`);
    await page.getByRole("heading", { name: "Before launch: how many kits?" }).waitFor();
    expect(await page.getByText("Jonas Wick").count()).toBe(0);
    await page.getByRole("button", { name: "Open this device" }).click();
    await openWith(pin);
    await allSent(page);
    await page.goto(`${station.url}/casualty`);
    await openWith(pin);
    await page.getByRole("link", { name: /Blind Passenger/ }).waitFor();
    expect((await storedText(page, "drykeel-beside")).includes("Blind Passenger")).toBe(false);
  });

  test("opens with the PIN of a second person who has signed in on it", async () => {
    const other = await pinOf(station, "Jonas Wick");
    await page.goto(`${station.url}/settings`);
    await openWith(pin);
    await page.getByRole("button", { name: "Sign out, leave what is here" }).click();
    await page.getByRole("button", { name: /Jonas Wick/ }).click();
    await page.getByRole("navigation", { name: "Station" }).waitFor();
    await page.goto(`${station.url}/settings`);
    await openWith(pin);
    await page.getByText("Ines Dunmore, administrator").waitFor();
    await page.reload();
    await openWith(other);
    await page.getByText("Jonas Wick, crew").waitFor();
    await page.getByText("the PINs of 2 people open").waitFor();
  });

  test("is in the clear again once the lock is turned off", async () => {
    await page.getByLabel("Your PIN, to change the lock").fill(await pinOf(station, "Jonas Wick"));
    await page.getByRole("button", { name: "Turn the lock off" }).click();
    await page.getByRole("button", { name: "Lock this device by PIN" }).waitFor(PATIENT);
    await page.reload();
    await page.getByText("Jonas Wick, crew").waitFor();
    expect((await storedText(page, "drykeel")).includes("South quay")).toBe(true);
  });
});

describe("a device closed in the middle of being locked", () => {
  test.each([0, 400, 2500])("%i ms after the tap: nothing is lost", async (wait) => {
    const phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
    let window = await phone.newPage();
    await signIn(window, station, "Ines Dunmore");
    const lines = await countOf(window);
    await window.goto(`${station.url}/settings`);
    await window.getByLabel("Your PIN, to change the lock").fill(pin);
    await window.getByRole("button", { name: "Lock this device by PIN" }).click();
    await window
      .getByText(/^Changing the lock/)
      .or(window.getByRole("button", { name: "Turn the lock off" }))
      .first()
      .waitFor();
    await window.waitForTimeout(wait);
    await window.close();
    window = await phone.newPage();
    await window.goto(`${station.url}/settings`);
    await openWith(pin, window);
    await window.getByRole("rowheader", { name: "Outer pier store" }).waitFor();
    await window.getByRole("button", { name: "Turn the lock off" }).waitFor(PATIENT);
    expect((await storedText(window, "drykeel")).includes("Outer pier store")).toBe(false);
    expect(await countOf(window)).toBeGreaterThanOrEqual(lines);
    await phone.close();
  });
});

describe("a device whose owner has a passkey that derives secrets (PRF)", () => {
  test("opens with the passkey, with a network and without", async () => {
    const phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
    const window = await phone.newPage();
    await addAuthenticator(window, { hasPrf: true });
    await signIn(window, station, "Jonas Wick");
    await window.goto(`${station.url}/settings`);
    await window.getByRole("button", { name: "Add a passkey on this device" }).click();
    await window.getByText("The passkey is added.").waitFor();
    await window.getByLabel("Your PIN, to change the lock").fill(await pinOf(station, "Jonas Wick"));
    await window.getByRole("button", { name: "Lock this device by PIN" }).click();
    await window.getByRole("button", { name: "Let my passkey open it" }).click(PATIENT);
    await window.getByText("The passkey opens this device.").waitFor();
    await window.reload();
    await window.getByRole("button", { name: "Open with a passkey" }).click();
    await window.getByText("Jonas Wick, crew").waitFor();
    await allSent(window);
    await station.kill();
    await window.reload();
    await window.getByRole("button", { name: "Open with a passkey" }).click();
    await window.getByText("Jonas Wick, crew").waitFor();
    await station.restart();
    await phone.close();
  });
});

describe("a device with a lock that nobody touches", () => {
  test("says after which time it locks itself, and does", async () => {
    const phone = await CasualtyPhone.begin(browser, station);
    await lockOn(phone);
    const { page: at } = phone;
    await at.getByRole("radio", { name: /^15 minutes/, checked: true }).waitFor();
    await at.getByText("It does not lock itself").click();
    await at.getByLabel("Your PIN, as it opens this device").fill("000111");
    await at.getByRole("button", { name: "With this PIN, never lock by itself" }).click();
    await at.getByText("This does not open this device.").waitFor();
    await at.reload();
    await openWith(await pinOf(station, "Jonas Wick"), at);
    await at.getByRole("radio", { name: /^15 minutes/, checked: true }).waitFor();
    await at.getByText("1 hour").click();
    await at.getByLabel("Your PIN, as it opens this device").fill(await pinOf(station, "Jonas Wick"));
    await at.getByRole("button", { name: "With this PIN, lock after 1 hour" }).click();
    await at.getByLabel("Your PIN, as it opens this device").waitFor({ state: "detached" });
    await at.getByText("15 minutes").first().click();
    await at.getByRole("radio", { name: /^15 minutes/, checked: true }).waitFor();
    await phone.clock.pass(phone.page, 16 * 60);
    await openWith(await pinOf(station, "Jonas Wick"), phone.page);
    await phone.page.getByText("Jonas Wick, crew").waitFor();
    await phone.context.close();
  });

  test("stays open while a casualty sheet is; told to lock all the same it calls, and says what it is once opened", async () => {
    const phone = await CasualtyPhone.begin(browser, station);
    const { page, clock, hand } = phone;
    await seedCasualty(page, station, [opened(3), sounded(2, 60), sounded(0.5, 62)]);
    await lockOn(phone);
    await page.getByText("this device does not lock itself now").waitFor();
    await page.evaluate("globalThis.testSame = true");
    await clock.pass(page, 30 * 60);
    await hand.alarm("Sound the water").waitFor();
    await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
    await hand.tap("In a minute");
    expect(await page.evaluate("globalThis.testSame")).toBe(true);
    await page.getByText("Lock all the same").click();
    await clock.pass(page, 16 * 60);
    const call = hand.alarm("Something is due: unlock to see");
    await call.waitFor();
    const shown = await page.locator("body").innerText();
    expect(["Grey motor boat", "Sound the water", "Jonas Wick"].filter((word) => shown.includes(word))).toEqual([]);
    await hand.tap("Unlock to see");
    await openWith(await pinOf(station, "Jonas Wick"), page);
    await hand.alarm("Sound the water").getByText("Grey motor boat").waitFor();
    await page.reload();
    await call.waitFor();
    await hand.tap("Stop the alarm only");
    await page.getByRole("heading", { name: "This device is locked" }).waitFor();
    await page.reload();
    await page.getByRole("heading", { name: "This device is locked" }).waitFor();
    expect(await call.count()).toBe(0);
    await phone.context.close();
  });
});

/** Turns the lock of a phone on; it is left at the settings. */
async function lockOn({ page }: CasualtyPhone): Promise<void> {
  await page.goto(`${station.url}/settings`);
  await page.getByLabel("Your PIN, to change the lock").fill(await pinOf(station, "Jonas Wick"));
  await page.getByRole("button", { name: "Lock this device by PIN" }).click();
  await page.getByRole("button", { name: "Turn the lock off" }).waitFor(PATIENT);
}

/** Lines of the station's log on the device. */
function countOf(on: Page): Promise<number> {
  return on.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open("drykeel");
        opening.addEventListener("error", () => reject(opening.error ?? new Error("not opened")));
        opening.addEventListener("success", () => {
          const counting = opening.result.transaction("kept").objectStore("kept").count();
          counting.addEventListener("success", () => {
            opening.result.close();
            resolve(counting.result);
          });
        });
      }),
  );
}
