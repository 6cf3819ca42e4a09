import { repeatableStream } from "#numerics";
import { describe, expect, it } from "vitest";
import { integrateFlood, simulateFlood } from "./simulation.ts";
import type { FloodCase, FloodRun, PlacedOpening, PlacedPump, Vessel } from "../index.ts";

type Draw = () => number;

const between = (draw: Draw, low: number, high: number): number => low + (high - low) * draw();
/** A number drawn evenly on a logarithmic scale. */
const spread = (draw: Draw, low: number, high: number): number => low * (high / low) ** draw();

function heldVessel(draw: Draw): Vessel {
  const floor = draw() < 0.5 ? 0 : between(draw, 0, 0.4);
  const space = {
    name: "hold",
    area: spread(draw, 1, 60),
    permeability: between(draw, 0.5, 1),
    floor,
    ...(draw() < 0.3 ? { top: floor + between(draw, 0.3, 1.5) } : {}),
    level: draw() < 0.4 ? 0 : between(draw, 0, 2),
  };
  return { kind: "fixed", outsideLevel: between(draw, 0.1, 2.2), compartments: [space] };
}

function evenBoat(draw: Draw): Vessel {
  const length = spread(draw, 5, 25);
  const beam = length * between(draw, 0.25, 0.4);
  const depth = beam * between(draw, 0.35, 0.6);
  const half = length * between(draw, 0.1, 0.5);
  const side = draw() < 0.5 ? {} : { sideFrom: -0.4 * beam, sideTo: 0.4 * beam };
  const floor = draw() < 0.5 ? {} : { floor: between(draw, 0.05, 0.3) * depth };
  const top = draw() < 0.7 ? {} : { top: between(draw, 0.5, 0.9) * depth };
  const space = { from: length / 2 - half, to: length / 2 + half, permeability: between(draw, 0.5, 1) };
  return {
    kind: "floating",
    hull: { form: "box", length, beam, depth, draught: depth * between(draw, 0.35, 0.7) },
    ...(draw() < 0.5 ? { kg: between(draw, 0.3, 0.7) * depth } : {}),
    compartments: [{ name: "hold", ...space, ...side, ...floor, ...top, level: draw() < 0.5 ? 0 : 0.3 * depth }],
    lostWhen: draw() < 0.7 ? "deck-edge" : "foundered",
  };
}

function oneOpening(draw: Draw): PlacedOpening[] {
  const height = draw() < 0.4 ? 0 : between(draw, 0, 1.4);
  if (draw() < 0.1) return [];
  const hole = { kind: "hole", area: spread(draw, 2e-4, 0.05), height } as const;
  const pipe = { kind: "pipe", bore: spread(draw, 0.02, 0.15), length: 2, height } as const;
  return [{ name: "hole", into: "hold", opening: draw() < 0.7 ? hole : pipe }];
}

function somePumps(draw: Draw, openings: readonly PlacedOpening[]): PlacedPump[] {
  const count = Math.floor(3 * draw());
  const lift = { kind: "parabola", shutOffHead: 20, bend: spread(draw, 1e4, 1e6), dischargeHeight: 2.6 } as const;
  return Array.from({ length: openings.length === 0 ? 1 : count }, (_, k) => ({
    name: `pump ${k}`,
    compartment: "hold",
    delivery: openings.length === 0 && draw() < 0.7 ? lift : { kind: "steady", flow: spread(draw, 3e-4, 0.05) },
    ...(draw() < 0.3 ? { suctionHeight: between(draw, 0.41, 0.6) } : {}),
    from: draw() < 0.5 ? 0 : between(draw, 1, 900),
    ...(draw() < 0.2 ? { refuel: { runtime: 900, pause: 120 } } : {}),
    ...(draw() < 0.2 ? { until: between(draw, 1000, 2000) } : {}),
  }));
}

function randomCase(draw: Draw): FloodCase {
  const openings = oneOpening(draw);
  return {
    vessel: draw() < 0.6 ? heldVessel(draw) : evenBoat(draw),
    openings,
    pumps: somePumps(draw, openings),
    changes:
      openings.length > 0 && draw() < 0.3
        ? [{ kind: "opening-share", at: between(draw, 1, 1500), opening: "hole", share: 0.3, says: "patched" }]
        : [],
    duration: spread(draw, 300, 7200),
    step: 300,
    marks: [{ compartment: "hold", level: between(draw, 0.1, 1.5) }],
  };
}

const SHARP = { relative: 1e-9, absolute: 1e-12 };

/** A hole above the sea drains the space to its own edge: whether the surface ever leaves it is a matter of rounding. */
function isAboveSea({ vessel, openings }: FloodCase): boolean {
  const opening = openings[0]?.opening;
  const height = opening?.kind === "hole" || opening?.kind === "pipe" ? opening.height : 0;
  return vessel.kind === "fixed" && height > vessel.outsideLevel;
}

/** What ends at rest has an outcome; what the judge has not quite brought there may be called by another name. */
function isMoving(judge: FloodRun): boolean {
  const last = judge.series.at(-1);
  return last !== undefined && Math.abs(last.inflow - last.pumped) > 1e-8;
}

const isAtOnce = (a: number, b: number): boolean => Math.abs(a - b) < 1e-7 * (1 + a);

/** Events in order of time; what happens at one time, as two strainers at one height, in the order of the alphabet. */
function kindsOf(run: FloodRun, given: FloodCase): string[] {
  const named = run.events
    .filter(({ kind }) => kind !== "hole-uncovered" || !isAboveSea(given))
    .map(({ kind, name, at }) => ({ says: `${kind} ${name}`, at }));
  return named
    .toSorted((a, b) => (isAtOnce(a.at, b.at) ? a.says.localeCompare(b.says) : a.at - b.at))
    .map(({ says }) => says);
}

/** Most water apart [m³]. */
function apart(exact: FloodRun, judge: FloodRun): number {
  return Math.max(...exact.series.map(({ water }, k) => Math.abs(water.hold! - judge.series[k]!.water.hold!)));
}

/** Times of events are compared as the water that would flow until then: a slow rise is met late by a hair. */
function lateBy(exact: FloodRun, judge: FloodRun): number {
  return Math.max(0, ...exact.events.map(({ at }, k) => Math.abs(at - judge.events[k]!.at) / (1 + at)));
}

/** Where she lists neither is exact, and each comes to the list on its own way. */
const LISTING = 2e-3;

describe("the closed form and the general integrator judge each other on random boats", () => {
  it.each([1, 2, 3, 4])(
    "500 of one straight space, part %i: the same events in the same order, the same water",
    (part) => {
      let carried = 0;
      for (let n = 0; n < 500; n += 1) {
        const given = randomCase(repeatableStream(part * 1_000_003 + n));
        const sharp = { ...given, accuracy: SHARP };
        const [exact, judge] = [simulateFlood(sharp), integrateFlood(sharp)];
        const label = `part ${part}, case ${n}`;
        expect(kindsOf(exact, given), label).toEqual(kindsOf(judge, given));
        if (isMoving(judge)) expect(exact.outcome.kind, label).toBe(judge.outcome.kind);
        const size = Math.max(1, ...exact.series.map(({ water }) => water.hold!));
        const isExact = exact.counters.exact === exact.counters.phases;
        expect(apart(exact, judge) / size, label).toBeLessThan(isExact ? 5e-6 : LISTING);
        expect(lateBy(exact, judge), label).toBeLessThan(isExact ? 1e-5 : LISTING);
        expect(Math.abs(exact.volumeError) / size, label).toBeLessThan(1e-9);
        carried += exact.counters.exact / Math.max(1, exact.counters.phases);
      }
      expect(carried / 500, "share of phases carried by the closed form").toBeGreaterThan(0.85);
    },
    120_000,
  );
});
