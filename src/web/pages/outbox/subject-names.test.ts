import { describe, expect, it } from "vitest";
import { fetchWords } from "#words";
import type { StationView } from "#web/device/index.ts";
import { sayAbout } from "./subject-names.ts";

const words = await fetchWords("en", "outbox");
const named = (id: string, name: string) => [{ id, name }] as never;
const VIEW: Parameters<typeof sayAbout>[0] = {
  kits: named("k1", "Pump 3"),
  retired: named("k0", "Pump 1"),
  people: named("ann", "Ann Hale"),
  places: named("north", "North quay"),
  boats: named("b1", "Inshore boat"),
  parts: [],
  qualifications: named("q1", "Proof run"),
  casualties: named("01a2", "Grey motor boat"),
} satisfies Partial<StationView>;

describe("what a line is about", () => {
  it.each([
    ["kit:k1", "Pump 3"],
    ["kit:k0", "Pump 1"],
    ["place:north", "North quay"],
    ["person:ann", "Ann Hale"],
    ["boat:b1", "Inshore boat"],
    ["qualification:q1", "Proof run"],
    ["casualty:01a2", "Grey motor boat"],
  ])("is its name: %s", (subject, name) => {
    expect(sayAbout(VIEW, subject, words)).toBe(name);
  });

  it("is in words where this device does not know it, and as it stands where nobody does", () => {
    expect(sayAbout(VIEW, "casualty:gone", words)).toBe("a casualty this device does not know");
    expect(sayAbout(VIEW, "station", words)).toBe("the station");
    expect(sayAbout(VIEW, "odd:thing", words)).toBe("odd:thing");
  });
});
