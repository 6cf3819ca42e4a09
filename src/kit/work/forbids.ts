import type { Hazard } from "../hazard.ts";
import { allSteps, checksFinding, stepNamed } from "../look-ups.ts";
import type { Mode, Pattern, Step } from "../pattern.ts";
import { WORKS, type Work } from "./work.ts";

/** The work that a step with this hazard does, where the step does not say. Common practice. */
const WORK_OF: Readonly<Partial<Record<Hazard, readonly Work[]>>> = {
  "opens-fuel": ["fuel"],
  "fills-fuel": ["fuel"],
  "opens-cylinder": ["spark"],
  "pulls-cord": ["start", "spark"],
  "runs-engine": ["start"],
  "unguarded-rotation": ["start"],
  "electric-in-water": ["start", "spark"],
  "pumps-water": ["water"],
  "pressurised-hose": ["water"],
  "closes-clamp": ["lid"],
  "opens-diesel": ["fuel"],
  "turns-key": ["start"],
  "oil-under-pressure": ["water"],
};

/**
 * The work that a fault forbids which was found at a step with this hazard, where its mode does not say: what leaks fuel
 * is not started, sparked at, wrapped or shut in; what runs badly is not run; what holds water badly is not put under
 * pressure. Common practice.
 */
const FORBIDDEN_BY: Readonly<Partial<Record<Hazard, readonly Work[]>>> = {
  "opens-fuel": ["fuel", "start", "spark", "wrapping", "lid"],
  "fills-fuel": ["fuel", "start", "spark", "wrapping", "lid"],
  "opens-cylinder": ["start", "spark"],
  "pulls-cord": ["start"],
  "turns-by-hand": ["start"],
  "runs-engine": ["start"],
  "hot-exhaust": ["start"],
  "unguarded-rotation": ["start"],
  "electric-in-water": ["start", "spark"],
  "pumps-water": ["water"],
  "pressurised-hose": ["water"],
  "closes-clamp": ["lid"],
  "opens-diesel": ["fuel", "start", "wrapping", "lid"],
  "turns-key": ["start"],
  "hands-at-drive": ["start"],
  "works-on-battery": ["start"],
  "oil-under-pressure": ["start", "water"],
  "opens-hydraulics": ["start", "water"],
};

/**
 * The work that waits while a line with this hazard is half done: what is parted lets fuel out, an open cylinder throws
 * mist, and hands are at what would turn. Common practice.
 */
const HELD_BY: Readonly<Partial<Record<Hazard, readonly Work[]>>> = {
  "opens-fuel": ["fuel", "start", "spark", "wrapping", "lid"],
  "fills-fuel": ["fuel", "start", "spark", "wrapping", "lid"],
  "opens-cylinder": ["start", "spark"],
  "turns-by-hand": ["start"],
  "unguarded-rotation": ["start"],
  "electric-in-water": ["start", "spark"],
  "opens-diesel": ["fuel", "start", "wrapping", "lid"],
  "hands-at-drive": ["start"],
  "works-on-battery": ["start"],
  "opens-hydraulics": ["start", "water"],
};

/** The work a step does: what its `does` says, else what its hazards tell. */
export function workOf(step: Pick<Step, "does" | "hazards">): readonly Work[] {
  return step.does ?? inOrder(step.hazards.flatMap((hazard) => WORK_OF[hazard] ?? []));
}

/** The work a mode forbids while it is found and nothing was done about it: what its `forbids` says, else the default. */
export function forbiddenBy(pattern: Pattern, mode: Mode): readonly Work[] {
  return mode.forbids ?? defaultOf(stepsFinding(pattern, mode.id));
}

/** Where a planted fault could burn or shock who looks for it. Judgement. */
const NEVER_PLANTED_AT: readonly Hazard[] = ["opens-fuel", "fills-fuel", "electric-in-water"];

/**
 * True where the fault may be planted in a drill: none that bars sparks by its own word, and none that is looked for where
 * fuel is open or electricity meets water.
 */
export function mayBePlanted(pattern: Pattern, mode: Mode): boolean {
  if (mode.forbids?.includes("spark")) return false;
  return !stepsFinding(pattern, mode.id).some(({ hazards }) => hazards.some((one) => NEVER_PLANTED_AT.includes(one)));
}

/** The work that a fault forbids which the pattern does not know: what its step tells, and where that tells nothing, starting. */
export function forbiddenByUnknown(pattern: Pattern, step: string | undefined): readonly Work[] {
  const found = step === undefined ? undefined : stepNamed(pattern, step);
  const told = defaultOf(found ? [found] : []);
  return told.length === 0 ? ["start"] : told;
}

/** The work that waits while some checks of a step are answered and others are not: what is open there is open still. */
export function heldByHalfDone({ hazards }: Pick<Step, "hazards">): readonly Work[] {
  return inOrder(hazards.flatMap((hazard) => HELD_BY[hazard] ?? []));
}

/** True where neither the mode nor the hazards of its steps say what it forbids. */
export function isForbiddingUnsaid(pattern: Pattern, mode: Mode): boolean {
  return mode.forbids === undefined && defaultOf(stepsFinding(pattern, mode.id)).length === 0;
}

function stepsFinding(pattern: Pattern, mode: string): readonly Step[] {
  const checks = new Set(checksFinding(pattern, mode).map(({ id }) => id));
  return allSteps(pattern).filter((step) => step.checks.some((check) => checks.has(check)));
}

function defaultOf(steps: readonly Step[]): readonly Work[] {
  return inOrder(steps.flatMap((step) => step.hazards.flatMap((hazard) => FORBIDDEN_BY[hazard] ?? [])));
}

function inOrder(works: readonly Work[]): readonly Work[] {
  return WORKS.filter((work) => works.includes(work));
}
