import { airQuestion } from "./air.ts";
import { deliveryCurveQuestion } from "./delivery-curve.ts";
import { deliveryTableQuestion } from "./delivery-table.ts";
import { deliveryQuestion } from "./delivery.ts";
import { fuelQuestion } from "./fuel.ts";
import { hoseLossQuestion } from "./hose-loss.ts";
import { primeQuestion } from "./prime.ts";
import { dueQuestion } from "./due.ts";
import { floodQuestion } from "./flood.ts";
import { hydrostaticsQuestion } from "./hydrostatics.ts";
import { inflowQuestion } from "./inflow.ts";
import { kitsNeededQuestion } from "./kits-needed.ts";
import { onSceneQuestion } from "./on-scene.ts";
import { proofRunQuestion } from "./proof-run.ts";
import type { Question } from "./question.ts";
import { soundingQuestion } from "./sounding.ts";
import { vacuumTestQuestion } from "./vacuum-test.ts";
import { waterQuestion } from "./water.ts";

/** Every question, in the order doors list them. To add one: write its file, and add it here. */
export const QUESTIONS: readonly Question[] = [
  waterQuestion,
  airQuestion,
  hoseLossQuestion,
  deliveryQuestion,
  deliveryTableQuestion,
  deliveryCurveQuestion,
  primeQuestion,
  proofRunQuestion,
  vacuumTestQuestion,
  fuelQuestion,
  hydrostaticsQuestion,
  inflowQuestion,
  floodQuestion,
  soundingQuestion,
  kitsNeededQuestion,
  onSceneQuestion,
  dueQuestion,
];
