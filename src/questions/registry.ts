import { airQuestion } from "./air.ts";
import { deliveryQuestion } from "./delivery.ts";
import { fuelQuestion } from "./fuel.ts";
import { hoseLossQuestion } from "./hose-loss.ts";
import { primeQuestion } from "./prime.ts";
import { dueQuestion } from "./due.ts";
import type { Question } from "./question.ts";
import { waterQuestion } from "./water.ts";

/** Every question, in the order doors list them. To add one: write its file, and add it here. */
export const QUESTIONS: readonly Question[] = [
  waterQuestion,
  airQuestion,
  hoseLossQuestion,
  deliveryQuestion,
  primeQuestion,
  fuelQuestion,
  dueQuestion,
];
