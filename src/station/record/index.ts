export type { RecordRead, RecordTable } from "./record.ts";
export { linesBehind } from "./lines-behind.ts";
export { exceptionsOf, isAmiss, NO_EXCEPTIONS } from "./exceptions.ts";
export { summaryOf } from "./summary.ts";
export { renewalsOf, runsOf } from "./readings.ts";
export { findingsOf, labelOf, linesOfKind, nameOf, said, secondPerson } from "./record-reading.ts";
export { answerWordsOf, findingWords, labelsOf } from "./record-words.ts";
export { dateWords, instantWords } from "./value-words.ts";
