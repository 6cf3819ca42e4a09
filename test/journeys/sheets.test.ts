import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { allSent, holdsApp } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** From paper and spreadsheets to a board: an empty station takes people, kits, parts and past work in. One story, in order. */

let browser: Browser;
let station: RunningStation;
let page: Page;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation(["--empty"])]);
  page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

async function setUp(): Promise<void> {
  await page.goto(station.url);
  const fill = (label: string, text: string) => page.getByLabel(label, { exact: true }).fill(text);
  await page.getByRole("heading", { name: "Set up this station" }).waitFor();
  await fill("Code from the terminal", /with the code (\S+)/.exec(station.output())?.[1] ?? "");
  await fill("Name of the station", "Harrow Sound");
  await fill("Its first place", "Boat room");
  await fill("How many kits must be ready there", "2");
  await fill("Your name", "Nell Harrow");
  await fill("What people call this device", "Desk");
  for (const round of [1, 2]) {
    for (const figure of "482913") await page.getByRole("button", { name: figure, exact: true }).click();
    if (round === 1) await page.getByRole("button", { name: "Go on: enter it once more" }).click();
  }
  await page.getByText("Both are the same.").waitFor();
  await page.getByRole("button", { name: "Set up the station" }).click();
  await page.getByRole("navigation", { name: "Station" }).waitFor();
  await allSent(page);
  await holdsApp(page);
}

async function choose(of: string, name: string, text: string): Promise<void> {
  await page.getByRole("navigation", { name: "Station" }).getByRole("link", { name: "Tables" }).click();
  await page.getByRole("link", { name: "Take in from a sheet" }).click();
  await page
    .getByRole("radiogroup", { name: "What is on the sheet" })
    .getByText(new RegExp(`^${of}`))
    .click();
  await chooseFile(name, text);
}

async function chooseFile(name: string, text: string): Promise<void> {
  const file = { name, mimeType: "text/csv", buffer: Buffer.from(text) };
  await page.getByLabel(/^Choose/).setInputFiles(file);
  await page.getByText(`${name}: `, { exact: false }).first().waitFor();
}

async function takeIn(rows: string): Promise<void> {
  await page.getByRole("button", { name: rows === "1 row" ? "Take in the 1 row" : `Take in all ${rows}` }).click();
  await page.getByText(`${rows} taken in, all of them`).waitFor();
}

async function save(name: string): Promise<string> {
  await page.getByRole("navigation", { name: "Station" }).getByRole("link", { name: "Tables" }).click();
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: `Save ${name} as CSV` }).click();
  return readFileSync(await (await download).path(), "utf8");
}

const KITS = [
  "Pump;Serial number;Type;Location;Seal",
  "Pump 1;HS-1;brinnet-450;Boat room;00101",
  "Pump 2;HS-2;brinnet-450;Boat room;00102",
];

describe("from paper and spreadsheets", () => {
  test("an empty station is set up", setUp, 120_000);

  test("people are none of them taken in while three rows are bad, and all once they are mended", async () => {
    const bad = "Name;Role\nOdd Larkin;crew\nIda Moe;captain\n;crew\nOdd larkin;keeper\n";
    await choose("People", "people.csv", bad);
    await page.getByText("3 rows cannot be taken in, so none is").waitFor();
    const told = await page.getByRole("list", { name: "Bad rows" }).innerText();
    expect(told).toMatch(/Row 3, Role: got "captain"; allowed: Keeper, Crew/);
    expect(told).toMatch(/Row 4, Name/);
    expect(told).toMatch(/Row 5, Name/);
    expect(await page.getByRole("button", { name: /^Take in all/ }).count()).toBe(0);
    await chooseFile("people.csv", "Name;Role\nOdd Larkin;crew\nIda Moe;keeper\n");
    await page.getByRole("button", { name: "Take in all 2 rows" }).waitFor();
    await chooseFile("people.csv", bad);
    await page.getByLabel("Row 3, Role").fill("skipper");
    await page.getByRole("button", { name: "Check row 3 again" }).click();
    await page.getByText(/Row 3, Role: got "skipper"/).waitFor();
    expect(await page.getByLabel("Row 3, Role").inputValue()).toBe("skipper");
    await page.getByLabel("Row 3, Role").fill("keeper");
    await page.getByLabel("Row 3, Role").press("Enter");
    await page.getByText("2 rows cannot be taken in, so none is").waitFor();
    await page.getByRole("button", { name: "Leave row 4 out" }).click();
    await page.getByRole("button", { name: "Leave row 5 out" }).click();
    await page.getByText("Left out by you: rows 4, 5").waitFor();
    await page.getByText('Role: changed here; the sheet says "captain"').waitFor();
    await takeIn("2 rows");
    await allSent(page);
    await page.getByRole("link", { name: "See them" }).click();
    await page.getByRole("link", { name: "Ida Moe" }).waitFor();
  });

  test("kits stand on the board as new, grounded until their first turnaround", async () => {
    await choose("Kits", "kits.csv", KITS.join("\n"));
    await takeIn("2 rows");
    await allSent(page);
    await page.getByRole("link", { name: "See them" }).click();
    await page
      .getByRole("link", { name: /Pump 2/ })
      .first()
      .waitFor();
    await page.getByText("New, first turnaround to do.").first().waitFor();
    await page.getByRole("link", { name: "All work due" }).click();
    const line = page.locator(".work-line").filter({ hasText: "Pump 2" });
    await line.getByText("Do the first turnaround.").waitFor();
    await line.getByText(/^And \d+ more at the same opening$/).waitFor();
    expect(await line.getByText(/^Read the date of Engine oil/).isVisible()).toBe(false);
  });

  test("a date that may be two days is asked for, and a past turnaround stands in the history and proves nothing", async () => {
    await choose("Past turnarounds", "log.csv", "Serial,Done on,By\nHS-1,03/04/2025,M. Hale\n");
    await page.getByText("3 April 2025: the day comes first").click();
    await takeIn("1 row");
    await allSent(page);
    await page.getByRole("link", { name: "See them" }).click();
    await page
      .getByRole("link", { name: /Pump 1/ })
      .first()
      .click();
    await page.getByText("1 turnaround told of, before this log").click();
    await page.getByText("3 April 2025").waitFor();
    await page.getByText("told by log.csv, row 2").first().waitFor();
    await page.getByText("New, first turnaround to do.").first().waitFor();
  });

  test("parts are read without a network, and reach the station once there is one", async () => {
    await page.context().setOffline(true);
    await choose(
      "Parts and what is on the shelves",
      "parts.csv",
      "Part no,Name,Location,Qty\n100,Lid gasket,Boat room,4\n",
    );
    await takeIn("1 row");
    await page.context().setOffline(false);
    await allSent(page);
    await page.getByRole("link", { name: "See them" }).click();
    await page.getByRole("link", { name: "Lid gasket" }).first().waitFor();
  });

  test("several kits are enrolled on one page; what is wrong is told at its row and nothing is lost", async () => {
    await page.getByRole("navigation", { name: "Station" }).getByRole("link", { name: "Tables" }).click();
    await page.getByRole("link", { name: "Enrol several kits on one page" }).click();
    await page.getByText(/^Brinnet 450 petrol pump kit, version/).click();
    const row = (at: number) => page.getByRole("group", { name: `Kit ${at}`, exact: true });
    for (const at of [1, 2, 3, 4]) {
      if (at === 4) await row(3).getByLabel("Serial").press("Enter");
      await row(at)
        .getByLabel("Name")
        .fill(`Pump ${at + 2}`);
      await row(at)
        .getByLabel("Serial")
        .fill(`HS-${at === 4 ? 1 : at + 2}`);
      await row(at).getByLabel("Place").selectOption("Boat room");
    }
    await page.getByRole("button", { name: "Enrol 4 kits" }).click();
    await row(4).getByText("It is Pump 1's.").waitFor();
    await row(4).getByLabel("Serial").fill("HS-6");
    await page.getByRole("button", { name: "Enrol 4 kits" }).click();
    await page
      .getByRole("link", { name: /Pump 6/ })
      .first()
      .waitFor();
    await allSent(page);
  });

  test("every table is saved, and the kits' one has them all", async () => {
    const kits = await save("Kits");
    expect(kits.split("\r\n").filter((line) => /^Pump \d,HS-\d,/.test(line))).toHaveLength(6);
    expect(await save("Parts and stock")).toContain("100,Lid gasket,piece");
    expect(await save("Turnarounds")).toContain("2025-04-03");
    expect(await save("Lines of the log")).toContain("person-joined");
  });
});
