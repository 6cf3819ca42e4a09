import { describe, expect, it } from "vitest";
import { pinWeakness, PIN_RULE, PIN_SHAPE } from "./pin-rule.ts";

describe("a new PIN", () => {
  it.each(["482913", "123457", "112233", "481592637048"])("may be %s", (pin) => {
    expect(pinWeakness(pin)).toBeUndefined();
  });

  it.each([
    ["48291", "fewer than 6 figures"],
    ["", "fewer than 6 figures"],
    ["4829134829134", "more than 12 figures"],
    ["48291a", "something other than figures"],
    ["777777", "the same figure throughout"],
    ["123456", "figures in a row"],
    ["3456789", "figures in a row"],
    ["987654", "figures in a row"],
  ])("may not be %s: it has %s", (pin, weakness) => {
    expect(pinWeakness(pin)).toBe(weakness);
  });

  it("has a rule in words that names the numbers it is held to", () => {
    const [least, most] = /\{(\d+),(\d+)\}/.exec(PIN_SHAPE.source)!.slice(1);
    expect(PIN_RULE).toContain(`${least} to ${most} figures`);
    for (const named of PIN_RULE.match(/\d{6}/g) ?? []) expect(pinWeakness(named)).toBe("figures in a row");
  });
});
