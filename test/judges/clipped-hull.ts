import { integralBetween } from "./quadrature.ts";

/** A section's shell from the keel up, one side: heights and half-breadths, straight lines between. */
type Side = readonly { readonly z: number; readonly halfBreadth: number }[];

/** The hull by its sections: given at stations, straight lines along the length at equal heights between them. */
export interface Sections {
  readonly stations: readonly { readonly x: number; readonly offsets: Side }[];
}

export interface Measured {
  readonly volume: number;
  /** Centre: forward, to starboard, up. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

type Point = readonly [y: number, z: number];

const PANELS = 400;

/**
 * Volume and centre of what lies under z = height + slopeX·x + slopeY·y. DERIVED: each section is a polygon cut by a
 * straight line; its area and moments by the shoelace sums; along the length many Gauss panels.
 */
export function measureUnder(
  hull: Sections,
  plane: { readonly height: number; readonly slopeX: number; readonly slopeY: number },
): Measured {
  const limits = hull.stations.map(({ x }) => x);
  const along = (of: (section: Shoelace, x: number) => number): number =>
    integralBetween((x) => of(shoelace(cut(outline(hull, x), plane, x)), x), limits, PANELS);
  const volume = along(({ area }) => area);
  return {
    volume,
    x: along(({ area }, x) => area * x) / volume,
    y: along(({ momentY }) => momentY) / volume,
    z: along(({ momentZ }) => momentZ) / volume,
  };
}

/** Both sides of the section at x, round from the keel up the starboard side and down the port side. */
function outline(hull: Sections, x: number): Point[] {
  const after = hull.stations.findLastIndex((station, k) => station.x <= x && k < hull.stations.length - 1);
  const [one, other] = [hull.stations[after]!, hull.stations[after + 1]!];
  const share = (x - one.x) / (other.x - one.x);
  const heights = [...new Set([...one.offsets, ...other.offsets].map(({ z }) => z))].toSorted((a, b) => a - b);
  const side = heights.map((z): Point => {
    return [(1 - share) * breadthAt(one.offsets, z) + share * breadthAt(other.offsets, z), z];
  });
  return [...side, ...side.toReversed().map(([y, z]): Point => [-y, z])];
}

function breadthAt(side: Side, z: number): number {
  const above = side.findIndex((point) => point.z >= z);
  const [low, high] = [side[Math.max(0, above - 1)]!, side[above]!];
  const share = high.z === low.z ? 1 : (z - low.z) / (high.z - low.z);
  return low.halfBreadth + share * (high.halfBreadth - low.halfBreadth);
}

/** What of a polygon lies under the water's line at x. */
function cut(
  polygon: readonly Point[],
  plane: { readonly height: number; readonly slopeX: number; readonly slopeY: number },
  x: number,
): Point[] {
  const depth = ([y, z]: Point): number => plane.height + plane.slopeX * x + plane.slopeY * y - z;
  return polygon.flatMap((point, k) => {
    const next = polygon[(k + 1) % polygon.length]!;
    const [here, there] = [depth(point), depth(next)];
    const kept: Point[] = here >= 0 ? [point] : [];
    if (here >= 0 === there >= 0) return kept;
    const share = here / (here - there);
    return [...kept, [point[0] + share * (next[0] - point[0]), point[1] + share * (next[1] - point[1])]];
  });
}

interface Shoelace {
  readonly area: number;
  readonly momentY: number;
  readonly momentZ: number;
}

function shoelace(polygon: readonly Point[]): Shoelace {
  let [area, momentY, momentZ] = [0, 0, 0];
  polygon.forEach(([y, z], k) => {
    const [nextY, nextZ] = polygon[(k + 1) % polygon.length]!;
    const cross = y * nextZ - nextY * z;
    area += cross / 2;
    momentY += (cross * (y + nextY)) / 6;
    momentZ += (cross * (z + nextZ)) / 6;
  });
  return { area, momentY, momentZ };
}
