export { visitKey, type DrawnLine, type Reexamined, type Visit, type VisitSoFar } from "./visit-state.ts";
export { applyVisitEntry, begunVisit } from "./visit-fold.ts";
export { frameOf, linesToCompare, type Comparable, type Frame, type NotComparable } from "./frame.ts";
export { drawKits, drawLines } from "./draw.ts";
export { compareVisit, drawnIn, type VisitedLine, type VisitLog, type VisitOutcome } from "./compare-visit.ts";
export { lookedAtFirst } from "./look-first.ts";
