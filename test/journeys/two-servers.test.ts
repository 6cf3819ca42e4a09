import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { stepNamed } from "#kit";
import { startPostgres, type PostgresServer } from "../contracts/postgres-server.ts";
import { launchBrowser } from "./support/browser.ts";
import { answerRight, answeredLines, goToLine, openKit } from "./support/kits.ts";
import { allSent, signIn } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** Two server processes beside one PostgreSQL: it does not matter which of them a device speaks with. */

const KIT = "br-06";
const pattern = shippedPattern("ossel-200");
/** Lines that are answered with one tap. */
const [HOSE_LINE, WATER_LINE, FLUSH_LINE] = ["rig-hose", "rig-water", "run-flush"].map(
  (id) => stepNamed(pattern, id)!.line,
) as [number, number, number];
const start = await startPostgres();
if (start.kind === "running") describeTwoServers(start.server);
else describeNone(start.because);

function describeNone(because: string): void {
  process.stderr.write(`Two servers on PostgreSQL were not tested: ${because}\n`);
  test(`two servers on PostgreSQL were not tested, since none could be started: ${because}`, () => {
    expect(process.env["REQUIRE_POSTGRES"], "PostgreSQL is required here").toBeUndefined();
  });
}

function describeTwoServers(postgres: PostgresServer): void {
  let browser: Browser;
  let servers: readonly [RunningStation, RunningStation];
  let phone: Page;
  let tablet: Page;

  beforeAll(async () => {
    const DATABASE_URL = await postgres.createDatabase();
    browser = await launchBrowser();
    servers = [await startStation([], { DATABASE_URL }), await startStation([], { DATABASE_URL })];
    phone = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
    tablet = await (await browser.newContext({ viewport: { width: 820, height: 1180 } })).newPage();
    await signIn(phone, servers[0], "Mara Tolliver");
    await signIn(tablet, servers[1], "Jonas Wick");
  });

  afterAll(async () => {
    await browser.close();
    for (const server of servers) await server.close();
    await postgres.stop();
  });

  describe("two servers on one PostgreSQL", () => {
    test("tell the devices of one what the devices of the other wrote, as it is written", async () => {
      await openKit(phone, servers[0], KIT);
      await tablet.goto(`${servers[1].url}/kit/${KIT}/turnaround`);
      await tablet.getByRole("heading", { level: 1, name: /^Line 1\b/ }).waitFor();
      await answerRight(phone);
      await answeredLines(tablet, 1);
      await goToLine(tablet, HOSE_LINE);
      await answerRight(tablet);
      await answeredLines(phone, 2);
    });

    test("go on where one is killed, and catch up once it is back", async () => {
      await servers[0].kill();
      await goToLine(tablet, WATER_LINE);
      await answerRight(tablet);
      await allSent(tablet, 60_000);
      await goToLine(phone, FLUSH_LINE);
      await answerRight(phone);
      await phone.getByRole("link", { name: /^1 line not sent/ }).waitFor();
      await servers[0].restart();
      for (const page of [phone, tablet]) await answeredLines(page, 4);
      await allSent(phone, 60_000);
    });
  });
}
