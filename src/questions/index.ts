export { ask, exampleOf, questionNamed, questionNames, schemaOf, usesSolver } from "./ask.ts";
export type { Question, QuestionContext } from "./question.ts";
// Each by itself too, so that a page takes along only the questions it asks.
export { deliveryQuestion } from "./hydraulics/delivery.ts";
export { deliveryCurveQuestion } from "./hydraulics/delivery-curve.ts";
export { TABLE_LIFTS, deliveryTableQuestion } from "./hydraulics/delivery-table.ts";
export { fuelQuestion } from "./hydraulics/fuel.ts";
export { primeQuestion } from "./hydraulics/prime.ts";
export { proofRunQuestion } from "./hydraulics/proof-run.ts";
export { vacuumTestQuestion } from "./hydraulics/vacuum-test.ts";
export { asLastSounded } from "./on-scene/on-scene-age.ts";
export * from "./sheet/index.ts";
export type { OnSceneAnswer, OnSceneInput, Word } from "./on-scene/on-scene-fields.ts";
export type { KitsNeededAnswer } from "./launch/kits-needed.ts";
