export { judgeAnswer, type AnswerVerdict } from "./answer.ts";
export { secondsSaid, secondsWanted, type InTurnaround, type SecondSaid, type SecondWanted } from "./qualified.ts";
export { judgeReading, type Against, type Judged } from "./reading.ts";
export { readingGate, stepGate, type Gate } from "./step-gate.ts";
export { judgeInstant } from "./taken.ts";
