export { KELVIN_OF_ICE, STANDARD_GRAVITY } from "./gravity.ts";
export { densityOnIpts68, waterDensity } from "./density.ts";
export {
  saturationPressure,
  saturationTemperature,
  vapourPressureRatio,
  waterVapourPressure,
} from "./vapour-pressure.ts";
export { pureWaterViscosity, seaWaterViscosity, waterViscosity } from "./viscosity.ts";
export {
  ALTITUDE_LIMITS,
  RATING_AIR_TEMPERATURE,
  STANDARD_AIR_TEMPERATURE,
  STANDARD_PRESSURE,
  airDensity,
  geopotentialAltitude,
  standardAirTemperature,
  standardPressure,
  stationPressure,
} from "./air.ts";
export { DENSITY_KNOWN_TO, WATER_LIMITS, waterAt, type Water } from "./water.ts";
