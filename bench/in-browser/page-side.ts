// What the bench does inside the app's page: bundled into one script that every page runs before the app does.
import { wrap, type Remote } from "comlink";
import type { AskDesk } from "../../src/web/worker/ask-worker.ts";

/** The longest the page was kept from its next turn, as it sees it itself on the clock [ms]. */
export interface Gaps {
  /** Between two turns of a timer that asks for the next over and over; the browser's least is 4 ms. */
  readonly turn: number;
  /** Between two animation frames; 17 ms at rest. */
  readonly frame: number;
}

/** One sounding on the sheet: by which step from the last, how many it makes, and whether it is taken back after. */
export interface SoundingTap {
  readonly step: "Higher by 5 cm" | "Higher by 1 cm";
  readonly soundings: number;
  readonly isUndone: boolean;
}

declare global {
  interface Window {
    bench: {
      readGaps(): Promise<Gaps>;
      timeAnswer(asked: { readonly name: string; readonly input: object }): Promise<number>;
      timeSounding(sounding: SoundingTap): Promise<number>;
    };
  }
}

const NONE: Gaps = { turn: 0, frame: 0 };
const last = { turn: performance.now(), frame: performance.now() };
const desks: Remote<AskDesk>[] = [];
let longest = NONE;

/** The longest gaps since they were last read. */
async function readGaps(): Promise<Gaps> {
  await nextFrame();
  const read = longest;
  longest = NONE;
  return read;
}

function note(what: keyof Gaps): void {
  const now = performance.now();
  longest = { ...longest, [what]: Math.max(longest[what], now - last[what]) };
  last[what] = now;
}

function countTurns(): void {
  note("turn");
  setTimeout(countTurns, 0);
}

function countFrames(): void {
  note("frame");
  requestAnimationFrame(countFrames);
}

/** Keeps a line of its own to every worker the app begins. */
class KeptWorker extends Worker {
  constructor(url: string | URL, options?: WorkerOptions) {
    super(url, options);
    desks.push(wrap<AskDesk>(this));
  }
}

/** A question's round trip to the app's own worker [ms]. */
async function timeAnswer({ name, input }: { readonly name: string; readonly input: object }): Promise<number> {
  const desk = desks.at(-1);
  if (desk === undefined) throw new Error("The app has begun no worker.");
  const begun = performance.now();
  const outcome = await desk.ask(name, input);
  if (outcome.kind !== "answered") throw new Error(`Not answered: ${JSON.stringify(outcome)}`);
  return performance.now() - begun;
}

/**
 * From the tap that writes a sounding to the first frame with its verdict [ms]. By the page itself: looking for a button
 * from outside costs its thread more than the app does, and no alarm that calls meanwhile stands in the way.
 */
async function timeSounding({ step, soundings, isUndone }: SoundingTap): Promise<number> {
  await tap(new RegExp(`^${step}$`));
  await until(() => isReady(/: sounded now$/));
  const tapped = performance.now();
  await tap(/: sounded now$/);
  await until(() => isFrom(soundings));
  const took = performance.now() - tapped;
  if (isUndone) await undo(soundings - 1);
  return took;
}

async function undo(left: number): Promise<void> {
  await tap(/^Undo$/);
  await until(() => isFrom(left) && button(/^Undo$/) === undefined);
}

async function tap(words: RegExp): Promise<void> {
  await until(() => isReady(words));
  button(words)!.click();
}

function button(words: RegExp): HTMLButtonElement | undefined {
  return [...document.querySelectorAll("button")].find((one) =>
    words.test(one.getAttribute("aria-label") ?? one.textContent ?? ""),
  );
}

const isReady = (words: RegExp): boolean => button(words)?.disabled === false;

/** Any of the small lines under the verdict: where the soundings do not fit there are two. */
const isFrom = (soundings: number): boolean =>
  [...document.querySelectorAll(".verdict-age")].some((line) =>
    line.textContent?.includes(`from ${soundings} sounding`),
  );

/** Until the page says so, and has drawn it. */
async function until(isSo: () => boolean): Promise<void> {
  await new Promise<void>((resolve) => {
    const seen = new MutationObserver(() => isSo() && resolve(seen.disconnect()));
    seen.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
    if (isSo()) resolve(seen.disconnect());
  });
  await nextFrame();
}

async function nextFrame(): Promise<void> {
  await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
}

window.Worker = KeptWorker;
window.bench = { readGaps, timeAnswer, timeSounding };
countTurns();
countFrames();
