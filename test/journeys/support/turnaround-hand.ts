import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { vi } from "vitest";
import { inUnit, type Dimension } from "#base";
import type { Check, Pattern } from "#kit";
import { readPatternFolders } from "#store/patterns";
import type { AdjustableClock } from "./people.ts";

const { patterns } = readPatternFolders([join(import.meta.dirname, "..", "..", "..", "patterns")]);
/** Longer than any wait or run of the shipped patterns [s]. */
const LONGEST_WAIT = 6 * 60;
const CONTROL = { timeout: 10_000 } as const;

/** A shipped pattern by id. */
export function shippedPattern(id: string): Pattern {
  const pattern = patterns.find((one) => one.id === id);
  if (!pattern) throw new Error(`No pattern ${id} is shipped.`);
  return pattern;
}

/** Works through a turnaround on screen the way a keeper does who finds everything right. */
export class TurnaroundHand {
  readonly page: Page;
  readonly pattern: Pattern;
  readonly clock: AdjustableClock;
  /** The seal as it was read off the container. */
  readonly seal: string;

  constructor(page: Page, pattern: Pattern, clock: AdjustableClock, seal: string) {
    this.page = page;
    this.pattern = pattern;
    this.clock = clock;
    this.seal = seal;
  }

  /** Line shown now; undefined once every line is answered. */
  async line(): Promise<number | undefined> {
    const heading = await this.page.getByRole("heading", { level: 1 }).innerText();
    const number = /Line (\d+) of/.exec(heading)?.[1];
    return number === undefined ? undefined : Number(number);
  }

  /** Answers line after line as seen, until this line is shown, or until none is left. */
  async workTo(until?: number): Promise<void> {
    for (let asked = 0; asked < 400; asked += 1) {
      const line = await this.line();
      if (line === undefined || line === until) return;
      await this.answerOne();
    }
    throw new Error("The turnaround does not come to an end.");
  }

  async answerOne(): Promise<void> {
    const before = await this.page.evaluate(whatIsAsked);
    await this.fitWhatIsNew();
    await this.runClock();
    const goOn = this.page.getByRole("button", { name: "Go on", exact: true });
    if (await goOn.isVisible()) await goOn.click(CONTROL);
    else {
      await this.read();
      await this.page.locator(".answer-bar button").first().click(CONTROL);
    }
    const hasMovedOn = async (): Promise<boolean> => (await this.page.evaluate(whatIsAsked)) !== before;
    await vi.waitUntil(hasMovedOn, { ...CONTROL, interval: 20 });
  }

  /** A new one fitted for everything this step renews. */
  private async fitWhatIsNew(): Promise<void> {
    for (const fitting of await this.page.locator("section.fitting").all()) {
      const fit = fitting.getByRole("button", { name: "Fitted new today" });
      if (!(await fit.isVisible())) continue;
      const date = fitting.getByRole("group", { name: /^Date printed/ });
      if ((await date.count()) > 0) await this.fillDate(date);
      await fit.click(CONTROL);
      await fitting.getByRole("button", { name: "Correct it" }).waitFor(CONTROL);
    }
  }

  private async fillDate(group: Locator): Promise<void> {
    await group.getByLabel("Month, 1 to 12").fill("12");
    await group.getByLabel("Year, four figures").fill(String(new Date().getFullYear() + 3));
  }

  private async runClock(): Promise<void> {
    const clock = this.page.locator("section.clock").first();
    if ((await clock.count()) === 0) return;
    const press = (name: string | RegExp): Promise<void> => clock.getByRole("button", { name }).click(CONTROL);
    const has = (name: string | RegExp): Promise<boolean> => clock.getByRole("button", { name }).isVisible();
    if (await has(/^Start the .* (wait|run)$/)) {
      await press(/^Start the/);
      await clock.getByRole("timer").waitFor(CONTROL);
      await this.clock.pass(this.page, LONGEST_WAIT);
      await this.page
        .getByRole("alertdialog")
        .getByRole("button", { name: /^Stop the alarm/ })
        .click(CONTROL);
      await press("Stop the clock");
      await clock.getByText("long enough").waitFor(CONTROL);
    } else if (await has(/^First stroke/)) {
      await press(/^First stroke/);
      await clock.getByRole("timer").waitFor(CONTROL);
      await this.clock.pass(this.page, 31);
      await press(/^Water$/);
      await clock.getByText("to water").waitFor(CONTROL);
    } else if (await has(/^Pull 1$/)) {
      await press("Pull 1");
      await press("Pull 2");
      await press("It started");
      await clock.getByText("Started on pull 2.").waitFor(CONTROL);
    }
  }

  /** The check on the screen, known by its words: what to do and what right looks like. */
  private async checkAsked(): Promise<Check | undefined> {
    const [asked, expected] = await this.page.evaluate(() =>
      [".ask-do", ".ask-expect"].map((name) => document.querySelector<HTMLElement>(name)?.innerText ?? ""),
    );
    return this.pattern.checks.find(({ ask, expect }) => ask === asked && expected?.includes(expect));
  }

  /** Fills in what the check asked now wants read, as right. */
  private async read(): Promise<void> {
    const check = await this.checkAsked();
    if (!check) return;
    const ask = this.page.locator("section.ask");
    if (check.kind === "measure") await ask.getByLabel("Reading").fill(rightReading(check));
    if (check.kind === "count") await ask.getByLabel(`How many ${check.of}?`).fill(String(check.exactly));
    if (check.kind === "date") await this.fillDate(ask.getByRole("group", { name: "Date printed on it" }));
    if (check.kind === "match" && check.against) {
      await ask.getByLabel(check.first, { exact: true }).fill(this.seal);
    } else if (check.kind === "match") {
      await ask.getByLabel(check.first, { exact: true }).fill("BR-07");
      await ask.getByLabel(check.second, { exact: true }).fill("BR-07");
    }
  }
}

/** A reading inside the check's limits, in the unit it is asked in. */
function rightReading({ atLeast, atMost, dimension, unit }: Extract<Check, { kind: "measure" }>): string {
  const low = atLeast ?? (atMost ?? 1) * 0.7;
  const high = atMost ?? (atLeast ?? 1) * 1.3;
  return `${Number(inUnit((low + high) / 2, unit, dimension as Dimension).toPrecision(3))} ${unit}`;
}

/** In the page: where the runner stands and what it asks there. Changes only when it has moved on. */
function whatIsAsked(): string {
  const words = ["h1", ".ask-do"].map((name) => document.querySelector(name)?.textContent ?? "");
  return [location.search, ...words].join("|");
}
