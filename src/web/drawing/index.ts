export type { BandFill, BandPiece, BandRow } from "./band-layout.ts";
export { BandLegend } from "./band-legend.tsx";
export { TrendChart, type TrendChartProps } from "./trend-chart.tsx";
export type { TrendLimit, TrendPoint } from "./trend-scales.ts";
export { useWidth } from "./use-width.ts";
export { YearBands, type YearBandsProps } from "./year-bands.tsx";
