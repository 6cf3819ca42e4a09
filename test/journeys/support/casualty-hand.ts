import type { Locator, Page } from "playwright-core";
import type { AdjustableClock } from "./people.ts";

const CONTROL = { timeout: 20_000 } as const;

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

  /** Sounds by typing the level. */
  async sound(centimetres: number): Promise<void> {
    await this.page.getByLabel("Level in cm").fill(String(centimetres));
    await this.tap(/sounded now$/);
    await this.written(`${centimetres}\u00a0cm sounded`);
  }

  /** Sounds by steps from the last level, after so long with the level in hand: nothing calls meanwhile. */
  async soundBySteps(step: string, seconds: number): Promise<void> {
    await this.tap(step);
    await this.clock.pass(this.page, seconds);
    await this.tap(/sounded now$/);
    await this.written("sounded");
  }

  /** The alarm that calls over the whole screen. */
  alarm(title: string): Locator {
    return this.page.getByRole("alertdialog", { name: title });
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
    await this.tap("Water comes: pumping");
    await this.page.getByText("pumping, about").waitFor(CONTROL);
    return kit;
  }

  async verdict(): Promise<string> {
    return this.page.locator(".verdict").innerText(CONTROL);
  }

  /** Waits until the line at the top says so, from so many soundings. */
  async verdictFrom(soundings: number): Promise<string> {
    await this.page.locator(".verdict-age", { hasText: `from ${soundings} sounding` }).waitFor({ timeout: 60_000 });
    await this.page.locator(".verdict-age", { hasText: "An estimate" }).waitFor({ timeout: 60_000 });
    return this.verdict();
  }

  async undo(): Promise<void> {
    await this.tap("Undo");
    await this.page.getByText("Written:").waitFor({ ...CONTROL, state: "detached" });
  }

  private async written(words: string): Promise<void> {
    await this.page.locator(".undo", { hasText: words }).waitFor(CONTROL);
  }
}
