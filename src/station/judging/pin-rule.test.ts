import { describe, expect, it } from "vitest";
import { pinWeakness, PIN_RULE, PIN_SHAPE } from "./pin-rule.ts";

describe("a new PIN", () => {
  it.each(["482913", "123457", "112233", "481592637048"])("may be %s", (pin) => {
    expect(pinWeakness(pin)).toBeUndefined();
  });

  it.each([
    ["48291", "too short"],
    ["", "too short"],
    ["4829134829134", "too long"],
    ["48291a", "not figures"],
    ["777777", "one figure"],
    ["123456", "in a row"],
    ["3456789", "in a row"],
    ["987654", "in a row"],
  ])("may not be %s: %s", (pin, weakness) => {
    expect(pinWeakness(pin)).toBe(weakness);
  });

  it("has a rule in words that names the numbers it is held to", () => {
    const [least, most] = /\{(\d+),(\d+)\}/.exec(PIN_SHAPE.source)!.slice(1);
    expect(PIN_RULE).toContain(`${least} to ${most} figures`);
    for (const named of PIN_RULE.match(/\d{6}/g) ?? []) expect(pinWeakness(named)).toBe("in a row");
  });
});
