import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import type { StandingInWords, StandingKind } from "#readiness";
import { sayKitDoubt } from "./kit-doubt.ts";

const words = await fetchWords("en", "sheetPumps");

const standing = (kind: StandingKind, ...because: readonly string[]): StandingInWords => ({
  standing: kind,
  because: because.map((text) => ({ rule: "finding", text })),
  limits: kind === "ready-with-limits" ? ["At half throttle only."] : [],
  restore: { what: [], minutes: 0 },
});

describe("what to know of a kit before it goes across", () => {
  it("is the first reason why it is grounded", () => {
    expect(sayKitDoubt(standing("grounded", "Pump: seized.", "Fuel out of date."), words)).toBe(
      "Grounded: Pump: seized.",
    );
  });

  it("is the first of its limits", () => {
    expect(sayKitDoubt(standing("ready-with-limits", "Pump: scratched."), words)).toBe(
      "Ready with limits: At half throttle only.",
    );
  });

  it("is nothing where it is ready, or away already", () => {
    expect(sayKitDoubt(standing("ready", "Sealed, in date and proved."), words)).toBeUndefined();
    expect(sayKitDoubt(standing("away", "Handed over."), words)).toBeUndefined();
  });
});
