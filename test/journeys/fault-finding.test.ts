import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { putCallsOff } from "./support/casualty-phone.ts";
import { closeAll, opened, pumped, seedCasualty, sounded } from "./support/casualty-seed.ts";
import { allSteps } from "#kit";
import { exportedLines, goToLine, openKit } from "./support/kits.ts";
import { allSent, signIn } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** A pump will not start on a sinking boat: one thing to try at a time, without a network, to the next pump or a finding. */

const KIT = "br-01";
const PUMP = { pump: KIT, kit: KIT, name: `Kit ${KIT}` };
let browser: Browser;
let station: RunningStation;
let page: Page;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  const phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  page = await phone.newPage();
  await putCallsOff(page);
  await signIn(page, station, "Mara Tolliver");
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const button = (name: string | RegExp) => page.getByRole("button", { name });
const steady = () => page.locator(".fault-answers button:not([disabled])").first().waitFor();

async function noChange(): Promise<string> {
  await steady();
  const did = await page.locator(".fault-do").innerText();
  await button("No change").click();
  return did;
}

describe("a start that fails in a turnaround", () => {
  test.each([
    ["petrol", "br-07", "brinnet-450", "start", "Will not start"],
    ["diesel", "br-13", "tarvock-900", "start", "What does it do?"],
    ["electric", "br-06", "ossel-200", "run-start", "Will not run"],
  ])("of the %s kit is one tap from what may be behind it", async (_, kit, pattern, step, heading) => {
    const { line } = allSteps(shippedPattern(pattern)).find(({ id }) => id === step)!;
    await openKit(page, station, kit);
    await goToLine(page, line);
    if (pattern === "brinnet-450") await page.getByRole("button", { name: "Pull 1", exact: true }).click();
    await page.getByRole("link", { name: "It will not start: find out why" }).click();
    await page.getByRole("heading", { name: heading }).waitFor();
    await page.getByRole("link", { name: `Line ${line}` }).click();
    await page.waitForURL(new RegExp(`/kit/${kit}/turnaround\\?line=${line}$`));
  });
});

describe("fault finding", () => {
  test("is one tap from a pump that will not start on the casualty's sheet", async () => {
    const casualty = await seedCasualty(page, station, [
      opened(20),
      sounded(15, 40),
      sounded(0.2, 41),
      pumped(10, 200, { kit: KIT, name: "Kit br-01", running: false }),
    ]);
    await page.goto(`${station.url}/casualty/${casualty}`);
    await button("Trouble, set").first().click();
    await page.getByRole("link", { name: "Find the fault" }).click();
    await button("Will not start").click();
    await page.locator(".fault-do").waitFor();
    await page.getByText("No other pump stands by on this sheet").waitFor();
    expect(await page.locator("main").innerText()).not.toContain("Stop. Take");
  });

  test("is one tap from a pump that stopped, at the sign that was seen of it, and from one of which nobody saw a sign", async () => {
    const casualty = await seedCasualty(page, station, [
      opened(20),
      sounded(15, 40),
      sounded(0.2, 41),
      pumped(12, 200, PUMP),
      pumped(3, 200, { ...PUMP, running: false }),
      pumped(2.5, 200, { pump: "p2", name: "Pump 2" }),
      pumped(2, 200, { pump: "p2", name: "Pump 2", running: false }),
    ]);
    await page.goto(`${station.url}/casualty/${casualty}`);
    await page.getByRole("link", { name: "Find the fault" }).first().click();
    await button("Will not start").waitFor();
    await page.goto(`${station.url}/casualty/${casualty}`);
    await button("Trouble, set").first().click();
    await button("Will not start").first().click();
    await page.getByRole("link", { name: "Find the fault" }).first().click();
    await page.locator(".fault-do").waitFor();
  });

  test("works without a network, asks nothing twice, and says by its name when the next pump is quicker", async () => {
    await page.context().setOffline(true);
    const did: string[] = [];
    while ((await page.getByText("Stop. Take Pump 2.").count()) === 0) did.push(await noChange());
    expect(new Set(did).size).toBe(did.length);
    expect(did.length).toBeGreaterThan(1);
    await button("Pump 2 cannot be taken: go on here").click();
    await page.getByText("Call for the next kit now").waitFor();
    await page.getByText("Cannot be taken: Pump 2.").waitFor();
    did.push(await noChange());
    expect(new Set(did).size).toBe(did.length);
    expect(await page.locator("body").innerText()).not.toMatch(/\d ?%|\bsafe\b/);
    await page.context().setOffline(false);
  });

  test("takes an answer back, and keeps its place through a reload", async () => {
    await button("Take back the last answer").click();
    const asked = await page.locator(".fault-do").innerText();
    await page.reload();
    expect(await page.locator(".fault-do").innerText()).toBe(asked);
  });

  test("ends as a finding with its mode, filled in and raised by a person", async () => {
    await page.goto(`${station.url}/kit/${KIT}/fault?sign=will-not-start`);
    await steady();
    while (!(await page.locator(".fault-do").innerText()).includes("spare plug")) await noChange();
    await steady();
    await button("That was it: it works").click();
    await page.getByRole("radio", { name: /Plug wet or fouled/ }).waitFor({ state: "attached" });
    await page.getByText("Plug wet or fouled").click();
    await page.getByRole("link", { name: "Raise the finding" }).click();
    expect(await page.getByLabel("On which item?").inputValue()).toBe("spark-plug");
    await button("Raise the finding").click();
    await page.waitForURL(`${station.url}/kit/${KIT}`);
    await allSent(page);
    const raised = (await exportedLines(page))
      .filter(({ kind, subject }) => kind === "finding-raised" && subject === `kit:${KIT}`)
      .at(-1)!;
    expect(raised.body).toMatchObject({ item: "spark-plug", mode: "plug-fouled" });
    expect(JSON.stringify(raised.body)).toContain("What helped");
  });

  test("goes by a pump that would not start no more once it gives water, nor by a sign that was taken off", async () => {
    const casualty = await seedCasualty(page, station, [
      opened(20),
      sounded(15, 40),
      sounded(5, 41),
      pumped(4, 200, { ...PUMP, running: false }),
    ]);
    await page.goto(`${station.url}/casualty/${casualty}`);
    await button("Trouble, set").first().click();
    const sign = button("Will not start").and(page.locator("[aria-pressed]"));
    await sign.click();
    await page.locator("[aria-pressed=true]", { hasText: "Will not start" }).waitFor();
    await sign.click();
    await page.locator("[aria-pressed=false]", { hasText: "Will not start" }).waitFor();
    await sign.click();
    await page.locator("[aria-pressed=true]", { hasText: "Will not start" }).waitFor();
    await button("Water comes").first().click();
    await page.getByText(/pumping, about/).waitFor();
    expect(await page.locator("main").innerText()).not.toMatch(/moves little|would not start|br-01:/);
    await closeAll(page);
  });
});
