import { sayDuration } from "#words";
import { formatQuantity, isInputError, parseQuantity, type UnitSystem } from "#base";
import type { Engine } from "#kit";
import { fuelQuestion } from "#questions";
import { knowing, type PumpPattern } from "#web/rig/rig-setting.ts";

export type FuelAnswer = ReturnType<typeof fuelQuestion.answer>;

/** Fuel as a person plans it. */
export interface FuelPlan {
  /** Part of full speed [1]. */
  readonly throttle: number;
  /** Part of the tank to have left when refuelling [1]. */
  readonly reserve: number;
  /** Running time to plan for: passage and time on scene [s]. */
  readonly passage?: number | undefined;
  /** What one can holds [m³]. */
  readonly can?: number | undefined;
}

/** How long the fuel lasts; undefined where nothing is burnt. */
export function askFuel(pattern: PumpPattern, plan: FuelPlan): FuelAnswer | { readonly error: unknown } | undefined {
  if (!pattern.engine) return undefined;
  const { throttle, reserve, passage, can } = plan;
  const given = {
    kit: pattern.id,
    throttle,
    reserve: `${100 * reserve} %`,
    ...(passage !== undefined && { passage }),
    ...(can !== undefined && { can }),
  };
  try {
    return fuelQuestion.answer(given, knowing(pattern));
  } catch (cause) {
    if (isInputError(cause)) return { error: cause };
    throw cause;
  }
}

/** How long a full tank lasts, never longer than it does, and how much earlier to refuel. */
export function sayTank(answer: FuelAnswer, engine: Engine, units: UnitSystem): string {
  const tank = formatQuantity(engine.tank, "volume", { system: units, digits: 2 });
  const burn = formatQuantity(answer.burn, "flow", { unit: units === "us" ? "US gal/h" : "L/h", digits: 2 });
  const left = formatQuantity(answer.reserve, "volume", { system: units, digits: 2 });
  const until = `a full tank of ${tank} lasts about ${sayDuration(answer.runtime, "elapsed")} at ${burn}`;
  return answer.reserve > 0
    ? `Refuel after ${sayDuration(answer.refuelAt, "elapsed")}, with ${left} left; ${until}.`
    : `Empty after ${sayDuration(answer.runtime, "elapsed")}: ${until}.`;
}

/** Unit that cans are sold in. */
export function canUnit(units: UnitSystem): string {
  return units === "us" ? "US gal" : "L";
}

/** What one can holds where nobody says: round in the person's own unit [m³]. */
export function usualCan(units: UnitSystem): number {
  return parseQuantity(units === "us" ? "1 US gal" : "5 L", "volume");
}

/** What one can holds, in words. */
export function sayCan(can: number, units: UnitSystem): string {
  return formatQuantity(can, "volume", { unit: canUnit(units), digits: 2 });
}

/** Cans for a passage. */
export function sayCans({ cansNeeded, passageFuel }: FuelAnswer, can: number, units: UnitSystem): string | undefined {
  if (cansNeeded === undefined || passageFuel === undefined) return undefined;
  const fuel = formatQuantity(passageFuel, "volume", { system: units, digits: 2 });
  if (cansNeeded === 0) return `It burns ${fuel}: the full tank is enough, with the reserve left.`;
  const cans = cansNeeded === 1 ? "1 can" : `${cansNeeded} cans`;
  return `It burns ${fuel}: take ${cans} of ${sayCan(can, units)} beside the full tank.`;
}
