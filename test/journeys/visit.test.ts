import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { checkNamed, isSeenClosed, familyOf, stepNamed, type Check, type Step } from "#kit";
import type { VisitBodies } from "#readiness";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines } from "./support/kits.ts";
import { allSent, signIn } from "./support/people.ts";
import { startStation, TWO_YEARS, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** An assessor begins a visit, looks at three lines without a network, ends it, compares, and takes the report. In order. */

let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let assessor: Page;
let visit: string;
/** Lines behind the seal that were drawn and at which one looks, in the pattern's order. */
let looks: readonly { readonly step: Step; readonly check: Check }[];

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation([], TWO_YEARS)]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  assessor = await phone.newPage();
  await signIn(assessor, station, "Petra Quill");
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

const lineButton = (at: number, said: string) => {
  const { step, check } = looks[at]!;
  return assessor.getByRole("button", { name: `Line ${step.line}: ${check.ask} ${said}`, exact: true });
};

/** Takes a line from the list of all. */
async function take(at: number): Promise<void> {
  const list = assessor.locator("details", { has: assessor.getByText("All lines, kit by kit") });
  if ((await list.getAttribute("open")) === null) await assessor.getByText("All lines, kit by kit").click();
  await lineButton(at, "Not yet.").click();
  await assessor.locator(".visit-step", { hasText: looks[at]!.check.ask }).waitFor();
}

describe("a visit", () => {
  test("is told its size before it is begun, and refuses a rule that is none", async () => {
    await assessor.goto(`${station.url}/visits/new`);
    const begin = assessor.getByRole("button", { name: "Begin the visit and draw" });
    await assessor.getByText("Choose the places first.").waitFor();
    expect(await begin.isDisabled()).toBe(true);
    await assessor.getByRole("button", { name: /^Outer pier store/ }).click();
    const chance = assessor.getByLabel("Chance of seeing at least one wrong, in per cent");
    await chance.fill("120");
    await assessor.getByText("Write chance and share as more than 0 and less than 100.").waitFor();
    expect(await begin.isDisabled()).toBe(true);
    await chance.fill("90");
    await assessor.getByLabel("Kits to be opened, where the rule's number is not wanted").fill("1");
    await assessor.getByText(/^1 kit of \d, and (\d+ to )?\d+ lines in it$/).waitFor();
    // No kit is named as drawn, and no seed is shown, before both stand in the log.
    expect(await assessor.locator(".visit-list li").filter({ hasNotText: ":" }).count()).toBe(0);
    expect(await assessor.locator(".visit-seed").count()).toBe(0);
    await begin.click();
    await assessor.getByRole("button", { name: "Found wrong" }).waitFor();
    await allSent(assessor);
  });

  test("has its sample and seed in the log", async () => {
    const begun = (await exportedLines(assessor)).filter(({ kind }) => kind === "visit-begun").at(-1)!;
    const body = begun.body as VisitBodies["visit-begun"];
    visit = begun.subject.slice("visit:".length);
    const [drawn, ...others] = body.of.filter(({ lines }) => lines !== undefined);
    expect(others).toEqual([]);
    expect(body.seed).toMatch(/^[0-9a-f]{16}$/);
    const pattern = shippedPattern(familyOf(drawn!.pattern));
    looks = drawn!.lines!.flatMap((line) => {
      const [step, check] = [stepNamed(pattern, line.step), checkNamed(pattern, line.check)];
      if (isSeenClosed(pattern, line.step, line.check)) return [];
      return step && check?.kind === "look" && check.finds.length > 0 ? [{ step, check }] : [];
    });
    expect(looks.length).toBeGreaterThanOrEqual(3);
  });

  test("is told to whoever keeps the kit: on the board, and before it is opened", async () => {
    const drawn = (await exportedLines(assessor)).filter(({ kind }) => kind === "visit-begun").at(-1)!;
    const { kit } = (drawn.body as VisitBodies["visit-begun"]).of.find(({ lines }) => lines !== undefined)!;
    const keeper = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
    await signIn(keeper, station, "Jonas Wick");
    await keeper.getByText(/^To be opened for it, one after another: Pump \d+\./).waitFor();
    await keeper.goto(`${station.url}/kit/${kit}/turnaround`);
    await keeper.getByText(/^Open it with the assessor beside you\. At \d+ lines? they look/).waitFor();
    await keeper.context().close();
  });

  test("is looked at without a network, and blind: three lines, each on the disk at once", async () => {
    await phone.setOffline(true);
    await take(0);
    await assessor.locator(".answer-bar button").first().click();
    await lineButton(0, "You saw: right.").waitFor();
    await take(1);
    await assessor.getByRole("button", { name: "Found wrong" }).click();
    const dialog = assessor.getByRole("dialog");
    await dialog.getByRole("button", { name: "Write it down as wrong, and raise the finding" }).click();
    await dialog.waitFor({ state: "detached" });
    await lineButton(1, "You saw: wrong.").waitFor();
    await take(2);
    await assessor.getByRole("button", { name: "Not possible" }).click();
    await dialog.getByText("Weather or light does not allow it").click();
    await dialog.getByRole("button", { name: "Not possible, for this reason" }).click();
    await lineButton(2, "Not possible.").waitFor();
    const shown = await assessor.locator("main").innerHTML();
    for (const word of ["Keeper wrote", "Missed", "Jonas Wick", "Mara Tolliver"]) expect(shown).not.toContain(word);
  });

  test("is ended with why lines were left, and compares on the device, still without a network", async () => {
    const end = assessor.getByRole("button", { name: "End the visit and compare" });
    expect(await end.isDisabled()).toBe(true);
    await assessor.getByLabel("Why lines are left out").fill("The tide.");
    await end.click();
    await assessor.getByRole("heading", { name: "Missed by the keeper: 1" }).waitFor();
    await assessor.getByText(/^Both say the same on 1 of 2, 50/).waitFor();
    await assessor.getByText("Drawn again from the seed, it is the same sample.").waitFor();
    await assessor.getByText("Looked into, and by the log never opened").waitFor();
    await phone.setOffline(false);
    await allSent(assessor);
    const kinds = (await exportedLines(assessor)).filter(({ subject }) => subject === `visit:${visit}`);
    expect(kinds.map(({ kind }) => kind)).toEqual([
      "visit-begun",
      "line-reexamined",
      "line-reexamined",
      "line-reexamined",
      "visit-ended",
    ]);
  });

  test("raised what was wrong on the kit, with the effect of its mode", async () => {
    const lines = await exportedLines(assessor);
    const wrong = lines.find(({ subject, body }) => subject === `visit:${visit}` && body["answer"] === "wrong")!;
    const raised = lines.find(
      ({ kind, body }) => kind === "finding-raised" && body["finding"] === wrong.body["finding"],
    );
    expect(raised).toMatchObject({ subject: `kit:${String(wrong.body["kit"])}`, body: { check: looks[1]!.check.id } });
  });

  test("is printed as a report", async () => {
    const saved = assessor.waitForEvent("download");
    await assessor.getByRole("link", { name: "Report of this visit as PDF" }).click();
    expect((await saved).suggestedFilename()).toMatch(/^visit-.*\.pdf$/);
    const start = await assessor.evaluate(
      (id) => fetch(`/api/paper/visit/${id}.pdf`).then(async (reply) => (await reply.text()).slice(0, 5)),
      visit,
    );
    expect(start).toBe("%PDF-");
  });
});
