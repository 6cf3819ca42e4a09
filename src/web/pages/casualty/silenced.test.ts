import { describe, expect, it } from "vitest";
import { SilencedAlarms } from "./silenced.ts";

function shelfWith(text?: string) {
  const kept = new Map<string, string>(text === undefined ? [] : [["drykeel.casualty-silenced", text]]);
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

describe("silenced alarms", () => {
  it("stay silenced through a reload", () => {
    const shelf = shelfWith();
    new SilencedAlarms(shelf).silence("c1 sound s1 5");
    expect(new SilencedAlarms(shelf).keys()).toEqual(["c1 sound s1 5"]);
  });

  it("are told to whoever hears, and the oldest are forgotten", () => {
    const alarms = new SilencedAlarms(shelfWith());
    let heard = 0;
    alarms.hear(() => (heard += 1));
    for (let n = 0; n < 60; n += 1) alarms.silence(`k${n}`);
    expect(heard).toBe(60);
    expect(alarms.keys()).toHaveLength(50);
    expect(alarms.keys().at(-1)).toBe("k59");
  });

  it("are none where what was kept cannot be read", () => {
    expect(new SilencedAlarms(shelfWith("{broken")).keys()).toEqual([]);
    expect(new SilencedAlarms(shelfWith('{"a":1}')).keys()).toEqual([]);
  });
});
