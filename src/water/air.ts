import { KELVIN_OF_ICE, STANDARD_GRAVITY } from "./gravity.ts";

/** Air pressure at sea level in the standard atmosphere [Pa]. */
export const STANDARD_PRESSURE = 101_325;
/** Air temperature at sea level in the standard atmosphere [K]. */
export const STANDARD_AIR_TEMPERATURE = 288.15;

const LAPSE = 0.0065;
const AIR_GAS_CONSTANT = 287.05287;
const EARTH_RADIUS = 6_356_766;

/** Geopotential altitudes the standard atmosphere's lowest layer covers, and no station is outside [m]. */
export const ALTITUDE_LIMITS = { atLeast: -500, atMost: 5000 } as const;

/**
 * Air pressure of the standard atmosphere.
 *
 * p = p0 (1 − βH/T0)^(g/(βR))
 *
 * @param altitude - geopotential, [m]
 * @returns pressure, [Pa]
 * @range -2000 to 11 000 m; the weather moves the true pressure by up to about ±5 %
 * @source ISO 2533:1975, troposphere; constants β 6.5 K/km, R 287.05287 J/(kg·K), T0 288.15 K
 * @example standardPressure(500) // ≈ 95461
 */
export function standardPressure(altitude: number): number {
  return (
    STANDARD_PRESSURE *
    (1 - (LAPSE * altitude) / STANDARD_AIR_TEMPERATURE) ** (STANDARD_GRAVITY / (LAPSE * AIR_GAS_CONSTANT))
  );
}

/**
 * Air temperature of the standard atmosphere, T = T0 − βH.
 *
 * @param altitude - geopotential, [m]
 * @returns temperature, [K]
 * @range -2000 to 11 000 m
 * @source ISO 2533:1975
 */
export function standardAirTemperature(altitude: number): number {
  return STANDARD_AIR_TEMPERATURE - LAPSE * altitude;
}

/**
 * Geopotential altitude of a surveyed (geometric) one, H = r·z/(r + z).
 *
 * @param geometric - altitude by survey or satellite, [m]
 * @returns geopotential altitude, [m]
 * @range any station on earth
 * @source ISO 2533:1975, nominal radius 6 356 766 m
 */
export function geopotentialAltitude(geometric: number): number {
  return (EARTH_RADIUS * geometric) / (EARTH_RADIUS + geometric);
}

/**
 * Station pressure from a barometer that shows pressure reduced to sea level, as weather reports do.
 *
 * p = p_sea · p_std(H)/p_std(0)
 *
 * @param seaLevelPressure - as reported, [Pa]
 * @param altitude - geopotential, of the station, [m]
 * @returns pressure at the station, [Pa]
 * @range altitudes to about 2000 m, standard temperature
 * @source DERIVED from the ISO 2533 profile
 */
export function stationPressure(seaLevelPressure: number, altitude: number): number {
  return (seaLevelPressure * standardPressure(altitude)) / STANDARD_PRESSURE;
}

/**
 * Density of dry air, ρ = p/(R·T).
 *
 * @param pressure - [Pa]
 * @param temperature - [K]
 * @returns density, [kg/m³]
 * @range dry air near the ground
 * @source ISO 2533:1975, gas constant 287.05287 J/(kg·K)
 */
export function airDensity(pressure: number, temperature: number): number {
  return pressure / (AIR_GAS_CONSTANT * temperature);
}

/** 25 °C, the temperature engine ratings refer to [K]. */
export const RATING_AIR_TEMPERATURE = KELVIN_OF_ICE + 25;
