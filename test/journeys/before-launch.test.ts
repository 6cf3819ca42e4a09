import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFindings } from "./support/axe.ts";
import { launchBrowser } from "./support/browser.ts";
import { CasualtyHand } from "./support/casualty-hand.ts";
import { allSent, signIn, slowClock } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** A call for help, taken by a commander on a phone: who goes, which kits, what is said to the skipper, and the sheet. */

let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let page: Page;
let hand: CasualtyHand;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const clock = await slowClock(phone, 3600);
  page = await phone.newPage();
  hand = new CasualtyHand(page, clock);
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const answer = () => page.getByRole("region", { name: "Answer" });
const take = () => page.locator(".launch-take-word");

test("a boat of the station is amended by the keeper, once for everybody", async () => {
  const desk = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
  await signIn(desk, station, "Mara Tolliver");
  await desk.goto(`${station.url}/settings`);
  await desk.getByRole("button", { name: "Change Inshore boat" }).click();
  await desk.getByLabel("From the call until under way").fill("9 min");
  await desk.getByRole("button", { name: "Save the boat" }).click();
  await desk
    .getByRole("row", { name: /Inshore boat/ })
    .getByText(/^9.min$/)
    .waitFor();
  await allSent(desk);
});

describe("a commander, without a network", () => {
  beforeAll(async () => {
    await signIn(page, station, "Hal Brandreth");
    await station.kill();
  });

  test("has an answer from the distance alone, and it says what nobody told", async () => {
    await page.goto(`${station.url}/casualty/new`);
    await hand.tap("5 nmi");
    await take().waitFor();
    await page.getByText("What it takes for granted").click();
    for (const words of [/Kind of boat not known/, /Length not known/, /not taken for dry/]) {
      await page.getByText(words).waitFor();
    }
    expect(await answer().innerText()).not.toMatch(/20.kn/);
  });

  test("sees who goes with every figure, and a change for this call changes when the first pump runs", async () => {
    await hand.tap("Inshore boat");
    await answer()
      .getByText(/Inshore boat: 24.kn, 9.min to launch, 12.min from alongside to water, takes 2 kits/)
      .waitFor();
    const before = await answer().getByText("Your first pump").innerText();
    await hand.tap("Other figures for this call");
    await page.getByLabel("From now until under way").fill("25 min");
    await answer()
      .getByText(/25.min to launch/)
      .waitFor();
    await page.waitForFunction(
      (words) => !document.querySelector(".launch-answer")!.textContent!.includes(words),
      before,
    );
  });

  test("is told which kits to take, in order; the light and the mains decide over some", async () => {
    await hand.tap("Motor boat");
    await hand.tap("9 m");
    await hand.tap(/^Finger/);
    await page.locator(".launch-take", { hasText: "Take 2 kits" }).waitFor();
    const kits = page.locator("ol.launch-kits li");
    expect(await kits.count()).toBe(2);
    expect(await kits.first().innerText()).toMatch(
      /^Pump \d+, Boathouse: about \d+.L\/min \(.*starts and gives water \d+ in 100 \(\d+ to \d+\), by /,
    );
    const back = page.locator("summary", { hasText: /kits? stays?, and why/ });
    const stays = Number.parseInt(await back.innerText(), 10);
    await hand.tap("By day");
    await hand.tap("Yes, above the water");
    await page.waitForFunction(
      (count) =>
        Number.parseInt(
          [...document.querySelectorAll("summary")].find((one) => one.textContent!.includes("and why"))!.textContent!,
          10,
        ) < count,
      stays,
    );
  });

  test("two kits, a patch and the rest to follow where the hole wants more than the boat takes", async () => {
    await hand.tap(/^Fist/);
    await page.locator(".launch-take-word", { hasText: /^Take 2 now, a patch, (\d|more) to follow$/ }).waitFor();
  });

  test("a hole typed larger than any taken is refused at its field, and not taken for not known", async () => {
    const hole = page.getByRole("group", { name: "Hole, across" });
    await hole.getByRole("button", { name: /^Other/ }).click();
    await page.getByLabel("Hole across").fill("2 m");
    await page.getByText(/From 5 mm to 1 m .* of a larger one tell 1 m\. It is not counted with/).waitFor();
    await hole.getByRole("button", { name: /^Other/, pressed: true }).waitFor();
    await page.getByText(/not counted with, as it cannot be so: Hole, across/).waitFor();
    await page.getByLabel("Hole across").fill("1 m");
    await page.getByText(/not counted with, as it cannot be so/).waitFor({ state: "detached" });
    await hand.tap(/^Fist/);
  });

  test("two levels told minutes apart stand for the rise", async () => {
    const water = page.getByRole("group", { name: "Water inside" });
    await water.getByRole("button", { name: /^Shin/ }).click();
    await page.getByText("tap it again").waitFor();
    await hand.clock.pass(page, 300);
    await water.getByRole("button", { name: /^Knee/ }).click();
    await page.getByText("The rise is taken from these.").waitFor();
    await page.waitForFunction(
      () => !document.querySelectorAll(".launch-ask")[1]!.textContent!.includes("two minutes"),
    );
    expect(await page.locator(".launch-ask").nth(1).innerText()).toContain("seacock");
  });

  test("what does not go together is said where it is told, and stays as it was told", async () => {
    const rising = page.getByRole("group", { name: "Rising or falling, at one mark" });
    await rising.getByRole("button", { name: /^Falling/ }).click();
    await page.getByText(/^The levels told rise, 30.cm to 50.cm; a fall is told too/).waitFor();
    await rising.getByRole("button", { name: /^Falling/, pressed: true }).waitFor();
    await page.getByText("The rise is taken from these.").waitFor();
    await rising.getByRole("button", { name: "Not known" }).click();
    await page.getByText(/^The levels told rise/).waitFor({ state: "detached" });
  });

  test("has orders to read out, lives first", async () => {
    const all = await page.locator(".launch-ask").first().getByRole("listitem").allInnerTexts();
    expect(all.length).toBeGreaterThan(8);
    expect(all[0]).toContain("lifejackets");
    expect(all.join(" ")).toContain("leave her at once: do not wait for us");
    expect(all.join(" ")).not.toMatch(/\bsafe\b/);
  });

  test("the page is clean by day and by night, and no wider than the phone", async () => {
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole("button", { name: /Night/ }).click();
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole("button", { name: "Day colours" }).click();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  }, 240_000);

  test("opens the sheet, with position and other stations' kits on it", async () => {
    await page.getByLabel("Position").fill("57 12 N 1 40 W");
    await page.getByLabel("Kits of other stations").fill("Two from the north station, 40 min");
    await hand.openSheet("Grey boat");
    await page.getByText("Position 57 12 N 1 40 W; Kits of other stations Two from the north station").waitFor();
    await page.getByText(/^Told by radio: 50.cm/).waitFor();
  });
});

describe("once there is a network", () => {
  test("the station has what was told, and its timeline tells it", async () => {
    await station.restart();
    await page.goto(`${station.url}/casualty`);
    await allSent(page);
    const log = await page.evaluate(() => fetch("/api/export.ndjson").then((reply) => reply.text()));
    const opened = log.split("\n").find((line) => line.includes('"casualty-opened"') && line.includes("Grey boat"));
    expect(opened).toContain('"position":"57 12 N 1 40 W"');
    expect(opened).toMatch(/Told before: 30\scm \(11\.8\sin\)/);
  });
});
