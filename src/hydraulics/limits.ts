import { printGiven, type Fault } from "#base";

/** SI limits of one quantity; `above` is exclusive. */
export interface Limits {
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly above?: number;
}

/** What this room accepts; wide enough for any portable pump, narrow enough to catch a slipped unit. */
export const HYDRAULIC_LIMITS = {
  flow: { atLeast: 0, atMost: 10 },
  head: { atLeast: 0, atMost: 1000 },
  bore: { atLeast: 0.005, atMost: 1 },
  length: { atLeast: 0, atMost: 2000 },
  roughness: { atLeast: 0, atMost: 0.05 },
  hazenWilliams: { atLeast: 20, atMost: 200 },
  fireHoseCoefficient: { above: 0, atMost: 5000 },
  fittings: { atLeast: 0, atMost: 1000 },
  lift: { atLeast: -50, atMost: 50 },
  rise: { atLeast: -50, atMost: 300 },
  speedRatio: { atLeast: 0.05, atMost: 1.5 },
  greatestLift: { above: 0, atMost: 10.5 },
  airPressure: { atLeast: 50_000, atMost: 110_000 },
  airTemperature: { atLeast: 223.15, atMost: 333.15 },
  stroke: { above: 0, atMost: 0.1 },
  deadVolume: { atLeast: 0, atMost: 1 },
  strokesPerMinute: { atLeast: 1 / 60, atMost: 20 },
  pumps: { atLeast: 1, atMost: 20 },
  airLeak: { atLeast: 0, atMost: 0.1 },
} as const satisfies Readonly<Record<string, Limits>>;

/** True where a number is within its limits; false for NaN. */
export function isWithin(value: number, limits: Limits): boolean {
  if (limits.atLeast !== undefined && !(value >= limits.atLeast)) return false;
  if (limits.above !== undefined && !(value > limits.above)) return false;
  return limits.atMost === undefined ? value === value : value <= limits.atMost;
}

/** Adds a fault for a number out of its limits; `path` is the thing it belongs to, or empty. */
export function checkLimit(
  faults: Fault[],
  code: string,
  path: string,
  field: string,
  value: number,
  limits: Limits,
  unit: string,
): void {
  if (isWithin(value, limits)) return;
  const allowed = `${rangeText(limits)} ${unit}`.trimEnd();
  const named = path === "" ? field : `${path}.${field}`;
  faults.push({ code, field: named, got: printGiven(value), allowed, remedy: "Check the number and its unit." });
}

function rangeText({ atLeast, atMost, above }: Limits): string {
  const low = above === undefined ? atLeast : `more than ${above}`;
  if (low === undefined) return `at most ${atMost}`;
  return atMost === undefined ? `at least ${low}` : `${low} to ${atMost}`;
}
