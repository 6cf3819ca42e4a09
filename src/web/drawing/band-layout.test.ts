import { describe, expect, it } from "vitest";
import { dayPlaces, fitLabel, fitWord, layOutBands } from "./band-layout.ts";

describe("bands laid out", () => {
  it("puts labels beside the bars on a desk and above them on a phone", () => {
    expect(layOutBands(1000, 3)).toMatchObject({ isNarrow: false, left: 208 });
    const phone = layOutBands(358, 3);
    expect(phone).toMatchObject({ isNarrow: true, left: 1 });
    expect(phone.months).toBeLessThan(layOutBands(1000, 3).months);
    expect(phone.barTop).toBeGreaterThan(20);
  });

  it("grows by a row's height for each row", () => {
    const { rowHeight, height } = layOutBands(1000, 10);
    expect(layOutBands(1000, 11).height - height).toBe(rowHeight);
  });

  it("gives the last day its own width", () => {
    const at = dayPlaces("2026-01-01", "2026-01-10", 0, 100);
    expect(at("2026-01-01")).toBe(0);
    expect(at("2026-01-10")).toBe(90);
  });
});

describe("words in a drawing", () => {
  it("shortens a label that is too long, and says so", () => {
    expect(fitLabel("Pump 4", 200)).toBe("Pump 4");
    expect(fitLabel("All-weather boat, port locker", 100)).toBe("All-weathe\u2026");
  });

  it("leaves out a word that does not fit", () => {
    expect(fitWord("Ready with limits", 60)).toBe("");
    expect(fitWord("Ready", 60)).toBe("Ready");
  });
});
