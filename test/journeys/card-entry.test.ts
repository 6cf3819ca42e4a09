import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { linesOf } from "#kit";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines, giveSeal, sealOn } from "./support/kits.ts";
import { allSent, signIn } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** A turnaround done on paper, without a device, typed up at the desk afterwards. One story, told in order. */

const KIT = "br-06";
const pattern = shippedPattern("ossel-200");
/** The box of a check, or of a step without any, by its number on the card. */
const labelOn = (step: string, check?: string): string =>
  linesOf(pattern).find((line) => line.step.id === step && line.check?.id === check)!.label;
/** The box in which the seal's number stands. */
const SEAL_BOX = labelOn("crate-read-seal", "crate-seal-number");
/** A box for a tick, on the first stage. */
const TICK_BOX = labelOn("crate-carry");
const INSULATION_BOX = labelOn("examine-insulation", "insulation");
/** Boxes of the card in which more than a tick stands, by their number on the card. */
const WRITTEN: Readonly<Record<string, string>> = {
  [labelOn("crate-outside-step", "crate-strips-count")]: "4",
  [labelOn("crate-open", "crate-latches-count")]: "2",
  [labelOn("crate-take-card", "crate-card-number")]: "BR-E06 / BR-E06",
  [labelOn("examine-insulation", "tester-in-date")]: `${new Date().getFullYear() + 1}-12-31`,
  [INSULATION_BOX]: "5",
  [labelOn("examine-insulation", "earth-continuity")]: "0.1 Ω",
  [labelOn("examine-line", "crate-water")]: "0",
  [labelOn("run-five")]: "5 min 20 s",
  [labelOn("run-measure", "pump-delivery")]: "95",
  [labelOn("stow-card", "crate-card-number")]: "BR-E06 / BR-E06",
  [labelOn("crate-close", "crate-latches-count")]: "2",
};
let browser: Browser;
let station: RunningStation;
let page: Page;
let seal: string;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
  await signIn(page, station, "Mara Tolliver");
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const box = (label: string): Locator => page.getByRole("textbox", { name: new RegExp(`^${label}: `) });

/** Yesterday, at seven in the evening. */
async function enterCardDate(): Promise<void> {
  const day = new Date(Date.now() - 24 * 3_600_000);
  await page.getByLabel("Day", { exact: true }).fill(String(day.getDate()));
  await page.getByLabel("Month, 1 to 12").fill(String(day.getMonth() + 1));
  await page.getByLabel("Year, four figures").fill(String(day.getFullYear()));
  await page.getByLabel("Time on the card").fill("19:00");
}

describe("a filled card", () => {
  test("begins with its top: why the kit was opened, its seal, and when", async () => {
    seal = await sealOn(page, KIT);
    await page.goto(`${station.url}/kit/${KIT}/card-entry`);
    await giveSeal(page, seal);
    await enterCardDate();
    await box(TICK_BOX).waitFor();
  });

  test("says what a box may hold where something else is typed", async () => {
    await box(INSULATION_BOX).fill("dry");
    await box(INSULATION_BOX).press("Enter");
    await page.getByText(/^Type the reading in .* Or w, or n and why\.$/).waitFor();
    await box(INSULATION_BOX).fill("");
  });

  test("is typed from box to box on the keyboard, the ticks of a stage with one button", async () => {
    await page
      .getByRole("button", { name: /^The card shows the other \d+ without a reading as seen$/ })
      .first()
      .click();
    await box(TICK_BOX).waitFor({ state: "detached" });
    await page
      .getByRole("textbox", { name: /^\d+[a-z]?: / })
      .first()
      .focus();
    for (let asked = await boxAtHand(); asked !== undefined; asked = await boxAtHand()) {
      const label = labelOf(asked);
      await page.keyboard.type(label === SEAL_BOX ? seal : (WRITTEN[label] ?? "s"));
      await page.keyboard.press("Enter");
      await goesOnFrom(asked);
    }
    await page.getByText("No finding raised from this yet").waitFor({ state: "detached" });
    const [entered, boxes] = /(\d+) of (\d+)/.exec(await page.getByRole("progressbar").innerText())!.slice(1);
    expect(entered).toBe(boxes);
  });

  test("is whole: every line answered, each told to be from a card of its day, and the kit can be sealed", async () => {
    await page.goto(`${station.url}/kit/${KIT}/turnaround?at=seal`);
    await page.getByLabel("New seal number").waitFor();
    await allSent(page, 60_000);
    const answers = (await exportedLines(page)).filter(
      ({ subject, kind, body }) => subject === `kit:${KIT}` && kind === "step-answered" && body["fromCard"] === true,
    );
    const asked = linesOf(pattern).filter(({ answered, step }) => answered && step.after === undefined);
    const told = new Set(answers.map(({ body }) => [body["step"], body["check"]].join(" ")));
    expect(told).toEqual(new Set(asked.map(({ step, check }) => [step.id, check?.id].join(" "))));
    expect(answers.every(({ body }) => String(body["cardAt"]).includes("T19:00:00"))).toBe(true);
  });
});

/** What the box in focus asks: "12a: Look at ..."; undefined once the last is typed. */
function boxAtHand(): Promise<string | undefined> {
  return page.evaluate(() => document.activeElement?.getAttribute("aria-label") ?? undefined);
}

/** Waits until another box is at hand, not until this one is written: a fast hand does not either. Says what stands against it where none comes. */
async function goesOnFrom(asked: string): Promise<void> {
  await page.waitForFunction(isElsewhere, asked).catch(async (cause: unknown) => {
    const said = await page.getByRole("alert").allInnerTexts();
    throw new Error(`It stays at "${asked}": ${said.join(" ")}`, { cause });
  });
}

/** In the page. */
function isElsewhere(before: string): boolean {
  return document.activeElement?.getAttribute("aria-label") !== before;
}

function labelOf(asked: string): string {
  return asked.slice(0, asked.indexOf(":"));
}
