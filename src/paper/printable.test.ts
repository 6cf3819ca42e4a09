import { describe, expect, it } from "vitest";
import { printable } from "./printable.ts";

describe("text for paper", () => {
  it("keeps what the typeface has", () => {
    const text =
      "Pump 2: 89 % of 468 L/min at 2 m\u00b2, \u2212 3 \u00b0C, J\u00f3n \u00de\u00f3rsson \u201cfast\u201d";
    expect(printable(text)).toBe(text);
  });

  it("writes out units that the typeface lacks", () => {
    expect(printable("1.15\u00a0M\u03a9, at least 0.5 \u2126")).toBe("1.15\u00a0Mohm, at least 0.5 ohm");
  });

  it("prints every name, without the marks it lacks", () => {
    expect(printable("\u017deljko \u0141uczak \u0110or\u0111e \u0160ime")).toBe("Zeljko Luczak Dorde Sime");
    expect(printable("\u6d77 \u5cf6")).toBe("? ?");
  });
});
