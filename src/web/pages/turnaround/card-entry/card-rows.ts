import { itemNamed, linesOf, type Check, type Item, type Pattern, type Step, type StepTimer } from "#kit";
import type { KitState, Turnaround } from "#readiness";
import type { Answered } from "#web/act/lines.ts";

/** One box of a filled card to type up: a clock, a thing fitted, or an answer. */
export type CardRow = {
  /** Line as printed on the card: "12", "12a". */
  readonly label: string;
  readonly key: string;
  readonly step: Step;
  readonly stageName: string;
  readonly text: string;
} & (
  | { readonly kind: "timer"; readonly timer: StepTimer; readonly done: boolean }
  | { readonly kind: "fitting"; readonly item: Item; readonly done: boolean }
  | { readonly kind: "answer"; readonly check?: Check; readonly answered?: Answered }
);

/** Every box of the pattern's card, in order, with what the turnaround holds of it already. */
export function cardRows(pattern: Pattern, turnaround: Turnaround, contents: KitState["contents"]): readonly CardRow[] {
  return linesOf(pattern).flatMap((line): readonly CardRow[] => {
    const { label, step, stageName, text, check } = line;
    const common = { label, step, stageName, text };
    const before = check
      ? []
      : [...timerRow(common, turnaround), ...fittingRows(common, pattern, turnaround, contents)];
    if (!line.answered) return before;
    const key = check ? `${step.id}/${check.id}` : step.id;
    const answered = turnaround.answers[key];
    const answer = { ...common, key, kind: "answer" as const, ...(check && { check }), ...(answered && { answered }) };
    return [...before, answer];
  });
}

type Common = Pick<CardRow, "label" | "step" | "stageName" | "text">;

function timerRow(common: Common, turnaround: Turnaround): readonly CardRow[] {
  const { timer, id } = common.step;
  if (!timer) return [];
  const state = turnaround.timers[id];
  const done = (timer.kind === "pulls" ? state?.pulls : state?.seconds) !== undefined;
  return [{ ...common, key: `${id} timer`, kind: "timer", timer, done }];
}

function fittingRows(
  common: Common,
  pattern: Pattern,
  turnaround: Turnaround,
  contents: KitState["contents"],
): readonly CardRow[] {
  return common.step.renews.flatMap((id) => {
    const item = itemNamed(pattern, id);
    if (!item) return [];
    const done = contents[id]?.turnaround === turnaround.id;
    return [{ ...common, key: `${common.step.id} fits ${id}`, kind: "fitting" as const, item, done }];
  });
}

/** True for a box that a stroke of the pen fills: nothing was read, timed or dated there. */
export function isTicked(row: CardRow): boolean {
  if (row.kind === "fitting") return row.item.life.kind !== "printed";
  return row.kind === "answer" && (!row.check || row.check.kind === "look" || row.check.kind === "prove");
}

/** True where the turnaround has this box already. */
export function isFilled(row: CardRow): boolean {
  return row.kind === "answer" ? row.answered !== undefined : row.done;
}
