import { describe, expect, it } from "vitest";
import { sayProse } from "./prose.ts";

const us = (text: string) => sayProse(text, "us").replaceAll("\u00a0", " ");

describe("a sentence in the reader's own units", () => {
  it.each([
    ["Full, within 20 mm of the ring.", "Full, within 20 mm (0.79 in) of the ring."],
    ["0.7 to 0.8 mm for this engine.", "0.7 to 0.8 mm (0.028 to 0.031 in) for this engine."],
    ["5 L or more; less, and it leaks.", "5 L (1.3 US gal) or more; less, and it leaks."],
    ["It discharges 1.4 m above the keel.", "It discharges 1.4 m (4.6 ft) above the keel."],
    ["A flow of 250\u00a0L/min at 4 °C.", "A flow of 250 L/min (66.0 US gpm) at 4 °C (39 °F)."],
  ])("%j", (text, said) => {
    expect(us(text)).toBe(said);
    expect(sayProse(text, "metric")).toBe(text);
  });

  it.each(["A 13 mm spanner.", "Half an hour, 30 min.", "Kit 4 made ready.", "Soundings 5 m/s2.", "2 of 3 people."])(
    "leaves %j",
    (text) => expect(us(text)).toBe(text),
  );
});
