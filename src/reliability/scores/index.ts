export { scoreForecasts, type ToldChance, type ForecastScore, type ScoreBin } from "./score-forecasts.ts";
export { crpsOfPercentiles, type ToldPercentile } from "./crps.ts";
