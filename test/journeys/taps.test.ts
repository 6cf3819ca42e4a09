import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { openKit, sealOn } from "./support/kits.ts";
import { signIn, slowClock, type AdjustableClock } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { countHands, handsOf } from "./support/tap-count.ts";
import { shippedPattern, TurnaroundHand } from "./support/turnaround-hand.ts";

/** What a whole clean turnaround of the petrol kit asks of wet hands: every tap and every typed field, counted. */

/** Today's figures. They may fall; two of the fields are the water in the case and the petrol that was not burnt. */
const MOST_TAPS = 110;
const MOST_FIELDS = 15;

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

/** Each page that answers at a glance, with a kit that has a history. */
const GLANCES = ["/", "/kit/br-01", "/kit/br-12", "/kit/br-07", "/kit/br-01/delivery", "/kit/br-06/delivery"];

describe("a phone whose clock is right", () => {
  let glancing: BrowserContext;

  beforeAll(async () => {
    glancing = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    await signIn(await glancing.newPage(), station, "Mara Tolliver");
  });

  afterAll(() => glancing.close());

  test.each(GLANCES)("shows %s on at most three screens before something more is asked for", async (path) => {
    const page = await glancing.newPage();
    await page.goto(`${station.url}${path}`);
    await page.locator("details.more").first().waitFor();
    await page.getByRole("heading", { level: 1 }).waitFor();
    const { height } = (await page.locator("body").boundingBox())!;
    expect(height / 844).toBeLessThanOrEqual(3);
  });
});

describe("a clean turnaround of the petrol kit", () => {
  test("is counted from the kit's page to the new seal", async () => {
    const page = await phone.newPage();
    await page.goto(`${station.url}/kit/br-07/turnaround`);
    const seal = await sealOn(page, "br-07");
    await page.evaluate(() => localStorage.removeItem("test.hands"));
    await open(page, seal);
    await page.evaluate(watchLists);
    const hand = new TurnaroundHand(page, pattern, clock, seal);
    hand.leavesOut = true;
    await hand.workTo();
    expect(await page.evaluate("globalThis.testShrunk")).toEqual([]);
    await close(page);
    const hands = await handsOf(page);
    process.stdout.write(`A clean turnaround: ${hands.taps} taps, ${hands.fields} typed fields.\n`);
    process.stdout.write(`${tapTable(hands.tapped)}\n`);
    expect(hands.taps).toBeLessThanOrEqual(MOST_TAPS);
    expect(hands.fields).toBeLessThanOrEqual(MOST_FIELDS);
  }, 600_000);

  test("leaves readings of the fuel burnt and of the water in the case on the kit's page", async () => {
    const page = await phone.newPage();
    await page.goto(`${station.url}/kit/br-07`);
    await page.getByText("More: year, dates, runs, contents, history").click();
    for (const title of ["Fuel burnt in a run", "Water found in the case"]) {
      const trend = page.locator(".kit-trend", { has: page.getByRole("heading", { name: title }) });
      await trend.getByText(/Last\s+[\d.]+\s(L|mL)\b/).waitFor();
    }
  }, 60_000);
});

describe("a faulty turnaround of the petrol kit", () => {
  /** Where the fuel coupling is parted, and where the run proves what is mended there. */
  const [coupling, run] = ["coupling-o-ring-look", "runs-through-range"].map(
    (check) => pattern.stages.flatMap(({ steps }) => steps).find(({ checks }) => checks.includes(check))!.line,
  ) as [number, number];

  test("is mended and proved at its lines, counted, and the kit is ready", async () => {
    const page = await phone.newPage();
    await page.goto(`${station.url}/kit/br-02/turnaround`);
    const seal = await sealOn(page, "br-02");
    await page.evaluate(() => localStorage.removeItem("test.hands"));
    await open(page, seal);
    const hand = new TurnaroundHand(page, pattern, clock, seal);
    hand.leavesOut = true;
    await hand.workTo(coupling);
    await mendCoupling(page, hand);
    await hand.workTo(run);
    await proveByRun(page, hand);
    await hand.workTo();
    await close(page, "BR 20002");
    const hands = await handsOf(page);
    process.stdout.write(`A turnaround with a coupling mended: ${hands.taps} taps, ${hands.fields} typed fields.\n`);
    expect(hands.taps).toBeLessThanOrEqual(MOST_TAPS + 10);
    expect(hands.fields).toBeLessThanOrEqual(MOST_FIELDS + 2);
  }, 600_000);
});

/** The o-ring found cut, replaced, looked at again; then on to the coupling's next check. */
async function mendCoupling(page: Page, hand: TurnaroundHand): Promise<void> {
  const button = (name: string | RegExp) => page.getByRole("button", { name });
  await hand.press(button("Found wrong"));
  await page.getByRole("dialog").getByRole("button", { name: "Raise the finding" }).click();
  await hand.press(button("Mend it now: say what was done"));
  await page
    .getByText("With a part: which, and how many. Once all of it is new, the item counts as renewed today.")
    .click();
  await page.getByLabel("With which part").fill("O-ring");
  await page.getByRole("textbox", { name: "How many" }).fill("1");
  await hand.press(button("Replaced today: now prove it"));
  await hand.press(button("Prove it now: look again"));
  await hand.press(button(/^Seen: round/));
  await page.getByText("Still to do, at line").first().waitFor();
  await hand.press(page.getByRole("button", { name: "Go on", exact: true }));
  await page.getByText("Couple and part it three times with gloves on.").waitFor();
}

/** The run that the coupling's proof needs; answered right it offers to close the finding. */
async function proveByRun(page: Page, hand: TurnaroundHand): Promise<void> {
  await hand.press(page.getByRole("button", { name: /^Start the 5\smin run/ }));
  await page.getByRole("timer").waitFor();
  await clock.pass(page, 6 * 60);
  await page.getByText(/^Long enough/).waitFor();
  await hand.press(page.getByRole("button", { name: /^Seen: it follows/ }));
  await hand.press(page.getByRole("button", { name: "Close the finding" }));
}

describe("every line on a phone", () => {
  const kits = [
    ["petrol", "br-07", pattern],
    ["electric", "br-06", shippedPattern("ossel-200")],
  ] as const;

  test.each(kits)(
    "of the %s kit has its drawing, its answers and its clock in sight without scrolling, whatever cautions begin there",
    async (_, kit, { stages }) => {
      const own = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
      const page = await own.newPage();
      await signIn(page, station, "Mara Tolliver");
      await openKit(page, station, kit);
      await page.goto(`${station.url}/kit/${kit}/turnaround?line=1`);
      const faults: string[] = [];
      for (const { line, after } of stages.flatMap(({ steps }) => steps)) {
        if (after) continue;
        await page.evaluate((to) => history.pushState(null, "", to), `/kit/${kit}/turnaround?line=${line}`);
        await page.getByRole("heading", { level: 1, name: new RegExp(`^Line ${line}\\b`) }).waitFor();
        faults.push(...(await page.evaluate(outOfSight)).map((what) => `line ${line}: ${what}`));
      }
      expect(faults).toEqual([]);
      await own.close();
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
  const drawn = document.querySelector(".line-picture .button")?.getBoundingClientRect();
  const edge = Math.min(end, document.querySelector(".clock-pulls")?.getBoundingClientRect().top ?? end);
  const drawing = drawn && (drawn.bottom > edge || drawn.height < 76) ? ["its drawing"] : [];
  return [...text, ...clock, ...drawing, ...(bar && bar.bottom > innerHeight + 1 ? ["its answers"] : [])];
}

/** In the page: keeps where a list that one tap answers lost a part of itself before the line went on. */
function watchLists(): void {
  const shrunk: string[] = [];
  Object.assign(globalThis, { testShrunk: shrunk });
  let last = { at: "", members: 0 };
  new MutationObserver(() => {
    const members = document.querySelectorAll(".look-member").length;
    const at = `${location.search} ${document.querySelector("h1")?.textContent}`;
    if (at === last.at && members < last.members) shrunk.push(`${at}: ${last.members} became ${members}`);
    last = { at, members };
  }).observe(document.body, { childList: true, subtree: true });
}

async function open(page: Page, seal: string): Promise<void> {
  await page.getByLabel(/^Seal number/).fill(seal);
  await page.getByRole("button", { name: /^Routine/ }).click();
  await page.getByRole("heading", { level: 1, name: /^Line 1\b/ }).waitFor();
}

async function close(page: Page, seal = "BR 20001"): Promise<void> {
  await page.getByLabel("New seal number").fill(seal);
  await page.getByLabel("Seal number again").fill(seal);
  await page.getByRole("button", { name: `Sealed with ${seal}` }).click();
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
