import type { Entry } from "#log";
import { describe, expect, it } from "vitest";
import { SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import type { KitState } from "../state.ts";
import { movesProposed } from "./moves/moves-proposed.ts";
import { isLeadSupposed } from "./lead-time.ts";
import { arrivalOf, openOrders, orderList } from "./order-list.ts";
import { blankPart, PartDraft } from "./part-draft.ts";
import { applyToPart } from "./part-fold.ts";
import type { StockPart } from "./part-state.ts";
import { lotsUsed, usedPerYear } from "./part-use.ts";
import { partShelf, stockOf } from "./shelves.ts";

const TODAY = "2026-06-01";
const CELLS = {
  number: "1",
  name: "Cells",
  unit: "piece",
  leadTime: "6 weeks",
  cost: 2.5,
  printed: false,
  keep: [],
  items: [{ pattern: "sample", item: "cells" }],
};
const MARK = { entry: "e", at: "2026-01-01T08:00:00Z", by: "ann", device: "tablet" };

/** A kit whose cells are good to the end of October 2026. */
const KIT: KitState = {
  id: "k1",
  name: "Kit 1",
  serial: "S1",
  place: "north",
  pattern: "sample@1",
  enrolled: MARK,
  contents: { cells: { item: "cells", fitted: "2026-01-01", printed: "2026-10", quantity: 1, mark: MARK } },
  seals: [],
  findings: [],
  turnarounds: [],
  custody: { kind: "here" },
  runs: [],
  toSettle: [],
  heads: [],
};

type Line = readonly [kind: string, at: string, body: object];

function partOf(lines: readonly Line[], setting: object = CELLS): StockPart {
  const draft = new PartDraft(blankPart("part:cell"));
  for (const [index, [kind, day, body]] of ([["part-set", "2026-01-01", setting], ...lines] as Line[]).entries()) {
    const mark = { id: `e${index}`, at: `${day}T08:00:00Z`, by: "ann", device: "tablet", place: "station" };
    applyToPart(draft, { ...mark, subject: "part:cell", kind, body } as Entry);
  }
  return draft.release();
}

function listOf(lines: readonly Line[], { kit = KIT, setting = CELLS as object } = {}) {
  const parts = [partOf(lines, setting)];
  const stock = stockOf(parts, [kit]);
  const patterns = new Map([["sample@1", SAMPLE_PATTERN]]);
  return orderList({ parts, kits: [kit], patterns, policy: {}, stock, today: TODAY, days: 365 });
}

const received = (count: number, more: object = {}): Line => [
  "stock-received",
  "2026-03-01",
  { place: "north", count, day: "2026-03-01", ...more },
];

const order = (expected: string): Line => [
  "stock-ordered",
  "2026-05-01",
  { order: "o1", place: "north", count: 1, day: "2026-05-01", expected },
];

const asked = (lines: readonly Line[], setting: object = CELLS) => {
  const parts = [partOf(lines, setting)];
  const patterns = new Map([["sample@1", SAMPLE_PATTERN]]);
  return { parts, kits: [KIT], patterns, policy: {}, stock: stockOf(parts, [KIT]), today: TODAY, days: 365 };
};

const south = (count: number): Line => ["stock-received", "2026-03-01", { place: "south", count, day: "2026-03-01" }];

const movesOf = (lines: readonly Line[], setting?: object) => {
  const of = asked(lines, setting);
  return movesProposed(of, orderList(of), ["north", "south"]).map(({ from, to, count }) => `${count} ${from} ${to}`);
};

describe("a move between shelves that spares an order", () => {
  it("is proposed from a place that has more than it needs, of no more than the other wants", () => {
    expect(movesOf([south(3)])).toEqual(["1 south north"]);
    expect(movesOf([])).toEqual([]);
    expect(movesOf([received(1), south(3)])).toEqual([]);
  });

  it("leaves a place what is to be kept there", () => {
    const keep = { ...CELLS, keep: [{ place: "south", least: 3 }] };
    expect(movesOf([south(3)], keep)).toEqual([]);
    expect(movesOf([south(4)], { ...keep, keep: [...keep.keep, { place: "north", least: 2 }] })).toEqual([
      "1 south north",
    ]);
  });
});

describe("what must be ordered by which day", () => {
  it("counts back the lead time from the last day on which the item is good", () => {
    expect(listOf([])).toMatchObject([{ place: "north", count: 1, want: "2026-10-31", by: "2026-09-19", cost: 2.5 }]);
    expect(listOf([received(1)])).toEqual([]);
  });

  it("supposes seven days where nobody said how long a part takes", () => {
    const { leadTime: _, ...unsaid } = CELLS;
    expect(listOf([], { setting: unsaid })).toMatchObject([{ want: "2026-10-31", by: "2026-10-24" }]);
    const ordered = { id: "o1", place: "north", count: 1, day: TODAY, closed: false };
    expect(arrivalOf(partOf([], unsaid), ordered)).toBe("2026-06-08");
    expect(arrivalOf(partOf([], unsaid), { ...ordered, expected: "2026-07-01" })).toBe("2026-07-01");
    expect([isLeadSupposed(partOf([])), isLeadSupposed(partOf([], unsaid))]).toEqual([false, true]);
  });

  it("counts what is on order, by the day on which it is promised, and waits no longer for a closed one", () => {
    expect(listOf([order("2026-10-01")])).toEqual([]);
    expect(listOf([order("2026-12-01")])).toMatchObject([{ want: "2026-10-31", onOrder: 1 }]);
    const closed: Line = ["order-closed", "2026-05-02", { order: "o1", reason: "Sold out." }];
    expect(listOf([order("2026-10-01"), closed])).toMatchObject([{ count: 1, onOrder: 0 }]);
    expect(openOrders([partOf([order("2026-10-01"), received(1, { order: "o1" })])])).toEqual([]);
  });

  it("orders nothing twice: what is on order counts towards what is to be kept, and where ordering anew is no sooner", () => {
    const keep = { setting: { ...CELLS, keep: [{ place: "north", least: 3 }] } };
    expect(listOf([received(3), order("2026-12-01")], keep)).toEqual([]);
    expect(listOf([received(2)], keep)).toMatchObject([{ count: 2 }]);
    expect(listOf([received(2), order("2026-07-01")], keep)).toMatchObject([{ count: 1, onOrder: 1 }]);
    const used: Line = ["stock-used", "2026-05-01", { place: "north", count: 1, day: "2026-05-01", note: "n" }];
    const late = listOf([used, order("2026-12-01")]);
    expect(late, "a new one would be here in July").toMatchObject([{ want: TODAY, onOrder: 1 }]);
  });

  it("counts neither what is recalled nor what will have spoilt on the shelf", () => {
    const recalled: Line = ["lot-recalled", "2026-05-01", { lot: "L1", reason: "Leaks.", effect: "notes" }];
    expect(listOf([received(1, { lot: "L1" }), recalled])).toMatchObject([{ count: 1, usable: 0 }]);
    expect(listOf([received(1, { printed: "2026-08" })])).toMatchObject([{ count: 1, usable: 1, want: "2026-10-31" }]);
    const shelfLife = { setting: { ...CELLS, shelfLife: "6 months" } };
    expect(listOf([received(1)], shelfLife)).toMatchObject([{ count: 1, want: "2026-10-31" }]);
  });

  it("keeps what is to be kept, wants today what is owed already, and is late where the lead time is longer", () => {
    const keep = { setting: { ...CELLS, keep: [{ place: "north", least: 3 }] } };
    expect(listOf([received(2)], keep)).toMatchObject([{ count: 2, want: TODAY, by: "2026-04-20", least: 3 }]);
    const used: Line = ["stock-used", "2026-05-01", { place: "north", count: 2, day: "2026-05-01", note: "n" }];
    expect(listOf([used])).toMatchObject([{ count: 3, want: TODAY, usable: -2 }]);
  });

  it("wants now what a finding waits for", () => {
    const finding = {
      id: "f1",
      item: "cells",
      mode: "cells-old",
      effect: "grounds",
      photos: [],
      raised: MARK,
    } as const;
    const kit: KitState = { ...KIT, findings: [{ ...finding, remedies: [] }] };
    expect(listOf([], { kit })).toMatchObject([{ want: TODAY, needs: [{ because: "finding", kit: "Kit 1" }] }]);
  });
});

const DESICCANT = { ...CELLS, name: "Desiccant", items: [{ pattern: "sample", item: "desiccant" }] };

const needed = (kit: KitState, setting: object) => listOf([], { kit, setting }).map(({ needs }) => needs);

describe("what is due already", () => {
  it("wants at once what was never renewed, and what the opening of a grounded kit uses up", () => {
    const one = { day: TODAY, count: 1, kit: "Kit 1" };
    expect(needed(KIT, DESICCANT)).toMatchObject([[{ ...one, because: "lapses" }]]);
    const fitted = { item: "desiccant", fitted: "2026-01-01", quantity: 1, mark: MARK };
    const renewed = { ...KIT, contents: { ...KIT.contents, desiccant: fitted } };
    expect(needed(renewed, DESICCANT), "its first turnaround is to be done").toMatchObject([
      [{ ...one, because: "opening" }],
    ]);
  });

  it("wants at once what has a date that cannot be read, and not what somebody has still to read", () => {
    const undated = { ...KIT, contents: {} };
    expect(needed(undated, CELLS)).toEqual([]);
    const cannot = { ...undated, dates: { cells: { item: "cells", cannot: true as const, mark: MARK } } };
    expect(needed(cannot, CELLS)).toMatchObject([[{ day: TODAY, because: "lapses" }]]);
  });

  it("is not forgotten where another kit took more from the shelf than was there", () => {
    const turnaround = { id: "t1", opened: MARK, pattern: "sample@1", answers: {} };
    const open = { ...KIT, name: "Kit 2", id: "k2", turnaround: turnaround as unknown as KitState["turnaround"] };
    const kits = [open as KitState, KIT];
    const used: Line = ["stock-used", "2026-05-01", { place: "north", count: 1, day: "2026-05-01", note: "n" }];
    const parts = [partOf([used], { ...DESICCANT, keep: [{ place: "north", least: 2 }] })];
    const patterns = new Map([["sample@1", SAMPLE_PATTERN]]);
    const stock = stockOf(parts, []);
    const lines = orderList({ parts, kits, patterns, policy: {}, stock, today: TODAY, days: 31 });
    expect(lines).toMatchObject([{ want: TODAY, usable: -1, count: 5 }]);
    expect(lines[0]!.needs.map(({ kit, day }) => [kit, day])).toEqual([
      ["Kit 2", TODAY],
      ["Kit 1", TODAY],
    ]);
  });
});

const use = (day: string, count: number, kit?: string): Line => [
  "stock-used",
  day,
  { place: "north", count, day, note: "n", ...(kit && { kit, item: "cell" }) },
];

const drawn = (day: string, turnaround: string) => {
  return {
    ...MARK,
    entry: `${day}${turnaround}`,
    at: `${day}T10:00:00Z`,
    part: "cell",
    place: "north",
    item: "cell",
    count: 2,
    turnaround,
  };
};

describe("what is used in a year", () => {
  it("is used together by one kit on one day, and one by one else", () => {
    const lines = [use("2026-04-01", 2, "k1"), use("2026-04-01", 1, "k1"), use("2026-04-01", 3, "k2")];
    const parts = [partOf([received(9), ...lines, use("2026-04-02", 1), use("2026-04-02", 1)])];
    expect(lotsUsed([partShelf(stockOf(parts, []), "cell", "north")])).toEqual([
      { size: 1, times: 2 },
      { size: 3, times: 2 },
    ]);
  });

  it("is wanted piece by piece where a line names no kit: it may stand for months of work", () => {
    const parts = [partOf([received(40), use("2026-04-01", 30)])];
    expect(lotsUsed([partShelf(stockOf(parts, []), "cell", "north")])).toEqual([{ size: 1, times: 30 }]);
  });

  it("is wanted together where it went into one kit in one turnaround, over days, and apart in two on one day", () => {
    const uses = [drawn("2026-04-01", "t1"), drawn("2026-04-02", "t1"), drawn("2026-04-02", "t2")];
    const kit = { ...KIT, drawn: uses } as unknown as KitState;
    expect(lotsUsed([partShelf(stockOf([partOf([received(40)])], [kit]), "cell", "north")])).toEqual([
      { size: 2, times: 1 },
      { size: 4, times: 1 },
    ]);
  });

  it("is told by the record, once there are 90 days of it", () => {
    const used: Line = ["stock-used", "2026-04-01", { place: "north", count: 2, day: "2026-04-01", note: "n" }];
    const parts = [partOf([received(9), used])];
    const shelf = partShelf(stockOf(parts, []), "cell", "north");
    expect(usedPerYear([shelf], "2026-05-01")).toBeUndefined();
    expect(usedPerYear([shelf], "2027-03-01")).toBeCloseTo(2, 1);
  });
});
