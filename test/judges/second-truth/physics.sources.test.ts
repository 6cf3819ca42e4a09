import { describe, expect, it } from "vitest";
import { columnsOf, EMPTY, heightOf, under, type Plane, type Shape } from "../../../bench/second-truth/columns.ts";
import { inflowBy, takenBy, type Hole, type Pump } from "../../../bench/second-truth/flows.ts";
import { floodAt, follow } from "../../../bench/second-truth/following.ts";
import { lieOf, liesOf, type Lies } from "../../../bench/second-truth/lies.ts";
import { lieDry, lieWith, type Boat } from "../../../bench/second-truth/lying.ts";
import { boxHull, taperingHull, wedgeHull } from "../../../bench/second-truth/shapes.ts";
import { restingBox } from "../inclined-box.ts";

const G = 9.80665;
const LENGTH = 10;
const BEAM = 3;
const DEPTH = 1.5;
const DRAUGHT = 0.6;
const FREE = 0.8;

function boatOf(shape: Shape, from: number, to: number, across = 0): Boat {
  const hull = columnsOf(shape, { from: -LENGTH / 2, to: LENGTH / 2, stations: 40, across: 40, floor: 0 });
  const afloat = under(hull, { middle: DRAUGHT, slope: 0, across: 0 }, EMPTY);
  return {
    shape,
    hull,
    space: {
      columns: columnsOf(shape, { from, to, stations: 40, across: 40, floor: 0 }),
      filled: (height) => FREE * height,
    },
    weight: afloat.volume,
    gravity: { x: afloat.alongMoment / afloat.volume, z: 1 },
    across,
  };
}

/** A box boat with a space right across her, even about the middle: she sinks and neither trims nor heels. */
function evenBox(): Lies {
  const boat = boatOf(boxHull(LENGTH, BEAM, DEPTH), -1.5, 1.5);
  return liesOf(boat, DRAUGHT, FREE * 3 * BEAM * DEPTH * 0.98)!;
}

const HOLE: Hole = { x: 0, y: 0, z: 0, diameter: 0.05, dischargeCoefficient: 0.62, open: 1 };
/** Moves the same at every lift. */
const EVEN_PUMP: Pump = { x: 0, y: 0, strainer: 0, outlet: 2, flow: 0.003, knownLift: 1, shutOff: 1e9 };
/** What one cubic metre let in takes off the head over the hole of the even box [m⁻²]. */
const PER_VOLUME = 1 / (FREE * 3 * BEAM) - 1 / (LENGTH * BEAM);
const STRENGTH = 0.62 * (Math.PI / 4) * 0.05 ** 2 * Math.sqrt(2 * G);

describe("what runs in and out, after Torricelli", () => {
  it("fills a box boat as the closed form of a falling head has it: √Δ = √Δ₀ − k·K·t/2, she sinking as she fills", () => {
    const lies = evenBox();
    const start = 0.5;
    const run = follow(lies, start, [{ from: 0, holes: [HOLE], pumps: [] }], { from: 0, to: 900, every: 60 });
    for (const at of [60, 300, 600, 900]) {
      const root = Math.sqrt(DRAUGHT - PER_VOLUME * start) - (PER_VOLUME * STRENGTH * at) / 2;
      const flood = (DRAUGHT - root ** 2) / PER_VOLUME;
      expect(floodAt(run, at)).toBeCloseTo(flood, 3);
    }
  });

  it("comes to rest against a pump where Cd·a·√(2g·Δ) is what the pump takes, Torricelli's orifice", () => {
    const lies = evenBox();
    const stage = { from: 0, holes: [HOLE], pumps: [EVEN_PUMP] };
    const run = follow(lies, 2, [stage], { from: 0, to: 6 * 3600, every: 600 });
    const { sea, inside } = lieOf(lies, run.flood.at(-1)!);
    expect(sea.middle - inside.middle).toBeCloseTo((EVEN_PUMP.flow / STRENGTH) ** 2, 3);
  });

  it("runs out of her where the water inside stands higher, as fast as it would run in, Torricelli", () => {
    const into = inflowBy(HOLE, { sea: level(1), inside: level(0.6), freeboard: 1 });
    const out = inflowBy(HOLE, { sea: level(0.6), inside: level(1), freeboard: 1 });
    expect(into).toBeCloseTo(STRENGTH * Math.sqrt(0.4), 5);
    expect(out).toBeCloseTo(-into, 12);
  });

  it("takes the flow of the pump's parabola at the lift it is known at, at four times less head left, and at shut-off", () => {
    const pump: Pump = { ...EVEN_PUMP, shutOff: 5, outlet: 2 };
    const taken = (level: number): number =>
      takenBy(pump, {
        sea: { middle: 1, slope: 0, across: 0 },
        inside: { middle: level, slope: 0, across: 0 },
        freeboard: 1,
      });
    expect(taken(1)).toBeCloseTo(pump.flow, 9);
    expect(takenBy({ ...pump, outlet: 5 }, { sea: FLAT, inside: { ...FLAT, middle: 1 }, freeboard: 1 })).toBeCloseTo(
      pump.flow / 2,
      9,
    );
    expect(takenBy({ ...pump, outlet: 7 }, { sea: FLAT, inside: { ...FLAT, middle: 1 }, freeboard: 1 })).toBe(0);
  });

  it("sucks air with the strainer awash and takes what comes to it and no more: level at the strainer, out as in", () => {
    const pump = { ...EVEN_PUMP, strainer: 0.2, flow: 0.01 };
    const lies = evenBox();
    const stages = [{ from: 0, holes: [HOLE], pumps: [pump] }];
    const rest = follow(lies, 2, stages, { from: 0, to: 2 * 3600, every: 600 });
    const surfaces = lieOf(lies, rest.flood.at(-1)!);
    expect(surfaces.inside.middle).toBeGreaterThan(0.2);
    expect(surfaces.inside.middle).toBeLessThan(0.22);
    expect(takenBy(pump, surfaces)).toBeCloseTo(inflowBy(HOLE, surfaces), 6);
    const after = follow(lies, rest.flood.at(-1)!, stages, { from: 0, to: 600, every: 60 });
    expect(after.taken.out).toBeCloseTo(after.taken.in, 5);
  });

  it("pumped dry faster than she fills, stays dry: what is taken is what was in her and what runs in, conserved", () => {
    const stage = { from: 0, holes: [HOLE], pumps: [{ ...EVEN_PUMP, strainer: -0.05, flow: 0.05 }] };
    const run = follow(evenBox(), 0.5, [stage], { from: 0, to: 600, every: 60 });
    expect(run.flood.at(-1)).toBe(0);
    expect(run.taken.out).toBeCloseTo(0.5 + run.taken.in, 4);
  });
});

const FLAT = level(0);

function level(middle: number): Plane {
  return { middle, slope: 0, across: 0 };
}

describe("how she lies, against closed forms", () => {
  it("has the volume, and the centre at 2/3 of the draught, of a floating wedge (any text on ships' hydrostatics)", () => {
    const hull = boatOf(wedgeHull(LENGTH, BEAM, DEPTH), -1, 1).hull;
    const found = under(hull, { middle: DRAUGHT, slope: 0, across: 0 }, EMPTY);
    const volume = (LENGTH * (BEAM / DEPTH) * DRAUGHT ** 2) / 2;
    expect(found.volume / volume).toBeCloseTo(1, 2);
    expect(found.heightMoment / found.volume / ((2 / 3) * DRAUGHT)).toBeCloseTo(1, 2);
  });

  it("has the volume of a heeled wedge: c·w²/(c² − t²) a metre, from its three corners (shoelace formula)", () => {
    const hull = boatOf(wedgeHull(LENGTH, BEAM, DEPTH), -1, 1).hull;
    const [c, t] = [(2 * DEPTH) / BEAM, Math.tan(0.2)];
    const found = under(hull, { middle: DRAUGHT, slope: 0, across: t }, EMPTY);
    expect(found.volume / ((LENGTH * c * DRAUGHT ** 2) / (c ** 2 - t ** 2))).toBeCloseTo(1, 2);
  });

  it("sinks a box by the lost volume over its plan: Archimedes", () => {
    const lies = evenBox();
    const { sea, inside } = lieOf(lies, 3);
    expect(sea.middle).toBeCloseTo(DRAUGHT + 3 / (LENGTH * BEAM), 4);
    expect(inside.middle).toBeCloseTo(3 / (FREE * 3 * BEAM), 3);
  });

  it("trims a box with water at one end as the cubic of its centres has it (test/judges/inclined-box.ts, DERIVED)", () => {
    const [from, to] = [1, 3];
    const boat = { ...boatOf(boxHull(LENGTH, BEAM, DEPTH), from, to), gravity: { x: 0, z: 0.5 } };
    const dry = lieDry(boat, DRAUGHT)!;
    const found = lieWith(boat, 2, { ...dry, inside: { ...dry.inside, middle: 0.4 } })!;
    const space = { from, to, across: BEAM, permeability: FREE };
    const judged = restingBox({ span: LENGTH, across: BEAM, draught: DRAUGHT, kg: 0.5, space }, 2);
    expect(found.sea.slope).toBeCloseTo(judged.slope, 4);
    expect(found.sea.middle).toBeCloseTo(judged.draught, 4);
    expect(heightOf(found.inside, (from + to) / 2, 0)).toBeCloseTo(judged.depth, 4);
  });

  it("loses freeboard to heel by half the beam times its tangent (plane geometry)", () => {
    const across = Math.tan(0.15);
    const dry = lieDry(boatOf(boxHull(LENGTH, BEAM, DEPTH), -1, 1, across), DRAUGHT)!;
    expect(dry.freeboard).toBeCloseTo(DEPTH - DRAUGHT - (BEAM / 2) * across, 3);
  });

  it("has Wigley's sections among its own: half breadth as 1 − (1 − ζ)² (Wigley 1934)", () => {
    const lines = {
      length: 10,
      beam: 2,
      depth: 1,
      widest: 0,
      transom: 0,
      bluntness: 2,
      sternRise: 0,
      stemRise: 0,
      sheer: 0,
    };
    const shape = taperingHull({ ...lines, m: 2, n: 1 });
    for (const height of [0.1, 0.4, 0.8]) {
      const half = 1 - (1 - height) ** 2;
      expect(shape.shell(0, half)).toBeCloseTo(height, 9);
      expect(shape.halfBreadth(2.5)).toBeCloseTo(1 - 0.25, 9);
    }
  });
});
