import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { CasualtyHand } from "./support/casualty-hand.ts";
import { putCallsOff } from "./support/casualty-phone.ts";
import { enrolKit, setUpStation } from "./support/own-station.ts";
import { slowClock } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";
import { shippedPattern } from "./support/turnaround-hand.ts";

/** A station of one's own with a petrol, an electric and a diesel kit: each hazard once, where the hand is. In order. */

const KITS = { Petrol: "brinnet-450", Electric: "ossel-200", Diesel: "tarvock-900" } as const;
const NUMBERS = { Petrol: 1, Electric: 2, Diesel: 3 } as const;
type Kit = keyof typeof KITS;

const SMELL = "smell low, before any start or switch";
const FUMES = "exhaust downwind, clear of every hatch; nobody in the lee";
const HOSE = "cams closed and tied, hold the free end";
const CORD = "feet set, pull until it bites, then one long pull";
const MAINS = "dry hands, dry deck, through the cut-out; nobody in the water";
const KEY = "hands and sleeves clear, call out, then the key";
const LIFT = "4 people at the lift, 58 kg; one calls it";
const ALONE = "two, with a way out, and one on deck who calls";
const BATTERIES = "know where they are; nobody below once they are under";
const TOW = "slow; sound at once, and after each change of speed";
const ALL = [SMELL, FUMES, HOSE, CORD, MAINS, KEY, LIFT, ALONE, BATTERIES, TOW];

let browser: Browser;
let station: RunningStation;
let page: Page;
let hand: CasualtyHand;

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation(["--empty"])]);
  const phone = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const clock = await slowClock(phone, 3 * 3600);
  page = await phone.newPage();
  hand = new CasualtyHand(page, clock);
  await setUpStation(page, station);
  for (const name of Object.keys(KITS) as Kit[]) {
    const pattern = shippedPattern(KITS[name]);
    await enrolKit(page, station, { pattern, name, serial: `SN-${NUMBERS[name]}`, seal: `0041${NUMBERS[name]}` });
    await page.getByRole("heading", { level: 1, name }).waitFor();
  }
  await hand.askBeforeLaunch("Motor boat", "9 m", "Here");
  await hand.openSheet("Grey boat");
  await putCallsOff(page);
}, 240_000);

afterAll(async () => {
  await browser.close();
  await station.close();
});

/** What is in sight, each as often as it stands there. */
async function inSight(): Promise<readonly string[]> {
  const found = await Promise.all(
    ALL.map(async (words) => {
      const count = await page.getByText(words).filter({ visible: true }).count();
      return Array.from({ length: count }, () => words);
    }),
  );
  return found.flat();
}

async function choose(kit: Kit): Promise<void> {
  await hand.tap("One more pump");
  await hand.tap(new RegExp(`^${kit},`));
  await page.getByRole("group", { name: "How does it go across?" }).waitFor();
}

async function handOver(kit: Kit): Promise<void> {
  await hand.tap("On a line");
  await hand.tap(`${kit} handed over`);
  await hand.pump(kit).getByText("aboard, not started").waitFor();
}

async function waterComes(kit: Kit): Promise<void> {
  await hand.pump(kit).getByRole("button", { name: "Water comes" }).click();
  await hand
    .pump(kit)
    .getByText(/^pumping/)
    .waitFor();
}

describe("hazards on scene", () => {
  test("before anything is done are those of sounding her and of a tow", async () => {
    expect(await inSight()).toEqual([ALONE, BATTERIES, TOW]);
    await hand.sound(50);
    expect(await inSight()).toEqual([TOW]);
  });

  test("lifting stands beside the first kit that goes across", async () => {
    await choose("Petrol");
    expect(await inSight()).toEqual([LIFT, TOW]);
    await handOver("Petrol");
  });

  test("of a petrol kit: smell first, fumes, hose and cord, until water comes", async () => {
    expect(await inSight()).toEqual([SMELL, FUMES, HOSE, CORD, TOW]);
  });

  test("of an electric kit beside it: only what is its own, and no second warning of the lift", async () => {
    await choose("Electric");
    expect(await inSight()).toEqual([SMELL, FUMES, HOSE, CORD, TOW]);
    await handOver("Electric");
    expect(await inSight()).toEqual([SMELL, FUMES, HOSE, CORD, MAINS, TOW]);
    await waterComes("Petrol");
    expect(await inSight()).toEqual([MAINS, TOW]);
    await waterComes("Electric");
    expect(await inSight()).toEqual([TOW]);
  });

  test("of a diesel kit after both: only its key", async () => {
    await choose("Diesel");
    await handOver("Diesel");
    expect(await inSight()).toEqual([KEY, TOW]);
    await waterComes("Diesel");
  });

  test("of a pump that stopped: one line of them all, for the start to come", async () => {
    await hand.pump("Petrol").getByRole("button", { name: "Stopped" }).click();
    await hand
      .pump("Petrol")
      .locator("summary", { hasText: "Petrol not yet smelt, carbon monoxide, hose under pressure, starter kick" })
      .filter({ visible: true })
      .waitFor();
    expect(await inSight()).toEqual([TOW]);
  });

  test("of a tow: before it and in it, until she was sounded under way", async () => {
    await hand.tap("Under tow");
    await hand.written("taken in tow");
    expect(await inSight()).toEqual([TOW]);
    await hand.clock.pass(page, 30);
    await hand.sound(52);
    expect(await inSight()).toEqual([]);
    await page.locator("summary", { hasText: "Way through the water" }).filter({ visible: true }).waitFor();
  });
});
