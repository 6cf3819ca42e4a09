import { sayFlow } from "#words";
import { formatQuantity, type UnitSystem } from "#base";
import type { PumpSetting } from "#readiness";

/** Ways an engine is set on deck, as speed ratio. */
export const THROTTLES = [
  { id: "full", ratio: 1 },
  { id: "eased", ratio: 0.85 },
  { id: "low", ratio: 0.7 },
] as const;

/** Water to pump [m]. */
const LIFTS = [1, 2, 3, 4, 5];
/** What a pump that is no kit of ours is taken to move [m³/s]. */
const OTHER_FLOWS = [50, 100, 200, 400].map((litres) => litres / 60_000);

/** Lifts to choose from, in the person's own unit. */
export function liftPicks(units: UnitSystem) {
  return LIFTS.map((si) => ({ id: String(si), words: sayLift(si, units), si }));
}

/** "2 m", "6.6 ft". */
export function sayLift(si: number, units: UnitSystem): string {
  return formatQuantity(si, "length", { unit: units === "metric" ? "m" : "ft", digits: units === "metric" ? 1 : 2 });
}

/** Flows of pumps that are no kits of ours, in the person's own unit. */
export function otherFlowPicks(units: UnitSystem) {
  return OTHER_FLOWS.map((si, i) => ({ id: String(i), words: sayFlow(si, units), si }));
}

type Ask = (name: string, input: unknown) => Promise<unknown>;

/**
 * What a kit's pump moves at a setting, and how long a tank lasts, reserve kept back.
 *
 * @param ask - the worker
 * @param pattern - id of the kit's pattern
 */
export async function figuresOf(
  ask: Ask,
  pattern: string,
  { lift, throttle }: { readonly lift: number; readonly throttle: number },
): Promise<Pick<PumpSetting, "flow" | "lift" | "throttle" | "runtime">> {
  const water = { temperature: "12 °C", salinity: 35 };
  const rig = { kit: pattern, suction: { lift }, discharge: { rise: 1 }, throttle, water };
  const { flow } = (await ask("delivery", rig)) as { readonly flow: number };
  const runtime = await runtimeOf(ask, pattern, throttle);
  return { flow, lift, throttle, ...(runtime !== undefined && { runtime }) };
}

/** Undefined for a pump without a tank. */
async function runtimeOf(ask: Ask, pattern: string, throttle: number): Promise<number | undefined> {
  const fuel = ask("fuel", { kit: pattern, throttle, reserve: "15 %" });
  return fuel.then(
    (answer) => (answer as { readonly refuelAt: number }).refuelAt,
    () => undefined,
  );
}
