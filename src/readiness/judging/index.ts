export { judgeAnswer, type AnswerVerdict } from "./answer.ts";
export { judgeReading, type Against, type Judged } from "./reading.ts";
export { stepGate, type Gate } from "./step-gate.ts";
export { judgeInstant } from "./taken.ts";
