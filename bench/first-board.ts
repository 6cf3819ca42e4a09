/**
 * How soon a new phone shows its board at a station of 200,000 lines, over a line of 10 Mbit/s, and how much came over
 * it until then; with the log long since on its way in the background. In a real browser, against the built server.
 * Run with `npm run bench -- first-board`; FOLDER=path keeps the made-up station for the next time.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CDPSession, Page } from "playwright-core";
import { launchBrowser } from "../test/journeys/support/browser.ts";
import { fillFolder } from "./growth/filled-folder.ts";
import { startServer } from "./growth/measured-process.ts";

const LINES = Number(process.env["LINES"] ?? 200_000);
const LIMIT_MS = 5000;
const LIMIT_BYTES = 3_000_000;
/** 10 Mbit/s, and the delay of a mobile network. */
const NETWORK = { offline: false, downloadThroughput: 1_250_000, uploadThroughput: 1_250_000, latency: 40 };
const PORT = 4879;
const ADDRESS = `http://localhost:${PORT}`;

/** Signs in as one of the demo's people and waits for the first kit on the board. */
async function firstBoard(page: Page): Promise<{ readonly ms: number; readonly cpu: number; readonly bytes: number }> {
  const wire = await page.context().newCDPSession(page);
  await wire.send("Network.enable");
  await wire.send("Network.emulateNetworkConditions", NETWORK);
  await page.goto(ADDRESS);
  const person = page.getByRole("button", { name: /Mara Tolliver/ });
  await person.waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  let bytes = 0;
  wire.on("Network.dataReceived", ({ encodedDataLength }) => (bytes += encodedDataLength));
  await wire.send("Performance.enable", { timeDomain: "threadTicks" });
  const busy = await busyOf(wire);
  const from = performance.now();
  await person.click();
  await page
    .getByRole("link", { name: /^Kit|Boathouse|Drum/i })
    .first()
    .waitFor({ timeout: 120_000 })
    .catch(() => undefined);
  await page.getByText("This is the station's summary").first().waitFor({ timeout: 120_000 });
  const ms = performance.now() - from;
  return { ms, cpu: (await busyOf(wire)) - busy, bytes };
}

/** Processor time of the page's own thread so far [s]: what other work on the machine takes is not in it. */
async function busyOf(wire: CDPSession): Promise<number> {
  const { metrics } = await wire.send("Performance.getMetrics");
  return metrics.find(({ name }) => name === "TaskDuration")?.value ?? 0;
}

const folder = process.env["FOLDER"] ?? mkdtempSync(join(tmpdir(), "drykeel-first-board-"));
await fillFolder(folder, LINES);
const { child: server, seconds } = await startServer(folder, PORT);
console.log(`start of the server at ${LINES} lines: ${seconds.toFixed(1)} s`);
await new Promise((resolve) => setTimeout(resolve, Number(process.env["SETTLE"] ?? 20_000)));
const browser = await launchBrowser();
try {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  const { ms, cpu, bytes } = await firstBoard(page);
  console.log(
    `first board after signing in: ${(ms / 1000).toFixed(1)} s (limit ${LIMIT_MS / 1000} s), ` +
      `${(bytes / 1e6).toFixed(2)} MB (limit ${LIMIT_BYTES / 1e6} MB); the page's thread was busy for ${cpu.toFixed(1)} s`,
  );
  const picture = process.env["PICTURE"];
  if (picture !== undefined) await page.screenshot({ path: picture });
  if (ms > LIMIT_MS || bytes > LIMIT_BYTES) process.exitCode = 1;
} finally {
  await browser.close();
  server.kill("SIGTERM");
  if (process.env["FOLDER"] === undefined) rmSync(folder, { recursive: true, force: true });
}
