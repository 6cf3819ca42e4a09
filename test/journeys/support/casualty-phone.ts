import type { Browser, BrowserContext, Page } from "playwright-core";
import { axeFindings } from "./axe.ts";
import { CasualtyHand } from "./casualty-hand.ts";
import { closeAll, seedCasualty, type SeededLine } from "./casualty-seed.ts";
import { signIn, slowClock, type AdjustableClock } from "./people.ts";
import type { RunningStation } from "./station.ts";

/** How far behind the station each phone's clock starts [s]: so much may pass in one scene. */
const BEHIND = 6 * 3600;

/** Puts every phone away: one left lying computes on, and calls. */
export async function putAway(browser: Browser): Promise<void> {
  await Promise.all(browser.contexts().map((context) => context.close()));
}

/** What somebody busy with something else does with every call: puts it off by a minute. */
export async function putCallsOff(page: Page): Promise<void> {
  const calling = page.getByRole("alertdialog");
  const putOff = calling.getByRole("button", { name: "In a minute" });
  const answer = () => putOff.click().catch(unlessClosed(page));
  await page.addLocatorHandler(calling, answer, { noWaitAfter: true });
}

/** A scene may end, and its phone be put away, while a call is being answered; whatever else goes wrong is told. */
function unlessClosed(page: Page): (cause: unknown) => void {
  return (cause) => {
    if (!page.isClosed()) throw cause;
  };
}

/** A phone of the station's own with somebody signed in on it: one for each scene, so that none hangs on another. */
export class CasualtyPhone {
  readonly context: BrowserContext;
  readonly page: Page;
  readonly clock: AdjustableClock;
  readonly hand: CasualtyHand;
  readonly #station: RunningStation;

  private constructor(context: BrowserContext, page: Page, clock: AdjustableClock, station: RunningStation) {
    this.context = context;
    this.page = page;
    this.clock = clock;
    this.hand = new CasualtyHand(page, clock);
    this.#station = station;
  }

  static async begin(
    browser: Browser,
    station: RunningStation,
    [width, height]: readonly [number, number] = [390, 844],
  ): Promise<CasualtyPhone> {
    const context = await browser.newContext({ viewport: { width, height } });
    const clock = await slowClock(context, BEHIND);
    const page = await context.newPage();
    await signIn(page, station, "Jonas Wick");
    await closeAll(page);
    return new CasualtyPhone(context, page, clock, station);
  }

  /** Opens the sheet of a casualty with these lines, and lets the network go. */
  async openSheet(...lines: readonly SeededLine[]): Promise<string> {
    const id = await seedCasualty(this.page, this.#station, lines);
    await this.page.goto(`${this.#station.url}/casualty/${id}`);
    await this.page.locator(".sheet").waitFor();
    await this.context.setOffline(true);
    return id;
  }

  async putCallsOff(): Promise<void> {
    await putCallsOff(this.page);
  }

  /** What is not for everybody to read, by day and by night. */
  async faultsInBothPalettes(): Promise<readonly string[]> {
    const day = await axeFindings(this.page);
    await this.night();
    return [...day, ...(await axeFindings(this.page))];
  }

  async night(): Promise<void> {
    await this.page.getByRole("button", { name: /^Night/ }).click();
    await this.page.getByRole("button", { name: /^Day/ }).waitFor();
  }
}
