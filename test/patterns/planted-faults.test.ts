import { mayBePlanted, modesOf, type Pattern } from "#kit";
import { describe, expect, it } from "vitest";
import { SHIPPED_FILES, shippedPattern } from "./shipped-patterns.ts";

/* What may be planted in a drill, over every shipped pattern. */

const PATTERNS = SHIPPED_FILES.map((name) => shippedPattern(name.replace(".yaml", "")));
const modes = (pattern: Pattern, may: boolean) =>
  pattern.items.flatMap(({ id }) => modesOf(pattern, id).filter((mode) => mayBePlanted(pattern, mode) === may));

describe("faults that may be planted", () => {
  it("are none that let petrol out or meet electricity with water", () => {
    const [barred, offered] = [false, true].map((may) =>
      PATTERNS.flatMap((one) => modes(one, may).map(({ id }) => id)),
    );
    for (const id of ["tank-seam-leaks", "fuel-hose-cracked", "coupling-o-ring-cut"]) expect(barred).toContain(id);
    for (const id of ["cable-damaged", "rcd-does-not-trip", "pump-insulation-low"]) expect(barred).toContain(id);
    for (const id of ["plug-gap-wrong", "torch-dead"]) expect(offered).toContain(id);
  });

  it.each(PATTERNS)("are most of those of $name: a drill has something to plant", (pattern) => {
    expect(modes(pattern, true).length).toBeGreaterThan(modes(pattern, false).length);
  });
});
