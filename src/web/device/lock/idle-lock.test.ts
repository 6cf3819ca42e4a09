import { describe, expect, it } from "vitest";
import { FIRST_IDLE, IdleShelf, isLeftIdle, isLooser, type IdleChoice } from "./idle-lock.ts";

const MINUTE = 60_000;
const T0 = Date.UTC(2027, 2, 14, 10);
const quiet = { touched: T0, isSheetOpen: false, clocks: [] };
const choice = (part: Partial<IdleChoice>): IdleChoice => ({ ...FIRST_IDLE, ...part });

function shelf(kept: Record<string, string> = {}) {
  const all = new Map(Object.entries(kept));
  return {
    getItem: (key: string) => all.get(key) ?? null,
    setItem: (key: string, text: string) => void all.set(key, text),
  };
}

describe("a device with a lock that nobody uses", () => {
  it("locks itself after a quarter of an hour, and not a moment before", () => {
    expect(isLeftIdle(FIRST_IDLE, quiet, T0 + 15 * MINUTE - 1)).toBe(false);
    expect(isLeftIdle(FIRST_IDLE, quiet, T0 + 15 * MINUTE)).toBe(true);
  });

  it("goes by the time that was chosen, and stays open where none was", () => {
    expect(isLeftIdle(choice({ minutes: 5 }), quiet, T0 + 5 * MINUTE)).toBe(true);
    expect(isLeftIdle(choice({ minutes: 60 }), quiet, T0 + 59 * MINUTE)).toBe(false);
    expect(isLeftIdle(choice({ minutes: 0 }), quiet, T0 + 1e6 * MINUTE)).toBe(false);
  });

  it("stays open while a casualty sheet is, unless the person said otherwise", () => {
    const sheet = { ...quiet, isSheetOpen: true };
    expect(isLeftIdle(FIRST_IDLE, sheet, T0 + 600 * MINUTE)).toBe(false);
    expect(isLeftIdle(choice({ always: true }), sheet, T0 + 15 * MINUTE)).toBe(true);
  });

  it("counts from the end of a running clock, unless the person said otherwise", () => {
    const waits = { ...quiet, clocks: [T0 + 2 * MINUTE, T0 + 40 * MINUTE] };
    expect(isLeftIdle(FIRST_IDLE, waits, T0 + 40 * MINUTE)).toBe(false);
    expect(isLeftIdle(FIRST_IDLE, waits, T0 + 55 * MINUTE - 1)).toBe(false);
    expect(isLeftIdle(FIRST_IDLE, waits, T0 + 55 * MINUTE)).toBe(true);
    expect(isLeftIdle(choice({ always: true }), waits, T0 + 15 * MINUTE)).toBe(true);
  });
});

describe("what a device keeps about being used", () => {
  it("is a choice that holds through a reload; what makes no sense falls back, field by field", () => {
    const drawer = shelf();
    new IdleShelf(drawer).choose({ minutes: 60 });
    new IdleShelf(drawer).choose({ always: true });
    expect(new IdleShelf(drawer).read()).toEqual({ minutes: 60, always: true });
    const odd = shelf({ "drykeel.lock-idle": '{"minutes":7,"always":true}' });
    expect(new IdleShelf(odd).read()).toEqual({ minutes: 15, always: true });
    expect(new IdleShelf(shelf({ "drykeel.lock-idle": "{broken" })).read()).toEqual(FIRST_IDLE);
    expect(new IdleShelf(shelf({ "drykeel.lock-idle": "null" })).read()).toEqual(FIRST_IDLE);
  });

  it("is the last touch in any window", () => {
    const drawer = shelf();
    const [here, there] = [new IdleShelf(drawer), new IdleShelf(drawer)];
    here.touch(T0);
    there.touch(T0 + 9 * MINUTE);
    expect(here.touched(T0 + 10 * MINUTE)).toBe(T0 + 9 * MINUTE);
  });

  it("counts from now where the clock was set back, and where nothing was kept", () => {
    const drawer = shelf({ "drykeel.touched": String(T0 + 999 * MINUTE) });
    expect(new IdleShelf(drawer).touched(T0)).toBe(T0);
    expect(new IdleShelf(drawer).touched(T0 + MINUTE)).toBe(T0);
    expect(new IdleShelf(shelf({ "drykeel.touched": "noon" })).touched(T0)).toBe(T0);
  });
});

describe("a looser lock", () => {
  it.each([
    [{ minutes: 5 }, { minutes: 15 }, true],
    [{ minutes: 60 }, { minutes: 0 }, true],
    [{ minutes: 0 }, { minutes: 60 }, false],
    [{ minutes: 15 }, { minutes: 5 }, false],
    [{ minutes: 15 }, { minutes: 15 }, false],
    [{ always: true }, { always: false }, true],
    [{ always: false }, { always: true }, false],
  ] as const)("is one that locks later, not at all, or not while a sheet is open: %o, then %o", (one, other, is) => {
    expect(isLooser(choice(one), choice(other))).toBe(is);
  });
});
