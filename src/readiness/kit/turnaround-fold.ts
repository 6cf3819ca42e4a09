import type { Entry } from "#log";
import { forgetMet, tellMet } from "../after-use/met-fold.ts";
import { breakSeal, putSeal, seeSeal } from "./custody-fold.ts";
import { bareMark, markOf, type KitDraft, type Mutable } from "../draft.ts";
import { keepForDrill } from "../drill/drill-fold.ts";
import type { DeliveryMeasured, KitBodies, StepAnswer, Value } from "../kinds/kinds.ts";
import { isSameSeal } from "./seal-number.ts";
import type { Mark, TimerState, Turnaround } from "../state.ts";

type Answers = Record<string, StepAnswer & { readonly mark: Mark }>;

/** Kinds that say what was done and seen in a turnaround. */
export const turnaroundFolds = {
  "turnaround-opened": open,
  "step-answered": answer,
  "timer-started": (draft: KitDraft, body: KitBodies["timer-started"], entry: Entry) => {
    const { seconds: _seconds, reached: _reached, ...before } = timerOf(draft, body, entry);
    putTimer(draft, body, { ...before, started: entry.at, mark: markOf(entry) }, entry);
  },
  "timer-stopped": (draft: KitDraft, body: KitBodies["timer-stopped"], entry: Entry) => {
    stopTimer(draft, body, { seconds: body.seconds, reached: body.reached }, entry);
  },
  "pulls-counted": countPulls,
  "prime-timed": timePrime,
  "delivery-measured": measure,
  sealed: seal,
  "closed-grounded": closeGrounded,
};

/** Where a line's answer is kept. */
export function answerKey(step: string, check: string | undefined): string {
  return check === undefined ? step : `${step}/${check}`;
}

function open(draft: KitDraft, body: KitBodies["turnaround-opened"], entry: Entry): void {
  const { kit } = draft;
  const standing = kit.turnaround;
  const turnaround = draft.turnaround(body.turnaround, entry);
  const sealOnRecord = kit.seal?.number ?? standing?.opened.sealOnRecord;
  const seals = { sealSeen: body.sealSeen, ...(sealOnRecord === undefined ? {} : { sealOnRecord }) };
  Object.assign(turnaround, { because: body.because, opened: { ...markOf(entry), ...seals } });
  markDrill(draft, turnaround, body.drill ?? draft.drillOn(), entry);
  tellMet(draft, turnaround);
  if (turnaround.closed) return;
  if (standing && standing.id !== body.turnaround) {
    const about = "Two turnarounds were opened on this kit.";
    draft.differ({ what: "turnaround", about }, [standing.opened, markOf(entry)]);
  }
  if (kit.custody.kind === "away") {
    const about = `A turnaround was opened while the kit is handed over to ${kit.custody.to}.`;
    draft.differ({ what: "custody", about }, [kit.custody, markOf(entry)]);
  }
  seeSeal(draft, body.sealSeen, entry);
  breakSeal(draft, entry);
}

/** A turnaround of a drill; runs of it that sorted before are of the drill too. */
function markDrill(draft: KitDraft, turnaround: Mutable<Turnaround>, drill: string | undefined, entry: Entry): void {
  if (drill === undefined) return;
  turnaround.drill = drill;
  if (draft.run(turnaround.id)) draft.putRun(turnaround.id, { drill }, entry);
}

function answer(draft: KitDraft, body: StepAnswer, entry: Entry): void {
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

function isSameAnswer(one: StepAnswer, other: StepAnswer): boolean {
  return one.answer === other.answer && isSameValue(one.value, other.value);
}

function isSameValue(one: Value | undefined, other: Value | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  if (one.kind === "quantity" && other.kind === "quantity") return one.si === other.si;
  return JSON.stringify(one) === JSON.stringify(other);
}

interface Timed {
  readonly turnaround: string;
  readonly step: string;
}

function timerOf(draft: KitDraft, { turnaround, step }: Timed, entry: Entry): TimerState {
  return draft.turnaround(turnaround, entry).timers[step] ?? { mark: markOf(entry) };
}

function putTimer(draft: KitDraft, { turnaround, step }: Timed, timer: TimerState, entry: Entry): void {
  const writable = draft.turnaround(turnaround, entry);
  const timers = draft.part(writable.timers as Record<string, TimerState>);
  timers[step] = timer;
  writable.timers = timers;
}

/** Ends a wait, run, count or prime; two devices that measured the same thing apart, differently, differ. */
function stopTimer(draft: KitDraft, timed: Timed, found: Partial<TimerState>, entry: Entry): void {
  const { started: _started, ...before } = timerOf(draft, timed, entry);
  const fields = ["seconds", "reached", "pulls"] as const;
  const differs = fields.some((field) => before[field] !== undefined && before[field] !== found[field]);
  if (differs && draft.isBlindTo(before.mark, entry)) {
    const { turnaround, step } = timed;
    const about = "The same line was timed or counted differently on two devices.";
    draft.differ({ what: "timer", about, turnaround, step }, [before.mark, markOf(entry)]);
  }
  putTimer(draft, timed, { ...before, ...found, mark: markOf(entry) }, entry);
}

function countPulls(draft: KitDraft, body: KitBodies["pulls-counted"], entry: Entry): void {
  stopTimer(draft, body, { pulls: body.pulls, reached: body.started }, entry);
  const known = draft.run(body.turnaround);
  if (known?.pullsStep !== undefined && known.pullsStep !== body.step) return;
  draft.putRun(body.turnaround, { pulls: body.pulls, pullsStep: body.step, started: body.started }, entry);
}

function timePrime(draft: KitDraft, body: KitBodies["prime-timed"], entry: Entry): void {
  stopTimer(draft, body, { seconds: body.seconds, reached: body.primed }, entry);
  draft.putRun(body.turnaround, { primeSeconds: body.seconds, primed: body.primed }, entry);
}

function measure(draft: KitDraft, body: DeliveryMeasured, entry: Entry): void {
  const turnaround = draft.turnaround(body.turnaround, entry);
  const measured = draft.list(turnaround.measured);
  measured.push({ ...body, mark: markOf(entry) });
  turnaround.measured = measured;
  draft.putRun(body.turnaround, { ratio: body.ratio }, entry);
}

function seal(draft: KitDraft, body: KitBodies["sealed"], entry: Entry): void {
  const { kit } = draft;
  const turnaround = draft.turnaround(body.turnaround, entry);
  if (turnaround.closed) return sealAgain(draft, turnaround.closed, body.seal, entry);
  draft.closeTurnaround(turnaround, { ...markOf(entry), how: "sealed", seal: body.seal });
  if (kit.custody.kind === "away") {
    const about = `Sealed here while the kit is handed over to ${kit.custody.to}.`;
    draft.differ({ what: "custody", about }, [kit.custody, markOf(entry)]);
  } else kit.custody = { kind: "here" };
  forgetMet(draft);
  putSeal(draft, body.seal, entry);
}

function sealAgain(draft: KitDraft, closed: NonNullable<Turnaround["closed"]>, number: string, entry: Entry): void {
  if (closed.seal !== undefined && closed.how === "sealed" && isSameSeal(closed.seal, number)) return;
  const about = `Closed twice: ${closed.seal ?? "no seal"} and ${number}.`;
  draft.differ({ what: "seal", about }, [bareMark(closed), markOf(entry)]);
}

function closeGrounded(draft: KitDraft, body: KitBodies["closed-grounded"], entry: Entry): void {
  const { kit } = draft;
  const turnaround = draft.turnaround(body.turnaround, entry);
  const { reason, seal: number } = body;
  if (turnaround.closed) {
    const about = `Closed twice: ${turnaround.closed.seal ?? "no seal"} and grounded.`;
    return draft.differ({ what: "seal", about }, [bareMark(turnaround.closed), markOf(entry)]);
  }
  const how = { ...markOf(entry), how: "grounded" as const, reason };
  draft.closeTurnaround(turnaround, number === undefined ? how : { ...how, seal: number });
  if (kit.custody.kind === "back") kit.custody = { kind: "here" };
  if (number !== undefined) putSeal(draft, number, entry);
}
