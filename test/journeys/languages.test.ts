import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { demoAccounts } from "#demo";
import { launchBrowser } from "./support/browser.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** The screens whose words are in catalogues, in a made-up language that is longer, accented and in brackets. */

/** What has the same name in every language: people, places, boats, casualties and kits have the names people gave them. */
const GIVEN = [
  "Drykeel",
  ...demoAccounts().map(({ name }) => name),
  "Boathouse",
  "All-weather boat",
  "Inshore boat",
  "Outer pier store",
  "Corrie Lass",
  "Pump 2",
  ...["brinnet-450", "ossel-200", "tarvock-900"].map((id) => shippedPattern(id).name),
];
/** Sentences of patterns and names of places and kits stand in what is chosen from; they come from elsewhere. */
const OFFERED = ".choice-option, option";

let browser: Browser;
let demo: RunningStation;
let empty: RunningStation;

beforeAll(async () => {
  [browser, demo, empty] = await Promise.all([launchBrowser(), startStation(), startStation(["--empty"])]);
});

afterAll(async () => {
  await browser.close();
  await Promise.all([demo.close(), empty.close()]);
});

async function pageIn(language: string, width: number): Promise<Page> {
  const device = await browser.newContext({ viewport: { width, height: 844 } });
  await device.addInitScript((kept) => localStorage.setItem("drykeel.language", kept), language);
  return device.newPage();
}

/**
 * In the page: texts outside brackets, of those with a word in them, but for names that people gave, moments, and figures
 * with their units.
 */
function plainTexts(given: readonly string[]): readonly string[] {
  const found: string[] = [];
  const walker = document.createTreeWalker(document.querySelector(".page")!, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    if (node.parentElement?.closest("time")) continue;
    const text = given.reduce((left, name) => left.replaceAll(name, ""), node.textContent ?? "");
    const left = text.replaceAll(/⟦.*⟧|\d[\u00A0 ](nmi|min|h)|\d\u00A0\p{L}+|\d [A-Z][a-z]{2} \d{4}/gsu, "");
    if (/\p{L}{2}/u.test(left)) found.push(text.trim());
  }
  return found;
}

/** In the page: by how much it is wider than the screen [px], and the words of buttons that do not fit in them. */
function whatOverflows(): { readonly beyond: number; readonly cut: readonly string[] } {
  const { scrollWidth, clientWidth } = document.documentElement;
  const cut = [...document.querySelectorAll<HTMLElement>("button, a")].filter(
    (control) => control.scrollWidth > control.clientWidth + 1 && getComputedStyle(control).display !== "inline",
  );
  return { beyond: scrollWidth - clientWidth, cut: cut.map(({ innerText }) => innerText) };
}

describe.each([390, 820, 1440])("in the made-up language at %i px", (width) => {
  test.each([
    ["the sign-in", () => `${demo.url}/sign-in`, /^⟦Sígn ín át/],
    ["an invite", () => `${demo.url}/invite`, /^⟦Jöín/],
    ["the first set-up", () => `${empty.url}/set-up`, /^⟦Sét üp/],
  ] as const)("%s shows no word from outside the catalogues, and nothing overflows", async (_, address, title) => {
    const page = await pageIn("longer", width);
    await page.goto(address());
    await page.getByRole("heading", { level: 1, name: title }).waitFor();
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    expect(await page.evaluate(plainTexts, GIVEN)).toEqual([]);
    expect(await page.evaluate(whatOverflows)).toEqual({ beyond: 0, cut: [] });
    await page.context().close();
  });
});

/** A person who is signed in on a phone and reads the made-up language. */
async function signedIn(name: RegExp): Promise<Page> {
  const page = await pageIn("longer", 390);
  await page.goto(`${demo.url}/sign-in`);
  await page.getByRole("button", { name }).click();
  await page.getByRole("navigation").first().waitFor();
  return page;
}

describe("signed in, on a phone in the made-up language", () => {
  let keeper: Page;
  beforeAll(async () => {
    keeper = await signedIn(/Mara Tolliver/);
  });

  test.each([
    ["visits", "/visits", /^⟦Vísíts/],
    ["a visit to begin", "/visits/new", /^⟦Bégín á vísít/],
    ["patterns", "/patterns", /^⟦Páttérns/],
    ["sheets to take in", "/tables/import", /^⟦Táké ín/],
    ["enrolling a kit", "/enrol", /^⟦Énröl á kít/],
    ["enrolling several", "/enrol/many", /^⟦Énröl sévérál/],
    ["the settings", "/settings", /^⟦Séttíngs/],
    ["what is not yet sent", "/outbox", /^⟦Nöt yét sént/],
    ["a turnaround to be opened", "/kit/br-02/turnaround", /^⟦Öpén/],
    ["the casualties", "/casualty", /^⟦Çásüálty/],
    ["before a launch", "/casualty/new", /^⟦Béföré láünçh/],
  ] as const)("%s shows no word from outside the catalogues, and nothing overflows", async (_, path, title) => {
    await keeper.goto(`${demo.url}${path}`);
    await keeper.getByRole("heading", { level: 1, name: title }).waitFor();
    await keeper.evaluate(() => document.fonts.ready.then(() => undefined));
    await keeper.evaluate((offered) => document.querySelectorAll(offered).forEach((one) => one.remove()), OFFERED);
    expect(await keeper.evaluate(plainTexts, GIVEN)).toEqual([]);
    expect(await keeper.evaluate(whatOverflows)).toEqual({ beyond: 0, cut: [] });
  });
});

test("a device in French signs in and frames its pages in French, and its marks too", async () => {
  const page = await pageIn("fr", 390);
  await page.goto(`${demo.url}/sign-in`);
  await page.getByRole("button", { name: /Mara Tolliver, responsable des kits/ }).click();
  const links = page.getByRole("navigation", { name: "Station" });
  await links.getByRole("link", { name: "À faire" }).waitFor();
  await page.getByRole("link", { name: "Tout est envoyé" }).waitFor();
  await page.getByRole("button", { name: "Nuit couleurs" }).click();
  await page.getByRole("button", { name: "Jour couleurs" }).waitFor();
  await page.context().close();
});
