export { scoreForecasts, type Forecast, type ForecastScore, type ScoreBin } from "./score-forecasts.ts";
