import type { Check, Pattern, Stage, Step } from "#kit";
import type { Words } from "#words";
import type { Mark, StepAnswer, Turnaround } from "#readiness";

/** An answer with who gave it and when. */
export type Answered = StepAnswer & { readonly mark: Mark };

/** One thing asked: a check of a step, or the step itself where it has none. */
export interface Ask {
  /** "step" or "step/check", as the log's fold keys its answers. */
  readonly key: string;
  readonly check?: Check;
  readonly answered?: Answered;
}

/** One line of the pattern on the screen, with what is asked there and what was answered. */
export interface Line {
  readonly stage: Stage;
  readonly step: Step;
  readonly asks: readonly Ask[];
}

/** How a whole line stands. `part`: some of its checks are answered, none of them badly. */
export type LineState = "unanswered" | "part" | "seen" | "wrong" | "not-possible";

/** Every line of a pattern in order, with the answers a turnaround holds. */
export function listLines(pattern: Pattern, turnaround?: Turnaround): readonly Line[] {
  const checks = new Map(pattern.checks.map((check) => [check.id, check]));
  const answers = turnaround?.answers ?? {};
  return pattern.stages.flatMap((stage) =>
    stage.steps.map((step) => ({ stage, step, asks: asksOf(step, checks, answers) })),
  );
}

function asksOf(step: Step, checks: ReadonlyMap<string, Check>, answers: Turnaround["answers"]): readonly Ask[] {
  if (step.checks.length === 0) return [withAnswer({ key: step.id }, answers)];
  return step.checks.flatMap((id) => {
    const check = checks.get(id);
    return check ? [withAnswer({ key: `${step.id}/${id}`, check }, answers)] : [];
  });
}

function withAnswer(ask: Ask, answers: Turnaround["answers"]): Ask {
  const answered = answers[ask.key];
  return answered ? { ...ask, answered } : ask;
}

/** How a line stands: the worst answer decides, then whether all is answered. */
export function stateOf(line: Line): LineState {
  const given = line.asks.flatMap((ask) => (ask.answered ? [ask.answered.answer] : []));
  if (given.length === 0) return "unanswered";
  if (given.includes("wrong")) return "wrong";
  if (given.includes("not-possible")) return "not-possible";
  return given.length === line.asks.length ? "seen" : "part";
}

/** The first thing at a line not yet answered. */
export function openAsk(line: Line): Ask | undefined {
  return line.asks.find((ask) => ask.answered === undefined);
}

/** What a line's state is called on the screen: what is only done was not found to be anything. */
export function wordState(line: Line, words: Words["act"]): string {
  const state = stateOf(line);
  const isAct = line.asks.every(({ check }) => check === undefined);
  return state === "seen" && isAct ? words.lineDone() : words[STATE_WORDS[state]]();
}

const STATE_WORDS = {
  unanswered: "lineUnanswered",
  part: "linePart",
  seen: "lineSeen",
  wrong: "lineWrong",
  "not-possible": "lineNotPossible",
} as const;
