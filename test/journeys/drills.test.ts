import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { checkNamed, itemNamed, modeNamed, stepNamed } from "#kit";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines, sealOn } from "./support/kits.ts";
import { allSent, signIn, slowClock, type AdjustableClock } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern, TurnaroundHand } from "./support/turnaround-hand.ts";

/** Faults planted on one device, looked for on another without a network, revealed, taken out, looked at again. In order. */

const KIT = "br-06";
const pattern = shippedPattern("ossel-200");
const PLANTED = [
  { item: "crate", mode: "crate-cracked", how: "A strip of black tape over the lid's corner." },
  { item: "plug", mode: "plug-green", how: "Green crayon on two pins." },
] as const;
const PLUG_LINE = stepNamed(pattern, "unplugged")!.line;

let browser: Browser;
let station: RunningStation;
/** Mara is drilled; Jonas plants. */
let phone: BrowserContext;
let drilled: Page;
let planter: Page;
let seal: string;
let clock: AdjustableClock;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const tablet = await browser.newContext({ viewport: { width: 820, height: 1180 } });
  // Both alike: what was answered before a fault was taken out is told by the clocks.
  [clock] = await Promise.all([slowClock(phone, 3600), slowClock(tablet, 3600)]);
  [drilled, planter] = [await phone.newPage(), await tablet.newPage()];
  await signIn(drilled, station, "Mara Tolliver");
  await signIn(planter, station, "Jonas Wick");
  seal = await sealOn(drilled, KIT);
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const drillPage = `/kit/${KIT}/drill`;
const kinds = async (page: Page) =>
  (await exportedLines(page)).filter(({ subject }) => subject === `kit:${KIT}`).map(({ kind }) => kind);

describe("a drill", () => {
  test("sets the kit aside: it is grounded from the seal's breaking on", async () => {
    await drilled.goto(station.url + drillPage);
    await drilled.getByLabel(/^Seal number/).fill(`${seal}9`);
    const differs = drilled.getByText("That is not what the record says");
    await differs.waitFor();
    await drilled.getByLabel(/^Seal number/).fill(seal);
    await differs.waitFor({ state: "detached" });
    await drilled.getByRole("button", { name: "Mara Tolliver" }).click();
    await drilled.getByRole("button", { name: "Break the seal and begin the drill" }).click();
    await drilled.getByText("is set aside: it must not go").waitFor();
    await drilled.getByText("Grounded").first().waitFor();
    expect(await drilled.getByText("Plant the faults").count()).toBe(0);
    await allSent(drilled);
  });

  test("is planted by somebody else, on whose device alone it can be read", async () => {
    await planter.goto(station.url + drillPage);
    for (const { item, mode, how } of PLANTED) {
      await planter.getByLabel("On which item?").selectOption({ label: itemNamed(pattern, item)!.name });
      await planter.getByLabel("Which fault?").selectOption({ label: modeNamed(pattern, mode)!.name });
      await planter.getByLabel("What exactly is done to it").fill(how);
      await planter.getByRole("button", { name: "Add this fault to the list" }).click();
    }
    await planter.getByRole("button", { name: "They are planted" }).click();
    await planter.getByRole("heading", { name: "What you planted" }).waitFor();
    await allSent(planter);
    const log = JSON.stringify(await exportedLines(planter));
    for (const { how } of PLANTED) expect(log).not.toContain(how);
    expect(await kinds(planter)).toContain("faults-planted");
  });

  test("is looked for on the other device without a network, in an ordinary turnaround", async () => {
    await drilled.goto(station.url + drillPage);
    await drilled.getByText("Faults are planted.").waitFor();
    await phone.setOffline(true);
    await drilled.getByRole("link", { name: "Open it for the turnaround" }).click();
    await drilled.getByRole("button", { name: "There is no seal on it" }).click();
    await drilled.getByRole("button", { name: /^Routine/ }).click();
    await drilled.getByRole("heading", { level: 1, name: /^Line 2\b/ }).waitFor();
    await drilled.goto(`${station.url}/kit/${KIT}/turnaround?line=${PLUG_LINE}`);
    await drilled.getByRole("button", { name: "Found wrong" }).click();
    const sheet = drilled.getByRole("dialog");
    await sheet.getByText(modeNamed(pattern, "plug-green")!.name).click();
    await sheet.getByRole("button", { name: "Raise the finding" }).click();
    await sheet.waitFor({ state: "detached" });
    await drilled.goto(`${station.url}/kit/${KIT}/turnaround?at=seal`);
    await drilled.getByText("A drill is on: who planted reveals what").waitFor();
    expect(await drilled.getByLabel("New seal number").count()).toBe(0);
    await phone.setOffline(false);
    await allSent(drilled);
  });

  test("is revealed and compared: one found, one missed", async () => {
    await planter.goto(station.url + drillPage);
    await planter.getByRole("button", { name: "They have looked: reveal what was planted" }).click();
    await planter.getByRole("button", { name: "Reveal it to everybody" }).click();
    const [crate, plug] = PLANTED.map(({ how }) => planter.getByRole("listitem").filter({ hasText: how }));
    await plug!.getByText("Found by Mara Tolliver.").waitFor();
    await crate!.getByText("Missed.").waitFor();
    await allSent(planter);
  });

  test("ends once each planted fault is named taken out", async () => {
    const end = planter.getByRole("button", { name: "End the drill" });
    expect(await end.isDisabled()).toBe(true);
    for (const { item, mode } of PLANTED) {
      const name = `Taken out: ${itemNamed(pattern, item)!.name}: ${modeNamed(pattern, mode)!.name}`;
      await planter.getByRole("button", { name }).click();
      await planter.getByRole("button", { name }).waitFor({ state: "detached" });
    }
    await end.click();
    await planter.getByText("The drill has ended").waitFor();
    await allSent(planter);
  });

  test("asks for the lines again that were answered before the fault was out", async () => {
    const again = drilled.getByText(`Look again, a planted fault was taken out since: line ${PLUG_LINE}`);
    await drilled.goto(`${station.url}/kit/${KIT}/turnaround?at=seal`);
    await again.waitFor();
    await drilled.goto(`${station.url}/kit/${KIT}/turnaround?line=${PLUG_LINE}`);
    await drilled.getByRole("button", { name: "Answer again" }).click();
    const before = await answers();
    await drilled.locator(".answer-bar button").first().click();
    await expect.poll(answers).toBe(before + 1);
    await drilled.goto(`${station.url}/kit/${KIT}/turnaround?at=seal`);
    await drilled.getByText(/things stand in the way of a seal/).waitFor();
    expect(await again.count()).toBe(0);
  });

  test("is followed by the rest of the turnaround, and the kit is sealed and ready again", async () => {
    await drilled.goto(`${station.url}/kit/${KIT}/turnaround?line=2`);
    await new TurnaroundHand(drilled, pattern, clock, seal).workTo();
    await drilled.getByLabel("New seal number").fill("DR 30001");
    await drilled.getByLabel("Seal number again").fill("DR 30001");
    await drilled.getByRole("button", { name: "Sealed with DR 30001" }).click();
    await drilled
      .getByText(/^Ready/)
      .first()
      .waitFor();
    await allSent(drilled);
    expect(await kinds(planter)).toContain("sealed");
  });

  test("is told on the page of drills, with what each check found", async () => {
    await planter.goto(`${station.url}/drills`);
    await planter.getByText("found 1 of 2").waitFor();
    const row = planter.getByRole("row", { name: new RegExp(escaped(checkNamed(pattern, "plug-pins")!.ask)) });
    await row.getByText("1 of 1").waitFor();
    await row.getByText(/between 5.% and 100.%/).waitFor();
  });
});

/** Lines answered on the kit, as the station has them. */
async function answers(): Promise<number> {
  return (await kinds(planter)).filter((kind) => kind === "step-answered").length;
}

function escaped(words: string): string {
  return words.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
