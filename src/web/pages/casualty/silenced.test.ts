import { describe, expect, it } from "vitest";
import { SilencedAlarms } from "./silenced.ts";

function shelfWith(text?: string) {
  const kept = new Map<string, string>(text === undefined ? [] : [["drykeel.casualty-silenced", text]]);
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

function fullShelf(thrown: Error) {
  return {
    getItem: () => null,
    setItem: () => {
      throw thrown;
    },
  };
}

describe("silenced alarms", () => {
  it("stay silenced through a reload", () => {
    const shelf = shelfWith();
    new SilencedAlarms(shelf).silence("c1 sound s1 5");
    expect(new SilencedAlarms(shelf).read()).toEqual(["c1 sound s1 5"]);
  });

  it("are told to whoever hears, and the oldest are forgotten", () => {
    const alarms = new SilencedAlarms(shelfWith());
    let heard = 0;
    alarms.hear(() => (heard += 1));
    for (let n = 0; n < 60; n += 1) alarms.silence(`k${n}`);
    expect(heard).toBe(60);
    expect(alarms.read()).toHaveLength(50);
    expect(alarms.read().at(-1)).toBe("k59");
  });

  it("are silent on a device with no room to remember it", () => {
    const alarms = new SilencedAlarms(fullShelf(new DOMException("full", "QuotaExceededError")));
    const heard: (readonly string[])[] = [];
    alarms.hear(() => heard.push(alarms.read()));
    alarms.silence("k1");
    expect(heard).toEqual([["k1"]]);
  });

  it("are silent, and heard of, before anything else goes wrong", () => {
    const alarms = new SilencedAlarms(fullShelf(new TypeError("broken")));
    expect(() => alarms.silence("k1")).toThrow("broken");
    expect(alarms.read()).toEqual(["k1"]);
  });

  it("are those of every window of the device", () => {
    const shelf = shelfWith();
    const [here, there] = [new SilencedAlarms(shelf), new SilencedAlarms(shelf)];
    there.silence("k1");
    here.reread();
    expect(here.read()).toEqual(["k1"]);
  });

  it("are none where what was kept cannot be read", () => {
    expect(new SilencedAlarms(shelfWith("{broken")).read()).toEqual([]);
    expect(new SilencedAlarms(shelfWith('{"a":1}')).read()).toEqual([]);
  });
});
