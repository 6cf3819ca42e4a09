export { ask, exampleOf, questionNamed, questionNames, schemaOf } from "./ask.ts";
export type { Question, QuestionContext } from "./question.ts";
// Each by itself too, so that a page takes along only the questions it asks.
export { deliveryQuestion } from "./delivery.ts";
export { deliveryCurveQuestion } from "./delivery-curve.ts";
export { TABLE_LIFTS, deliveryTableQuestion } from "./delivery-table.ts";
export { fuelQuestion } from "./fuel.ts";
export { primeQuestion } from "./prime.ts";
export { proofRunQuestion } from "./proof-run.ts";
export { vacuumTestQuestion } from "./vacuum-test.ts";
export { asLastSounded, sayAge } from "./on-scene-age.ts";
export type { OnSceneAnswer, OnSceneInput } from "./on-scene-fields.ts";
export type { KitsNeededAnswer } from "./kits-needed.ts";
