import type { Question } from "./question.ts";
import { waterQuestion } from "./water.ts";

/** Every question, in the order doors list them. To add one: write its file, and add it here. */
export const QUESTIONS: readonly Question[] = [waterQuestion];
