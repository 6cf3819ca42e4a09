import type { BrowserContext, Page } from "playwright-core";
import type { RunningStation } from "./station.ts";
import { PATIENCE_MS } from "./patience.ts";

/** Signs in as one of the demo's people; done when the whole log and the app itself are on the device. */
export async function signIn(page: Page, station: RunningStation, name: string): Promise<void> {
  await page.goto(`${station.url}/sign-in`);
  await page.getByRole("button", { name: new RegExp(name) }).click();
  await page.getByRole("navigation", { name: "Station" }).waitFor();
  await page.getByRole("link", { name: "All sent" }).waitFor();
  await holdsLog(page);
  await holdsApp(page);
}

/** Hands the device on from its settings; done when it asks who uses it next. Leaving sooner would cut the sign-out off. */
export async function signOut(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Sign out, leave what is here" }).click();
  await page.getByRole("heading", { name: /^Sign in at/ }).waitFor();
}

/** Waits until everything written on the device is with the station; says what the mark says instead where it is not. */
export async function allSent(page: Page, patience = PATIENCE_MS): Promise<void> {
  const sent = page.getByRole("link", { name: "All sent" });
  await sent.waitFor({ timeout: patience }).catch(async (cause: unknown) => {
    throw new Error(`Not all sent: the mark says "${await page.locator("a.send-mark").first().innerText()}"`, {
      cause,
    });
  });
}

/** Waits until the board comes from the log itself: a new device shows the station's summary first. */
async function holdsLog(page: Page): Promise<void> {
  await page.getByText("This is the station's summary.").waitFor({ state: "detached" });
}

/** Waits until the service worker serves this page, so that it opens without a network. */
export async function holdsApp(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) => navigator.serviceWorker.addEventListener("controllerchange", resolve));
  });
}

/** A device whose clock starts behind and can be put forward, so that waits pass without the test waiting. */
export interface AdjustableClock {
  /** Lets so many seconds pass on the device, in every page of it. */
  pass(page: Page, seconds: number): Promise<void>;
  /** Lets the time of a look pass in this page, once what is new in it has been painted. */
  look(page: Page): Promise<void>;
}

/**
 * Puts the device's clock behind; what passes never overtakes the real clock, so the station takes every line.
 *
 * @param behind - how far behind it starts [s]
 */
export async function slowClock(device: BrowserContext, behind: number): Promise<AdjustableClock> {
  await device.addInitScript(`{
    const Real = Date, offset = () => 1000 * (Number(localStorage.getItem("test.passed") ?? 0) - ${behind});
    globalThis.Date = class extends Real {
      constructor(...given) { if (given.length) super(...given); else super(Real.now() + offset()); }
      static now() { return Real.now() + offset(); }
    };
    const running = performance.now.bind(performance);
    globalThis.testLooked = 0;
    performance.now = () => running() + globalThis.testLooked;
  }`);
  let passed = 0;
  return {
    pass: async (page, seconds) => {
      passed += seconds;
      if (passed > behind)
        throw new Error(`The test wants ${passed} s to pass and the device is only ${behind} s behind.`);
      await page.evaluate((text) => localStorage.setItem("test.passed", text), String(passed));
    },
    look: (page) =>
      page.evaluate(`(async () => {
      for (let frame = 0; frame < 4; frame += 1) await new Promise(requestAnimationFrame);
      globalThis.testLooked += 1000;
    })()`),
  };
}
