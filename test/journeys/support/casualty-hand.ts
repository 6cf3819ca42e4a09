import type { Locator, Page } from "playwright-core";
import type { AdjustableClock } from "./people.ts";
import { PATIENCE_MS } from "./patience.ts";

/** So often a level is typed before it is given up. */
const TYPINGS = 20;
const CONTROL = { timeout: PATIENCE_MS } as const;
const COMPUTED = { timeout: PATIENCE_MS, state: "attached" } as const;

/** Someone cold on a small boat, with one thumb: what they do on the sheet of a casualty. */
export class CasualtyHand {
  readonly page: Page;
  readonly clock: AdjustableClock;

  constructor(page: Page, clock: AdjustableClock) {
    this.page = page;
    this.clock = clock;
  }

  async tap(name: string | RegExp): Promise<void> {
    await this.page
      .getByRole("button", { name, exact: typeof name === "string" })
      .first()
      .click(CONTROL);
  }

  /**
   * A thumb that taps on at the same place, so many ms after each other by the page's own timers: on a slow machine a
   * tap sent from here could come so late that it is a new one.
   */
  async tapAgain(name: string, gaps: readonly number[]): Promise<void> {
    const button = this.page.getByRole("button", { name, exact: true }).first();
    await button.click({ ...CONTROL, trial: true });
    await button.evaluate(tapInPage, gaps);
  }

  /** What the device's clock will show in so many minutes: "16:43". */
  async clockIn(minutes: number): Promise<string> {
    const now = await this.page.evaluate(() => Date.now());
    return new Date(now + minutes * 60_000).toTimeString().slice(0, 5);
  }

  /** From anywhere in the app to the first answer before launch. */
  async askBeforeLaunch(kind: string, length: string, distance: string): Promise<string> {
    await this.page.getByRole("link", { name: "Casualty" }).click(CONTROL);
    await this.page.getByRole("link", { name: /how many kits/ }).click(CONTROL);
    await this.tap(kind);
    await this.tap(length);
    await this.tap(distance);
    return this.page.locator(".launch-take").innerText(CONTROL);
  }

  async openSheet(name: string): Promise<void> {
    await this.page.getByLabel(/Her name/).fill(name);
    await this.tap("Open her sheet");
    await this.page.getByRole("heading", { level: 1, name }).waitFor(CONTROL);
  }

  /**
   * Types the level as a person does who looks at the box afterwards: a call that comes up between two keys takes them.
   * Once it stands, soundings are not called for.
   */
  async typeLevel(centimetres: number): Promise<void> {
    const box = this.page.getByLabel("Level in cm");
    const wanted = String(centimetres);
    for (let tries = 0; tries < TYPINGS; tries += 1) {
      await box.fill(wanted, CONTROL);
      if ((await box.inputValue(CONTROL)) === wanted) return;
    }
    throw new Error(`The level does not stand at ${wanted} after it was typed ${TYPINGS} times.`);
  }

  /** Sounds by typing the level. */
  async sound(centimetres: number): Promise<void> {
    await this.typeLevel(centimetres);
    await this.tap(/sounded now$/);
    await this.written(`${centimetres}\u00a0cm sounded`);
  }

  /** Sounds by steps from the last level, so long after it. */
  async soundBySteps(step: string, seconds: number): Promise<void> {
    await this.clock.pass(this.page, seconds);
    await this.tap(step);
    await this.tap(/sounded now$/);
    await this.written("sounded");
  }

  /** The alarm that calls over the whole screen. */
  alarm(title: string | RegExp): Locator {
    return this.page.getByRole("alertdialog", { name: title });
  }

  /** A pump's own part of the sheet. */
  pump(name: string | RegExp): Locator {
    return this.page.getByRole("region", { name: "Pumps" }).getByRole("region", { name });
  }

  /** Hands the first kit offered over by a line and has it pumping. */
  async pumpWithKit(): Promise<string> {
    await this.tap("One more pump");
    const kit = await this.page
      .getByRole("region", { name: "One more pump" })
      .locator(".pick")
      .first()
      .innerText(CONTROL);
    await this.tap(kit);
    await this.tap("On a line");
    await this.tap(`${kit} handed over`);
    await this.pump(kit).getByRole("button", { name: "Water comes", exact: true }).click(CONTROL);
    await this.pump(kit)
      .getByText(/^pumping/)
      .waitFor(CONTROL);
    return kit;
  }

  /** The line at the top as it is seen: its word, and what it comes to. */
  async verdict(): Promise<string> {
    return this.page.locator(".verdict summary").innerText(CONTROL);
  }

  /** Waits until the line at the top says so, from so many soundings. */
  async verdictFrom(soundings: number): Promise<string> {
    await this.page.locator(".verdict-age", { hasText: `from ${soundings} sounding` }).waitFor(COMPUTED);
    await this.page.locator(".verdict-age", { hasText: "An estimate" }).waitFor(COMPUTED);
    return this.verdict();
  }

  async undo(): Promise<void> {
    await this.tap("Undo");
    await this.page.locator(".undo", { hasText: "Written:" }).waitFor({ ...CONTROL, state: "detached" });
  }

  async written(words: string): Promise<void> {
    await this.page.locator(".undo", { hasText: words }).waitFor(CONTROL);
  }
}

/** Runs in the page. */
function tapInPage(element: Element, gaps: readonly number[]): Promise<void> {
  const { x, y, width, height } = element.getBoundingClientRect();
  const tap = () => {
    const there = document.elementFromPoint(x + width / 2, y + height / 2);
    if (there instanceof HTMLElement) there.click();
  };
  tap();
  let after = 0;
  for (const gap of gaps) setTimeout(tap, (after += gap));
  return new Promise((done) => setTimeout(done, after));
}
