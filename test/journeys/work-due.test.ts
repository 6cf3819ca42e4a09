import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines } from "./support/kits.ts";
import { allSent, signIn } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** The keeper's Monday: what is due, who does it, the year planned, and the screen on the wall. One story, told in order. */

let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let page: Page;
let link: string;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  page = await phone.newPage();
  await signIn(page, station, "Mara Tolliver");
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const row = (kit: string) =>
  page.locator(".work-line").filter({ has: page.getByRole("link", { name: kit, exact: true }) });
const kinds = async () => (await exportedLines(page)).map(({ kind }) => kind);

describe("work due", () => {
  test("is the first thing on the board, and a page of its own", async () => {
    const first = page.locator("main h2").first();
    expect(await first.innerText()).toBe("Work due");
    await page.getByRole("link", { name: "All work due" }).click();
    await page.getByRole("heading", { level: 1, name: "Work due" }).waitFor();
    expect(await row("Pump 12").innerText()).toContain("it grounds the kit");
    expect(await row("Pump 7").innerText()).toContain("Taken by Jonas Wick");
    // Half a screen of a phone a line, and all of it a tap away.
    expect((await row("Pump 12").boundingBox())!.height).toBeLessThan(422);
    await row("Pump 12").getByText("What, why, with which parts, and who").click();
    await row("Pump 12")
      .getByText(/May do it, and not away today/)
      .waitFor();
  });

  test("is taken without a network, and sent when there is one", async () => {
    await phone.setOffline(true);
    await row("Pump 12").getByRole("button", { name: "Take Pump 12" }).click();
    await row("Pump 12").getByText("Taken by Mara Tolliver.").waitFor();
    await phone.setOffline(false);
    await allSent(page);
    const taken = (await exportedLines(page)).filter(
      ({ kind, subject }) => kind === "work-taken" && subject === "kit:br-12",
    );
    expect(taken.map(({ body }) => body["person"])).toEqual(["mara-tolliver"]);
  });

  test("is not put off past the day that grounds the kit, and nothing typed is lost", async () => {
    await row("Pump 7")
      .getByRole("button", { name: /Day, person or put off/ })
      .click();
    const form = row("Pump 7").locator(".work-form");
    const day = new Date(Date.now() + 40 * 86_400_000).toISOString().slice(0, 10).split("-");
    for (const [at, label] of ["Year, four figures", "Month, 1 to 12", "Day"].entries()) {
      await form.getByLabel(label, { exact: true }).fill(day[at]!);
    }
    await form.getByLabel("Why it is put off").fill("The boat is out.");
    await form.getByRole("button", { name: "Put off until this day" }).click();
    await form
      .getByText(/after it the kit is grounded/)
      .nth(1)
      .waitFor();
    expect(await form.getByLabel("Why it is put off").inputValue()).toBe("The boat is out.");
    const put = (await exportedLines(page)).filter(
      ({ kind, subject }) => kind === "work-put-off" && subject === "kit:br-07",
    );
    expect(put).toEqual([]);
  });
});

describe("the year", () => {
  test("is planned beside doing each thing on its last day, and accepted into the log", async () => {
    await page.getByRole("link", { name: "The year planned" }).click();
    await page.getByText("No plan is accepted yet").waitFor();
    await page.getByRole("button", { name: "Plan the year" }).click();
    await page.getByRole("heading", { name: "Compared" }).waitFor();
    await page.getByRole("button", { name: "Accept this plan" }).click();
    await page.getByText("This plan stands accepted.").waitFor();
    await page.getByRole("heading", { name: "The accepted plan" }).waitFor();
    await allSent(page);
    expect((await kinds()).filter((kind) => kind === "openings-planned").length).toBeGreaterThan(8);
  });

  test("goes round an opening that was moved by a button", async () => {
    const line = page.locator(".work-plan li").last();
    const before = await line.locator("strong").innerText();
    const count = await page.locator(".work-plan li").count();
    await line.getByRole("button", { name: /A week earlier/ }).click();
    await page.getByText("(fixed)").first().waitFor();
    expect(
      await page.locator(".work-plan li").filter({ hasText: "(fixed)" }).locator("strong").first().innerText(),
    ).not.toBe(before);
    expect(await page.locator(".work-plan li").count()).toBeLessThanOrEqual(count);
  });
});

describe("the wall", () => {
  test("is opened by its link on a screen where nobody signed in", async () => {
    await page.goto(`${station.url}/settings`);
    await page.getByRole("button", { name: "Make a link for Boathouse" }).click();
    link = (await page.getByRole("link", { name: /wall#/ }).getAttribute("href"))!;
    const screen = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
    await screen.goto(link);
    await screen.getByText(/ready.* of 5 wanted/).waitFor();
    await screen.getByRole("heading", { name: "Take in this order" }).waitFor();
    // Letters of 3.6 % of the width: capitals of 20 mm on a screen 80 cm wide.
    const size = await screen.locator(".wall").evaluate((one) => Number.parseFloat(getComputedStyle(one).fontSize));
    expect(size).toBeGreaterThanOrEqual(0.036 * 1440 - 0.1);
    expect(await screen.locator("body").innerText()).not.toContain("Outer pier");
    await screen.goto(`${station.url}/work`);
    await screen
      .getByRole("heading", { name: /Sign in/ })
      .first()
      .waitFor();
    await screen.context().close();
  });

  test("is said not to be withdrawn where the station did not do it", async () => {
    await page.route("**/api/wall/links/*", (route) => route.fulfill({ status: 500, json: {} }));
    await page.getByRole("button", { name: "Withdraw the link for Boathouse" }).click();
    await page.getByText("The server's answer could not be read.").waitFor();
    await page.getByRole("link", { name: /wall#/ }).waitFor();
    await page.unroute("**/api/wall/links/*");
  });

  test("shows nothing once the link is withdrawn, and its address is off the page", async () => {
    await page.getByRole("button", { name: "Withdraw the link for Boathouse" }).click();
    await page.getByRole("button", { name: "Withdraw the link for Boathouse" }).waitFor({ state: "detached" });
    await page.getByRole("link", { name: /wall#/ }).waitFor({ state: "detached" });
    const screen = await (await browser.newContext()).newPage();
    await screen.goto(link);
    await screen.getByText("This link opens nothing").waitFor();
    await screen.context().close();
  });
});
