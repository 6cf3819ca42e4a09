import type { Words } from "#words";
import { inUnit, parseQuantity, type Dimension, type UnitSystem } from "#base";

/** A quantity set by steps: what it is, and how far a tap goes in each system, in that system's own unit. */
export interface Steps {
  readonly dimension: Dimension;
  readonly metric: { readonly unit: string; readonly step: number };
  readonly us: { readonly unit: string; readonly step: number };
  /** SI. */
  readonly least: number;
  readonly most: number;
}

const metres = (step: number, feet: number) => ({
  dimension: "length" as const,
  metric: { unit: "m", step },
  us: { unit: "ft", step: feet },
});
const parts = { unit: "%", step: 5 };

/** Everything the page lets be set by steps. */
export const STEPS = {
  lift: { ...metres(0.5, 1), least: -5, most: 12 },
  rise: { ...metres(0.5, 1), least: -5, most: 30 },
  suctionLength: { ...metres(1, 5), least: 0.5, most: 30 },
  dischargeLength: { ...metres(1, 5), least: 0, most: 200 },
  throttle: { dimension: "ratio", metric: parts, us: parts, least: 0.3, most: 1 },
  waterTemperature: {
    dimension: "temperature",
    metric: { unit: "°C", step: 1 },
    us: { unit: "°F", step: 2 },
    least: 273.15,
    most: 308.15,
  },
  altitude: { ...metres(100, 500), least: 0, most: 4000 },
  reserve: { dimension: "ratio", metric: parts, us: parts, least: 0, most: 0.5 },
} as const satisfies Readonly<Record<string, Steps>>;

/** Near enough to a step to stand on it [1]. */
const ON_STEP = 1e-6;

/**
 * The next round figure above or below, in the person's own unit, within the limits.
 *
 * @param si - where it stands now
 * @param direction - 1 up, -1 down
 * @returns the next value, SI
 */
export function stepBy(si: number, steps: Steps, system: UnitSystem, direction: 1 | -1): number {
  const { unit, step } = steps[system];
  const at = inUnit(si, unit, steps.dimension) / step;
  const next = direction === 1 ? Math.floor(at + ON_STEP) + 1 : Math.ceil(at - ON_STEP) - 1;
  const wanted = parseQuantity(`${Number((next * step).toFixed(6))} ${unit}`, steps.dimension);
  return Math.min(steps.most, Math.max(steps.least, wanted));
}

/** A set value as it is written: "4.57 m", "15 ft", "100 %". */
export function sayStep(si: number, steps: Steps, system: UnitSystem): string {
  const { unit } = steps[system];
  return `${Number(inUnit(si, unit, steps.dimension).toPrecision(3))}\u00a0${unit}`;
}

/** Whether a value can be set. */
export function isOnScale(si: number, { least, most }: Steps): boolean {
  return si >= least && si <= most;
}

/** Why a value cannot be set, or nothing. */
export function stepFault(si: number, steps: Steps, system: UnitSystem, words: Words["delivery"]): string | undefined {
  if (isOnScale(si, steps)) return undefined;
  return words.fromTo({ least: sayStep(steps.least, steps, system), most: sayStep(steps.most, steps, system) });
}
