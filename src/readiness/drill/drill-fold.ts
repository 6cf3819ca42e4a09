import type { Entry } from "#log";
import { bareMark, markOf, type KitDraft, type Mutable } from "../draft.ts";
import type { StepAnswer } from "../kinds/kit-parts.ts";
import type { Turnaround } from "../state.ts";
import { isHiding } from "./drill-now.ts";
import type { Drill } from "./drill-state.ts";

/** Keeps what a trainee answered at a check, as long as nothing is revealed. */
export function keepForDrill(draft: KitDraft, { drill: id }: Turnaround, body: StepAnswer, entry: Entry): void {
  const drill = id === undefined ? undefined : draft.drill(id);
  if (!drill || body.check === undefined || !isHiding(drill)) return;
  const answers = draft.part(drill.answers as Record<string, Drill["answers"][string]>);
  answers[`${body.step}/${body.check}`] = { check: body.check, answer: body.answer, mark: markOf(entry) };
  drill.answers = answers;
}

/** The drill to write to; one not yet heard of is begun on the spot. */
export function drillAt(draft: KitDraft, id: string, entry: Entry): Mutable<Drill> {
  return draft.drill(id) ?? draft.addDrill(blankDrill(id, entry));
}

function blankDrill(id: string, entry: Entry): Drill {
  const begun = { ...bareMark(markOf(entry)), trainees: [], sealSeen: "" };
  return { id, begun, plants: {}, revealed: {}, hidden: 0, answers: {}, removed: {}, judged: {} };
}
