export { judgeAnswer, type AnswerVerdict } from "./answer.ts";
export { clockAt, clockRun, endedBy, type AtClock } from "./clock.ts";
export { isOfMeasured, isShare, isToMeasure } from "./delivery-gate.ts";
export {
  confirmedBy,
  secondsSaid,
  secondsWanted,
  toConfirm,
  type InTurnaround,
  type SecondSaid,
  type SecondWanted,
  type ToConfirm,
} from "./qualified.ts";
export { readQuarters } from "./quarters.ts";
export { judgeReading, type Against, type Judged } from "./reading.ts";
export { runUnderWay } from "./run-under-way.ts";
export { readingGate, seenGate, stepGate, type Gate } from "./step-gate.ts";
export { judgeInstant } from "./taken.ts";
