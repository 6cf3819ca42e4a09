// Synthetic casualties afloat: a small boat drawn by kind, length and space, flooded by the full simulation (trim and
// heel free, areas and sinkage as the hull has them), not by the level model that reads the soundings.
import {
  AREA_SHARE,
  DELIVERY,
  HOLE,
  holeAreaOf,
  likelyCompartment,
  likelyGravityHeight,
  likelyHull,
  makeHull,
  OUTSIDE,
  simulateFlood,
  spaceOf,
  START_LEVEL,
  STRENGTH,
  type Casualty,
  type Compartment,
  type FloatingVessel,
  type Pumped,
} from "#flooding";
import { normalQuantile, repeatableStream } from "#numerics";
import { drawCasualty, PRIOR, type Synthetic } from "./synthetic.ts";

const KINDS = ["motor boat", "sailing yacht", "fishing boat", "open boat"] as const;
const PARTS = ["aft", "middle", "forward"] as const;
const SORTS = ["engine-room", "cabin", "hold"] as const;
const HOUR = 3600;
/** Weight so much lower than usual: loose water must not lay her over, where no level means anything. */
const BALLASTED = 0.7;

/** Casualty afloat number n; one that is lost before the last sounding is drawn anew. */
export function makeFloating(n: number, statedNoise = PRIOR.noise): Synthetic {
  const draw = repeatableStream(0xb0a7 + n);
  for (;;) {
    const found = tryFloating(draw, statedNoise);
    if (found !== undefined) return found;
  }
}

function tryFloating(draw: () => number, statedNoise: number): Synthetic | undefined {
  const boat = drawBoat(draw);
  const space = spaceOf(boat, boat.compartments[0]!.name);
  const prior = { ...PRIOR, startLevel: { median: space.outside / 2, spread: 0.12 } };
  const count = 6 + Math.floor(4 * draw());
  const times = Array.from({ length: count }, (_, k) => 300 * k);
  const pumping: Pumped[] = [{ from: 300, flow: 0.002 * 5 ** draw() }];
  const truth = drawCasualty(space, draw, prior);
  const levels = levelsAfloat(boat, truth, pumping[0]!, times.at(-1)! + HOUR);
  if (levels.length < count) return undefined;
  truth[START_LEVEL] = levels[0]!; // Poured in on even keel, the water settles a little higher or lower with her trim.
  const readings = times.map((at, k) => ({ at, level: levels[k]! + PRIOR.noise * normalQuantile(draw()) }));
  return {
    given: { space, readings, pumping, prior: { ...prior, noise: statedNoise } },
    truth,
    laterLevel: levels[count - 1 + HOUR / 300] ?? Number.POSITIVE_INFINITY,
    draw,
  };
}

function drawBoat(draw: () => number): FloatingVessel & { readonly compartments: readonly Compartment[] } {
  const pick = <T>(all: readonly T[]): T => all[Math.floor(all.length * draw())]!;
  const hull = likelyHull({ kind: pick(KINDS), length: 7 + 7 * draw() });
  const space = { name: "space", sort: pick(SORTS), part: pick(PARTS) };
  const kg = BALLASTED * likelyGravityHeight(makeHull(hull), hull.draught);
  return { kind: "floating", hull, kg, compartments: [likelyCompartment(space, hull.length)] };
}

/** Levels every five minutes until she is lost or the time is up; she floats as deep and holds as much as the truth. */
function levelsAfloat(boat: FloatingVessel, truth: Casualty, pump: Pumped, duration: number): number[] {
  const space = boat.compartments[0]!;
  const run = simulateFlood({
    vessel: {
      ...boat,
      draught: truth[OUTSIDE]!,
      compartments: [{ ...space, permeability: space.permeability * truth[AREA_SHARE]!, level: truth[START_LEVEL]! }],
    },
    openings: [
      {
        name: "hole",
        into: space.name,
        opening: { kind: "hole", area: holeAreaOf(truth[STRENGTH]!), height: truth[HOLE]! },
      },
    ],
    pumps: [
      {
        name: "pump",
        compartment: space.name,
        delivery: { kind: "steady", flow: pump.flow * truth[DELIVERY]! },
        from: pump.from,
      },
    ],
    duration,
    step: 300,
  });
  const isWhole = run.outcome.kind !== "lost" && run.outcome.kind !== "gave-up";
  const whole = isWhole ? run.series : run.series.filter(({ at }) => at % 300 === 0);
  return whole.map(({ levels }) => levels[space.name]!);
}
