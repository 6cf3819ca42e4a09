import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { seedLines } from "./support/casualty-seed.ts";
import { exportedLines } from "./support/kits.ts";
import { allSent, signIn } from "./support/people.ts";
import { startStation, TWO_YEARS, type RunningStation } from "./support/station.ts";

/** What the log says of a pattern: its report card, and how often to open its kits, accepted for the year's plan. */

let browser: Browser;
let station: RunningStation;
let page: Page;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation([], TWO_YEARS)]);
  page = await (await browser.newContext({ viewport: { width: 820, height: 1180 } })).newPage();
  await signIn(page, station, "Ines Dunmore");
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

/** A jammed impeller at twenty openings of long ago. */
async function twentyFaults() {
  const lines = await exportedLines(page);
  const openings = lines.filter(({ kind, body }) => kind === "turnaround-opened" && body["because"] === "routine");
  return openings.slice(-20).map(({ subject, place, body }, i) => ({
    subject,
    place,
    kind: "finding-raised" as const,
    body: {
      finding: `jammed-${i}`,
      item: "suction-port",
      mode: "impeller-jammed",
      effect: "grounds",
      turnaround: body["turnaround"],
      photos: [],
    },
  }));
}

const words = () => page.locator("main").innerText();

describe("a pattern", () => {
  test("has a report card, two taps from a kit, with what it rests on", async () => {
    await page.goto(`${station.url}/kit/br-01`);
    await page.getByRole("link", { name: "What its pattern's checks found" }).click();
    await page.getByRole("heading", { name: "What the log would change" }).waitFor();
    expect(await words()).toMatch(/From \d+ openings of \d+ kits/);
    expect(await page.getByRole("table", { name: "Checks that found something" }).count()).toBe(1);
    await page.locator("#checks summary").click();
    expect(await words()).toMatch(/once in \d+/);
    expect(await words()).not.toMatch(/\bsafe\b/i);
  });

  test("is not told to be opened more or less often on little evidence: it says what it would take", async () => {
    await page.goto(`${station.url}/pattern/brinnet-450/interval`);
    await page.getByText("What that rests on").waitFor();
    expect(await page.locator(".interval-verdict").count()).toBe(0);
    await page.getByRole("button", { name: "10 000 hours", exact: true }).click();
    await page.getByText(/Too little to tell .* more openings\.$/).waitFor();
    expect(await page.getByRole("button", { name: /^Accept/ }).count()).toBe(0);
  });

  test("is opened as often as was accepted, never by itself; what was judged stays on the device until it is judged anew", async () => {
    await seedLines(page, await twentyFaults());
    await page.goto(`${station.url}/year`);
    await page.getByRole("link", { name: "Brinnet 450" }).click();
    await page.getByRole("button", { name: "10 000 hours", exact: true, pressed: true }).waitFor();
    expect(await page.getByRole("heading", { name: "Accepted for the plan" }).count()).toBe(0);
    await page.getByRole("button", { name: "1000 hours" }).click();
    await page.getByText("What else an opening costs: nothing stated").click();
    await page.getByRole("textbox", { name: "Parts of one opening: worth how many hours of work?" }).fill("2,5");
    await page.getByText(/, 2?\d\.\d.hours in parts, and/).waitFor();
    await page.getByRole("button", { name: /^Accept every \d+ (weeks|months) for the plan/ }).click();
    await page.getByRole("heading", { name: "Accepted for the plan" }).waitFor();
    await allSent(page);
    const line = (await exportedLines(page)).findLast(({ kind }) => kind === "opening-interval-set")!;
    expect(line.body).toMatchObject({
      pattern: "brinnet-450",
      rests: { nightHours: 1000, costs: { parts: 2.5, starts: 2 } },
    });
    await page.goto(`${station.url}/year`);
    await page.getByRole("button", { name: "Plan the year" }).click();
    await page.getByText("Opening as accepted").first().waitFor();
  });

  test("goes back to its manual's interval by another line", async () => {
    await page.goto(`${station.url}/pattern/brinnet-450/interval`);
    await page.getByRole("button", { name: "Go back to the manual's interval" }).click();
    await page.getByRole("heading", { name: "Accepted for the plan" }).waitFor({ state: "detached" });
  });
});
