import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { chromium, type Browser, type Page } from "playwright-core";
import { PATIENCE_MS } from "./patience.ts";

const ROOT = join(import.meta.dirname, "..", "..", "..");
const CACHE = join(ROOT, ".cache");

/**
 * Starts the browser that comes from the registry; nothing has to be installed on the machine. Every device of it waits
 * as long as a machine with much other work may take.
 *
 * @param more - flags beside the usual ones, such as a film for a camera
 */
export async function launchBrowser(more: readonly string[] = []): Promise<Browser> {
  const folder = unpackedBrowser();
  const executablePath = join(folder, "chromium");
  const browser = await chromium.launch({
    executablePath,
    env: browserEnvironment(folder, executablePath),
    args: [...FLAGS, ...more],
    timeout: PATIENCE_MS,
  });
  browser.on("context", (context) => {
    context.setDefaultTimeout(PATIENCE_MS);
    context.on("page", goAgainWhereGivenUp);
    context.on("weberror", (found) => {
      const isOurs = found.page()?.url().startsWith("http") === true;
      if (isOurs) process.stdout.write(`Nothing caught in a page: ${found.error().stack}\n`);
    });
  });
  running.add(browser);
  browser.on("disconnected", () => running.delete(browser));
  return browser;
}

/** With much other work beside it the browser at times gives a way up that nothing in the page stopped: one more try. */
function goAgainWhereGivenUp(page: Page): void {
  const go = page.goto.bind(page);
  page.goto = async (url, options) => {
    try {
      return await go(url, options);
    } catch (cause) {
      if (!String(cause).includes("net::ERR_ABORTED")) throw cause;
      process.stdout.write(`Given up by the browser, tried again: ${url}\n`);
      return go(url, options);
    }
  };
}

const running = new Set<Browser>();

/** What every page of every browser shows now, in words: for a scene that failed. */
export async function whatIsShown(): Promise<readonly string[]> {
  const pages = [...running].flatMap((browser) => browser.contexts().flatMap((context) => context.pages()));
  return Promise.all(
    pages.map(async (page) => {
      const text = await page.evaluate(() => document.body.innerText).catch(String);
      return `${page.url()}\n${text.replaceAll(/\n+/g, " | ").slice(0, 1500)}`;
    }),
  );
}

/** Root needs no-sandbox; the rest keeps the browser from reaching for anything outside this machine. */
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--font-render-hinting=none",
];

/**
 * Unpacks once into a folder named for the version. Unpacking happens beside it and is renamed when whole, so that
 * two test runs, or one that was stopped half-way, never start half a browser.
 */
function unpackedBrowser(): string {
  const folder = join(CACHE, `browser-${packageVersion()}`);
  if (existsSync(folder)) return folder;
  mkdirSync(CACHE, { recursive: true });
  const fresh = mkdtempSync(join(CACHE, "unpacking-"));
  unpackInto(fresh);
  if (!existsSync(folder)) renameSync(fresh, folder);
  else rmSync(fresh, { recursive: true });
  return folder;
}

/**
 * The package unpacks to the temporary folder, and its shared libraries only when told it runs on a bare host. Both are
 * said in the environment, so a process of its own does it: here the temporary folder stays what it is for everybody.
 */
function unpackInto(folder: string): void {
  const unpack = `import("@sparticuz/chromium").then(({ default: packaged }) => packaged.executablePath());`;
  execFileSync(process.execPath, ["--eval", unpack], {
    cwd: ROOT,
    env: { ...process.env, TMPDIR: folder, AWS_EXECUTION_ENV: "AWS_Lambda_nodejs20.x" },
  });
}

function browserEnvironment(folder: string, executable: string): Record<string, string> {
  const own = Object.fromEntries(
    Object.entries(process.env).filter(
      (pair): pair is [string, string] => pair[1] !== undefined && pair[0] !== "LD_LIBRARY_PATH",
    ),
  );
  return lacksLibraries(executable) ? { ...own, LD_LIBRARY_PATH: join(folder, "al2023", "lib") } : own;
}

function lacksLibraries(executable: string): boolean {
  return execFileSync("ldd", [executable], { encoding: "utf8" }).includes("not found");
}

function packageVersion(): string {
  const manifest = createRequire(import.meta.url)
    .resolve("@sparticuz/chromium")
    .replace(/build.*$/, "package.json");
  return (createRequire(import.meta.url)(manifest) as { version: string }).version;
}
