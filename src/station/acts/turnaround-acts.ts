import type { Fault } from "#base";
import type { Pattern, Step } from "#kit";
import {
  barsAt,
  clockAt,
  dateWantedBy,
  drillsOn,
  isOfMeasured,
  isToMeasure,
  lookUp,
  readingGate,
  recordedFor,
  runUnderWay,
  sayBarred,
  sayRefusal,
  sayWayOut,
  sealingRefusals,
  seenGate,
  type stepGate,
  type Bodies,
  type Gate,
  type KitState,
  type Turnaround,
  measuredBefore,
} from "#readiness";
import { ENGLISH } from "#words";
import { aboutKit, allow, type Act, type ActContext } from "./draft.ts";
import { answerFaults } from "../judging/answer-faults.ts";
import { because, noSuchItem, noSuchPattern, notOpen } from "../judging/faults.ts";
import { needNotPlanter } from "../drills/drill-needs.ts";
import { needSecond } from "../people/need-second.ts";
import { needDrawn } from "../stock/needs-of-stock.ts";
import { needHere, needNewSeal, needNotAhead, needOnCharge } from "./needs.ts";

/** Kinds written while a turnaround is under way, at one of its steps. */
export type StepKind =
  "step-answered" | "timer-started" | "timer-stopped" | "pulls-counted" | "prime-timed" | "delivery-measured";

/** Opens a kit for a turnaround: breaks its seal, having read it. While a drill is on, it is part of that. */
export function openTurnaround(
  doing: ActContext,
  kit: KitState,
  body: Bodies["turnaround-opened"],
): Act<"turnaround-opened"> {
  const open = kit.turnaround
    ? because("SN-121", "kit", kit.name, "a closed kit", "A turnaround is open on it: go on with that one.")
    : undefined;
  const drill = drillsOn(kit)[0];
  const said = drill ? { ...body, drill: drill.id } : body;
  return allow(doing, aboutKit(kit, "turnaround-opened", said), [
    needOnCharge(kit),
    needHere(kit),
    needNotPlanter(doing, kit),
    open,
    patternOf(doing, kit) ? undefined : noSuchPattern(kit.pattern),
  ]);
}

/**
 * Answers a step's check or the step itself. A measurement outside its limits cannot be answered as seen right, nor a step
 * that an open finding or a line half done bars, nor one whose wait is not over, nor one that asks for a second person who is not named.
 */
export function answerStep(doing: ActContext, kit: KitState, body: Bodies["step-answered"]): Act<"step-answered"> {
  return atStep(doing, kit, "step-answered", body, [
    ...judgeCheck(doing, kit, body.step, body.check),
    ...(body.answer === "seen" ? heldBack(doing, kit, body) : []),
    ...judgeValue(doing, kit, body),
    judgeGate(doing, kit, body),
    judgeMeasured(doing, kit, body),
  ]);
}

/** Starts a wait, a run, a prime or a count at a step; no run while another goes on. */
export function startTimer(doing: ActContext, kit: KitState, body: Bodies["timer-started"]): Act<"timer-started"> {
  return atStep(doing, kit, "timer-started", body, [...heldBack(doing, kit, body), otherRun(doing, kit, body)]);
}

/** Ends a wait or run. */
export function stopTimer(doing: ActContext, kit: KitState, body: Bodies["timer-stopped"]): Act<"timer-stopped"> {
  return atStep(doing, kit, "timer-stopped", body);
}

/** Records pulls of the cord; that it started is taken whatever bars it. */
export function countPulls(doing: ActContext, kit: KitState, body: Bodies["pulls-counted"]): Act<"pulls-counted"> {
  return atStep(doing, kit, "pulls-counted", body, body.started ? [] : heldBack(doing, kit, body));
}

/** Records a prime, from first stroke to water; one that was under way when a finding was raised is still written down. */
export function timePrime(doing: ActContext, kit: KitState, body: Bodies["prime-timed"]): Act<"prime-timed"> {
  const isUnderWay = openOne(kit, body.turnaround)?.timers[body.step]?.started !== undefined;
  return atStep(doing, kit, "prime-timed", body, isUnderWay ? [] : heldBack(doing, kit, body));
}

/** Records a measured delivery. */
export function measureDelivery(
  doing: ActContext,
  kit: KitState,
  body: Bodies["delivery-measured"],
): Act<"delivery-measured"> {
  return atStep(doing, kit, "delivery-measured", body, heldBack(doing, kit, body));
}

/** Records an item fitted, in a turnaround or, for what hangs outside, without one. */
export function fitItem(doing: ActContext, kit: KitState, body: Bodies["item-fitted"]): Act<"item-fitted"> {
  const pattern = patternOf(doing, kit);
  const known = pattern?.items.some((item) => item.id === body.item);
  return allow(doing, aboutKit(kit, "item-fitted", body), [
    needOnCharge(kit),
    known ? undefined : noSuchItem("body.item", body.item),
    needNotAhead(doing, body.fitted, "body.fitted"),
    ...needDrawn(doing, kit, body.item, body.drawn),
    ...secondsAtLine(doing, kit, body),
  ]);
}

/** Records a date read off an item, or that none can be read: at a line of a turnaround, or outside one. */
export function readDate(doing: ActContext, kit: KitState, body: Bodies["date-read"]): Act<"date-read"> {
  const item = patternOf(doing, kit)?.items.find(({ id }) => id === body.item);
  return allow(doing, aboutKit(kit, "date-read", body), [
    needOnCharge(kit),
    item ? undefined : noSuchItem("body.item", body.item),
    body.of === "printed" || body.date === undefined ? undefined : needNotAhead(doing, body.date, "body.date"),
  ]);
}

/** Closes the container with a new seal, if nothing stands in the way; each thing that does is one fault. */
export function sealKit(doing: ActContext, kit: KitState, body: Bodies["sealed"]): Act<"sealed"> {
  const turnaround = openOne(kit, body.turnaround);
  const pattern = turnaround && patternOf(doing, kit, turnaround);
  if (!turnaround || !pattern) {
    return allow(doing, aboutKit(kit, "sealed", body), [
      turnaround ? noSuchPattern(kit.pattern) : notOpen(body.turnaround),
    ]);
  }
  const { kits: allKits } = doing;
  const refusals = sealingRefusals({ kit, turnaround, pattern, allKits, seal: body.seal });
  const faults = refusals.map((one) =>
    because("SN-124", one.item ?? one.rule, undefined, "settled first", sayRefusal(one, ENGLISH.held)),
  );
  const seconds = needSecond(doing, kit, { turnaround, pattern });
  return allow(doing, aboutKit(kit, "sealed", body), [needOnCharge(kit), ...faults, ...seconds]);
}

/** Closes the container with the kit grounded: always possible, with a reason. */
export function closeGrounded(
  doing: ActContext,
  kit: KitState,
  body: Bodies["closed-grounded"],
): Act<"closed-grounded"> {
  const open = openOne(kit, body.turnaround) ? undefined : notOpen(body.turnaround);
  const seal = body.seal === undefined ? undefined : needNewSeal(doing, body.seal);
  return allow(doing, aboutKit(kit, "closed-grounded", body), [open, seal]);
}

/** The pattern a turnaround, or the kit itself, is under. */
export function patternOf(doing: ActContext, kit: KitState, turnaround?: Turnaround): Pattern | undefined {
  return doing.patterns.get(turnaround?.pattern ?? kit.pattern) ?? doing.patterns.get(kit.pattern);
}

function atStep<Kind extends StepKind>(
  doing: ActContext,
  kit: KitState,
  kind: Kind,
  body: Bodies[Kind],
  against: readonly (Fault | undefined)[] = [],
): Act<Kind> {
  const open = openOne(kit, body.turnaround) ? undefined : notOpen(body.turnaround);
  const step = stepOf(doing, kit, body.step)
    ? undefined
    : because("SN-123", "body.step", body.step, "a step of the pattern", "Choose a step.");
  return allow(doing, aboutKit(kit, kind, body), [open, step, needNotPlanter(doing, kit), ...against]);
}

/** What keeps this person from doing this step: a finding or a line half done that bars it, or a second person who is not named. */
function heldBack(doing: ActContext, kit: KitState, at: AtLine): readonly Fault[] {
  return [...barred(doing, kit, at), ...secondsAtLine(doing, kit, at)];
}

/** Who is to stand beside this person at a line of a turnaround and was not named; nobody at what belongs to no line. */
function secondsAtLine(doing: ActContext, kit: KitState, at: Partial<AtLine>): readonly Fault[] {
  const turnaround = at.turnaround === undefined ? undefined : openOne(kit, at.turnaround);
  const pattern = turnaround && patternOf(doing, kit, turnaround);
  if (!turnaround || !pattern || at.step === undefined) return [];
  return needSecond(doing, kit, { turnaround, pattern }, at.step);
}

interface AtLine {
  readonly turnaround: string;
  readonly step: string;
  readonly check?: string;
}

/** What an open finding or a line half done forbids at this step, each as one fault. */
function barred(doing: ActContext, kit: KitState, at: AtLine): readonly Fault[] {
  const turnaround = openOne(kit, at.turnaround);
  const pattern = turnaround && patternOf(doing, kit, turnaround);
  if (!turnaround || !pattern) return [];
  return barsAt({ kit, turnaround, pattern }, at.step, at.check).map((bar) => {
    const remedy = `${sayBarred(bar, ENGLISH.held)} ${sayWayOut(bar, ENGLISH.held)}`;
    return because("SN-129", "body.step", at.step, "a step that nothing bars", remedy);
  });
}

/** One engine runs one way at a time: a run is not begun while another of the same turnaround lasts. */
function otherRun(doing: ActContext, kit: KitState, at: AtLine): Fault | undefined {
  const turnaround = openOne(kit, at.turnaround);
  const pattern = turnaround && patternOf(doing, kit, turnaround);
  const other = pattern && runUnderWay({ kit, turnaround, pattern }, at.step, doing.now);
  if (!other) return undefined;
  const remedy = `The run at line ${other.line} goes on. Let it last its time, or stop it there first.`;
  return because("SN-265", "body.step", at.step, "a run while no other goes on", remedy);
}

function judgeCheck(
  doing: ActContext,
  kit: KitState,
  step: string,
  check: string | undefined,
): readonly (Fault | undefined)[] {
  const asked = stepOf(doing, kit, step)?.checks ?? [];
  const fits = check === undefined ? asked.length === 0 : asked.includes(check);
  if (fits) return [];
  const allowed = asked.length === 0 ? "no check at this step" : asked.join(", ");
  return [because("SN-125", "body.check", check, allowed, "Answer the checks of this step one by one.")];
}

function judgeValue(doing: ActContext, kit: KitState, body: Bodies["step-answered"]): readonly Fault[] {
  const pattern = patternOf(doing, kit, kit.turnaround);
  const check = pattern?.checks.find((one) => one.id === body.check);
  if (!check || !pattern) return [];
  if (!body.value && measuredBefore(kit, body.step, check)) return [];
  const recorded = recordedFor(check, kit, openOne(kit, body.turnaround));
  const wanted = dateWantedBy(check, pattern, doing.policy ?? {}, doing.today);
  return answerFaults(check, body, { today: doing.today, recorded, wanted }, "body.value");
}

function judgeGate({ now, ...doing }: ActContext, kit: KitState, body: Bodies["step-answered"]): Fault | undefined {
  const step = stepOf(doing, kit, body.step);
  const turnaround = openOne(kit, body.turnaround);
  const pattern = turnaround && patternOf(doing, kit, turnaround);
  if (!step || !turnaround || !pattern) return undefined;
  const gate = gateFor(body)(step, clockAt({ kit, turnaround, pattern }, step.id), now);
  if (gate.open) return undefined;
  return because("SN-128", "body.step", body.step, NOT_YET[gate.because], GATE_REMEDY);
}

/**
 * Delivery is worked out from what was measured: no share without a measurement, and none but the one it came to. What
 * stands on a paper card was worked out there.
 */
function judgeMeasured(doing: ActContext, kit: KitState, body: Bodies["step-answered"]): Fault | undefined {
  if (body.fromCard === true) return undefined;
  const { answer, step, check: id, value } = body;
  const turnaround = openOne(kit, body.turnaround);
  const pattern = turnaround && patternOf(doing, kit, turnaround);
  if (!turnaround || !pattern) return undefined;
  const check = pattern.checks.find((one) => one.id === id);
  const isOwed = answer === "seen" && isToMeasure({ turnaround, pattern }, step);
  if (!isOwed && isOfMeasured({ turnaround, pattern }, step, check, value)) return undefined;
  const remedy = 'Write down the lift, the rise and what was read, or answer "not possible" and say why.';
  return because(
    "SN-264",
    "body.value",
    value,
    "the share that was worked out from a measurement of this step",
    remedy,
  );
}

/** "Seen" waits for the clock. So does a reading, whatever is answered, but for one that stands on a card already. */
function gateFor({ answer, value, fromCard }: Bodies["step-answered"]): typeof stepGate {
  if (answer === "seen") return seenGate;
  return value !== undefined && fromCard !== true ? readingGate : () => ({ open: true });
}

const GATE_REMEDY = 'Read it when the clock is over, answer "wrong" without a reading, or "not possible" and say why.';
const NOT_YET: Readonly<Record<Extract<Gate, { open: false }>["because"], string>> = {
  "count-pulls": "a step whose pulls are counted",
  "no-start": "a step of which it was said on which pull the engine ran",
  "time-prime": "a step whose prime is timed",
  "not-started": "a step whose clock was started and is over",
  "stopped-early": "a step whose clock ran to its end",
  "not-over": "a step whose clock is over",
};

function stepOf(doing: ActContext, kit: KitState, step: string): Step | undefined {
  const pattern = patternOf(doing, kit, kit.turnaround);
  return pattern && lookUp(pattern).steps.get(step);
}

function openOne(kit: KitState, id: string): Turnaround | undefined {
  return [kit.turnaround, ...(kit.otherTurnarounds ?? [])].find((one) => one?.id === id);
}
