import { describe, expect, it } from "vitest";
import { lastingSpanFault } from "./span.ts";

describe("a span that something takes or keeps for", () => {
  it.each([
    ["1 day", undefined],
    ["6 weeks", undefined],
    ["P6M", undefined],
    ["100 years", undefined],
    ["0 days", "none"],
    ["-2 days", "none"],
    ["soon", "none"],
    ["", "none"],
    ["101 years", "too-long"],
    ["36526 days", "too-long"],
  ])("%s: %s", (text, fault) => {
    expect(lastingSpanFault(text)).toBe(fault);
  });
});
