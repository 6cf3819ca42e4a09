import { readFileSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { allSteps } from "#kit";
import { axeFindings } from "./support/axe.ts";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines } from "./support/kits.ts";
import { signIn } from "./support/people.ts";
import { startStation, TWO_YEARS, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** Every screen, at three sizes, by day and by night: readable by everybody, within its width, and without an error. */

const ROOT = join(import.meta.dirname, "..", "..");
const SIZES = [
  { name: "a phone", width: 390, height: 844 },
  { name: "a tablet", width: 820, height: 1180 },
  { name: "a desk", width: 1440, height: 900 },
] as const;
const PALETTES = ["day", "night"] as const;

/** Number of a line of the petrol kit. */
function lineOf(id: string): number | undefined {
  return allSteps(shippedPattern("brinnet-450")).find((step) => step.id === id)?.line;
}

/** Where each page of `src/web/routes.tsx` is looked at: kits of the demo that have something to show. */
const VISITS: Readonly<Record<string, readonly string[]>> = {
  "/": ["/"],
  "/kit/:id": ["/kit/br-01", "/kit/br-12"],
  "/kit/:id/turnaround": [
    "/kit/br-01/turnaround",
    "/kit/br-11/turnaround",
    "/kit/br-05/turnaround",
    "/kit/br-05/turnaround?line=46",
    `/kit/br-05/turnaround?line=${lineOf("stow-lid")}`,
    "/kit/br-05/turnaround?at=lines",
    "/kit/br-05/turnaround?at=seal",
  ],
  "/kit/:id/turnaround/:turnaround/record": ["/kit/br-05/turnaround/OPEN/record"],
  "/kit/:id/card-entry": ["/kit/br-05/card-entry"],
  "/kit/:id/delivery": ["/kit/br-01/delivery"],
  "/kit/:id/hand-over": ["/kit/br-01/hand-over"],
  "/kit/:id/return": ["/kit/br-11/return"],
  "/kit/:id/finding": ["/kit/br-01/finding"],
  "/kit/:id/fault": ["/kit/br-01/fault", "/kit/br-01/fault?sign=will-not-start"],
  "/kit/:id/drill": ["/kit/br-01/drill"],
  "/kit/:id/keep": ["/kit/br-01/keep"],
  "/place/:place/muster": ["/place/PLACE/muster"],
  "/enrol": ["/enrol"],
  "/enrol/many": ["/enrol/many"],
  "/tables": ["/tables"],
  "/tables/import": ["/tables/import", "/tables/import?of=kits"],
  "/work": ["/work"],
  "/year": ["/year"],
  "/pattern/:pattern": ["/pattern/brinnet-450"],
  "/pattern/:pattern/interval": ["/pattern/brinnet-450/interval"],
  "/pattern/:pattern/lives": ["/pattern/brinnet-450/lives?kit=br-01", "/pattern/none/lives"],
  "/pattern/:pattern/lives/:item": ["/pattern/brinnet-450/lives/fuel", "/pattern/brinnet-450/lives/none"],
  "/patterns": ["/patterns"],
  "/patterns/draft": ["/patterns/draft"],
  "/patterns/walk": ["/patterns/walk"],
  "/findings": ["/findings", "/findings?kit=br-12&finding=FINDING"],
  "/casualty": ["/casualty"],
  "/casualty/new": ["/casualty/new"],
  "/casualty/:id": ["/casualty/CASUALTY"],
  "/casualty/:id/review": ["/casualty/CASUALTY/review"],
  "/forecasts": ["/forecasts"],
  "/casualty/read": ["/casualty/read"],
  "/casualty/:id/hand": ["/casualty/CASUALTY/hand"],
  "/casualty/:id/timeline": ["/casualty/CASUALTY/timeline"],
  "/card/read-do": ["/card/read-do"],
  "/kit/:id/take-out": ["/kit/br-01/take-out"],
  "/stock": ["/stock?place=boathouse"],
  "/stock/new": ["/stock/new"],
  "/stock/:part": ["/stock/recoil-starter?place=boathouse"],
  "/stock/:part/setting": ["/stock/desiccant/setting"],
  "/stock/:part/recall": ["/stock/recoil-starter/recall?lot=RS-2211"],
  "/label": ["/label"],
  "/place/:place/labels": ["/place/boathouse/labels"],
  "/visits": ["/visits"],
  "/visits/new": ["/visits/new"],
  "/visits/findings": ["/visits/findings"],
  "/visits/:id": ["/visits/VISIT", "/visits/none"],
  "/people": ["/people"],
  "/people/:person": ["/people/ede-sorrell"],
  "/qualifications": ["/qualifications"],
  "/qualifications/new": ["/qualifications/new"],
  "/qualifications/:qualification/setting": ["/qualifications/fuel-handling/setting"],
  "/drills": ["/drills"],
  "/devices": ["/devices"],
  "/outbox": ["/outbox"],
  "/settings": ["/settings"],
};
/** Pages for somebody not signed in. */
const DOOR = ["/sign-in", "/invite", "/set-up", "/wall"];

let browser: Browser;
let station: RunningStation;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation([], TWO_YEARS)]);
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

test("every page of the app is looked at here", () => {
  const source = readFileSync(join(ROOT, "src", "web", "routes.tsx"), "utf8");
  const paths = [...source.matchAll(/\{ path: "([^"]+)"/g)].map(([, path]) => path);
  expect(paths.toSorted()).toEqual([...Object.keys(VISITS), ...DOOR].toSorted());
});

describe.each(SIZES)("on $name", ({ width, height }) => {
  let device: BrowserContext;
  let page: Page;
  const complaints: string[] = [];

  beforeAll(async () => {
    device = await browser.newContext({ viewport: { width, height }, reducedMotion: "reduce" });
    page = await device.newPage();
    page.on("console", (said) => said.type() === "error" && complaints.push(`${page.url()}: ${said.text()}`));
    page.on("pageerror", (error) => complaints.push(`${page.url()}: ${error.message}`));
  });

  afterAll(() => device.close());

  test("nothing is wrong at the door", async () => {
    const faults: string[] = [];
    for (const path of DOOR) {
      await page.goto(station.url + path);
      faults.push(...(await lookAt(page, path)));
    }
    expect(faults).toEqual([]);
  });

  test("nothing is wrong inside", async () => {
    await signIn(page, station, "Ines Dunmore");
    const names = await namesOf(page);
    await beginDraft(page);
    const faults: string[] = [];
    for (const path of Object.values(VISITS).flat()) {
      await goInside(page, fill(path, names));
      faults.push(...(await lookAt(page, path)));
      if (path === "/") await takePicture(page, width);
    }
    expect(faults).toEqual([]);
  });

  test("no page has complained", () => {
    expect(complaints).toEqual([]);
  });
});

/** A pattern being written on this device, with something for the lint to find. */
async function beginDraft(page: Page): Promise<void> {
  const shipped = readFileSync(join(ROOT, "patterns", "ossel-200@2.yaml"), "utf8");
  const draft = JSON.stringify({ text: shipped.replace(/mass: .*/, "mass: 900 kg"), base: "", pending: [] });
  await page.evaluate((kept) => localStorage.setItem("drykeel.draft.pattern", kept), draft);
}

type Names = Readonly<Record<"OPEN" | "VISIT" | "FINDING" | "PLACE" | "CASUALTY", string>>;
/** What the demo calls its open turnaround, a finding of a grounded kit, and a place: new with every start. */
async function namesOf(page: Page): Promise<Names> {
  const lines = await exportedLines(page);
  const last = (subject: string, kind: string) =>
    lines.filter((one) => one.subject === subject && one.kind === kind).at(-1)!;
  return {
    OPEN: String(last("kit:br-05", "turnaround-opened").body["turnaround"]),
    VISIT: lines.find(({ kind }) => kind === "visit-begun")!.subject.slice("visit:".length),
    FINDING: String(last("kit:br-12", "finding-raised").body["finding"]),
    CASUALTY: lines.find(({ kind }) => kind === "casualty-opened")?.subject.slice("casualty:".length) ?? "none",
    PLACE: lines.find(({ kind }) => kind === "place-set")!.subject.slice("place:".length),
  };
}

function fill(path: string, names: Names): string {
  return path.replace(/OPEN|FINDING|PLACE|CASUALTY|VISIT/g, (name) => names[name as keyof Names]);
}

/** Goes to a page of the app that is open already, as a link does: no new load for each of many pages. */
async function goInside(page: Page, path: string): Promise<void> {
  await page.evaluate((to) => history.pushState(null, "", to), path);
}

/** What axe finds and what sticks out sideways, by day and by night. */
async function lookAt(page: Page, path: string): Promise<readonly string[]> {
  await page.getByRole("heading", { level: 1 }).first().waitFor();
  const faults: string[] = [];
  for (const palette of PALETTES) {
    await setPalette(page, palette);
    // What night changes is colour; the rest is the same page.
    const found = await axeFindings(page, palette === "day" ? {} : { rules: ["color-contrast"] });
    faults.push(...found.map((what) => `${path} by ${palette}: ${what}`));
    faults.push(...(await sideways(page)).map((what) => `${path} by ${palette}: wider than the screen: ${what}`));
  }
  return faults;
}

async function setPalette(page: Page, palette: (typeof PALETTES)[number]): Promise<void> {
  const toggle = page.getByRole("button", { name: palette === "day" ? "Day colours" : "Night colours" });
  if (await toggle.isVisible()) await toggle.click();
  await page.locator(`html[data-palette="${palette}"]`).waitFor({ state: "attached" });
}

/** What makes the page scroll sideways. */
function sideways(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const out = [...document.body.querySelectorAll("*")].filter(
      (one) => one.getBoundingClientRect().right > clientWidth + 1,
    );
    return out.slice(-1).map((one) => one.outerHTML.slice(0, 200));
  });
}

/** The board as the README shows it; beside the repository's own only where it is to be renewed. */
async function takePicture(page: Page, width: number): Promise<void> {
  if (width !== 1440) return;
  const folder = join(ROOT, process.env["UPDATE_PICTURES"] === "1" ? "docs" : ".cache");
  mkdirSync(folder, { recursive: true });
  await setPalette(page, "day");
  await page.screenshot({ path: join(folder, "board.png") });
}
