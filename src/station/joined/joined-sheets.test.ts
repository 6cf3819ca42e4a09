import type { Entry } from "#log";
import { isForCasualty, type Bodies, type CasualtyState, type EntryKind } from "#readiness";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createStationFold } from "../station-fold.ts";

const ENGINE = { id: "e1", name: "Engine room", sort: "engine-room", part: "aft" } as const;
const ENGINE_TOO = { id: "e2", name: "Engine", sort: "engine-room", part: "aft" } as const;
const CABIN = { id: "e1", name: "Cabin", sort: "cabin", part: "forward" } as const;
const BOAT = { kind: "motor boat", length: 9 } as const;
const KIT = { pump: "kit-3", kit: "kit-3", name: "Kit 3", flow: 0.006 } as const;
const JOINED = { with: "y", spaces: [{ other: "e2", own: "e1" }] };

/** An id with the shape of a UUIDv7, numbered so that ids sort as their numbers. */
function idOf(number: number): string {
  return `01920000-0000-7000-8000-${number.toString(16).padStart(12, "0")}`;
}

function line<Kind extends EntryKind>(sheet: "x" | "y" | "z", minute: number, kind: Kind, body: Bodies[Kind]): Entry {
  const at = new Date(Date.UTC(2027, 2, 14, 10, minute)).toISOString();
  const id = idOf(minute * 10 + { x: 1, y: 2, z: 3 }[sheet]);
  return { id, place: "station", subject: `casualty:${sheet}`, kind, at, by: "ann", device: `of-${sheet}`, body };
}

const X = [
  line("x", 0, "casualty-opened", { name: "Grey boat", boat: BOAT, space: ENGINE }),
  line("x", 2, "sounding-taken", { space: "e1", level: 0.5, text: "50 cm" }),
  line("x", 4, "pump-set", { ...KIT, space: "e1", running: true }),
  line("x", 8, "sounding-taken", { space: "e1", level: 0.45, text: "45 cm" }),
];
const Y = [
  line("y", 1, "casualty-opened", {
    name: "Kittiwake",
    boat: { ...BOAT, length: 10, beam: 3 },
    space: ENGINE_TOO,
    hole: { diameter: 0.09 },
  }),
  line("y", 3, "sounding-taken", { space: "e2", level: 0.52, text: "52 cm" }),
  line("y", 5, "pump-set", { ...KIT, space: "e2", running: true }),
  line("y", 6, "pump-set", { pump: "hers", name: "Her own pump", space: "e2", running: true, flow: 0.001 }),
  line("y", 9, "casualty-noted", { about: "people", note: "Two aboard." }),
];

const JOIN = line("x", 12, "casualty-joined", JOINED);

function read(...entries: readonly Entry[]): readonly CasualtyState[] {
  const fold = createStationFold([]);
  fold.add(entries);
  return fold.read().casualties;
}

describe("two sheets of one casualty", () => {
  it("are two until somebody says that she is one, and one from then on", () => {
    expect(read(...X, ...Y)).toHaveLength(2);
    const [one, ...others] = read(...X, ...Y, JOIN);
    expect(others).toEqual([]);
    expect(one).toMatchObject({ id: "x", name: "Grey boat", sheets: [{ id: "x" }, { id: "y", name: "Kittiwake" }] });
  });

  it("give their soundings to one space, in order, and the notes of both", () => {
    const [one] = read(...X, ...Y, JOIN);
    expect(one!.spaces.map(({ id }) => id)).toEqual(["e1"]);
    expect(one!.soundings.map(({ space, level }) => [space, level])).toEqual([
      ["e1", 0.5],
      ["e1", 0.52],
      ["e1", 0.45],
    ]);
    expect(one!.notes.map(({ note }) => note)).toEqual(["Two aboard."]);
  });

  it("count a kit that stands on both once, with one stretch of pumping at a time", () => {
    const [one] = read(...X, ...Y, JOIN);
    expect(one!.pumps.map(({ pump, running }) => [pump, running])).toEqual([
      ["kit-3", true],
      ["hers", true],
    ]);
    const runs = one!.pumps[0]!.runs.map(({ from, to }) => [from.slice(14, 16), to?.slice(14, 16)]);
    expect(runs).toEqual([
      ["04", "05"],
      ["05", undefined],
    ]);
  });

  it("keep what the first told of her, and fill in what it did not", () => {
    const [one] = read(...X, ...Y, JOIN);
    expect(one!.boat).toEqual({ ...BOAT, beam: 3 });
    expect(one!.hole).toEqual({ diameter: 0.09 });
  });

  it("are two again once the line is struck, with what was written on either", () => {
    const strike = line("x", 13, "struck", { entry: JOIN.id, reason: "Two boats." });
    const parted = read(...X, ...Y, JOIN, strike);
    expect(parted.map(({ id }) => id).toSorted()).toEqual(["x", "y"]);
    expect(parted.every(({ sheets }) => sheets === undefined)).toBe(true);
    expect(parted.find(({ id }) => id === "y")!.soundings).toHaveLength(1);
  });

  it("keep spaces and pumps apart that nobody said are the same, though their ids are", () => {
    const other = line("y", 1, "casualty-opened", { name: "Kittiwake", boat: BOAT, space: CABIN });
    const pumpX = line("x", 4, "pump-set", { pump: "p", name: "Bucket", space: "e1", running: true, flow: 0.001 });
    const pumpY = line("y", 5, "pump-set", { pump: "p", name: "Bilge", space: "e1", running: true, flow: 0.001 });
    const [one] = read(X[0]!, other, pumpX, pumpY, line("x", 12, "casualty-joined", { with: "y" }));
    expect(one!.spaces.map(({ id, name }) => [id, name])).toEqual([
      ["e1", "Engine room"],
      ["e1@y", "Cabin"],
    ]);
    expect(one!.pumps.map(({ pump, space }) => [pump, space])).toEqual([
      ["p", "e1"],
      ["p@y", "e1@y"],
    ]);
  });

  it("are closed by what was written after they were joined, or once both are", () => {
    const early = line("y", 10, "casualty-closed", { outcome: "stood-down" });
    const [open] = read(...X, ...Y, early, JOIN);
    expect(open!.closed).toBeUndefined();
    expect(open!.pumps.map(({ pump, running }) => [pump, running])).toEqual([
      ["kit-3", true],
      ["hers", false],
    ]);
    const both = read(...X, ...Y, early, line("x", 11, "casualty-closed", { outcome: "towed-in" }), JOIN);
    expect(both[0]!.closed).toMatchObject({ outcome: "towed-in" });
    const later = read(...X, ...Y, JOIN, line("x", 14, "casualty-closed", { outcome: "afloat" }));
    expect(later[0]!.closed).toMatchObject({ outcome: "afloat" });
  });

  it("stop every pump of both where fuel is smelt on one", () => {
    const [one] = read(...X, ...Y, JOIN, line("y", 11, "fuel-smelt", {}));
    expect(one!.fuelSmelt).toBeDefined();
    expect(one!.pumps.filter(({ running }) => running)).toEqual([]);
  });

  it("have a hand-over made from either sheet", () => {
    const [one] = read(...X, ...Y, JOIN);
    const handed = { to: "her", at: "2027-03-14T10:03:00Z" };
    expect(isForCasualty(one!, { ...handed, casualty: "y" })).toBe(true);
    expect(isForCasualty(one!, { ...handed, casualty: "q" })).toBe(false);
    expect(isForCasualty(one!, { ...handed, to: "FV Kittiwake" })).toBe(true);
  });

  it("have one history, with the strike of a line of either", () => {
    const fold = createStationFold([]);
    const strike = line("y", 11, "struck", { entry: Y[1]!.id, reason: "Slip." });
    fold.add([...X, ...Y, JOIN, strike]);
    const all = fold.allEntriesOf("casualty:y");
    expect(all).toEqual(fold.allEntriesOf("casualty:x"));
    expect(all).toHaveLength(X.length + Y.length + 2);
    expect(fold.struckBy("casualty:x", Y[1]!.id)?.id).toBe(strike.id);
    expect(fold.read().casualties[0]!.soundings).toHaveLength(2);
  });

  it("are joined by whichever side says so, said twice too, and three where two and two are", () => {
    const back = line("y", 13, "casualty-joined", { with: "x", spaces: [{ other: "e1", own: "e2" }] });
    const Z = line("z", 2, "casualty-opened", { name: "Third", boat: BOAT, space: CABIN });
    const [one, ...others] = read(...X, ...Y, Z, JOIN, back, line("y", 14, "casualty-joined", { with: "z" }));
    expect(others).toEqual([]);
    expect(one!.sheets!.map(({ id }) => id)).toEqual(["x", "y", "z"]);
    expect(one!.spaces.map(({ id }) => id)).toEqual(["e1", "e1@z"]);
  });

  it("wait for a sheet that has not arrived, and never join one with itself", () => {
    expect(read(...X, JOIN)[0]!.sheets).toBeUndefined();
    expect(read(...X, line("x", 12, "casualty-joined", { with: "x" }))).toHaveLength(1);
  });
});

describe("law: joined sheets", () => {
  const strike = line("x", 13, "struck", { entry: JOIN.id, reason: "Two boats." });
  const back = line("y", 14, "casualty-joined", { with: "x", spaces: [{ other: "e1", own: "e2" }] });
  const closing = line("y", 10, "casualty-closed", { outcome: "stood-down" });
  const Z = line("z", 2, "casualty-opened", { name: "Third", boat: BOAT, space: CABIN });
  const ALL = [...X, ...Y, JOIN, strike, back, closing, Z, line("z", 15, "casualty-joined", { with: "y" })];

  const OPENINGS = [X[0]!, Y[0]!, Z];

  it("read the same whatever the order and the grouping in which lines arrive", () => {
    const some = fc.subarray(ALL, { minLength: 1 });
    const shuffled = some.chain((kept) =>
      fc.tuple(fc.constant(kept), fc.shuffledSubarray(kept, { minLength: kept.length })),
    );
    fc.assert(
      fc.property(shuffled, fc.integer({ min: 1, max: 5 }), ([kept, mixed], step) => {
        const fold = createStationFold([]);
        for (let from = 0; from < mixed.length; from += step) {
          fold.add(mixed.slice(from, from + step));
          fold.read();
        }
        expect(fold.read().casualties).toEqual(read(...kept));
      }),
      { seed: 20270314, numRuns: 300 },
    );
  });

  it("lose no sounding and no line of either", () => {
    fc.assert(
      fc.property(fc.subarray(ALL.filter((one) => !OPENINGS.includes(one))), (some) => {
        const kept = [...OPENINGS, ...some];
        const fold = createStationFold([]);
        fold.add(kept);
        const told = fold.read().casualties.flatMap(({ id }) => fold.allEntriesOf(`casualty:${id}`));
        expect(told.map(({ id }) => id).toSorted()).toEqual(kept.map(({ id }) => id).toSorted());
        const sounded = fold.read().casualties.flatMap(({ soundings }) => soundings);
        expect(sounded).toHaveLength(kept.filter(({ kind }) => kind === "sounding-taken").length);
      }),
      { seed: 20270315, numRuns: 300 },
    );
  });
});
