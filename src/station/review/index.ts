export { pumpReviews, type PumpReview } from "./pump-reviews.ts";
export { chanceLower, levelsForecast, type LevelForecast, type LevelToCome } from "./level-forecasts.ts";
export { startForecasts, type StartForecast } from "./start-forecasts.ts";
