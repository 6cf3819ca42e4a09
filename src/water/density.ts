import { KELVIN_OF_ICE } from "./gravity.ts";

/**
 * Density of fresh or sea water at one standard atmosphere (EOS-80).
 *
 * ρ(S,t,0) = ρ_w(t) + A(t)·S + B(t)·S^1.5 + 4.8314e-4·S², with t = t68 = 1.00024·t90
 *
 * @param temperature - of the water, [K] (ITS-90)
 * @param salinity - practical salinity, taken as equal to [g/kg]
 * @returns density, [kg/m³]
 * @range -2 to 40 °C, 0 to 42 g/kg; up to 60 °C it is extrapolated and about 0.02 % high
 * @source Fofonoff and Millard, UNESCO technical papers in marine science 44, 1983, eq. 13 and 14
 *   (Millero and Poisson 1981)
 * @example waterDensity(288.15, 0) // ≈ 999.1
 */
export function waterDensity(temperature: number, salinity: number): number {
  return densityOnIpts68((temperature - KELVIN_OF_ICE) * 1.00024, salinity);
}

/**
 * The same equation with the temperature on the scale it was published on.
 *
 * @param t - temperature, [°C] (IPTS-68)
 * @param s - practical salinity, [1]
 * @returns density, [kg/m³]
 * @range as {@link waterDensity}
 * @source as {@link waterDensity}
 */
export function densityOnIpts68(t: number, s: number): number {
  const pure =
    999.842594 + t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
  const a = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
  const b = -5.72466e-3 + t * (1.0227e-4 + t * -1.6546e-6);
  return pure + a * s + b * s * Math.sqrt(s) + 4.8314e-4 * s * s;
}
