import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { BrowserContext, Page } from "playwright-core";
import type { CasualtyHand } from "../../test/journeys/support/casualty-hand.ts";
import type { Gaps, SoundingTap } from "./page-side.ts";

/** Between soundings that stay, and between those taken back [s]. */
const APART = 120;
const AGAIN = 10;

/** Puts the bench's own script into every page to come. */
export async function prepare(device: BrowserContext): Promise<void> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL("page-side.ts", import.meta.url))],
    bundle: true,
    format: "iife",
    write: false,
  });
  await device.addInitScript(outputFiles[0]!.text);
}

/** The longest gaps of the page's thread since they were last read. */
export async function readGaps(page: Page): Promise<Gaps> {
  return page.evaluate(() => window.bench.readGaps());
}

/** Round trips of a question to the app's own worker, one input after another [ms]. */
export async function timeAnswers(page: Page, name: string, inputs: readonly object[]): Promise<readonly number[]> {
  const times: number[] = [];
  for (const input of inputs)
    times.push(await page.evaluate((asked) => window.bench.timeAnswer(asked), { name, input }));
  return times;
}

/** Opens a casualty's sheet: the app has then begun its question worker. */
export async function openSheet(hand: CasualtyHand, name: string): Promise<void> {
  await hand.askBeforeLaunch("Motor boat", "9 m", "5 nmi");
  await hand.openSheet(name);
  await hand.sound(40);
  await hand.verdictFrom(1);
}

/** Sounds until the sheet has so many soundings; the water rises ever slower, as it does. */
export async function bringTo(hand: CasualtyHand, from: number, count: number): Promise<void> {
  for (let soundings = from + 1; soundings <= count; soundings += 1) {
    await hand.clock.pass(hand.page, APART);
    await soundOnce(hand.page, {
      step: soundings < 8 ? "Higher by 5 cm" : "Higher by 1 cm",
      soundings,
      isUndone: false,
    });
  }
  await hand.clock.pass(hand.page, APART);
}

/** From taps that write a sounding to the frames with its verdict [ms]; each is taken back before the next. */
export async function timeSoundings(hand: CasualtyHand, soundings: number, times: number): Promise<readonly number[]> {
  const taken: number[] = [];
  for (let k = 0; k < times; k += 1) {
    await hand.clock.pass(hand.page, AGAIN);
    taken.push(await soundOnce(hand.page, { step: "Higher by 1 cm", soundings, isUndone: true }));
  }
  return taken;
}

async function soundOnce(page: Page, sounding: SoundingTap): Promise<number> {
  return page.evaluate((one) => window.bench.timeSounding(one), sounding);
}

/** Slows the page's own thread by a factor. It leaves workers as they are: the browser offers nothing for those. */
export async function slowPage(page: Page, rate: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
}
