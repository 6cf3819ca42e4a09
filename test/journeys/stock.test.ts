import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { stepNamed } from "#kit";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines, goToLine } from "./support/kits.ts";
import { allSent, signIn } from "./support/people.ts";
import { startStation, TWO_YEARS, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** The station's store: counted, used by itself, below none, called back, ordered and labelled. One story, in order. */

const WRAP_LINE = stepNamed(shippedPattern("brinnet-450"), "wrap-set")!.line;
let browser: Browser;
let station: RunningStation;
let keeper: Page;
let crew: Page;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation([], TWO_YEARS)]);
  keeper = await (await browser.newContext({ viewport: { width: 820, height: 1180 } })).newPage();
  crew = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
  await signIn(keeper, station, "Mara Tolliver");
  await signIn(crew, station, "Jonas Wick");
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const part = (page: Page, title: string) =>
  page.locator("section.section", { has: page.getByRole("heading", { name: title, exact: true }) });
const shelf = (page: Page) => part(page, "On the shelf").locator("p").first();

async function openPart(page: Page, id: string): Promise<void> {
  await page.goto(`${station.url}/stock/${id}?place=boathouse`);
  await shelf(page).waitFor();
}

async function takeOne(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Take some" }).click();
  await page.getByLabel(/^How many/).fill("1");
  const lot = page.getByLabel("Of which lot");
  if (await lot.isVisible()) await lot.selectOption("");
  await page.getByLabel("What for").fill("The spare boat.");
  await page.getByRole("button", { name: "Taken off the shelf" }).click();
  await page.getByRole("button", { name: "Taken off the shelf" }).waitFor({ state: "detached" });
}

/** 19 mm, as a gloved finger wants it [CSS px]. */
const GLOVE = 19 / (25.4 / 96);

describe("the store", () => {
  test("offers its places on a phone as lines that a glove can tap", async () => {
    await crew.goto(`${station.url}/stock`);
    const places = crew.getByRole("radiogroup", { name: "Shelves at" });
    await places.getByText("Outer pier store").click();
    await crew.waitForURL(/place=outer-pier/);
    for (const option of await places.locator("label").all()) {
      const { width, height } = (await option.boundingBox())!;
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(GLOVE);
    }
  });

  test("is counted as it lies there, and that is the truth from then on", async () => {
    await openPart(keeper, "lid-gasket");
    await keeper.getByRole("button", { name: "Count it" }).click();
    for (const box of await keeper.getByLabel(/^Of (no marked lot|lot )/).all()) await box.fill("0");
    await keeper.getByLabel(/^Of no marked lot/).fill("1");
    await keeper.getByRole("button", { name: "This is what lies there" }).click();
    await keeper.getByText("1 there, in piece.").waitFor();
    await allSent(keeper);
    await openPart(crew, "lid-gasket");
    await crew.getByText("1 there, in piece.").waitFor();
  });

  test("keeps both lines of two devices that each took the last one without a network, and shows minus one", async () => {
    // What was counted before has come to both.
    for (const page of [keeper, crew]) await page.getByText(/Counted on/).waitFor();
    for (const page of [keeper, crew]) await page.context().setOffline(true);
    for (const page of [keeper, crew]) {
      await takeOne(page);
      await page.getByText("none there by the record, in piece.").waitFor();
    }
    for (const page of [keeper, crew]) await page.context().setOffline(false);
    for (const page of [keeper, crew]) {
      await page.getByText(/\u22121: 1 more taken than were written in, in piece/).waitFor();
      await allSent(page);
    }
    expect(
      (await exportedLines(keeper)).filter(({ kind, by }) => kind === "stock-used" && by === "jonas-wick"),
    ).toHaveLength(1);
  });

  test("gives a turnaround what it renews by itself, with the lot", async () => {
    await openPart(keeper, "desiccant");
    const before = Number(/^\d+/.exec(await shelf(keeper).innerText())![0]);
    await keeper.goto(`${station.url}/kit/br-05/turnaround`);
    await goToLine(keeper, WRAP_LINE);
    await keeper.getByText("One by one: batch, or fitted on another day").click();
    const packs = keeper.getByRole("region", { name: "Desiccant packs", exact: false }).first();
    await packs.getByRole("button", { name: "New one fitted today" }).click();
    const fitting = keeper.getByRole("region", { name: "Desiccant packs", exact: false }).first();
    await fitting.getByText(/batch DE-\d/).waitFor();
    await openPart(keeper, "desiccant");
    await keeper.getByText(`${before - 3} there, in piece.`).waitFor();
  });

  afterEach(async () => {
    for (const page of [keeper, crew]) await page.context().setOffline(false);
  });

  test("refuses a delivery before the last count, and keeps what was entered", async () => {
    await openPart(keeper, "lid-gasket");
    await keeper.getByRole("button", { name: "Something came" }).click();
    await keeper.getByLabel(/^How many came/).fill("2");
    await keeper.getByText("It came on another day").click();
    const day = keeper.getByRole("group", { name: "Came on" });
    for (const [label, value] of [
      ["Day", "1"],
      ["Month", "1"],
      ["Year", "2026"],
    ] as const)
      await day.getByLabel(new RegExp(`^${label}`)).fill(value);
    await keeper.getByRole("button", { name: "It came on that day" }).click();
    await keeper.getByText(/The count has it already/).waitFor();
    expect(await keeper.getByLabel(/^How many came/).inputValue()).toBe("2");
  });

  test("says what to order by which day, as CSV and as PDF", async () => {
    await keeper.goto(`${station.url}/stock?place=boathouse`);
    const list = part(keeper, "To order");
    await list.getByRole("link", { name: "Lid gasket, one piece" }).waitFor();
    const csv = keeper.waitForEvent("download");
    await list.getByRole("button", { name: "The list as CSV" }).click();
    expect((await csv).suggestedFilename()).toMatch(/^orders-.*\.csv$/);
    const pdf = keeper.waitForEvent("download");
    await list.getByRole("link", { name: "The list as PDF" }).click();
    expect((await pdf).suggestedFilename()).toMatch(/^orders-.*\.pdf$/);
  });

  test("calls a lot back from every kit that holds it, in one act", async () => {
    const lot = await keeper
      .evaluate(() => fetch("/api/export.ndjson").then((reply) => reply.text()))
      .then((text) => /"batch":"(DE-\d)"/.exec(text)![1]!);
    await keeper.goto(`${station.url}/stock/desiccant/recall`);
    await keeper.getByLabel("Lot, as it is marked").fill(lot);
    await keeper.getByRole("link", { name: "Pump 5" }).waitFor();
    await keeper.getByLabel("Why it is recalled, and by whom").fill("The foil leaks, says its maker.");
    await keeper.getByText("Grounds the kit", { exact: false }).first().click();
    await keeper.getByRole("button", { name: /^Recall the lot/ }).click();
    await keeper.getByText("Every kit that holds it has its finding").waitFor();
    const raised = (await exportedLines(keeper)).filter(
      ({ kind, body }) => kind === "finding-raised" && String(body["note"]).includes(lot),
    );
    expect(raised.map(({ subject }) => subject)).toEqual(["kit:br-05"]);
  });
});

describe("labels", () => {
  test("are printed for a place, and open the line of a muster by the number typed", async () => {
    await keeper.goto(`${station.url}/place/boathouse/labels`);
    const pdf = keeper.waitForEvent("download");
    await keeper.getByRole("link", { name: "Labels of the kits as PDF" }).click();
    expect((await pdf).suggestedFilename()).toBe("labels-kits-boathouse.pdf");
    await crew.goto(`${station.url}/place/boathouse/muster`);
    await crew.getByRole("button", { name: "Read a label" }).click();
    await crew.getByLabel("Or type the serial or the name").fill("br p02");
    await crew.getByRole("button", { name: "Find it" }).click();
    await crew
      .getByRole("region", { name: "Pump 2", exact: true })
      .getByLabel("Seal number, read off the container")
      .waitFor();
  });
});
