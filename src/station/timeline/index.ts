export { timelineLines, utcWords, type KitOnPaper, type TimelineLine, type TimelineLog } from "./lines.ts";
export { sheetMoments, type SheetMoment } from "./moments.ts";
export { positionsTold, writersOf, type PositionTold } from "./positions.ts";
export { pumpTracks, type PumpTrack } from "./pump-tracks.ts";
