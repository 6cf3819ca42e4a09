/** Dry air pressure and inlet temperature engine ratings refer to: 99 kPa, 298 K. */
const RATING_DRY_PRESSURE = 99_000;

/**
 * Factor that turns power measured in this air into power in standard air; its inverse is what is left here.
 *
 * CF = 1.18 · (99 kPa/p_dry) · √((t + 273)/298) − 0.18
 *
 * @param dryPressure - air pressure less vapour pressure, [Pa]
 * @param temperature - of the air, [K]
 * @returns factor, [1]
 * @range spark-ignition engines without a turbocharger, wide-open throttle; stated for 90 to 105 kPa and 15 to 35 °C,
 *   used beyond that as the best there is
 * @source SAE J1349, as given in public engine-testing notes (85 % mechanical efficiency assumed)
 * @example powerCorrection(99_000, 298.15) // 1
 */
export function powerCorrection(dryPressure: number, temperature: number): number {
  return 1.18 * (RATING_DRY_PRESSURE / dryPressure) * Math.sqrt((temperature - 0.15) / 298) - 0.18;
}

/**
 * Greatest speed ratio an engine can hold in this air.
 *
 * w = min(1, √(1/CF)): engine torque falls with CF and is nearly flat against speed, pump torque goes with w².
 * The pump is taken to need all of the engine's rated power at rated speed, which is the worst case.
 *
 * @param dryPressure - [Pa]
 * @param temperature - of the air, [K]
 * @returns speed ratio, [1], at most 1
 * @range as {@link powerCorrection}
 * @source DERIVED from SAE J1349 and the affinity laws
 * @example greatestSpeedRatio(101_325, 288.15) // 1
 */
export function greatestSpeedRatio(dryPressure: number, temperature: number): number {
  return Math.min(1, Math.sqrt(1 / powerCorrection(dryPressure, temperature)));
}
