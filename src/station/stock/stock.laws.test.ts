import fc from "fast-check";
import { STATION_PLACE, type Entry } from "#log";
import { partShelf, stockOf } from "#readiness";
import { describe, expect, it } from "vitest";
import { SMALL_PATTERN } from "../sample-station.ts";
import { createStationFold } from "../station-fold.ts";

const SEED = 20_270_314;
const SET = {
  number: "1",
  name: "Gasket",
  unit: "piece",
  printed: false,
  keep: [],
  items: [{ pattern: "small", item: "cells" }],
};
const PLACES = ["north", "south"] as const;

interface Doing {
  readonly device: string;
  readonly minute: number;
  readonly kind: string;
  readonly subject: string;
  readonly place: string;
  readonly body: object;
}

function lineOf({ device, minute, ...rest }: Doing, number: number): Entry {
  const at = new Date(Date.UTC(2027, 0, 10) + minute * 60_000).toISOString();
  const id = `01920000-0000-7000-8000-${number.toString(16).padStart(12, "0")}`;
  return { id, at, by: "ann", device, pattern: "small@1", ...rest };
}

const FOUNDED: readonly Entry[] = [
  { device: "a", minute: -9, kind: "part-set", subject: "part:gasket", place: STATION_PLACE, body: SET },
  ...["k1", "k2"].map((kit, index) => ({
    device: "a",
    minute: -8 + index,
    kind: "kit-enrolled",
    subject: `kit:${kit}`,
    place: "north",
    body: { name: kit, serial: kit, items: [] },
  })),
].map((line, index) => lineOf(line, 9_000 + index));

const device = fc.constantFrom("a", "b");
const minute = fc.integer({ min: 0, max: 3_000 });
const place = fc.constantFrom(...PLACES);
const count = fc.integer({ min: 1, max: 5 });
const lot = fc.option(fc.constantFrom("L1", "l1", "L2"), { nil: undefined });
const day = fc.constantFrom("2027-01-09", "2027-01-10", "2027-01-11");
const ofLot = (given: string | undefined) => (given === undefined ? {} : { lot: given });
const part = { subject: "part:gasket", place: STATION_PLACE };

const stockLine = fc
  .tuple(device, minute, fc.constantFrom("stock-received", "stock-used", "stock-scrapped"), place, count, lot, day)
  .map(([who, when, kind, where, many, of, on]) => {
    const words = kind === "stock-used" ? { note: "n" } : kind === "stock-scrapped" ? { reason: "r" } : {};
    return {
      device: who,
      minute: when,
      kind,
      ...part,
      body: { place: where, count: many, day: on, ...ofLot(of), ...words },
    };
  });
const countLine = fc.tuple(device, minute, place, count).map(([who, when, where, many]) => {
  return {
    device: who,
    minute: when,
    kind: "stock-counted",
    ...part,
    body: { place: where, found: [{ count: many }] },
  };
});
const moveLine = fc.tuple(device, minute, count, day).map(([who, when, many, on]) => {
  const body = { from: "north", to: "south", count: many, day: on };
  return { device: who, minute: when, kind: "stock-moved", ...part, body };
});
const fitLine = fc
  .tuple(device, minute, fc.constantFrom("k1", "k2"), fc.constantFrom("t1", "t2"), place, lot)
  .map(([who, when, kit, turnaround, where, of]) => {
    const drawn = { part: "gasket", place: where, ...ofLot(of) };
    const body = { item: "cells", fitted: "2027-01-10", quantity: 1, turnaround, drawn };
    return { device: who, minute: when, kind: "item-fitted", subject: `kit:${kit}`, place: "north", body };
  });
const lines = fc
  .array(fc.oneof(stockLine, countLine, moveLine, fitLine), { maxLength: 30 })
  .map((all) => [...FOUNDED, ...all.map(lineOf)]);

const fittedIn = (turnaround: string) => ({
  item: "cells",
  fitted: "2027-01-10",
  quantity: 1,
  turnaround,
  drawn: { part: "gasket", place: "north" },
});

function shelves(entries: readonly Entry[], piece: number) {
  const fold = createStationFold([SMALL_PATTERN]);
  for (let at = 0; at < entries.length; at += piece) fold.add(entries.slice(at, at + piece));
  const { parts, kits } = fold.read();
  return PLACES.map((one) => partShelf(stockOf(parts, kits), "gasket", one));
}

describe("shelves that two devices write of", () => {
  it("are the same in whatever order and pieces the lines arrive", () => {
    const mixed = lines.chain((all) =>
      fc.tuple(
        fc.constant(all),
        fc.shuffledSubarray([...all], { minLength: all.length }),
        fc.integer({ min: 1, max: 9 }),
      ),
    );
    fc.assert(
      fc.property(mixed, ([all, shuffled, piece]) => {
        expect(shelves(shuffled, piece)).toEqual(shelves(all, all.length));
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it("hold, where nobody counted, all that came less all that went: no line of either device is lost", () => {
    const uncounted = fc
      .array(fc.oneof(stockLine, moveLine), { maxLength: 30 })
      .map((all) => [...FOUNDED, ...all.map(lineOf)]);
    fc.assert(
      fc.property(uncounted, (all) => {
        const came = all.reduce((sum, { kind, body }) => {
          const many = (body as { count?: number }).count ?? 0;
          return kind === "stock-received" ? sum + many : kind === "stock-moved" || many === 0 ? sum : sum - many;
        }, 0);
        expect(shelves(all, 7).reduce((sum, shelf) => sum + shelf.count, 0)).toBe(came);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it("show minus one where each of two devices, out of sight of the other, used the last one", () => {
    const one = { kind: "item-fitted", place: "north" };
    const received = { place: "north", count: 1, day: "2027-01-10" };
    const all = [
      lineOf({ device: "a", minute: 0, kind: "stock-received", ...part, body: received }, 1),
      lineOf({ device: "a", minute: 60, ...one, subject: "kit:k1", body: fittedIn("t1") }, 2),
      lineOf({ device: "b", minute: 70, ...one, subject: "kit:k2", body: fittedIn("t2") }, 3),
    ];
    for (const order of [all, all.toReversed()]) {
      const [north] = shelves([...FOUNDED, ...order], 1);
      expect(north).toMatchObject({ count: -1 });
      expect(north!.lines.map(({ what, device: by }) => `${what} ${by}`)).toEqual(["received a", "used a", "used b"]);
    }
  });
});
