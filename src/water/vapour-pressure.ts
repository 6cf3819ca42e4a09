/** Coefficients n1 to n10 of IF97 region 4, table 34. */
const N = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;

/**
 * Saturation pressure of pure water.
 *
 * p = [2C / (−B + √(B² − 4AC))]⁴ MPa, with A, B, C quadratic in ϑ = T + n9/(T − n10)
 *
 * @param temperature - [K]
 * @returns pressure, [Pa]
 * @range 273.15 to 647.096 K; a few kelvin below it stays smooth
 * @source IAPWS R7-97(2012), region 4, eq. 30
 * @example saturationPressure(300) // ≈ 3536.6
 */
export function saturationPressure(temperature: number): number {
  const theta = temperature + N[8] / (temperature - N[9]);
  const a = (theta + N[0]) * theta + N[1];
  const b = (N[2] * theta + N[3]) * theta + N[4];
  const c = (N[5] * theta + N[6]) * theta + N[7];
  const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
  return 1e6 * root ** 4;
}

/**
 * Temperature at which pure water boils under this pressure.
 *
 * T = ½ [n10 + D − √((n10 + D)² − 4(n9 + n10·D))], with D from β = p^¼
 *
 * @param pressure - [Pa]
 * @returns temperature, [K]
 * @range 611.213 Pa to 22.064 MPa
 * @source IAPWS R7-97(2012), region 4, eq. 31
 * @example saturationTemperature(100_000) // ≈ 372.756
 */
export function saturationTemperature(pressure: number): number {
  const beta = (pressure / 1e6) ** 0.25;
  const e = (beta + N[2]) * beta + N[5];
  const f = (N[0] * beta + N[3]) * beta + N[6];
  const g = (N[1] * beta + N[4]) * beta + N[7];
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return (N[9] + d - Math.sqrt((N[9] + d) ** 2 - 4 * (N[8] + N[9] * d))) / 2;
}

/**
 * How much salt lowers the vapour pressure of water (Raoult's law).
 *
 * p_sw / p_w = 1 / (1 + 0.57357·S/(1000 − S))
 *
 * @param salinity - [g/kg]
 * @returns ratio, [1]
 * @range 0 to 240 g/kg, 0 to 200 °C; stated accuracy 0.5 %
 * @source Sharqawy, Lienhard and Zubair, Desalination and Water Treatment 16 (2010) 354-380, vapour pressure section
 * @example vapourPressureRatio(35) // ≈ 0.9796
 */
export function vapourPressureRatio(salinity: number): number {
  return 1 / (1 + (0.57357 * salinity) / (1000 - salinity));
}

/**
 * Vapour pressure of fresh or sea water: pure water's, lowered by the salt in it.
 *
 * @param temperature - [K]
 * @param salinity - [g/kg]
 * @returns pressure, [Pa]
 * @range 0 to 60 °C, 0 to 42 g/kg
 * @source {@link saturationPressure} times {@link vapourPressureRatio}
 * @example waterVapourPressure(288.15, 35) // ≈ 1671
 */
export function waterVapourPressure(temperature: number, salinity: number): number {
  return saturationPressure(temperature) * vapourPressureRatio(salinity);
}
