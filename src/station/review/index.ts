export { pumpReviews, type PumpReview } from "./pump-reviews.ts";
export { chanceLower, levelsAt, levelsForecast, type LevelForecast, type LevelToCome } from "./level-forecasts.ts";
export { drillForecasts, type DrillForecast } from "./drill-forecasts.ts";
export { startForecasts, type StartForecast } from "./start-forecasts.ts";
export { isKeptAlready, toKeep } from "./kept-forecasts.ts";
