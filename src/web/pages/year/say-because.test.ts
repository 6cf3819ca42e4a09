import { expect, it } from "vitest";
import { sayBecause } from "./say-because.ts";

const NAMED = [
  { id: "br-04", name: "Pump 4" },
  { id: "north", name: "Boathouse" },
  { id: "ines-dunmore", name: "Ines Dunmore" },
];

it("why a plan falls short names kits, places and people, and this week, as people do", () => {
  const text =
    "Fuel of br-04 has lapsed in the week of 12 January 2026. With two more hours a week of ines-dunmore, 2 instead of 3. " +
    "With one more kit at north, nothing falls short and nothing lapses.";
  expect(sayBecause(text, NAMED, "2026-01-12")).toBe(
    "Fuel of Pump 4 has lapsed in this week. With two more hours a week of Ines Dunmore, 2 instead of 3. " +
      "With one more kit at Boathouse, nothing falls short and nothing lapses.",
  );
});
