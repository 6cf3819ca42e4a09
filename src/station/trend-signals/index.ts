export { trendSignal, type TrendCause, type TrendSignal } from "./trend-signals.ts";
