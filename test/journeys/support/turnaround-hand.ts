import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { vi } from "vitest";
import type { Check, Pattern } from "#kit";
import { readPatternFolders } from "#store/patterns";
import type { AdjustableClock } from "./people.ts";
import { fillDelivery, fillRig, rightReading, serialAt } from "./right-readings.ts";
import { PATIENCE_MS } from "./patience.ts";

const { patterns } = readPatternFolders([join(import.meta.dirname, "..", "..", "..", "patterns")]);
/** Longer than any wait or run of the shipped patterns [s]. */
const LONGEST_WAIT = 6 * 60;
const CONTROL = { timeout: PATIENCE_MS } as const;

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
  /** On the kit's plate; that of a petrol kit of the demo station where nothing else is said. */
  serial: string | undefined;
  /** Lines that may be left out are. */
  leavesOut = false;

  constructor(page: Page, pattern: Pattern, clock: AdjustableClock, seal: string) {
    this.page = page;
    this.pattern = pattern;
    this.clock = clock;
    this.seal = seal;
  }

  /** Line shown now; undefined once every line is answered. */
  async line(): Promise<number | undefined> {
    return lineOf(`|${await this.page.getByRole("heading", { level: 1 }).innerText()}`);
  }

  /** Answers line after line as seen, until this line is shown, or until none is left. */
  async workTo(until?: number): Promise<void> {
    await this.isOpen();
    for (let asked = 0; asked < 400; asked += 1) {
      const shown = await this.page.evaluate(whatIsAsked);
      const line = lineOf(shown);
      if (line === undefined || line === until) return;
      await this.answer(shown);
    }
    throw new Error("The turnaround does not come to an end.");
  }

  /** Waits until the turnaround is on the screen: opening one is written down first. */
  private async isOpen(): Promise<void> {
    const isShown = async (): Promise<boolean> =>
      (await this.line()) !== undefined || isPastLines(await this.page.evaluate(whatIsAsked));
    await vi.waitUntil(isShown, { ...CONTROL, interval: 20 });
  }

  /** Answers what was asked; does nothing more once another thing is asked, so that no line is answered unread. */
  private async answer(before: string): Promise<void> {
    await this.readDates();
    if (this.leavesOut && (await this.leaveOut())) return this.movedOn(before);
    await this.fitWhatIsNew();
    await this.runClock();
    if (await this.measureDelivery()) return;
    if ((await this.page.evaluate(whatIsAsked)) !== before) return;
    const goOn = this.page.getByRole("button", { name: "Go on", exact: true });
    if (await goOn.isVisible()) await this.pressIfThere(goOn);
    else {
      await this.read();
      await this.page.evaluate(scrollThroughGroup);
      await this.press(await this.firstAnswer());
    }
    await this.movedOn(before);
  }

  /** The first answer, by what it says now: what stands in its place at the next line is another answer. */
  private async firstAnswer(): Promise<Locator> {
    const answers = this.page.locator(".answer-bar button");
    const said = await answers.first().innerText(CONTROL);
    return answers.filter({ hasText: said.split("\n", 1)[0]! }).first();
  }

  /** Taps what may go away by itself: a line that was just answered goes on, and what is fitted is fitted one by one. */
  private pressIfThere(control: Locator): Promise<void> {
    return this.tapUnless(control, async () => !(await control.isVisible()));
  }

  /** Reads what a control says and taps it, again and again, unless that has become moot meanwhile. */
  private async tapUnless(control: Locator, isMoot: () => Promise<boolean>): Promise<void> {
    await this.clock.look(this.page);
    for (const end = Date.now() + PATIENCE_MS; ;) {
      const missed = await control.click({ timeout: 5000 }).catch((cause: unknown) => cause);
      if (missed === undefined || (await becomes(isMoot))) return;
      if (Date.now() > end)
        throw new Error(`Not tapped at ${await this.page.evaluate(whatIsAskedAndOver)}`, { cause: missed });
    }
  }

  /** Passes by a line that may be left out; true where this is one. */
  private async leaveOut(): Promise<boolean> {
    const leave = this.page.getByRole("button", { name: /^Leave this out/ });
    if (!(await leave.isVisible())) return false;
    await this.press(leave);
    return true;
  }

  /** The drum timed twice, as the pattern's own figures would have it; true where that answered the line. */
  private async measureDelivery(): Promise<boolean> {
    if (!(await this.page.locator(".answer-bar").getByText("Measure the delivery first.").isVisible())) return false;
    const form = this.page.locator("section.measure");
    await form.getByLabel("Rise", { exact: true }).waitFor(CONTROL);
    const before = await this.page.evaluate(whatIsAsked);
    const last = form.getByRole("button", { name: /^Rigged as last time/ });
    if (await last.isVisible()) await this.tapUntil(last, form.getByLabel("The drum holds"));
    else await fillRig(form);
    await fillDelivery(form, this.pattern);
    await this.press(form.getByRole("button", { name: /^Write the measurement down/ }));
    await this.movedOn(before);
    return true;
  }

  /** Taps until what it brings is there: a tap before the control has stood long enough to be read does nothing. */
  private async tapUntil(control: Locator, brought: Locator): Promise<void> {
    const isThere = (): Promise<boolean> => brought.isVisible();
    while (!(await isThere())) {
      await this.tapUnless(control, isThere);
      await becomes(isThere);
    }
  }

  /**
   * Reads what a control says, then taps it once. Where another thing is asked afterwards it is moot: lines answered
   * together are written one by one and may end meanwhile, and on a busy machine a tap reported as missed may have told.
   */
  async press(control: Locator): Promise<void> {
    const asked = await this.page.evaluate(whatIsAsked);
    await this.tapUnless(control, () => this.asksOtherThan(asked));
  }

  /** Taps what goes away once it has told, and may lead on to another line. */
  private async pressOnce(control: Locator): Promise<void> {
    const asked = await this.page.evaluate(whatIsAsked);
    await this.tapUnless(control, async () => (await this.asksOtherThan(asked)) || !(await control.isVisible()));
  }

  /** A list that was answered shows its first answer for a moment, before the line after it: that is not asked. */
  private async asksOtherThan(before: string): Promise<boolean> {
    const asked = await this.page.evaluate(whatIsAsked);
    if (isPastLines(asked)) return true;
    return asked !== before && !(await this.page.locator("main .answered").isVisible());
  }

  /** Dates not on record of what is in the hand here: fitted last year. */
  private async readDates(): Promise<void> {
    for (const date of await this.page.getByRole("region", { name: /^Date of / }).all()) {
      if (!(await date.getByRole("button", { name: "Looked: no date can be read" }).isVisible())) continue;
      await date.getByText("When it was fitted").click(CONTROL);
      await date.getByLabel("Month, 1 to 12").first().fill("1");
      await date
        .getByLabel("Year, four figures")
        .first()
        .fill(String(new Date().getFullYear() - 1));
      await date.getByRole("button", { name: "Keep this date" }).click(CONTROL);
      await date.getByRole("button", { name: "Read it again" }).waitFor(CONTROL);
    }
  }

  /** A new one fitted for everything this step renews. */
  private async fitWhatIsNew(): Promise<void> {
    for (const fitting of await this.page.locator("section.fitting").all()) {
      const fit = fitting.getByRole("button", { name: "New one fitted today" });
      if (!(await fit.isVisible())) continue;
      const date = fitting.getByRole("group", { name: /^Date printed/ });
      if ((await date.count()) > 0) await this.fillDate(date);
      await this.pressIfThere(fit);
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
    const press = (name: string | RegExp): Promise<void> => this.pressOnce(clock.getByRole("button", { name }));
    const has = (name: string | RegExp): Promise<boolean> => clock.getByRole("button", { name }).isVisible();
    if (await has(/^Start the .* (wait|run)$/)) {
      await press(/^Start the/);
      await clock.getByRole("timer").waitFor(CONTROL);
      await this.clock.pass(this.page, LONGEST_WAIT);
      await clock.getByText(/^Long enough/).waitFor(CONTROL);
    } else if (await has(/^First stroke/)) {
      await press(/^First stroke/);
      await clock.getByRole("timer").waitFor(CONTROL);
      await this.clock.pass(this.page, 31);
      const before = await this.page.evaluate(whatIsAsked);
      await press(/^Water$/);
      await this.movedOn(before);
    } else if (await has(/^Pull 1$/)) {
      const before = await this.page.evaluate(whatIsAsked);
      await press("Started on pull 2");
      await this.movedOn(before);
    }
  }

  /** Waits until another thing is asked than was; goes on from a line that is part of a proof still to be ended. */
  private async movedOn(before: string): Promise<void> {
    const goOn = this.page.locator("main .answered").getByRole("button", { name: "Go on", exact: true });
    const hasGoneOn = async (): Promise<boolean> => {
      if (await goOn.isVisible()) await this.pressIfThere(goOn);
      return this.asksOtherThan(before);
    };
    await vi.waitUntil(hasGoneOn, { ...CONTROL, interval: 20 }).catch((cause: unknown) => {
      throw new Error(`It does not go on from ${before}`, { cause });
    });
  }

  /** The check on the screen, known by its words: what to do and what right looks like. */
  private async checkAsked(): Promise<Check | undefined> {
    const [asked, expected] = await this.page.evaluate(() =>
      [".ask-do", ".ask-expect"].map((name) => document.querySelector<HTMLElement>(name)?.innerText ?? ""),
    );
    return this.pattern.checks.find(({ ask, expect }) => ask === asked && expected?.includes(expect));
  }

  /** A reading by the keys under its box where they are shown, else typed. */
  private async readNumber(ask: Locator, reading: string): Promise<void> {
    const keys = ask.getByRole("group", { name: "Number keys" });
    const figures = reading.split(" ", 1)[0]!;
    if (!(await keys.isVisible())) return ask.getByLabel("Reading", { exact: true }).fill(reading);
    for (const figure of figures) await keys.getByRole("button", { name: figure, exact: true }).click(CONTROL);
  }

  /** Fills in what the check asked now wants read, as right. */
  private async read(): Promise<void> {
    const check = await this.checkAsked();
    if (!check) return;
    const ask = this.page.locator("section.ask");
    const isLookedAt = check.kind === "measure" && check.once && (await ask.locator(".ask-last").isVisible());
    if (check.kind === "measure" && !isLookedAt) await this.readNumber(ask, rightReading(check));
    if (check.kind === "date") await this.fillDate(ask.getByRole("group", { name: "Date printed on it" }));
    const isReadBefore = await this.page.locator(".answer-bar").getByText("as before").isVisible();
    if (check.kind === "match" && !check.against && !isReadBefore)
      await ask.getByLabel(check.first, { exact: true }).fill(check.reads === "quarters" ? "4/4" : "BR-07");
    if (check.kind === "match" && check.against === "recorded-serial")
      await ask.getByLabel(check.first, { exact: true }).fill(this.serial ?? serialAt(this.page));
  }
}

/** The line that is asked; undefined once every line is answered. */
function lineOf(asked: string): number | undefined {
  const number = /^\|Line (\d+)(?!\d)/.exec(asked)?.[1];
  return number === undefined ? undefined : Number(number);
}

/** True at the sealing, where no line is left to answer. */
function isPastLines(asked: string): boolean {
  return asked.startsWith("?at=done");
}

/** Whether it is so at once, or within two seconds: what was told is written to the disk before the line goes on. */
async function becomes(isSo: () => Promise<boolean>): Promise<boolean> {
  return vi.waitUntil(isSo, { timeout: 2000, interval: 50 }).then(
    () => true,
    () => false,
  );
}

/** In the page: what one tap answers together is read to its end. */
export function scrollThroughGroup(): void {
  document.querySelector(".look-group > :last-child")?.scrollIntoView({ block: "center" });
}

/** In the page: where the runner stands, and the words of a dialog that lies over it. */
function whatIsAskedAndOver(): string {
  const over = document.querySelector("[role=dialog], [role=alertdialog]")?.textContent ?? "nothing";
  return `${location.search}, ${document.querySelector("h1")?.textContent}, under ${over}`;
}

/**
 * In the page: what the runner asks, by what is painted and never by the address, which goes on first. Changes only when
 * it has moved on.
 */
function whatIsAsked(): string {
  const done = location.search.startsWith("?at=done") ? "?at=done" : "";
  const words = ["h1", ".ask-do, .look-group"].map((name) => document.querySelector(name)?.textContent ?? "");
  return [done, ...words].join("|");
}
