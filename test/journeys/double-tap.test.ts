import type { Browser, BrowserContext, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { allSteps } from "#kit";
import { launchBrowser } from "./support/browser.ts";
import { exportedLines, openKit, sealOn, type ExportedLine } from "./support/kits.ts";
import { allSent, signIn, slowClock } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern, TurnaroundHand } from "./support/turnaround-hand.ts";

/** A thumb that taps everything twice, on every line of a turnaround: only the first tap answers. */

const KIT = "br-01";
const pattern = shippedPattern("brinnet-450");
/** Gaps between the two taps of one movement [ms]. */
const GAPS = [130, 170, 210, 250, 300] as const;
let browser: Browser;
let station: RunningStation;
let phone: BrowserContext;
let page: Page;

/** Taps twice whatever it taps; the second time by turns where it tapped, and on what can be tapped by then. */
class HastyHand extends TurnaroundHand {
  taps = 0;
  /** Second taps that hit a control, and the longest time between two taps [ms]. */
  hits = 0;
  longest = 0;

  override async press(control: Locator): Promise<void> {
    await this.clock.look(this.page);
    await control.click({ trial: true });
    const plan = { gap: GAPS[this.taps % GAPS.length]!, isElsewhere: this.taps % 2 === 1 };
    const told = await control.evaluate(tapTwice, plan);
    this.taps += 1;
    this.longest = Math.max(this.longest, told.gap);
    if (told.hit) this.hits += 1;
  }
}

interface Plan {
  readonly gap: number;
  /** The second tap goes to the first control in sight that writes, wherever it stands by then. */
  readonly isElsewhere: boolean;
}

/** In the page: taps a control as a finger does, and again so much later. */
async function tapTwice(control: Element, { gap, isElsewhere }: Plan): Promise<{ gap: number; hit: boolean }> {
  const finger = {
    at(on: Element) {
      const box = on.getBoundingClientRect();
      return { clientX: box.left + box.width / 2, clientY: box.top + box.height / 2 };
    },
    tap(on: Element) {
      const common = { bubbles: true, cancelable: true, composed: true, detail: 1, ...this.at(on) };
      const touch = {
        ...common,
        pointerId: 1,
        pointerType: "touch",
        isPrimary: true,
        width: 20,
        height: 20,
        button: 0,
      };
      on.dispatchEvent(new PointerEvent("pointerdown", { ...touch, buttons: 1 }));
      on.dispatchEvent(new PointerEvent("pointerup", touch));
      on.dispatchEvent(new MouseEvent("click", common));
    },
  };
  const writes = ".sheet-ways button, section.clock button, section.fitting button, .answer-bar button";
  const spot = finger.at(control);
  finger.tap(control);
  const began = Date.now();
  await new Promise((resolve) => {
    setTimeout(resolve, gap);
  });
  const under = document.elementFromPoint(spot.clientX, spot.clientY)?.closest("button");
  const second = isElsewhere ? document.querySelector(writes) : under;
  const late = Date.now() - began;
  if (second) finger.tap(second);
  return { gap: late, hit: second !== null && second !== undefined };
}

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

describe("a thumb that taps twice", () => {
  test("gives one answer at every line, and no clock, prime, pull or part is written twice", async () => {
    const clock = await slowClock(phone, 3 * 3600);
    page = await phone.newPage();
    await signIn(page, station, "Mara Tolliver");
    const seal = await sealOn(page, KIT);
    await openKit(page, station, KIT);
    const before = new Set((await exportedLines(page)).map(({ id }) => id));
    const hand = new HastyHand(page, pattern, clock, seal);
    await hand.workTo();
    await allSent(page);
    const written = (await exportedLines(page)).filter(
      ({ id, subject }) => subject === `kit:${KIT}` && !before.has(id),
    );

    const answers = written.filter(({ kind }) => kind === "step-answered").map(nameOfAnswer);
    expect(answers.filter((one, at) => answers.indexOf(one) !== at)).toEqual([]);
    expect(answers.every((one) => one.endsWith(" seen"))).toBe(true);
    const asked = allSteps(pattern)
      .filter(({ after }) => after === undefined)
      .flatMap(({ id, checks }) => (checks.length === 0 ? [id] : checks.map((check) => `${id}/${check}`)));
    expect(new Set(answers.map((one) => one.split(" ")[0]))).toEqual(new Set(asked));
    expect(written.filter(({ kind }) => kind === "prime-timed").map(({ body }) => body["primed"])).toEqual([true]);
    for (const kind of ["timer-started", "timer-stopped", "item-fitted"]) expect(repeated(written, kind)).toEqual([]);
    expect(pullsAt(written, "start")).toEqual([2]);
    expect(written.filter(({ kind }) => kind === "finding-raised" || kind === "struck")).toEqual([]);
    expect(hand.taps).toBeGreaterThan(95);
    expect(hand.hits).toBeGreaterThan(hand.taps / 2);
  }, 900_000);
});

function nameOfAnswer({ body }: ExportedLine): string {
  const { step, check, answer } = body as { step: string; check?: string; answer: string };
  return `${check === undefined ? step : `${step}/${check}`} ${answer}`;
}

function repeated(written: readonly ExportedLine[], kind: string): readonly string[] {
  const names = written.filter((line) => line.kind === kind).map(({ body }) => String(body["item"] ?? body["step"]));
  return names.filter((one, at) => names.indexOf(one) !== at);
}

function pullsAt(written: readonly ExportedLine[], step: string): readonly unknown[] {
  return written
    .filter(({ kind, body }) => kind === "pulls-counted" && body["step"] === step)
    .map(({ body }) => body["pulls"]);
}
