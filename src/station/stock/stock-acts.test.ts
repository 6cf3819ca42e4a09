import { describe, expect, it } from "vitest";
import { holdersOf, isBehindSeal, onShelf, partShelf, stockOf, standingOf, type PartSetting } from "#readiness";
import { enrolKit } from "../acts/kit-acts.ts";
import { makeRemedy, raiseFinding } from "../acts/finding-acts.ts";
import { strikeEntry } from "../acts/station-acts.ts";
import { closeGrounded, fitItem, openTurnaround } from "../acts/turnaround-acts.ts";
import { effectsOfTaking } from "../acts/finding-effect.ts";
import { Desk, foldInPieces, refusalsOf, SMALL_PATTERN } from "../sample-station.ts";
import { robItem, setShelves } from "./shelf-acts.ts";
import * as stock from "./stock-acts.ts";

const CELLS: PartSetting = {
  number: "100",
  name: "Cell, size D",
  unit: "piece",
  leadTime: "6 weeks",
  printed: false,
  keep: [{ place: "north", least: 2 }],
  items: [{ pattern: "small", item: "cells" }],
};
const NORTH = { place: "north", count: 4, day: "2026-01-10" };
const FITTED = { item: "cells", fitted: "2026-01-10", printed: "2028-01", quantity: 2, turnaround: "t1", step: "stow" };
const FROM_NORTH = { drawn: { part: "cell", place: "north", lot: "L1" } };

function desk(): Desk {
  const made = new Desk();
  for (const [kit, serial] of [
    ["k1", "S-1"],
    ["k2", "S-2"],
  ] as const) {
    const body = {
      name: kit,
      serial,
      items: [{ item: "cells", fitted: "2026-01-01", printed: "2027-03", quantity: 2 }],
    };
    made.do(enrolKit(made.as("ann"), { kit, place: "north", pattern: "small@1", body }));
  }
  made.do(stock.setPart(made.as("ann"), "cell", CELLS));
  return made;
}

function opened(): Desk {
  const made = desk();
  made.do(openTurnaround(made.as("ben"), made.kit(), { turnaround: "t1", because: "routine", sealSeen: "" }));
  made.do(stock.receiveStock(made.as("ben"), "cell", { ...NORTH, lot: "L1" }));
  return made;
}

function onNorth(made: Desk, part = "cell"): number {
  const { parts, kits } = made.fold.read();
  return partShelf(stockOf(parts, kits), part, "north").count;
}

describe("a seal off the shelf", () => {
  const SEALS = { ...CELLS, number: "101", name: "Seal", keep: [], items: [{ pattern: "small", item: "pump" }] };
  const taken = { item: "pump", fitted: "2026-01-10", quantity: 1, turnaround: "t1", step: "stow" } as const;

  it("is used only where one was fitted: a kit closed as grounded without a seal took none", () => {
    const made = opened();
    made.do(stock.setPart(made.as("ann"), "seals", SEALS));
    const cells = { ...FITTED, ...FROM_NORTH };
    made.do(fitItem(made.as("ben"), made.kit(), cells));
    made.do(fitItem(made.as("ben"), made.kit(), { ...taken, drawn: { part: "seals", place: "north" } }));
    expect(onNorth(made, "seals")).toBe(-1);
    made.do(closeGrounded(made.as("ann"), made.kit(), { turnaround: "t1", reason: "Part on order." }));
    expect(onNorth(made, "seals")).toBe(0);
    expect(onNorth(made)).toBe(2);
  });

  it("is put back by a closing as grounded whether the lines come one by one or all at once", () => {
    const made = new Desk();
    made.do(stock.setPart(made.as("ann"), "seals", SEALS));
    const body = { name: "k1", serial: "S-1", items: [] };
    const lines = [
      made.do(enrolKit(made.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body })),
      made.do(openTurnaround(made.as("ben"), made.kit(), { turnaround: "t1", because: "routine", sealSeen: "" })),
      made.do(fitItem(made.as("ben"), made.kit(), { ...taken, drawn: { part: "seals", place: "north" } })),
      made.do(closeGrounded(made.as("ann"), made.kit(), { turnaround: "t1", reason: "Part on order." })),
    ];
    for (const size of [1, 4]) expect(foldInPieces(lines, size).kit("k1")?.drawn, `${size} at once`).toEqual([]);
  });
});

describe("a shelf", () => {
  it("holds what came, less what was used, scrapped and moved; a count is the truth from then on", () => {
    const made = desk();
    made.do(stock.receiveStock(made.as("ben"), "cell", NORTH));
    made.do(stock.takeStock(made.as("ben"), "cell", { ...NORTH, count: 1, note: "For the torch." }));
    made.do(stock.scrapStock(made.as("ben"), "cell", { ...NORTH, count: 1, reason: "Leaked." }));
    made.do(stock.moveStock(made.as("ben"), "cell", { from: "north", to: "south", count: 1, day: "2026-01-10" }));
    expect(onNorth(made)).toBe(1);
    made.do(
      stock.countStock(made.as("cat"), "cell", { place: "north", found: [{ count: 3 }, { lot: "L1", count: 2 }] }),
    );
    expect(onNorth(made)).toBe(5);
  });

  it("may fall below none, and says so", () => {
    const made = desk();
    made.do(stock.takeStock(made.as("ben"), "cell", { ...NORTH, count: 1, note: "Last one." }));
    const { parts, kits } = made.fold.read();
    expect(onShelf(stockOf(parts, kits), "north", ["cell", "none"], "2026-01-10")).toEqual([
      { part: "cell", count: -1, usable: -1 },
      { part: "none", count: 0, usable: 0 },
    ]);
  });

  it("refuses what cannot be: no such part, a delivery of none or less, days before the count or ahead", () => {
    const made = desk();
    const receive = (change: object, part = "cell") =>
      refusalsOf(stock.receiveStock(made.as("ben"), part, { ...NORTH, ...change }));
    expect(receive({}, "nothing")).toEqual(["SN-191"]);
    expect(receive({ count: -3 })).toEqual(["RD-102"]);
    expect(receive({ count: 0 })).toEqual(["RD-102"]);
    expect(receive({ day: "2026-01-11" })).toEqual(["SN-120"]);
    expect(receive({ place: "nowhere" })).toEqual(["SN-104"]);
    expect(receive({ order: "o1" })).toEqual(["SN-196"]);
    made.do(stock.countStock(made.as("ben"), "cell", { place: "north", found: [] }));
    expect(receive({ day: "2026-01-09" })).toEqual(["SN-192"]);
    expect(receive({})).toEqual([]);
  });

  it("asks for the printed date of what carries one", () => {
    const made = desk();
    made.do(stock.setPart(made.as("ann"), "cell", { ...CELLS, printed: true }));
    expect(refusalsOf(stock.receiveStock(made.as("ben"), "cell", NORTH))).toEqual(["SN-197"]);
    expect(refusalsOf(stock.receiveStock(made.as("ben"), "cell", { ...NORTH, printed: "2028-01" }))).toEqual([]);
  });
});

describe("the list of parts", () => {
  it("has each number and name once, for items that patterns have", () => {
    const made = desk();
    expect(refusalsOf(stock.setPart(made.as("ann"), "other", CELLS))).toEqual(["SN-190", "SN-190"]);
    const strange = { ...CELLS, items: [{ pattern: "small", item: "anchor" }] };
    expect(refusalsOf(stock.setPart(made.as("ann"), "cell", strange))).toEqual(["SN-118"]);
    expect(refusalsOf(stock.setPart(made.as("ben"), "cell", CELLS))).toEqual(["SN-103"]);
  });

  it("lets a part go once no shelf holds any", () => {
    const made = opened();
    expect(refusalsOf(stock.retirePart(made.as("ann"), "cell", "Not sold."))).toEqual(["SN-195"]);
    made.do(stock.countStock(made.as("ann"), "cell", { place: "north", found: [] }));
    made.do(stock.retirePart(made.as("ann"), "cell", "Not sold."));
    expect(refusalsOf(stock.receiveStock(made.as("ben"), "cell", NORTH))).toEqual(["SN-191"]);
  });
});

describe("a part that goes into a kit", () => {
  it("is off its shelf with the line that fits it, put right with it and back when that is struck", () => {
    const made = opened();
    made.do(fitItem(made.as("ben"), made.kit(), { ...FITTED, ...FROM_NORTH }));
    expect(onNorth(made)).toBe(2);
    const again = made.do(fitItem(made.as("ben"), made.kit(), { ...FITTED, printed: "2028-02", ...FROM_NORTH }));
    expect(onNorth(made)).toBe(2);
    made.do(strikeEntry(made.as("ann"), again, "slip"));
    expect(onNorth(made)).toBe(2);
    made.do(fitItem(made.as("ben"), made.kit(), FITTED));
    expect(onNorth(made)).toBe(4);
  });

  it("is off its shelf when a remedy names it", () => {
    const made = opened();
    const found = { finding: "f1", item: "cells", mode: "other", effect: "notes" as const, note: "Flat.", photos: [] };
    made.do(raiseFinding(made.as("ben"), made.kit(), found));
    const remedy = { finding: "f1", how: "replaced" as const, part: "Cell, size D", quantity: 1 };
    made.do(makeRemedy(made.as("ben"), made.kit(), { ...remedy, ...FROM_NORTH }));
    expect(onNorth(made)).toBe(3);
    const strange = { drawn: { part: "gone", place: "north" } };
    expect(refusalsOf(makeRemedy(made.as("ben"), made.kit(), { ...remedy, ...strange }))).toEqual(["SN-191"]);
  });

  it("exists, belongs to the item and is of no recalled lot", () => {
    const made = opened();
    const fit = (change: object) => refusalsOf(fitItem(made.as("ben"), made.kit(), { ...FITTED, ...change }));
    expect(fit({ drawn: { part: "gone", place: "north" } })).toEqual(["SN-191"]);
    expect(fit({ item: "pump", ...FROM_NORTH })).toEqual(["SN-193"]);
    made.do(stock.recallLot(made.as("ann"), "cell", { lot: "l 1", reason: "They leak.", effect: "grounds" }));
    expect(fit(FROM_NORTH)).toEqual(["SN-194"]);
    expect(refusalsOf(stock.recallLot(made.as("ann"), "cell", { lot: "L1", reason: "x", effect: "notes" }))).toEqual([
      "SN-199",
    ]);
  });

  it("is found by its lot in every kit and on every shelf", () => {
    const made = opened();
    made.do(fitItem(made.as("ben"), made.kit(), { ...FITTED, ...FROM_NORTH }));
    made.do(fitItem(made.as("ben"), made.kit("k2"), { ...FITTED, batch: "L1" }));
    const { parts, kits } = made.fold.read();
    const held = holdersOf({ part: parts[0]!, lot: "l1", kits, stock: stockOf(parts, kits) });
    expect(held.kits.map(({ kit, item }) => `${kit.id} ${item}`)).toEqual(["k1 cells", "k2 cells"]);
    expect(held.shelves.map(({ shelf, count }) => `${shelf.place} ${count}`)).toEqual(["north 2"]);
  });
});

describe("an item taken from one kit for another", () => {
  const ROBBED = {
    item: "cells",
    quantity: 2,
    to: "k2",
    finding: "f9",
    mode: "other",
    effect: "grounds" as const,
    note: "Taken for k2.",
  };

  it("leaves a finding on the one and a trail on both, and its dates with it", () => {
    const made = desk();
    const line = made.do(robItem(made.as("ben"), made.kit(), ROBBED));
    expect(made.kit().findings).toMatchObject([{ id: "f9", effect: "grounds", raised: { entry: line.id } }]);
    expect(made.kit().contents).toEqual({});
    expect(made.kit().robbed).toMatchObject([{ to: "k2", item: "cells" }]);
    made.do(fitItem(made.as("ben"), made.kit("k2"), { ...FITTED, robbed: "k1" }));
    expect(made.kit("k2").contents["cells"]).toMatchObject({ robbed: "k1" });
    made.do(strikeEntry(made.as("ann"), line, "Put back."));
    expect(made.kit()).toMatchObject({ findings: [], contents: { cells: { quantity: 2 } } });
  });

  it("does to the first no less than the worst that it can do by failing, and is fitted again, not mended", () => {
    const made = desk();
    for (const effect of ["notes", "limits"] as const)
      expect(refusalsOf(robItem(made.as("ben"), made.kit(), { ...ROBBED, effect }))).toEqual(["SN-138"]);
    expect(effectsOfTaking(SMALL_PATTERN, "cells")).toEqual(["grounds"]);
    made.do(robItem(made.as("ben"), made.kit(), ROBBED));
    const { standing, because, restore } = standingOf(made.kit(), SMALL_PATTERN, "2026-01-11", {});
    expect(standing).toBe("grounded");
    expect(because.map(({ said }) => said)).toContainEqual({ say: "finding", of: { name: "Cells: Taken for k2" } });
    expect(restore.what).toContainEqual({ say: "fitBack", of: { item: "Cells" } });
  });

  it("READY-45 out of a sealed kit breaks the seal: the kit has none until it is sealed anew", () => {
    const made = desk();
    const sealed = { name: "k3", serial: "S-3", seal: "00417", items: [] };
    made.do(enrolKit(made.as("ann"), { kit: "k3", place: "north", pattern: "small@1", body: sealed }));
    const line = made.do(robItem(made.as("ben"), made.kit("k3"), ROBBED));
    expect(made.kit("k3").seal).toBeUndefined();
    expect(made.kit("k3").seals.at(-1)).toMatchObject({ number: "00417", what: "broken", entry: line.id });
    const { because } = standingOf(made.kit("k3"), SMALL_PATTERN, "2026-01-11", {});
    expect(because.map(({ said }) => said)).toContainEqual({ say: "noSeal" });
    made.do(strikeEntry(made.as("ann"), line, "Written of the wrong kit."));
    expect(made.kit("k3").seal).toMatchObject({ number: "00417" });
  });

  it("READY-45 from outside leaves the seal whole", () => {
    const outside = { ...SMALL_PATTERN, items: SMALL_PATTERN.items.map((one) => ({ ...one, place: "outside" })) };
    const kit = { seal: { number: "00417", entry: "e", at: "2026-01-01T08:00:00Z", by: "ann", device: "tablet" } };
    expect(isBehindSeal(kit, outside, "cells")).toBe(false);
    expect(isBehindSeal(kit, SMALL_PATTERN, "cells")).toBe(true);
    expect(isBehindSeal(kit, undefined, "cells")).toBe(true);
  });

  it("is for another kit, and no more than the kit holds", () => {
    const made = desk();
    expect(refusalsOf(robItem(made.as("ben"), made.kit(), { ...ROBBED, to: "k1" }))).toEqual(["SN-201"]);
    expect(refusalsOf(robItem(made.as("ben"), made.kit(), { ...ROBBED, quantity: 3 }))).toEqual(["SN-202"]);
  });
});

describe("orders", () => {
  it("are waited for until they came whole, or are closed", () => {
    const made = desk();
    const order = { order: "o1", place: "north", count: 5, day: "2026-01-10" };
    expect(refusalsOf(stock.orderStock(made.as("ann"), "cell", { ...order, expected: "2026-01-01" }))).toEqual([
      "SN-198",
    ]);
    made.do(stock.orderStock(made.as("ann"), "cell", order));
    made.do(stock.receiveStock(made.as("ben"), "cell", { ...NORTH, order: "o1" }));
    made.do(stock.closeOrder(made.as("ann"), "cell", "o1", "The last one is not made any more."));
    expect(refusalsOf(stock.closeOrder(made.as("ann"), "cell", "o1", "again"))).toEqual(["SN-196"]);
  });
});

describe("shelves of a place", () => {
  it("hold its own kits, each once", () => {
    const made = desk();
    const set = (kits: readonly string[]) =>
      refusalsOf(setShelves(made.as("ann"), "north", [{ id: "a", name: "A", kits }]));
    expect(set(["k2", "k1"])).toEqual([]);
    expect(set(["k3"])).toEqual(["SN-200"]);
    expect(set(["k1", "k1"])).toEqual(["RD-102"]);
  });
});
