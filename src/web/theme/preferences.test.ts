import { describe, expect, test } from "vitest";
import { PreferenceKeeper, readPreferences } from "./preferences.ts";

function drawer(first: string | null = null) {
  let text = first;
  return { getItem: () => text, setItem: (_: string, next: string) => void (text = next) };
}

describe("preferences", () => {
  test("begin by day, in metric units", () => {
    expect(readPreferences(null)).toEqual({ palette: "day", nightLevel: 0.75, units: "metric" });
  });

  test("fall back field by field where what was kept makes no sense", () => {
    expect(readPreferences("not json")).toEqual(readPreferences(null));
    expect(readPreferences('{"palette":"night","nightLevel":7,"units":"cubits"}')).toEqual({
      palette: "night",
      nightLevel: 0.75,
      units: "metric",
    });
  });

  test("are kept for the next time, and told to whoever listens", () => {
    const storage = drawer();
    const keeper = new PreferenceKeeper(storage);
    let heard = 0;
    const stop = keeper.hear(() => (heard += 1));
    keeper.change({ units: "us" });
    stop();
    keeper.change({ palette: "night" });
    expect(heard).toBe(1);
    expect(new PreferenceKeeper(storage).now()).toEqual({ palette: "night", nightLevel: 0.75, units: "us" });
  });
});
