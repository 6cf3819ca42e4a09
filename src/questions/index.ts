export { ask, exampleOf, questionNamed, questionNames, schemaOf } from "./ask.ts";
export type { Question, QuestionContext } from "./question.ts";
