import { sayDuration, type Words } from "#words";
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
export function sayTank(answer: FuelAnswer, engine: Engine, units: UnitSystem, words: Words["delivery"]): string {
  const tank = formatQuantity(engine.tank, "volume", { system: units, digits: 2 });
  const burn = formatQuantity(answer.burn, "flow", { unit: units === "us" ? "US gal/h" : "L/h", digits: 2 });
  const left = formatQuantity(answer.reserve, "volume", { system: units, digits: 2 });
  const lasts = { tank, burn, runtime: sayDuration(answer.runtime, "elapsed") };
  return answer.reserve > 0
    ? words.refuelAfter({ after: sayDuration(answer.refuelAt, "elapsed"), left, ...lasts })
    : words.emptyAfter(lasts);
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
export function sayCans(
  { cansNeeded, passageFuel }: FuelAnswer,
  can: number,
  units: UnitSystem,
  words: Words["delivery"],
): string | undefined {
  if (cansNeeded === undefined || passageFuel === undefined) return undefined;
  const fuel = formatQuantity(passageFuel, "volume", { system: units, digits: 2 });
  if (cansNeeded === 0) return words.tankEnough({ fuel });
  return words.takeCans({ count: cansNeeded, fuel, can: sayCan(can, units) });
}
