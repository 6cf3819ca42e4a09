import { isDate, isMonth, parseDate, type Fault } from "#base";
import type { Pattern, Step } from "#kit";
import {
  isSameSeal,
  lookUp,
  sealingRefusals,
  type Bodies,
  type KitState,
  type Turnaround,
  type Value,
} from "#readiness";
import { aboutKit, allow, type Act, type Doing } from "./draft.ts";
import { because, noSuchItem, noSuchPattern } from "./faults.ts";
import { needHere, needNewSeal, needNotAhead, needOnCharge } from "./needs.ts";

/** Kinds written while a turnaround is under way, at one of its steps. */
export type StepKind =
  "step-answered" | "timer-started" | "timer-stopped" | "pulls-counted" | "prime-timed" | "delivery-measured";

/** Kinds of check at which something is read off and entered. */
const READ_OFF: ReadonlySet<string> = new Set(["measure", "count", "match", "date"]);

/** Opens a kit for a turnaround: breaks its seal, having read it. */
export function openTurnaround(
  doing: Doing,
  kit: KitState,
  body: Bodies["turnaround-opened"],
): Act<"turnaround-opened"> {
  const open = kit.turnaround
    ? because("SN-121", "kit", kit.name, "a closed kit", "A turnaround is open on it: go on with that one.")
    : undefined;
  return allow(doing, aboutKit(kit, "turnaround-opened", body), [
    needOnCharge(kit),
    needHere(kit),
    open,
    patternOf(doing, kit) ? undefined : noSuchPattern(kit.pattern),
  ]);
}

/** Answers a step's check or the step itself. A measurement outside its limits cannot be answered as seen right. */
export function answerStep(doing: Doing, kit: KitState, body: Bodies["step-answered"]): Act<"step-answered"> {
  return atStep(doing, kit, "step-answered", body, [
    ...judgeCheck(doing, kit, body.step, body.check),
    ...judgeValue(doing, kit, body),
  ]);
}

/** Starts a wait, a run, a prime or a count at a step. */
export function startTimer(doing: Doing, kit: KitState, body: Bodies["timer-started"]): Act<"timer-started"> {
  return atStep(doing, kit, "timer-started", body);
}

/** Ends a wait or run. */
export function stopTimer(doing: Doing, kit: KitState, body: Bodies["timer-stopped"]): Act<"timer-stopped"> {
  return atStep(doing, kit, "timer-stopped", body);
}

/** Records pulls of the cord. */
export function countPulls(doing: Doing, kit: KitState, body: Bodies["pulls-counted"]): Act<"pulls-counted"> {
  return atStep(doing, kit, "pulls-counted", body);
}

/** Records a prime, from first stroke to water. */
export function timePrime(doing: Doing, kit: KitState, body: Bodies["prime-timed"]): Act<"prime-timed"> {
  return atStep(doing, kit, "prime-timed", body);
}

/** Records a measured delivery. */
export function measureDelivery(
  doing: Doing,
  kit: KitState,
  body: Bodies["delivery-measured"],
): Act<"delivery-measured"> {
  return atStep(doing, kit, "delivery-measured", body);
}

/** Records an item fitted, in a turnaround or, for what hangs outside, without one. */
export function fitItem(doing: Doing, kit: KitState, body: Bodies["item-fitted"]): Act<"item-fitted"> {
  const pattern = patternOf(doing, kit);
  const known = pattern?.items.some((item) => item.id === body.item);
  return allow(doing, aboutKit(kit, "item-fitted", body), [
    needOnCharge(kit),
    known ? undefined : noSuchItem("body.item", body.item),
    needNotAhead(doing, body.fitted, "body.fitted"),
  ]);
}

/** Closes the container with a new seal, if nothing stands in the way; each thing that does is one fault. */
export function sealKit(doing: Doing, kit: KitState, body: Bodies["sealed"]): Act<"sealed"> {
  const turnaround = openOne(kit, body.turnaround);
  const pattern = turnaround && patternOf(doing, kit, turnaround);
  if (!turnaround || !pattern) {
    return allow(doing, aboutKit(kit, "sealed", body), [
      turnaround ? noSuchPattern(kit.pattern) : notOpen(body.turnaround),
    ]);
  }
  const { kits: allKits } = doing;
  const refusals = sealingRefusals({ kit, turnaround, pattern, allKits, seal: body.seal });
  const faults = refusals.map((one) => because("SN-124", one.item ?? one.rule, undefined, "settled first", one.text));
  return allow(doing, aboutKit(kit, "sealed", body), [needOnCharge(kit), ...faults]);
}

/** Closes the container with the kit grounded: always possible, with a reason. */
export function closeGrounded(doing: Doing, kit: KitState, body: Bodies["closed-grounded"]): Act<"closed-grounded"> {
  const open = openOne(kit, body.turnaround) ? undefined : notOpen(body.turnaround);
  const seal = body.seal === undefined ? undefined : needNewSeal(doing, body.seal);
  return allow(doing, aboutKit(kit, "closed-grounded", body), [open, seal]);
}

/** The pattern a turnaround, or the kit itself, is under. */
export function patternOf(doing: Doing, kit: KitState, turnaround?: Turnaround): Pattern | undefined {
  return doing.patterns.get(turnaround?.pattern ?? kit.pattern) ?? doing.patterns.get(kit.pattern);
}

function atStep<Kind extends StepKind>(
  doing: Doing,
  kit: KitState,
  kind: Kind,
  body: Bodies[Kind],
  against: readonly (Fault | undefined)[] = [],
): Act<Kind> {
  const open = openOne(kit, body.turnaround) ? undefined : notOpen(body.turnaround);
  const step = stepOf(doing, kit, body.step)
    ? undefined
    : because("SN-123", "body.step", body.step, "a step of the pattern", "Choose a step.");
  return allow(doing, aboutKit(kit, kind, body), [open, step, ...against]);
}

function judgeCheck(
  doing: Doing,
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

function judgeValue(doing: Doing, kit: KitState, body: Bodies["step-answered"]): readonly (Fault | undefined)[] {
  const pattern = patternOf(doing, kit, kit.turnaround);
  const check = pattern?.checks.find((one) => one.id === body.check);
  if (!check || body.answer !== "seen") return [];
  const { value } = body;
  if (!value) return READ_OFF.has(check.kind) ? [notRead(check.expect)] : [];
  const remedy = 'Answer "wrong" and raise a finding, or read it again.';
  const outside = because("SN-126", "body.value", printable(value), check.expect, remedy);
  if (check.kind === "measure" || check.kind === "timed") {
    const si = value.kind === "quantity" ? value.si : undefined;
    const within = si !== undefined && si >= (check.atLeast ?? -Infinity) && si <= (check.atMost ?? Infinity);
    return within ? [] : [outside];
  }
  if (check.kind === "count") return value.kind === "count" && value.count === check.exactly ? [] : [outside];
  if (check.kind === "date") return isGoodDate(value, doing.today) ? [] : [outside];
  if (check.kind !== "match") return [];
  const recorded = openOne(kit, body.turnaround)?.opened.sealOnRecord;
  const agrees = check.against === undefined ? agreesWithin(value) : agreesWithRecord(value, recorded);
  return agrees ? [] : [outside];
}

function agreesWithin(value: Value): boolean {
  return value.kind === "match" && plain(value.first) === plain(value.second);
}

/** The reading is held against the record itself, whatever it says the record is; with none, it is only kept. */
function agreesWithRecord(value: Value, recorded: string | undefined): boolean {
  if (recorded === undefined) return value.kind === "text" && value.text.trim() !== "";
  return value.kind === "match" && isSameSeal(value.first, recorded);
}

function isGoodDate(value: Value, today: string): boolean {
  if (value.kind !== "date" || !(isDate(value.date) || isMonth(value.date))) return false;
  return parseDate(value.date) >= today;
}

/** A reading as it is compared: letter case and runs of blanks do not count. */
function plain(text: string): string {
  return text.trim().replace(/\s+/g, " ").toLowerCase();
}

function notRead(expect: string): Fault {
  return because("SN-127", "body.value", undefined, expect, "Enter what was read, not only that it was right.");
}

function printable(value: Value): string {
  if (value.kind === "match") return `${value.first} and ${value.second}`;
  if (value.kind === "count") return String(value.count);
  return value.kind === "date" ? value.date : value.text;
}

function stepOf(doing: Doing, kit: KitState, step: string): Step | undefined {
  const pattern = patternOf(doing, kit, kit.turnaround);
  return pattern && lookUp(pattern).steps.get(step);
}

function openOne(kit: KitState, id: string): Turnaround | undefined {
  return [kit.turnaround, ...(kit.otherTurnarounds ?? [])].find((one) => one?.id === id);
}

function notOpen(id: string): Fault {
  return because("SN-122", "body.turnaround", id, "a turnaround that is open", "Open the kit first.");
}
