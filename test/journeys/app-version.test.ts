import { cpSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { brotliDecompressSync, gzipSync, gunzipSync } from "node:zlib";
import type { Browser, BrowserContext, Page, Response } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { PACK, unpackFiles } from "#web/app-pack.ts";
import { launchBrowser } from "./support/browser.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** The app as it lies on a device: how heavy its first screen is, and when a newer version takes over. */

const ROOT = join(import.meta.dirname, "..", "..");
const FIRST_SCREEN_BYTES = 250_000;

/** A copy of the program: a newer version is put on it while other journeys run. Beside its packages, in this checkout. */
let copy: string;
let browser: Browser;
let station: RunningStation;
let device: BrowserContext;
let page: Page;

beforeAll(async () => {
  copy = copyOfProgram();
  [browser, station] = await Promise.all([launchBrowser(), startStation([], {}, copy)]);
});

afterAll(async () => {
  await browser.close();
  await station.close();
  rmSync(copy, { recursive: true });
});

function copyOfProgram(): string {
  mkdirSync(join(ROOT, ".cache"), { recursive: true });
  const folder = mkdtempSync(join(ROOT, ".cache", "app-version-"));
  for (const part of ["dist", "patterns", "package.json"]) {
    cpSync(join(ROOT, part), join(folder, part), { recursive: true });
  }
  return folder;
}

beforeEach(async () => {
  device = await browser.newContext();
  page = await device.newPage();
});

afterEach(() => device.close());

async function signIn(): Promise<void> {
  await page.goto(`${station.url}/sign-in`);
  await page.getByRole("button", { name: /Mara Tolliver/ }).click();
  await page.getByRole("navigation", { name: "Station" }).waitFor();
  await page.getByRole("link", { name: "All sent" }).waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
}

/** Has the page note by its own clock when a text first stands in it: a busy machine would see it later. */
async function noteWhenShown(text: string): Promise<void> {
  await page.addInitScript((wanted) => {
    new MutationObserver((_, observer) => {
      if (document.body?.textContent?.includes(wanted) !== true) return;
      performance.mark("shown");
      observer.disconnect();
    }).observe(document, { subtree: true, childList: true, characterData: true });
  }, text);
}

/** Addresses of what the page had asked for by then. */
async function askedBeforeShown(): Promise<readonly string[]> {
  return page.evaluate(() => {
    const [shown] = performance.getEntriesByName("shown");
    const all = performance.getEntriesByType("resource");
    return all.filter(({ startTime }) => startTime < shown!.startTime).map(({ name }) => name);
  });
}

test("the first screen, before and after signing in, needs at most 250 kB of script; the witness's comes after it", async () => {
  const scripts: Response[] = [];
  page.on("response", (reply) => reply.url().endsWith(".js") && scripts.push(reply));
  await noteWhenShown("Boathouse");
  await page.goto(`${station.url}/sign-in`);
  await page.getByRole("button", { name: /Mara Tolliver/ }).waitFor();
  const before = new Set(scripts);
  await page.getByRole("button", { name: /Mara Tolliver/ }).click();
  await page.getByText("Boathouse", { exact: true }).first().waitFor();
  const asked = await askedBeforeShown();
  const needed = scripts.filter((reply) => before.has(reply) || asked.includes(reply.url()));
  const sizes = await Promise.all(needed.map(async (reply) => gzipSync(await reply.body(), { level: 6 }).length));
  const bytes = sizes.reduce((sum, size) => sum + size, 0);
  expect(bytes).toBeGreaterThan(50_000);
  expect(bytes).toBeLessThanOrEqual(FIRST_SCREEN_BYTES);
  expect(needed.map((reply) => reply.url()).filter((url) => url.includes("head-witness"))).toEqual([]);
});

const built = (name: string) => join(copy, "dist", "web", name);

/** Files whose names carry what is in them, as the service worker lists them. */
function lastingFiles(): readonly string[] {
  const worker = readFileSync(built("service-worker.js"), "utf8");
  return [...worker.matchAll(/"revision":null,"url":"([^"]+)"/g)].map(([, url]) => url!);
}

test("the pack holds every lasting file of the app as it was built, plain and compressed", () => {
  const pack = readFileSync(built(PACK));
  const files = unpackFiles(new Uint8Array(pack));
  expect(lastingFiles().length).toBeGreaterThan(100);
  expect(files.map(({ url }) => url)).toEqual(expect.arrayContaining([...lastingFiles()]));
  for (const { url, bytes } of files) expect(readFileSync(built(url)).equals(bytes), url).toBe(true);
  expect(brotliDecompressSync(readFileSync(built(`${PACK}.br`))).equals(pack)).toBe(true);
  expect(gunzipSync(readFileSync(built(`${PACK}.gz`))).equals(pack)).toBe(true);
});

/** What the device keeps of the app: each file's address, type and policy, and a sum of its bytes. */
function heldApp(): Promise<readonly string[]> {
  return page.evaluate(async () => {
    const name = (await caches.keys()).find((key) => key.startsWith("drykeel-app-"))!;
    const cache = await caches.open(name);
    const told = async (request: Request) => {
      const reply = (await cache.match(request))!;
      const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", await reply.clone().arrayBuffer())).join(".");
      const type = reply.headers.get("content-type")!.toLowerCase();
      const headers = ["content-security-policy", "x-content-type-options"].map((key) => reply.headers.get(key));
      return [new URL(request.url).pathname, type, ...headers, sum].join(" | ");
    };
    return (await Promise.all((await cache.keys()).map(told))).sort();
  });
}

test("a device holds the same app from the pack as file by file where the station has no pack", async () => {
  await signIn();
  const packed = await heldApp();
  const away = built("away.pack");
  renameSync(built(PACK), away);
  try {
    await device.close();
    device = await browser.newContext();
    page = await device.newPage();
    await signIn();
    expect(await heldApp()).toEqual(packed);
  } finally {
    renameSync(away, built(PACK));
  }
});

/** Puts a newer version on the server, as a deployment would, and takes it back afterwards. */
async function withNewerVersion(act: () => Promise<void>): Promise<void> {
  const files = ["index.html", "service-worker.js"].map((name) => join(copy, "dist", "web", name));
  const before = files.map((file) => readFileSync(file, "utf8"));
  const [shell, worker] = before as [string, string];
  const revision = /"revision":"([0-9a-f]+)","url":"index\.html"/.exec(worker)?.[1];
  expect(revision).toBeDefined();
  writeFileSync(files[0]!, shell.replace("<title>", '<meta name="version" content="newer"><title>'));
  writeFileSync(files[1]!, worker.replace(revision!, revision!.split("").reverse().join("")));
  try {
    await act();
  } finally {
    files.forEach((file, at) => writeFileSync(file, before[at]!));
  }
}

const isNewer = () => page.locator('meta[name="version"]').count();

test("a newer version waits for a tap on the board, even when every window was closed meanwhile", async () => {
  await signIn();
  await withNewerVersion(async () => {
    await page.goto(`${station.url}/`);
    await page.getByText("A newer version of the app is on this device").waitFor();
    expect(await isNewer()).toBe(0);

    await page.goto(`${station.url}/findings`);
    await page.getByRole("heading", { level: 1 }).waitFor();
    expect(await page.getByText("A newer version of the app is on this device").count()).toBe(0);

    await page.close();
    await new Promise((resolve) => setTimeout(resolve, 1500));
    page = await device.newPage();
    await page.goto(`${station.url}/`);
    await page.getByText("A newer version of the app is on this device").waitFor();
    expect(await isNewer()).toBe(0);

    await Promise.all([page.waitForEvent("load"), page.getByRole("button", { name: "Use the newer version" }).click()]);
    await page.getByRole("navigation", { name: "Station" }).waitFor();
    expect(await isNewer()).toBe(1);
    expect(await page.getByText("A newer version of the app is on this device").count()).toBe(0);
  });
});

test("a page whose file failed once on the way comes by itself; one that cannot be fetched says so", async () => {
  await device.close();
  device = await browser.newContext({ serviceWorkers: "block" });
  page = await device.newPage();
  let failing = 1;
  await page.route("**/assets/people-page-*.js", (route) => (failing-- > 0 ? route.abort() : route.continue()));
  await page.goto(`${station.url}/sign-in`);
  await page.getByRole("button", { name: /Mara Tolliver/ }).click();
  await page.getByRole("link", { name: "All sent" }).waitFor();
  await page.goto(`${station.url}/people`);
  await page.getByRole("heading", { level: 1, name: "People" }).waitFor();
  expect(failing).toBeLessThan(0);
  await page.route("**/assets/visits-page-*.js", (route) => route.abort());
  await page.goto(`${station.url}/visits?place=none`);
  await page.getByRole("heading", { name: "This page failed" }).waitFor();
  await page.unroute("**/assets/visits-page-*.js");
  await page.getByRole("link", { name: "Load again" }).click();
  await page.getByRole("heading", { level: 1, name: /visits/i }).waitFor();
  expect(new URL(page.url()).search).toBe("?place=none");
});
