import { airQuestion } from "./hydraulics/air.ts";
import { deliveryCurveQuestion } from "./hydraulics/delivery-curve.ts";
import { deliveryTableQuestion } from "./hydraulics/delivery-table.ts";
import { deliveryQuestion } from "./hydraulics/delivery.ts";
import { fuelQuestion } from "./hydraulics/fuel.ts";
import { hoseLossQuestion } from "./hydraulics/hose-loss.ts";
import { primeQuestion } from "./hydraulics/prime.ts";
import { dueQuestion } from "./kit/due.ts";
import { faultQuestion, symptomsQuestion } from "./faults/index.ts";
import { floodQuestion } from "./flooding/flood.ts";
import { hydrostaticsQuestion } from "./flooding/hydrostatics.ts";
import { inflowQuestion } from "./flooding/inflow.ts";
import { kitsNeededQuestion } from "./launch/kits-needed.ts";
import { onSceneQuestion } from "./on-scene/on-scene.ts";
import { proofRunQuestion } from "./hydraulics/proof-run.ts";
import { planYearQuestion } from "./planning/index.ts";
import type { Question } from "./question.ts";
import {
  failureRateQuestion,
  foundByCheckQuestion,
  intervalQuestion,
  lifetimesQuestion,
  sparesQuestion,
  standbyQuestion,
  startChanceQuestion,
  trendQuestion,
} from "./reliability/index.ts";
import { rightingQuestion } from "./flooding/righting.ts";
import { soundingQuestion } from "./on-scene/sounding.ts";
import { vacuumTestQuestion } from "./hydraulics/vacuum-test.ts";
import { waterQuestion } from "./hydraulics/water.ts";

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
  rightingQuestion,
  inflowQuestion,
  floodQuestion,
  soundingQuestion,
  kitsNeededQuestion,
  onSceneQuestion,
  dueQuestion,
  standbyQuestion,
  foundByCheckQuestion,
  intervalQuestion,
  lifetimesQuestion,
  startChanceQuestion,
  failureRateQuestion,
  trendQuestion,
  sparesQuestion,
  faultQuestion,
  symptomsQuestion,
  planYearQuestion,
];
