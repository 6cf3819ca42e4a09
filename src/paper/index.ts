export { renderTurnaroundRecord, type TurnaroundRecord } from "./turnaround-record.ts";
export { renderPatternCard, type PatternCard } from "./pattern-card.ts";
export type { DeliveryRow } from "./delivery-table.ts";
export { renderCasualtyTimeline, type CasualtyTimeline } from "./casualty-timeline.ts";
export { renderReadDoCard } from "./read-do-card.ts";
