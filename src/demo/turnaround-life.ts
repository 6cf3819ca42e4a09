import { addSpan, formatQuantity, parseQuantity, type Dimension } from "#base";
import { allSteps, checkNamed, itemNamed, patternKey, type Check, type Item, type Pattern, type Step } from "#kit";
import type { Answer, Fitted, Value } from "#readiness";
import type { Chance } from "./chance.ts";
import { dayOf, rfc3339, type Hand, type LogWriter } from "./log-writer.ts";

const MINUTE_MS = 60_000;
/** How many months a printed date lies ahead when an item is bought. */
const PRINTED_LIFE_MONTHS = [26, 34] as const;

/** How one invented kit behaves when it is worked on. */
export interface Behaviour {
  /** Seconds from first stroke to water. */
  readonly primeSeconds: number;
  readonly pulls: number;
  /** Measured over expected delivery. */
  readonly ratio: number;
}

export interface TurnaroundPlan {
  readonly kit: string;
  readonly serial: string;
  readonly place: string;
  readonly pattern: Pattern;
  readonly start: number;
  readonly hand: Hand;
  readonly because: "routine" | "returned" | "finding" | "seal" | "lapse";
  readonly sealSeen: string;
  readonly behaviour: Behaviour;
  /** Printed dates in the kit now, by item. */
  readonly printed: ReadonlyMap<string, string>;
  /** Expected delivery at the proof run [m³/s]; absent where the pattern has no hydraulics. */
  readonly expected?: number;
  /** Checks that are found wrong, by check id. */
  readonly wrong?: ReadonlySet<string>;
  /** Items renewed beside those that a step renews, because their life runs out. */
  readonly renewToo?: ReadonlySet<string>;
  /** Step id before which the work is left standing. */
  readonly stopsBefore?: string;
  /** The drill that it is part of. */
  readonly drill?: string;
}

/** What a turnaround left behind. */
export interface TurnaroundDone {
  readonly turnaround: string;
  readonly end: number;
}

/** Writes one turnaround, line by line, up to but without its sealing. */
export function writeTurnaround(writer: LogWriter, plan: TurnaroundPlan): TurnaroundDone {
  const turnaround = writer.newId(plan.start);
  const scribe = createScribe(writer, plan, turnaround);
  const { because, sealSeen, drill } = plan;
  scribe.write("turnaround-opened", { turnaround, because, sealSeen, ...(drill !== undefined && { drill }) });
  const steps = allSteps(plan.pattern);
  const stop = plan.stopsBefore === undefined ? steps.length : steps.findIndex((step) => step.id === plan.stopsBefore);
  for (const step of steps.slice(0, stop)) writeStep(scribe, step);
  const renewed = new Set(steps.flatMap((step) => step.renews));
  for (const id of plan.renewToo ?? [])
    if (!renewed.has(id)) renew(scribe, steps.at(-1)!, itemNamed(plan.pattern, id)!);
  return { turnaround, end: scribe.now() };
}

/** First fitting of everything in the kit on the day it is enrolled; `printed` gives dates that are known. */
export function firstFittings(
  pattern: Pattern,
  day: string,
  printed: ReadonlyMap<string, string>,
  chance: Chance,
): Fitted[] {
  return pattern.items.map((item) => fittedOn(item, day, printed.get(item.id) ?? printedFrom(day, chance)));
}

/** The month a maker would have printed on something bought today. */
function printedFrom(day: string, chance: Chance): string {
  return addSpan(day, { months: chance.whole(...PRINTED_LIFE_MONTHS) }).slice(0, 7);
}

interface Scribe {
  readonly plan: TurnaroundPlan;
  readonly turnaround: string;
  readonly writer: LogWriter;
  readonly write: (kind: Parameters<LogWriter["write"]>[0]["kind"], body: never | object) => void;
  now(): number;
  pass(ms: number): void;
}

function createScribe(writer: LogWriter, plan: TurnaroundPlan, turnaround: string): Scribe {
  const { kit, place, hand, pattern } = plan;
  let ms = plan.start;
  return {
    plan,
    turnaround,
    writer,
    now: () => ms,
    pass: (by) => {
      ms += by;
    },
    write: (kind, body) => {
      writer.write({ kind, subject: kit, place, ms, hand, pattern: patternKey(pattern), body: body as never });
      ms += writer.chance.whole(4, 25) * 1000;
    },
  };
}

/** Share of the pattern's minutes that people who know the kit take. */
const PRACTISED = 0.75;

/** What writing one line takes, about. */
const LINE_MS = 15_000;

/** Work first, then its lines: whoever answers has done what the line says. What a clock times takes its own time. */
function writeStep(scribe: Scribe, step: Step): void {
  const lines = Math.max(1, step.checks.length) + step.renews.length;
  const work = step.needs.minutes * PRACTISED * MINUTE_MS;
  scribe.pass(Math.max(0, work - lines * LINE_MS - timedMs(step)));
  writeLines(scribe, step);
}

function timedMs({ timer }: Step): number {
  return timer?.kind === "wait" || timer?.kind === "run" ? timer.atLeast * 1000 : 0;
}

function writeLines(scribe: Scribe, step: Step): void {
  writeTimer(scribe, step);
  if (step.checks.length === 0) answer(scribe, step, undefined);
  for (const id of step.checks) answer(scribe, step, checkNamed(scribe.plan.pattern, id)!);
  for (const id of step.renews) renew(scribe, step, itemNamed(scribe.plan.pattern, id)!);
  if (step.measuresDelivery && scribe.plan.expected !== undefined) measure(scribe, step, scribe.plan.expected);
}

function answer(scribe: Scribe, step: Step, check: Check | undefined): void {
  const { turnaround, plan } = scribe;
  const wrong = check !== undefined && plan.wrong?.has(check.id) === true;
  const given: Answer = wrong ? "wrong" : "seen";
  const value = check === undefined || wrong ? undefined : readingFor(scribe, check);
  const line = { turnaround, step: step.id, answer: given };
  scribe.write("step-answered", { ...line, ...(check && { check: check.id }), ...(value && { value }) });
}

function readingFor(scribe: Scribe, check: Check): Value | undefined {
  switch (check.kind) {
    case "measure":
      return measured(scribe, check);
    case "count":
      return { kind: "count", count: check.exactly };
    case "match": {
      const read = agreedOn(scribe, check);
      return { kind: "match", first: read, second: read };
    }
    case "date":
      return { kind: "date", date: scribe.plan.printed.get(check.item) ?? dayOf(scribe.now()) };
    default:
      return undefined;
  }
}

/** What both readings of a match are: the seal on record, a tank just filled in quarters, or the kit's own mark. */
function agreedOn({ plan }: Scribe, check: Check & { readonly kind: "match" }): string {
  if (check.against === "recorded-seal") return plan.sealSeen;
  if (check.against === "recorded-tag") return `${plateOf(plan.kit)}-${check.item.slice(0, 1).toUpperCase()}1`;
  if (check.against === "recorded-serial") return plan.serial;
  return check.reads === "quarters" ? "4/4" : plateOf(plan.kit);
}

/** What stands on the plate of an invented kit. */
function plateOf(kit: string): string {
  return kit.slice("kit:".length).toUpperCase();
}

function measured(scribe: Scribe, check: Extract<Check, { kind: "measure" }>): Value {
  const { atLeast, atMost } = check;
  const low = atLeast ?? lowEnd(check, atMost ?? 1);
  const high = atMost ?? (atLeast ?? 1) * 1.3;
  const si = low + (high - low) * (0.35 + 0.3 * scribe.writer.chance.next());
  const text = formatQuantity(si, check.dimension as Dimension, { unit: check.unit, digits: 3 });
  return { kind: "quantity", si: parseQuantity(text, check.dimension as Dimension), dimension: check.dimension, text };
}

/** Share of a greatest value; of a temperature, which is no share of anything, so many kelvins less. */
function lowEnd({ dimension }: Extract<Check, { kind: "measure" }>, atMost: number): number {
  return dimension === "temperature" ? atMost - 15 : atMost * 0.6;
}

function writeTimer(scribe: Scribe, step: Step): void {
  const { timer } = step;
  if (timer === undefined) return;
  const { turnaround, plan } = scribe;
  const line = { turnaround, step: step.id };
  if (timer.kind === "pulls")
    return scribe.write("pulls-counted", { ...line, pulls: plan.behaviour.pulls, started: true });
  if (timer.kind === "prime") {
    const seconds = plan.behaviour.primeSeconds;
    scribe.pass(seconds * 1000);
    return scribe.write("prime-timed", { ...line, seconds, primed: true, strokes: Math.round(seconds / 1.2) });
  }
  const started = rfc3339(scribe.now());
  scribe.write("timer-started", line);
  const seconds = timer.atLeast + scribe.writer.chance.whole(3, 40);
  scribe.pass(seconds * 1000);
  scribe.write("timer-stopped", { ...line, started, seconds, reached: true });
}

function renew(scribe: Scribe, step: Step, item: Item): void {
  const day = dayOf(scribe.now());
  const fitted = fittedOn(item, day, printedFrom(day, scribe.writer.chance));
  scribe.write("item-fitted", { ...fitted, turnaround: scribe.turnaround, step: step.id });
}

function fittedOn(item: Item, day: string, printed: string): Fitted {
  const fitted = { item: item.id, fitted: day, quantity: item.quantity };
  return item.life.kind === "printed" ? { ...fitted, printed } : fitted;
}

function measure(scribe: Scribe, step: Step, expected: number): void {
  const { ratio } = scribe.plan.behaviour;
  const flow = expected * ratio;
  const drum = 0.06;
  const seconds = drum / flow;
  scribe.write("delivery-measured", {
    turnaround: scribe.turnaround,
    step: step.id,
    method: "timed-fill",
    lift: 2,
    rise: 1.5,
    throttle: 1,
    flow,
    flowUncertainty: 0.04 * flow,
    expected,
    ratio,
    verdict: ratio < (scribe.plan.pattern.hydraulics?.proof.notes ?? 0) ? "noted" : "as-expected",
    readings: {
      drum: { kind: "quantity", si: drum, dimension: "volume", text: "60 L" },
      fill: { kind: "quantity", si: seconds, dimension: "time", text: `${seconds.toFixed(1)} s` },
    },
  });
  scribe.pass(MINUTE_MS);
}
