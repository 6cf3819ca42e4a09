import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startSmtpPeer, type SmtpPeer } from "../mail/smtp-peer.ts";
import { launchBrowser } from "./support/browser.ts";
import { signIn } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** Mail that a keeper asks for on the settings page, as it reaches a mail server of another maker. */

let browser: Browser;
let station: RunningStation;
let peer: SmtpPeer;
let phone: BrowserContext;
let page: Page;

beforeAll(async () => {
  peer = await startSmtpPeer();
  const settings = { SMTP_URL: peer.url, MAIL_FROM: "pumps@skerrow.example" };
  [browser, station] = await Promise.all([launchBrowser(), startStation([], settings)]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  page = await phone.newPage();
  await signIn(page, station, "Mara Tolliver");
  await page.goto(`${station.url}/settings`);
});

afterAll(async () => {
  await browser.close();
  await station.close();
  await peer.close();
});

describe("mail", () => {
  test("keeps what was typed where it is no address, and says so", async () => {
    await page.getByLabel("Your address for mail").fill("mara at home");
    await page.getByRole("button", { name: "Save what I am told by mail" }).click();
    await page.getByRole("alert").waitFor();
    expect(await page.getByLabel("Your address for mail").inputValue()).toBe("mara at home");
  });

  test("arrives as a trial once there is an address, and the page says that it was sent", async () => {
    await page.getByLabel("Your address for mail").fill("mara@skerrow.example");
    await page.getByRole("radiogroup", { name: "What is due, once a week" }).getByText("Monday").click();
    await page.getByRole("button", { name: "Save what I am told by mail" }).click();
    await page.getByRole("button", { name: "Send me a trial" }).click();
    await expect
      .poll(() => peer.taken.map(({ subject }) => subject), { timeout: 60_000 })
      .toEqual([expect.stringMatching(/: a trial$/)]);
    const sent = page.getByText(/^Sent/);
    await expect
      .poll(async () => {
        await page.getByRole("button", { name: "Look again" }).click();
        return sent.count();
      })
      .toBe(1);
  });

  test("is no more once the address is taken away", async () => {
    await page.getByRole("button", { name: "Take my address away" }).click();
    await page.getByRole("button", { name: "Take my address away" }).waitFor({ state: "detached" });
    expect(await page.getByLabel("Your address for mail").inputValue()).toBe("");
  });
});
