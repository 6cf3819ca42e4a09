import type { Entry } from "#log";
import { markOf, type KitDraft, type Mutable } from "../draft.ts";
import { keepForDrill } from "../drill/drill-fold.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import type { Value } from "../kinds/schema-parts.ts";
import { HANDS } from "../kinds/writers.ts";
import type { Mark, Turnaround } from "../state.ts";
import { answerKey } from "./answer-key.ts";

export const subject = "kit";
export const writers = HANDS;

/** One step answered. A later answer to the same step and check replaces this one; both stay in the log. */
export const schema = ({ stepAnswer }: Shapes) => stepAnswer;
export type Body = BodyOf<typeof schema>;

type Answers = Record<string, Body & { readonly mark: Mark }>;

/** The last answer stands; answered differently on two devices they differ. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const turnaround = draft.turnaround(body.turnaround, entry);
  const key = answerKey(body.step, body.check);
  const before = turnaround.answers[key];
  if (before && !isSameAnswer(before, body) && draft.isBlindTo(before.mark, entry)) {
    const { step, check } = body;
    const about = "The same line was answered differently on two devices.";
    const line = { what: "answer" as const, about, turnaround: turnaround.id, step };
    draft.differ(check === undefined ? line : { ...line, check }, [before.mark, markOf(entry)]);
  }
  putAnswer(draft, turnaround, key, { ...body, mark: markOf(entry) });
  keepForDrill(draft, turnaround, body, entry);
}

function putAnswer(draft: KitDraft, turnaround: Mutable<Turnaround>, key: string, answer: Answers[string]): void {
  const answers = draft.part(turnaround.answers as Answers);
  answers[key] = answer;
  turnaround.answers = answers;
}

function isSameAnswer(one: Body, other: Body): boolean {
  return one.answer === other.answer && isSameValue(one.value, other.value);
}

function isSameValue(one: Value | undefined, other: Value | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  if (one.kind === "quantity" && other.kind === "quantity") return one.si === other.si;
  return JSON.stringify(one) === JSON.stringify(other);
}
