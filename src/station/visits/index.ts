export { beginVisit, endVisit, reexamineLine } from "./visit-acts.ts";
export { planVisit, sizeOfVisit, type VisitPlan, type VisitSize, type VisitWish } from "./visit-plan.ts";
export { visitResult, type CountedShare, type VisitedKitResult, type VisitResult } from "./visit-result.ts";
export { reachOf, sayReach } from "./visit-reach.ts";
export { leftOutOf, paretoOf, type LeftOut, type ParetoBy, type ParetoRow } from "./pareto.ts";
export { neverFoundLines, type NeverFoundLine } from "./never-found-lines.ts";
export {
  sayAssessorSaw,
  sayCounted,
  sayFoundWrong,
  sayKappa,
  sayKeeperWrote,
  sayNotDrawn,
  sayVisitedLine,
} from "./visit-words.ts";
export { isLineShown, linesHidden } from "./lines-shown.ts";
