import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** From an empty station to two people on two devices, and one device shut out again. One story, told in order. */

let browser: Browser;
let station: RunningStation;
let desk: BrowserContext;
let administrator: Page;
let phone: BrowserContext;
let crew: Page;
let link = "";

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation(["--empty"])]);
  desk = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  administrator = await desk.newPage();
  crew = await phone.newPage();
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

async function enterNewPin(page: Page, pin: string): Promise<void> {
  for (const figure of pin) await page.getByRole("button", { name: figure, exact: true }).click();
  await page.getByRole("button", { name: "Go on: enter it once more" }).click();
  for (const figure of pin) await page.getByRole("button", { name: figure, exact: true }).click();
  await page.getByText("Both are the same.").waitFor();
}

test("an empty station shows its set-up, and a wrong code is refused with what to do", async () => {
  await administrator.goto(station.url);
  await administrator.getByRole("heading", { name: "Set up this station" }).waitFor();
  await administrator.getByLabel("Code from the terminal").fill("AAAA-AAAA-AAAA");
  await administrator.getByLabel("Name of the station").fill("Harrow Sound");
  await administrator.getByLabel("Its first place").fill("Boat room");
  await administrator.getByLabel("How many kits must be ready there").fill("2");
  await administrator.getByLabel("Your name").fill("Nell Harrow");
  await administrator.getByLabel("What people call this device").fill("Boat room desk");
  await administrator.getByLabel("New PIN", { exact: true }).fill("123456");
  await administrator.getByRole("button", { name: "Go on: enter it once more" }).click();
  await administrator.getByText("This PIN has figures in a row. Choose another.").waitFor();
  await administrator.getByRole("button", { name: "Clear" }).click();
  await enterNewPin(administrator, "482913");
  await administrator.getByRole("button", { name: "Set up the station" }).click();
  await administrator.getByRole("alert").waitFor();
  expect(await administrator.getByRole("heading", { name: "Set up this station" }).count()).toBe(1);
});

test("the code from the terminal makes the first administrator and the first place", async () => {
  const code = /with the code (\S+)/.exec(station.output())?.[1];
  await administrator.getByLabel("Code from the terminal").fill(code ?? "");
  await administrator.getByRole("button", { name: "Set up the station" }).click();
  await administrator.getByRole("navigation", { name: "Station" }).waitFor();
  await administrator.getByRole("link", { name: "Settings" }).click();
  await administrator.getByRole("rowheader", { name: "Boat room" }).waitFor();
});

test("somebody is invited by a link that is shown once", async () => {
  await administrator.getByRole("link", { name: "People" }).click();
  await administrator.getByLabel("Name", { exact: true }).fill("Odd Larkin");
  await administrator.getByText("Works on kits").click();
  await administrator.getByRole("button", { name: "Make an invite" }).click();
  link = (await administrator.locator(".invite-link").textContent()) ?? "";
  expect(link).toContain("/invite#");
});

test("the link sets a PIN on another device and signs in there", async () => {
  await crew.goto(link.replace(/^https?:\/\/[^/]+/, station.url));
  await crew.getByLabel("What people call this device").fill("Odd's phone");
  await enterNewPin(crew, "771204");
  await crew.getByRole("button", { name: "Set this PIN and sign in" }).click();
  await crew.getByRole("navigation", { name: "Station" }).waitFor();
  expect(await crew.getByRole("button", { name: "Change Nell Harrow" }).count()).toBe(0);
});

test("a shared device is handed over, and signed in on again by name and PIN", async () => {
  await crew.getByRole("link", { name: "Settings" }).click();
  await crew.getByRole("button", { name: "Sign out, leave what is here" }).click();
  await crew.getByRole("heading", { name: "Sign in at Harrow Sound" }).waitFor();
  await crew.getByLabel("Your name").fill("Odd Larkin");
  for (const figure of "000000") await crew.getByRole("button", { name: figure, exact: true }).click();
  await crew.getByRole("button", { name: "Sign in", exact: true }).click();
  await crew.getByRole("alert").waitFor();
  await crew.getByRole("button", { name: "Clear" }).click();
  for (const figure of "771204") await crew.getByRole("button", { name: figure, exact: true }).click();
  await crew.getByRole("button", { name: "Sign in", exact: true }).click();
  await crew.getByRole("navigation", { name: "Station" }).waitFor();
});

test("a lost device is shut out from the station's page, and says so", async () => {
  await administrator.getByRole("link", { name: "Devices" }).click();
  await administrator.getByRole("button", { name: "Shut out Odd's phone" }).click();
  await administrator.getByLabel("Why").fill("Lost overboard");
  await administrator.getByRole("button", { name: "Shut it out" }).click();
  await administrator.getByRole("link", { name: "All sent" }).waitFor();
  await crew.getByText("This device is signed out. What you write stays here and is not sent.").waitFor();
});
