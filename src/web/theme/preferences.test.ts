import { describe, expect, test } from "vitest";
import { PreferenceKeeper, readLooks } from "./preferences.ts";

function drawer() {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  };
}

describe("preferences", () => {
  test("begin by day, in metric units", () => {
    expect(new PreferenceKeeper(drawer()).now()).toEqual({
      palette: "day",
      nightLevel: 0.75,
      units: "metric",
      language: "en",
    });
  });

  test("fall back field by field where what was kept makes no sense", () => {
    expect(readLooks("not json")).toEqual(readLooks(null));
    expect(readLooks('{"palette":"night","nightLevel":7}')).toEqual({ palette: "night", nightLevel: 0.75 });
  });

  test("are told to whoever listens, until they stop", () => {
    const keeper = new PreferenceKeeper(drawer());
    let heard = 0;
    const stop = keeper.hear(() => (heard += 1));
    keeper.change({ palette: "night" });
    stop();
    keeper.change({ palette: "day" });
    expect(heard).toBe(1);
  });

  test("are kept for the next time: units with the person, colours with the device", () => {
    const storage = drawer();
    const first = new PreferenceKeeper(storage);
    first.seat("ana");
    first.change({ units: "us", palette: "night" });
    const second = new PreferenceKeeper(storage);
    expect(second.now()).toEqual({ palette: "night", nightLevel: 0.75, units: "metric", language: "en" });
    second.seat("ben");
    expect(second.now()).toEqual({ palette: "night", nightLevel: 0.75, units: "metric", language: "en" });
    second.change({ palette: "day" });
    second.seat("ana");
    expect(second.now()).toEqual({ palette: "day", nightLevel: 0.75, units: "us", language: "en" });
  });
});
