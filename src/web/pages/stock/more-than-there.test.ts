import type { PartShelf } from "#readiness";
import { describe, expect, it } from "vitest";
import { fewerThere } from "./more-than-there.ts";

const shelf = (...lots: readonly object[]) => ({ lots }) as unknown as PartShelf;

describe("taking more than is there by the record", () => {
  it("is told with how many there are; of a lot, how many of that lot", () => {
    expect(fewerThere(shelf({ count: 1 }), undefined, 99)).toBe(1);
    const two = shelf({ count: 5, lot: "L1" }, { count: 2, lot: "L2" }, { count: 3 });
    expect(fewerThere(two, "L2", 3)).toBe(2);
    expect(fewerThere(two, "", 4)).toBe(3);
    expect(fewerThere(shelf({ count: -2 }), undefined, 1)).toBe(0);
  });

  it("is nothing to be told where there are enough", () => {
    expect(fewerThere(shelf({ count: 5 }), undefined, 5)).toBeUndefined();
    expect(fewerThere(shelf({ count: 5 }), undefined, undefined)).toBeUndefined();
  });
});
