import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines } from "./support/kits.ts";
import { allSent, signIn } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** A kit handed over on the quay, the station out of reach: briefed, signed for with a finger, expected back. */

const KIT = "br-07";

let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let page: Page;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  page = await phone.newPage();
  await signIn(page, station, "Mara Tolliver");
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

describe("a kit handed over", () => {
  test("is briefed, signed for and expected back, offline, and the vessel gets its receipt afterwards", async () => {
    await station.kill();
    await page.goto(`${station.url}/kit/${KIT}/hand-over`);
    await page.getByLabel("To which vessel").fill("Fishing boat at the bar");
    await page.getByText("Sent along a line").click();
    await page.getByText("Whole: it goes sealed").click();
    expect(await page.locator("ol li").count()).toBe(8);
    await page.getByText("They said it back").click();
    const back = new Date(Date.now() + 3 * 86_400_000);
    const date = page.getByRole("group", { name: "Expected back by, if it was said" });
    await date.getByLabel("Day").fill(String(back.getDate()));
    await date.getByLabel("Month, 1 to 12").fill(String(back.getMonth() + 1));
    await date.getByLabel("Year, four figures").fill(String(back.getFullYear()));
    await page.getByLabel("Taken by, if known").fill("A skipper");
    await sign(page);
    await page.getByRole("button", { name: "Handed over" }).click();
    await page.getByRole("link", { name: "Take it back" }).waitFor();
    await station.restart();
    await allSent(page);
    const line = (await exportedLines(page)).findLast(
      ({ kind, subject }) => kind === "handed-over" && subject === `kit:${KIT}`,
    )!;
    const taken = { name: "A skipper", strokes: expect.stringMatching(/^\d+,\d+( \d+,\d+)+$/) };
    expect(line.body).toMatchObject({ briefed: true, back: expect.stringMatching(/^\d{4}-\d\d-\d\d$/), taken });
    const receipt = await page.evaluate(
      (id) =>
        fetch(`/api/paper/receipt/${id}.pdf`).then(async (reply) => [reply.status, (await reply.text()).slice(0, 5)]),
      line.id,
    );
    expect(receipt).toEqual([200, "%PDF-"]);
  });
});

async function sign(on: Page): Promise<void> {
  const pad = on.getByRole("img", { name: /^Place to sign/ });
  await pad.scrollIntoViewIfNeeded();
  const { x, y, width, height } = (await pad.boundingBox())!;
  await on.mouse.move(x + width / 4, y + height / 2);
  await on.mouse.down();
  await on.mouse.move(x + width / 2, y + height / 4, { steps: 8 });
  await on.mouse.move(x + (width * 3) / 4, y + (height * 3) / 4, { steps: 8 });
  await on.mouse.up();
  await on.getByRole("img", { name: "Signed" }).waitFor();
}
