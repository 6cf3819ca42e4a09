import { InputError, printGiven, type Fault } from "#base";
import { waterDensity } from "./density.ts";
import { waterVapourPressure } from "./vapour-pressure.ts";
import { waterViscosity } from "./viscosity.ts";

/** What the water is like, as hydraulics needs it. */
export interface Water {
  /** [kg/m³] */
  readonly density: number;
  /** [Pa] */
  readonly vapourPressure: number;
  /** Dynamic viscosity [Pa·s]. */
  readonly viscosity: number;
}

/** Temperatures and salinities the equations hold for: [K], [g/kg]. */
export const WATER_LIMITS = {
  temperature: { atLeast: 271.15, atMost: 333.15 },
  salinity: { atLeast: 0, atMost: 42 },
} as const;

/** Above this temperature the density equation is extrapolated [K]. */
export const DENSITY_KNOWN_TO = 313.15;

/**
 * Density, vapour pressure and viscosity of fresh or sea water at one atmosphere.
 *
 * @param temperature - [K], 271.15 to 333.15
 * @param salinity - [g/kg], 0 to 42
 * @returns [kg/m³], [Pa], [Pa·s]
 * @range -2 to 60 °C, 0 to 42 g/kg; density is extrapolated above 40 °C
 * @source EOS-80, IAPWS-IF97 region 4, IAPWS SR6-08 and Sharqawy 2010: see the functions used
 * @throws InputError WA-101 temperature or WA-102 salinity out of range
 * @example waterAt(288.15, 35).density // ≈ 1025.97
 */
export function waterAt(temperature: number, salinity: number): Water {
  const faults = [
    ...limitFault("WA-101", "temperature", temperature, WATER_LIMITS.temperature, "K"),
    ...limitFault("WA-102", "salinity", salinity, WATER_LIMITS.salinity, "g/kg"),
  ];
  if (faults.length > 0) throw new InputError(faults);
  return {
    density: waterDensity(temperature, salinity),
    vapourPressure: waterVapourPressure(temperature, salinity),
    viscosity: waterViscosity(temperature, salinity),
  };
}

function limitFault(
  code: string,
  field: string,
  value: number,
  { atLeast, atMost }: { readonly atLeast: number; readonly atMost: number },
  unit: string,
): Fault[] {
  if (value >= atLeast && value <= atMost) return [];
  const remedy = "Check the number and its unit.";
  return [{ code, field, got: printGiven(value), allowed: `${atLeast} to ${atMost} ${unit}`, remedy }];
}
