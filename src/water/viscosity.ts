import { KELVIN_OF_ICE } from "./gravity.ts";

/** Below this salinity the two published equations are joined smoothly [g/kg]. */
const JOINED_BELOW = 5;

/**
 * Dynamic viscosity of liquid pure water at 0.1 MPa.
 *
 * µ/1e-6 = Σ a_i (T/300 K)^b_i
 *
 * @param temperature - [K]
 * @returns viscosity, [Pa·s]
 * @range 253.15 to 383.15 K
 * @source IAPWS SR6-08(2011), viscosity equation; the form of IAPWS 2008 for liquid water at 0.1 MPa
 * @example pureWaterViscosity(298.15) // ≈ 8.9e-4
 */
export function pureWaterViscosity(temperature: number): number {
  const t = temperature / 300;
  return 1e-6 * (280.68 * t ** -1.9 + 511.45 * t ** -7.7 + 61.131 * t ** -19.6 + 0.45903 * t ** -40);
}

/**
 * Dynamic viscosity of sea water.
 *
 * µ_sw = µ_w (1 + A·S + B·S²), S in kg/kg, µ_w = 4.2844e-5 + 1/(0.157 (t + 64.993)² − 91.296)
 *
 * @param temperature - [K]
 * @param salinity - [g/kg]
 * @returns viscosity, [Pa·s]
 * @range 0 to 180 °C, 0 to 150 g/kg; about 1.5 % (that figure FROM MEMORY)
 * @source Sharqawy, Lienhard and Zubair, Desalination and Water Treatment 16 (2010) 354-380, eq. 22 and 23
 * @example seaWaterViscosity(283.15, 35) // ≈ 1.397e-3
 */
export function seaWaterViscosity(temperature: number, salinity: number): number {
  const t = temperature - KELVIN_OF_ICE;
  const s = salinity / 1000;
  const pure = 4.2844e-5 + 1 / (0.157 * (t + 64.993) ** 2 - 91.296);
  const a = 1.541 + 1.998e-2 * t - 9.52e-5 * t * t;
  const b = 7.974 - 7.561e-2 * t + 4.724e-4 * t * t;
  return pure * (1 + a * s + b * s * s);
}

/**
 * Dynamic viscosity of fresh, brackish or sea water at one atmosphere.
 *
 * Fresh water by IAPWS, from 5 g/kg by Sharqawy; between them the difference of the two for pure water
 * (at most about 0.05 %) fades out, so that nothing jumps.
 *
 * @param temperature - [K]
 * @param salinity - [g/kg]
 * @returns viscosity, [Pa·s]
 * @range 0 to 60 °C, 0 to 42 g/kg
 * @source {@link pureWaterViscosity}, {@link seaWaterViscosity}; the join is ours (DERIVED)
 * @example waterViscosity(288.15, 35) // ≈ 1.22e-3
 */
export function waterViscosity(temperature: number, salinity: number): number {
  if (salinity === 0) return pureWaterViscosity(temperature);
  const sea = seaWaterViscosity(temperature, salinity);
  if (salinity >= JOINED_BELOW) return sea;
  const x = salinity / JOINED_BELOW;
  const share = 1 - x * x * (3 - 2 * x);
  return sea + share * (pureWaterViscosity(temperature) - seaWaterViscosity(temperature, 0));
}
