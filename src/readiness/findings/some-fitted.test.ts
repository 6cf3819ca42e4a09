import { describe, expect, it } from "vitest";
import type { Pattern } from "#kit";
import type { KitState } from "../state.ts";
import { datesOf } from "../kit/life.ts";
import { Hand, kitFrom, SAMPLE_PATTERN } from "../kit/sample-kit.ts";

const items = SAMPLE_PATTERN.items.map((item) => (item.id === "cells" ? { ...item, quantity: 2 } : item));
const TWO: Pattern = { ...SAMPLE_PATTERN, items };
const CELLS = items.find(({ id }) => id === "cells")!;

function kitOf({ entries }: Hand): KitState {
  return kitFrom(entries, new Map([["sample@1", TWO]]));
}

/** A kit with two cells, printed March 2027, of which some were found out of date. */
function found(): Hand {
  const hand = new Hand();
  const item = { item: "cells", fitted: "2026-01-10", printed: "2027-03", quantity: 2 };
  hand.write("kit-enrolled", { name: "Kit 1", serial: "S-1", seal: "00417", items: [item] });
  hand.write("finding-raised", { finding: "f", item: "cells", mode: "cells-old", effect: "grounds", photos: [] });
  return hand;
}

function replace(hand: Hand, quantity: number, printed: string): void {
  const fitted = { item: "cells", fitted: "2026-02-01", printed, quantity };
  hand.write("remedy-made", { finding: "f", how: "replaced", part: "Cells", quantity, fitted });
}

const datesIn = (hand: Hand) => datesOf(kitOf(hand), CELLS, TWO);

describe("one of two that is replaced", () => {
  it("leaves two, and the oldest date governs", () => {
    const hand = found();
    replace(hand, 1, "2029-06");
    expect(kitOf(hand).contents["cells"]).toMatchObject({ quantity: 2, fitted: "2026-01-10" });
    expect(datesIn(hand)).toMatchObject({ fitted: "2026-01-10", printed: "2027-03-31" });
  });

  it("takes the new one's date where that is the earlier", () => {
    const hand = found();
    replace(hand, 1, "2026-12");
    expect(datesIn(hand)).toMatchObject({ fitted: "2026-01-10", printed: "2026-12-31" });
  });

  it("takes the date that somebody reads off them afterwards", () => {
    const hand = found();
    replace(hand, 1, "2029-06");
    hand.write("date-read", { item: "cells", of: "printed", date: "2028-01" });
    expect(datesIn(hand)).toMatchObject({ printed: "2028-01-31" });
  });

  it("fills up what was short", () => {
    const hand = found();
    const robbed = { item: "cells", quantity: 1, to: "k2", finding: "f2", mode: "other", effect: "grounds" } as const;
    hand.write("item-robbed", { ...robbed, note: "Taken." });
    expect(kitOf(hand).contents["cells"]).toMatchObject({ quantity: 1 });
    replace(hand, 1, "2029-06");
    expect(kitOf(hand).contents["cells"]).toMatchObject({ quantity: 2 });
  });

  it("renews the item where both are replaced", () => {
    const hand = found();
    replace(hand, 2, "2029-06");
    expect(kitOf(hand).contents["cells"]).toMatchObject({ quantity: 2, fitted: "2026-02-01" });
    expect(datesIn(hand)).toMatchObject({ printed: "2029-06-30" });
  });
});
