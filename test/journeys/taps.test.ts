import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { openKit, sealOn } from "./support/kits.ts";
import { signIn, slowClock, type AdjustableClock } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { countHands, handsOf } from "./support/tap-count.ts";
import { shippedPattern, TurnaroundHand } from "./support/turnaround-hand.ts";

/** What a whole clean turnaround of the petrol kit asks of wet hands: every tap and every typed field, counted. */

/** Today's figures. They may fall, and never rise. */
const MOST_TAPS = 110;
const MOST_FIELDS = 13;

const pattern = shippedPattern("brinnet-450");

let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let clock: AdjustableClock;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  clock = await slowClock(phone, 3 * 3600);
  await countHands(phone);
  await signIn(await phone.newPage(), station, "Mara Tolliver");
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

describe("a clean turnaround of the petrol kit", () => {
  test("is counted from the kit's page to the new seal", async () => {
    const page = await phone.newPage();
    await page.goto(`${station.url}/kit/br-07/turnaround`);
    const seal = await sealOn(page, "br-07");
    await page.evaluate(() => localStorage.removeItem("test.hands"));
    await open(page, seal);
    const hand = new TurnaroundHand(page, pattern, clock, seal);
    hand.leavesOut = true;
    await hand.workTo();
    await close(page);
    const hands = await handsOf(page);
    process.stdout.write(`A clean turnaround: ${hands.taps} taps, ${hands.fields} typed fields.\n`);
    process.stdout.write(`${tapTable(hands.tapped)}\n`);
    expect(hands.taps).toBeLessThanOrEqual(MOST_TAPS);
    expect(hands.fields).toBeLessThanOrEqual(MOST_FIELDS);
  }, 600_000);
});

describe("every line on a phone", () => {
  const kits = [
    ["petrol", "br-05", pattern],
    ["electric", "br-06", shippedPattern("ossel-200")],
  ] as const;

  test.each(kits)(
    "of the %s kit has its answers and its clock in sight without scrolling, whatever cautions begin there",
    async (_, kit, { stages }) => {
      const page = await phone.newPage();
      await page.goto(station.url);
      if (kit === "br-06") await openKit(page, station, kit);
      await page.goto(`${station.url}/kit/${kit}/turnaround?line=1`);
      const faults: string[] = [];
      for (const { line, after } of stages.flatMap(({ steps }) => steps)) {
        if (after) continue;
        await page.evaluate((to) => history.pushState(null, "", to), `/kit/${kit}/turnaround?line=${line}`);
        await page.getByRole("heading", { level: 1, name: new RegExp(`^Line ${line} of`) }).waitFor();
        faults.push(...(await page.evaluate(outOfSight)).map((what) => `line ${line}: ${what}`));
      }
      expect(faults).toEqual([]);
    },
    600_000,
  );
});

/** In the page: what of a line is not in sight at the top of the page, the answers' own bar not over it. */
function outOfSight(): readonly string[] {
  const bar = document.querySelector(".answer-bar")?.getBoundingClientRect();
  const end = bar?.top ?? innerHeight;
  const isBelow = (name: string) =>
    [...document.querySelectorAll(name)].some((one) => one.getBoundingClientRect().bottom > end);
  const [words, counter] = [".step-text", ".clock-pulls"].map((name) =>
    document.querySelector(name)?.getBoundingClientRect(),
  );
  const isCovered = words !== undefined && counter !== undefined && words.bottom > counter.top + 1;
  const text = isBelow(".step-text, .look-group > :first-child") || isCovered ? ["its text"] : [];
  const clock = isBelow("section.clock button") ? ["its clock"] : [];
  return [...text, ...clock, ...(bar && bar.bottom > innerHeight + 1 ? ["its answers"] : [])];
}

async function open(page: Page, seal: string): Promise<void> {
  await page.getByLabel(/^Seal number/).fill(seal);
  await page.getByRole("button", { name: /^Routine/ }).click();
  await page.getByRole("heading", { level: 1, name: /^Line 1 of/ }).waitFor();
}

async function close(page: Page): Promise<void> {
  await page.getByLabel("New seal number").fill("BR 20001");
  await page.getByLabel("Seal number again").fill("BR 20001");
  await page.getByRole("button", { name: "Sealed with BR 20001" }).click();
  await page.getByText(/Ready/).first().waitFor();
}

/** Where the taps went: one row a line of the pattern, in order. */
function tapTable(tapped: readonly string[]): string {
  const rows = new Map<string, string[]>();
  for (const tap of tapped) {
    const [where = "", what = ""] = tap.split(/: (.*)/s);
    rows.set(where, [...(rows.get(where) ?? []), what.replaceAll(/\s+/g, " ").slice(0, 40)]);
  }
  return [...rows]
    .map(([where, taps]) => `${String(taps.length).padStart(4)}  ${where}  ${taps.join(" | ")}`)
    .join("\n");
}
