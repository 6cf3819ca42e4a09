/* Bands only: the trend chart stands apart in `trend-chart.tsx`, so that the first screen does not fetch its scales. */
export type { BandFill, BandPiece, BandRow } from "./band-layout.ts";
export { BandLegend } from "./band-legend.tsx";
export { YearBands } from "./year-bands.tsx";
