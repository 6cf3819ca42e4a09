import { solveOde, type Crossing, type OdeSolution } from "#numerics";
import { makeBody, makeGeneralBody, type Body } from "../hull/body.ts";
import { carryExactly } from "./exact-phase.ts";
import type { Resting } from "../hull/equilibrium.ts";
import type { FloodCase, FloodEvent, FloodOutcome, FloodRun, FloodSample } from "./flood-case.ts";
import { makeOutlook } from "./flood-outlook.ts";
import { intakeAt, makeWatches, type Outlook, type Watch } from "./flood-watch.ts";
import { makePiping, surfaceAt, type Intake, type Piping, type Suction } from "../openings/flows.ts";
import { slopesOfFlows } from "../openings/flow-slopes.ts";
import { judgeOutcome } from "./flood-outcome.ts";
import { sampleAt, sampleOf } from "./flood-sample.ts";
import { LINEAR_BELOW, sillOf } from "../openings/opening.ts";
import { timetableOf, type TimedChange } from "./timetable.ts";

type Afloat = Extract<Resting, { kind: "afloat" }>;

/** More restarts than this mean that something flutters; the run says so and ends. */
const MOST_PHASES = 2000;
/** More looks at one space or another than this mean that the story is too long for one answer. */
const MOST_LOOKS = 400_000;
/** A deck edge that stands no higher above the water is under it [m]. */
const AWASH = 1e-9;
const LOST_AT_ONCE: FloodEvent = { kind: "lost", at: 0, name: "boat" };
/** An opening or level met so often is no longer stopped at: the flows are continuous there, only less smooth. */
const MOST_MEETINGS = 40;

interface Run {
  readonly given: FloodCase;
  readonly body: Body;
  readonly piping: Piping;
  readonly outlook: Outlook;
  readonly watches: readonly Watch[];
  readonly timetable: readonly TimedChange[];
  readonly events: FloodEvent[];
  readonly series: FloodSample[];
  /** How often something has been met, by name: what flutters is let be. */
  readonly met: Map<string, number>;
  readonly total: { steps: number; rates: number; phases: number; exact: number; looks: number };
  readonly linearBelow: number;
  t: number;
  y: Float64Array;
  next: number;
  sampled: number;
  end: { readonly kind: "lost" | "gave-up"; readonly because: string } | undefined;
}

/**
 * Works out a flooding in time.
 *
 * State: water in each compartment, the sea's total inflow and the pumps' total. Between events the flows are smooth
 * and an adaptive Runge-Kutta method carries them; at each event (a hole covered or uncovered, a strainer bare, a sill
 * reached, the deck edge under, a pump started, stopped or failed) it stops exactly there and starts again. A pump
 * with its strainer at the surface takes no more than flows in, with its strainer above it nothing.
 *
 * @param given - a valid case (see `checkFloodCase`), SI units
 * @returns series, events, outcome and what is lost to rounding
 * @range quasi-steady flow, level surfaces, no waves; docs/methods/flooding.md, "What the model cannot know"
 * @source DERIVED: docs/methods/flooding.md, "Simulation"
 * @example simulateFlood({ vessel: { kind: "fixed", outsideLevel: 1.5, compartments: [{ name: "hold", area: 12 }] },
 *   openings: [], pumps: [], duration: 60 }).outcome.kind // "holding"
 */
export function simulateFlood(given: FloodCase): FloodRun {
  return live(beginRun(given, makeBody(given.vessel)));
}

/**
 * The same by the general integrator and the balance of forces alone: the judge of the closed form.
 *
 * @param given - a valid case, SI units
 * @returns as {@link simulateFlood}
 * @source DERIVED: docs/methods/flooding.md, "Simulation"
 */
export function integrateFlood(given: FloodCase): FloodRun {
  return live(beginRun(given, makeGeneralBody(given.vessel)));
}

function live(run: Run): FloodRun {
  while (run.end === undefined && run.t < run.given.duration) livePhase(run);
  return closeRun(run);
}

function beginRun(given: FloodCase, body: Body): Run {
  const piping = makePiping(body, given.openings, given.pumps, given.accuracy?.linearBelow);
  const total = { steps: 0, rates: 0, phases: 0, exact: 0, looks: 0 };
  const outlook = makeOutlook(body, total);
  const y = new Float64Array(body.names.length + 2);
  body.water.forEach((volume, i) => {
    y[i] = Math.min(volume, body.capacities[i]!);
  });
  const start = body.settle(y);
  const run: Run = {
    given,
    body,
    piping,
    outlook,
    watches: start.kind === "afloat" ? watchesOf(given, body, piping, outlook, start) : [],
    timetable: timetableOf(given, piping),
    events: [],
    series: [],
    met: new Map(),
    total,
    linearBelow: given.accuracy?.linearBelow ?? LINEAR_BELOW,
    t: 0,
    y,
    next: 0,
    sampled: 0,
    end: start.kind === "afloat" ? undefined : { kind: "lost", because: start.because },
  };
  if (start.kind === "afloat") startAfloat(run, start);
  else startLost(run);
  return run;
}

function startAfloat(run: Run, start: Afloat): void {
  setStrainers(run);
  makeChanges(run);
  sampleUntil(run, 0, () => run.y);
  const freeboard = run.body.freeboard(start) ?? Number.POSITIVE_INFINITY;
  if (freeboard > AWASH || !losesAtDeckEdge(run.given)) return;
  run.end = { kind: "lost", because: "the deck edge is under water at the start" };
  run.events.push({ kind: "deck-edge", at: 0, name: "deck edge" }, LOST_AT_ONCE);
}

/** She has no lie of her own: what was told of her, as if held upright, is all there is to see. */
function startLost(run: Run): void {
  const upright = run.body.holdUpright(run.y);
  run.series.push(sampleOf(run, 0, run.y, { resting: upright, isHeld: true }));
  run.events.push(LOST_AT_ONCE);
}

function losesAtDeckEdge({ vessel }: FloodCase): boolean {
  return vessel.kind === "floating" && vessel.lostWhen !== "foundered";
}

function watchesOf(given: FloodCase, body: Body, piping: Piping, outlook: Outlook, start: Afloat): Watch[] {
  return makeWatches(body, piping, outlook, {
    marks: given.marks ?? [],
    lostAtDeckEdge: losesAtDeckEdge(given),
    submerged: submergedOf(piping, start),
  });
}

function submergedOf(piping: Piping, start: Afloat): ReadonlySet<string> {
  const under = piping.openings.filter((one) => surfaceAt(start, one.from, one.x, one.y) > sillOf(one.opening));
  return new Set(under.map((one) => one.name));
}

function setStrainers(run: Run): void {
  const resting = run.outlook.lie(run.y);
  for (const pump of run.piping.pumps) pump.intake = intakeOf(resting, pump);
}

/** Makes every change whose time has come. */
function makeChanges(run: Run): void {
  while (run.next < run.timetable.length && run.timetable[run.next]!.at <= run.t) {
    const change = run.timetable[run.next]!;
    change.apply();
    if (change.kind !== undefined) run.events.push({ kind: change.kind, at: change.at, name: change.name });
    run.next += 1;
    setStrainers(run);
  }
}

/** From one event or change to the next. */
function livePhase(run: Run): void {
  const until = Math.min(run.given.duration, run.timetable[run.next]?.at ?? Number.POSITIVE_INFINITY);
  const watched = run.watches.filter((one) => isWatched(run, one));
  const exact = carryExactly(run, until, watched);
  const solution = exact ?? integrate(run, until, watched);
  count(run, solution);
  if (exact !== undefined) run.total.exact += 1;
  sampleUntil(run, solution.t, (t) => solution.at(t));
  run.t = solution.t;
  run.y = solution.y;
  meet(run, solution, watched);
  bareStrainers(run);
  if (solution.kind !== "stopped" && solution.kind !== "finished")
    run.end = { kind: "gave-up", because: solution.because };
  makeChanges(run);
}

function isWatched(run: Run, watch: Watch): boolean {
  if (watch.isOn !== undefined && !watch.isOn()) return false;
  return watch.effect !== undefined || watch.endsRun !== undefined || (run.met.get(watch.name) ?? 0) < MOST_MEETINGS;
}

function integrate(run: Run, until: number, watches: readonly Watch[]): OdeSolution {
  const { body, piping, outlook } = run;
  const size = body.names.length;
  return solveOde(
    {
      from: run.t,
      to: until,
      start: run.y,
      rate(_t, y, out) {
        piping.refresh(outlook.lie(y), y);
        piping.gather(piping.flows, 1, 0, out, 1, 0);
      },
      jacobian(_t, y, out) {
        run.total.looks += size + 1;
        slopesOfFlows(body, piping, y, size, out);
      },
    },
    {
      relative: run.given.accuracy?.relative ?? 1e-6,
      absolute: run.given.accuracy?.absolute ?? 1e-8,
      maxAttempts: 5000,
      events: watches.map((one) => one.event),
    },
  );
}

function count(run: Run, solution: OdeSolution): void {
  run.total.phases += 1;
  run.total.steps += solution.counters.steps;
  run.total.rates += solution.counters.rates;
  if (run.total.phases >= MOST_PHASES) run.end = { kind: "gave-up", because: `more than ${MOST_PHASES} events` };
  if (run.total.looks * run.body.names.length < MOST_LOOKS) return;
  run.end = { kind: "gave-up", because: `more than ${MOST_LOOKS} looks at her spaces: ask about a shorter time` };
}

/** Notes what was met, in order; the last may have ended the phase. */
function meet(run: Run, solution: OdeSolution, watches: readonly Watch[]): void {
  for (const crossing of solution.crossings) {
    const found = watches.find((one) => one.event === crossing.event)!;
    const kind = crossing.rising ? found.kinds.rising : found.kinds.falling;
    if (kind !== undefined) note(run, { kind, at: crossing.at, name: found.name });
    found.effect?.(crossing.rising);
    if (found.endsRun !== undefined) loseBoat(run, crossing, found.endsRun, kind);
  }
}

/** Of strainers side by side each is bared, even where only one was seen to be. */
function bareStrainers(run: Run): void {
  const resting = run.outlook.lie(run.y);
  for (const pump of run.piping.pumps) {
    if (pump.intake !== "under" || pump.share === 0 || intakeOf(resting, pump) === "under") continue;
    pump.intake = "skimming";
    note(run, { kind: "suction-dry", at: run.t, name: pump.name });
  }
}

function intakeOf(resting: Afloat, pump: Suction): Intake {
  const intake = intakeAt(surfaceAt(resting, pump.compartment, pump.x, pump.y) - pump.height);
  return intake === "above" && pump.followsWater ? "skimming" : intake;
}

function note(run: Run, event: FloodEvent): void {
  const count = (run.met.get(event.name) ?? 0) + 1;
  run.met.set(event.name, count);
  if (count <= MOST_MEETINGS) run.events.push(event);
}

function loseBoat(run: Run, crossing: Crossing, because: string, kind: FloodEvent["kind"] | undefined): void {
  run.end = { kind: "lost", because: run.outlook.isLost(crossing.y) ?? because };
  if (kind !== "lost") run.events.push({ kind: "lost", at: crossing.at, name: "boat" });
}

function sampleUntil(run: Run, until: number, stateAt: (t: number) => Float64Array): void {
  const step = run.given.step ?? run.given.duration / 60;
  for (;;) {
    const t = Math.min(run.sampled * step, run.given.duration);
    if (t > until || run.series.at(-1)?.at === run.given.duration) return;
    run.series.push(sampleAt(run, t, stateAt(t)));
    run.sampled += 1;
  }
}

function closeRun(run: Run): FloodRun {
  const size = run.body.names.length;
  const last = run.series.at(-1);
  if (run.end !== undefined && last !== undefined && last.at !== run.t) run.series.push(sampleAt(run, run.t, run.y));
  let balance = run.y[size + 1]! - run.y[size]!;
  for (let i = 0; i < size; i += 1) balance += run.y[i]! - Math.min(run.body.water[i]!, run.body.capacities[i]!);
  return {
    series: run.series,
    events: run.events,
    outcome: outcomeOf(run),
    volumeError: balance,
    counters: run.total,
  };
}

function outcomeOf(run: Run): FloodOutcome {
  if (run.end !== undefined) return { ...run.end, at: run.t };
  return judgeOutcome(run.series, run.events);
}
