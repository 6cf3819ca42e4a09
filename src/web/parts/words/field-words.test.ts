import { describe, expect, it } from "vitest";
import { fetchWords } from "#words";
import { sayField, sayGiven } from "./field-words.ts";

const words = await fetchWords("en", "parts");

describe("the field of a refusal, on a screen", () => {
  it.each([
    ["body.sealSeen", "Seal number as read"],
    ["body.until", "Until"],
    ["body.drawn.lot", "Lot"],
    ["body.findings.0.limit", "Limit"],
    ["body.checks.2.value", "Reading"],
    ["kit", "Kit"],
    ["suction.greatestLift", "Suction, greatest lift"],
    ["hull.stations[2].offsets", "Hull, stations, offsets"],
    ["readings.3.level", "Readings, level"],
  ])("%s is called %s", (field, name) => {
    expect(sayField(field, words)).toBe(name);
  });

  it.each(["body.turnaround", "body.step", "body.checks", "body", "by", "device", "subject", "kind", ""])(
    "%s is left out",
    (field) => {
      expect(sayField(field, words)).toBeUndefined();
    },
  );

  it("never shows a path or a name in one word of two", () => {
    for (const field of ["body.drawn.part", "vessel.compartments.0.floodableArea", "body.remedies.0.mode"])
      expect(sayField(field, words) ?? "").not.toMatch(/[._]|[a-z][A-Z]|\d/);
  });
});

describe("what was given, on a screen", () => {
  it("is said without marks of a program, and as nothing where nothing was", () => {
    expect(sayGiven('"2026-06-21"', words)).toBe("2026-06-21 was given");
    expect(sayGiven("12", words)).toBe("12 was given");
    expect(sayGiven("nothing", words)).toBe("nothing was given");
    expect(sayGiven('{"a":1}', words)).toBeUndefined();
  });
});
