import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, afterEach, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { allSent } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** What a device does with its lines when the network, the clock, the windows and the disk are not as they should be. */

let browser: Browser;
let station: RunningStation;
let device: BrowserContext;
let page: Page;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

beforeEach(async () => {
  device = await browser.newContext({ viewport: { width: 390, height: 844 } });
  page = await device.newPage();
});

afterEach(() => device.close());

/** Signs in as one of the demo's people and waits until the whole log and the app itself are on the device. */
async function signIn(on: Page, name: string): Promise<void> {
  await on.goto(`${station.url}/sign-in`);
  await on.getByRole("button", { name: new RegExp(name) }).click();
  await on.getByRole("navigation", { name: "Station" }).waitFor();
  await on.getByRole("link", { name: "All sent" }).waitFor();
  await on.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) => navigator.serviceWorker.addEventListener("controllerchange", resolve));
  });
}

/** Writes one line that is easy to see elsewhere: a new place of the station. */
async function addPlace(on: Page, name: string): Promise<void> {
  await on.getByRole("link", { name: "Settings" }).click();
  await on.getByRole("button", { name: "Add a place" }).click();
  await on.getByLabel("Name", { exact: true }).fill(name);
  await on.getByLabel("Strength").fill("1");
  await on.getByRole("button", { name: "Save the place" }).click();
  await on.getByRole("rowheader", { name }).waitFor();
}

const sendMark = (on: Page) => on.locator("a.send-mark");

describe("a device without its station", () => {
  test("opens, writes, is closed and opened again, and sends everything once the station is back", async () => {
    await signIn(page, "Ines Dunmore");
    await station.kill();
    await page.goto(`${station.url}/people`);
    await page.getByRole("rowheader", { name: "Mara Tolliver" }).waitFor();
    await addPlace(page, "North quay");
    await sendMark(page)
      .getByText(/^1 line not sent since \d\d:\d\d$/)
      .waitFor();

    await page.close();
    page = await device.newPage();
    await page.goto(`${station.url}/settings`);
    await page.getByRole("rowheader", { name: "North quay" }).waitFor();
    await sendMark(page).getByText("1 line not sent").waitFor();
    await station.restart();
    await allSent(page, 90_000);

    const other = await browser.newContext();
    const elsewhere = await other.newPage();
    await signIn(elsewhere, "Mara Tolliver");
    await elsewhere.getByRole("link", { name: "Settings" }).click();
    await elsewhere.getByLabel("North quay").waitFor();
    await other.close();
  });
});

describe("a device whose clock is three hours ahead", () => {
  test("says so, keeps the refused line, and sends it with its time put right", async () => {
    await device.addInitScript(`{
      const Real = Date, ahead = () => (localStorage.getItem("test.clock-right") ? 0 : 3 * 3600_000);
      globalThis.Date = class extends Real {
        constructor(...given) { if (given.length) super(...given); else super(Real.now() + ahead()); }
        static now() { return Real.now() + ahead(); }
      };
    }`);
    await signIn(page, "Ines Dunmore");
    await page.getByText("This device's clock is 3 h ahead of the station's.").waitFor();
    await addPlace(page, "South quay");
    await sendMark(page).getByText("1 line refused").waitFor();
    await sendMark(page).click();
    await page.evaluate(() => localStorage.setItem("test.clock-right", "yes"));
    await page.getByRole("button", { name: "Put the times right and send" }).click();
    await page.getByRole("button", { name: "Put right and send" }).click();
    await sendMark(page).getByText("All sent").waitFor();
    await page.getByRole("link", { name: "Board" }).first().click();
    await page.getByRole("link", { name: "Settings" }).click();
    await page.getByRole("rowheader", { name: "South quay" }).waitFor();
  });
});

describe("a device whose clock fell back six years and was then set right", () => {
  test("keeps the refused line, asks when it was written, and sends it with that time", async () => {
    await device.addInitScript(`{
      const Real = Date, behind = () => (localStorage.getItem("test.clock-lost") ? 6 * 365 * 86400_000 : 0);
      globalThis.Date = class extends Real {
        constructor(...given) { if (given.length) super(...given); else super(Real.now() - behind()); }
        static now() { return Real.now() - behind(); }
      };
    }`);
    await signIn(page, "Ines Dunmore");
    await station.kill();
    await page.evaluate(() => localStorage.setItem("test.clock-lost", "yes"));
    await addPlace(page, "East quay");
    await page.evaluate(() => localStorage.removeItem("test.clock-lost"));
    await station.restart();
    await sendMark(page).getByText("1 line refused").waitFor();
    await sendMark(page).click();
    await page.getByText("How far the clock was off when these were written is not known").waitFor();
    const hourAgo = new Date(Date.now() - 3_600_000);
    await page.getByLabel("Day", { exact: true }).fill(String(hourAgo.getDate()));
    await page.getByLabel("Month, 1 to 12").fill(String(hourAgo.getMonth() + 1));
    await page.getByLabel("Year, four figures").fill(String(hourAgo.getFullYear()));
    await page
      .getByLabel("Time it was written")
      .fill(`${hourAgo.getHours()}:${String(hourAgo.getMinutes()).padStart(2, "0")}`);
    await page.getByRole("button", { name: "Put the times right and send" }).click();
    await sendMark(page).getByText("All sent").waitFor();
  });
});

describe("two windows on one device", () => {
  test("show each other's lines, sent or not", async () => {
    await signIn(page, "Ines Dunmore");
    const second = await device.newPage();
    await second.goto(`${station.url}/settings`);
    await second.getByRole("rowheader", { name: "Boathouse" }).waitFor();
    await station.kill();
    await addPlace(page, "West quay");
    await second.getByRole("rowheader", { name: "West quay" }).waitFor();
    await sendMark(second).getByText("1 line not sent").waitFor();
    await page.close();
    await station.restart();
    await allSent(second, 90_000);
  });
});

describe("leaving a device", () => {
  test("with unsent lines is warned of, and then removes everything", async () => {
    await signIn(page, "Ines Dunmore");
    await station.kill();
    await addPlace(page, "Lost quay");
    await page.getByText("US customary").click();
    await page.getByRole("button", { name: "Sign out and remove everything" }).click();
    await page.getByText("1 line and 0 photos on this device are not with the station").waitFor();
    const sure = page.getByRole("button", { name: "Sign out and remove", exact: true });
    await Promise.all([page.waitForEvent("load"), sure.click()]);
    await page.getByRole("heading", { name: /^Sign in/ }).waitFor();
    const left = await page.evaluate(async () => {
      const request = indexedDB.open("drykeel");
      const database = await new Promise<IDBDatabase>((resolve) => {
        request.addEventListener("success", () => resolve(request.result));
      });
      const count = database.transaction("kept").objectStore("kept").count();
      return new Promise((resolve) => count.addEventListener("success", () => resolve(count.result)));
    });
    expect(left).toBe(0);
    const drawer = await page.evaluate(() => Object.keys(localStorage));
    expect(drawer.filter((key) => !["drykeel.looks", "drykeel.sign-out-untold"].includes(key))).toEqual([]);
    await station.restart();
  });

  test("is told from a disk that was emptied by somebody else, which is shouted", async () => {
    await signIn(page, "Mara Tolliver");
    await page.goto("about:blank");
    const session = await device.newCDPSession(page);
    const origin = station.url;
    await session.send("Storage.clearDataForOrigin", { origin, storageTypes: "indexeddb" });
    await page.goto(`${station.url}/people`);
    await page.getByText("This device's memory was emptied").waitFor();
    await page.getByRole("rowheader", { name: "Mara Tolliver" }).waitFor();
  });
});
