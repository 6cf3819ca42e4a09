import ICAL from "ical.js";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { allSteps } from "#kit";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines } from "./support/kits.ts";
import { allSent, signIn } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** Who may do what: a line that asks for a second person, a course that is told, a record that is printed. */

const BRINNET = shippedPattern("brinnet-450");
const line = (step: string) => allSteps(BRINNET).find(({ id }) => id === step)!.line;

let browser: Browser;
let station: RunningStation;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

/** A phone of its own for somebody of the demo. */
async function phoneOf(name: string): Promise<{ readonly phone: BrowserContext; readonly page: Page }> {
  const phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await phone.newPage();
  await signIn(page, station, name);
  return { phone, page };
}

const linesOf = async (page: Page, kind: string) => (await exportedLines(page)).filter((one) => one.kind === kind);

describe("a line that needs a qualification", () => {
  test("asks who sees it done, without a network, and is then answered", async () => {
    const { phone, page } = await phoneOf("Ede Sorrell");
    await page.goto(`${station.url}/kit/br-05/turnaround?line=${line("wipe-rim")}`);
    await phone.setOffline(true);
    const panel = page.getByRole("region", { name: "Sealing: a second person" });
    await panel.getByText("You have not done this yet.").waitFor();
    await page.getByRole("group", { name: "Answer" }).getByRole("button").first().click();
    const refused = page.getByText("Not saved");
    await refused.waitFor();
    await panel.getByRole("button", { name: "Mara Tolliver sees it done" }).click();
    await panel.waitFor({ state: "detached" });
    await refused.waitFor({ state: "detached" });
    const named = page.getByRole("region", { name: "Sealing: who sees it done" });
    await named.getByText("Second person: Mara Tolliver").waitFor();
    await named.getByRole("button", { name: "Undo: Sealing, Mara Tolliver" }).click();
    await named.waitFor({ state: "detached" });
    await panel.getByRole("button", { name: "Mara Tolliver sees it done" }).click();
    await named.getByText("Second person: Mara Tolliver").waitFor();
    await phone.setOffline(false);
    await allSent(page);
    const lines = await linesOf(page, "second-named");
    expect(lines.filter(({ subject }) => subject === "kit:br-05").at(-1)).toMatchObject({
      by: "ede-sorrell",
      body: { qualification: "sealing", second: "mara-tolliver" },
    });
    await named.getByText("Not confirmed by Mara Tolliver yet").click();
    await named.getByLabel("PIN of Mara Tolliver", { exact: true }).fill("000000");
    await named.getByRole("button", { name: "I saw it done" }).click();
    await named.getByText(/Name or PIN is wrong/).waitFor();
    const mara = await phoneOf("Mara Tolliver");
    await mara.page.goto(`${station.url}/work`);
    await mara.page.getByRole("button", { name: /^I saw it done: Sealing/ }).click();
    await mara.page.getByText(/^Did you see it done\? Sealing/).waitFor({ state: "detached" });
    await allSent(mara.page);
    await mara.phone.close();
    await named.getByText(/Mara Tolliver confirmed it on a device of their own/).waitFor();
    await phone.close();
  });

  test("is not gone on with alone where the station does not have it, and says why it is refused", async () => {
    const { phone, page } = await phoneOf("Ines Dunmore");
    await page.goto(`${station.url}/kit/br-05/turnaround?line=${line("refuel")}`);
    const panel = page.getByRole("region", { name: "Fuel handling: a second person" });
    await panel.getByText("Nobody goes on alone here.").waitFor();
    expect(await panel.getByText("Nobody can come").count()).toBe(0);
    await page.getByLabel("Reading").fill("12");
    await page.locator(".answer-bar button").first().click();
    await page.getByText(/Name who sees it done: Ede Sorrell, Jonas Wick, Mara Tolliver\./).waitFor();
    const answered = (await linesOf(page, "step-answered")).filter(({ by }) => by === "ines-dunmore");
    expect(answered).toEqual([]);
    await phone.close();
  });

  test("is gone on with by a note where the station has it so, and the note does not count", async () => {
    const { phone, page } = await phoneOf("Ines Dunmore");
    await page.goto(`${station.url}/kit/br-05/turnaround?line=${line("close-clamp")}`);
    const panel = page.getByRole("region", { name: "Sealing: a second person" });
    await panel.getByText("Nobody can come").click();
    await panel.getByLabel("Why nobody sees it done").fill("The others are at sea.");
    await panel.getByRole("button", { name: "Go on with this note" }).click();
    await panel.waitFor({ state: "detached" });
    await allSent(page);
    expect((await linesOf(page, "gone-on-alone")).at(-1)).toMatchObject({
      body: { qualification: "sealing", note: "The others are at sea." },
    });
    await phone.close();
  });
});

describe("a person's calendar", () => {
  test("is read by whoever has its address, until it is withdrawn", async () => {
    const { phone, page } = await phoneOf("Jonas Wick");
    await page.goto(`${station.url}/settings`);
    await page.getByRole("button", { name: "Make an address for your calendar" }).click();
    const address = (await page.getByRole("link", { name: /\.ics$/ }).getAttribute("href"))!;
    const stranger = await browser.newContext();
    const read = await stranger.request.get(address);
    expect(read.status()).toBe(200);
    const events = new ICAL.Component(ICAL.parse(await read.text())).getAllSubcomponents("vevent");
    const summaries = events.map((one) => new ICAL.Event(one).summary);
    expect(summaries).toContain("Muster at Boathouse");
    expect(summaries).toContain("Spare-cord drill: last day it is held by Jonas Wick");
    await page.getByRole("button", { name: "Withdraw this address" }).click();
    await page.getByRole("button", { name: "Withdraw this address" }).waitFor({ state: "detached" });
    expect((await stranger.request.get(address)).status()).toBe(404);
    await stranger.close();
    await phone.close();
  });

  test("is printed as the sheet of a month", async () => {
    const { phone, page } = await phoneOf("Jonas Wick");
    await page.goto(`${station.url}/work`);
    await page.getByRole("link", { name: "Print this month" }).click();
    await page.getByText("Saved as a file.").waitFor();
    await phone.close();
  });
});

describe("qualifications of the station", () => {
  test("say who holds each until when, and who could be brought on by whom", async () => {
    const { phone, page } = await phoneOf("Mara Tolliver");
    await page.getByRole("link", { name: "People" }).click();
    await page.getByRole("link", { name: "Qualifications" }).click();
    const sealing = page.locator("section").filter({ has: page.getByRole("heading", { name: "Sealing" }) });
    await sealing.getByText(/Ede Sorrell does not hold it: could be brought on by .*Mara Tolliver/).waitFor();
    await phone.close();
  });

  test("are held once a keeper has told of a course, no more once that is struck, and the record is printed", async () => {
    const { phone, page } = await phoneOf("Mara Tolliver");
    await page.goto(`${station.url}/people/ede-sorrell`);
    await page.getByRole("heading", { level: 1, name: "Ede Sorrell" }).waitFor();
    const row = page.getByRole("row", { name: /^Sealing/ });
    expect(await row.innerText()).toContain("never held");
    await page.getByRole("radio", { name: "Sealing" }).click({ force: true });
    const day = new Date(Date.now() - 3 * 86_400_000).toISOString().slice(0, 10).split("-");
    for (const [at, label] of ["Year, four figures", "Month, 1 to 12", "Day"].entries()) {
      await page.getByLabel(label, { exact: true }).fill(day[at]!);
    }
    await page.getByLabel("What was done, and where").fill("Sealed two kits at the makers.");
    await page.getByRole("button", { name: "Write it down" }).click();
    await row.getByText("never held").waitFor({ state: "detached" });
    await allSent(page);
    await page.getByRole("button", { name: "Told by mistake" }).click();
    await page.getByRole("button", { name: "Strike it" }).click();
    await row.getByText("never held").waitFor();
    await allSent(page);
    await page.getByRole("link", { name: "Print the training record" }).click();
    await page.getByText("Saved as a file.").waitFor();
    await phone.close();
  });

  test("are set by the keeper for a stage, and then asked for", async () => {
    const { phone, page } = await phoneOf("Mara Tolliver");
    await page.goto(`${station.url}/qualifications/new`);
    await page.getByLabel("Name").fill("Rigging");
    await page.getByLabel("It is for").selectOption({ label: "Rig" });
    await page.getByText("Who holds it, or a keeper").click();
    await page.getByText("Go on with a note").click();
    await page.getByRole("button", { name: "Save the qualification" }).click();
    await page.getByRole("heading", { name: "Rigging" }).waitFor();
    await allSent(page);
    const [set] = (await linesOf(page, "qualification-set")).filter(({ body }) => body["name"] === "Rigging");
    expect(set!.body).toMatchObject({ ties: [{ to: "stage", stage: "rig" }], every: "12 months" });
    await phone.close();
  });
});
