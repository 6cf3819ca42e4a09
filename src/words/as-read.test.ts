import { parseQuantity, type Dimension } from "#base";
import { describe, expect, it } from "vitest";
import { sayAsRead } from "./as-read.ts";

const said = (text: string, dimension: Dimension) =>
  (["metric", "us"] as const).map((units) => sayAsRead({ text, dimension, si: parseQuantity(text, dimension) }, units));

describe("a reading as it was entered", () => {
  it("has the reader's own unit beside it where it was entered in another, by the foot of NIST SP 811, 0.3048 m", () => {
    expect(said("1.23 m", "length")).toEqual(["1.23 m", "1.23 m (4.04\u00a0ft)"]);
    expect(said("2 ft 6 in", "length")).toEqual(["2 ft 6 in (0.762\u00a0m)", "2 ft 6 in"]);
    expect(said("3½ in", "length")).toEqual(["3½ in (88.9\u00a0mm)", "3½ in"]);
    expect(said("50 cm", "length")).toEqual(["50 cm", "50 cm (1.64\u00a0ft)"]);
    expect(said("5 L/min", "flow")).toEqual(["5 L/min", expect.stringMatching(/^5 L\/min \(1\.32\s.*gpm\)$/)]);
  });

  it("stands alone where both read it in one unit", () => {
    expect(said("12.6 V", "voltage")).toEqual(["12.6 V", "12.6 V"]);
    expect(said("40 s", "time")).toEqual(["40 s", "40 s"]);
  });
});
