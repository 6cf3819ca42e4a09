import { formatQuantity, InputError, printGiven, sayCount } from "#base";
import type { Check, FuelKind, Item, Mode, Pattern, Stage, StageId, Step } from "./pattern.ts";

/**
 * The name a kit keeps of the pattern it is built to.
 *
 * @example patternKey({ id: "brinnet-450", version: 2 }) // "brinnet-450@2"
 */
export function patternKey(pattern: Pick<Pattern, "id" | "version">): string {
  return `${pattern.id}@${pattern.version}`;
}

/**
 * The pattern of a kit whatever its version.
 *
 * @param key - as {@link patternKey} writes it
 * @example familyOf("brinnet-450@2") // "brinnet-450"
 */
export function familyOf(key: string): string {
  return key.split("@", 1)[0]!;
}

/**
 * Reads a pattern's key.
 *
 * @throws InputError KI-111 not id@version
 */
export function parsePatternKey(key: string): Pick<Pattern, "id" | "version"> {
  const parts = /^([a-z0-9]+(?:-[a-z0-9]+)*)@([1-9]\d{0,3})$/.exec(key);
  if (parts) return { id: parts[1]!, version: Number(parts[2]) };
  const allowed = "id@version, such as brinnet-450@2";
  throw new InputError([
    { code: "KI-111", field: "pattern", got: printGiven(key), allowed, remedy: "Write the pattern's id and version." },
  ]);
}

/** The newest version of a pattern, which is what its id alone means. */
export function newestOf(patterns: readonly Pattern[], id: string): Pattern | undefined {
  return newestOfEach(patterns).find((one) => one.id === id);
}

/** Of each pattern its newest version only, in the order given: what a new kit is built to. */
export function newestOfEach(patterns: readonly Pattern[]): readonly Pattern[] {
  return patterns.filter((one) => !patterns.some(({ id, version }) => id === one.id && version > one.version));
}

/** The item of this id; undefined where the pattern has none, as in a log kept to another version. */
export function itemNamed(pattern: Pattern, id: string): Item | undefined {
  return pattern.items.find((item) => item.id === id);
}

/** The mode of this id. */
export function modeNamed(pattern: Pattern, id: string): Mode | undefined {
  return pattern.modes.find((mode) => mode.id === id);
}

/**
 * What went wrong with an item, named once: a mode whose name already begins with the item's stands alone.
 *
 * @example titleOfMode("Torch", "Torch does not light") // "Torch does not light"
 */
export function titleOfMode(item: string, mode: string): string {
  return mode.toLowerCase().startsWith(item.toLowerCase()) ? mode : `${item}: ${mode}`;
}

/** The check of this id. */
export function checkNamed(pattern: Pattern, id: string): Check | undefined {
  return pattern.checks.find((check) => check.id === id);
}

/** Every step, in order. */
export function allSteps(pattern: Pattern): readonly Step[] {
  return pattern.stages.flatMap((stage) => stage.steps);
}

/** True where the step hangs something up or sets it down for hours, and nobody stands by. */
export function isLeftAlone({ timer }: Pick<Step, "timer">): boolean {
  return timer?.kind === "wait" && timer.unattended === true;
}

/** What the kit's engine burns; undefined where it has none. */
export function fuelKindOf({ engine }: Pick<Pattern, "engine">): FuelKind | undefined {
  return engine && (engine.fuelKind ?? "petrol");
}

/** True where its engine is started by a key and a battery, not by a cord. */
export function isStartedByKey(pattern: Pattern): boolean {
  return allSteps(pattern).some(({ hazards }) => hazards.includes("turns-key"));
}

/** Who or what lifts the closed kit, in words: "4 to lift", "Davit on the quay and 4 people". */
export function sayLifting({ lifters, machines = [] }: Pattern["container"]): string {
  if (machines.length === 0) return `${lifters} to lift`;
  return `${machines.map(({ name }) => name).join(" or ")}, ${sayCount(lifters, "person", "people")} at the lift`;
}

/** What is said of a kit before it is started: how many lift it, by its container's own mass, then its pattern's words. */
export function briefingOf({
  briefing,
  container,
}: Pick<Pattern, "briefing" | "container">): readonly string[] | undefined {
  if (briefing === undefined || container.machines) return briefing;
  const { lifters, mass } = container;
  return [`${sayCount(lifters, "person lifts", "people lift")} it: ${formatQuantity(mass, "mass")}.`, ...briefing];
}

/** The step of this id. */
export function stepNamed(pattern: Pattern, id: string): Step | undefined {
  return allSteps(pattern).find((step) => step.id === id);
}

/** The stage of this id. */
export function stageNamed(pattern: Pattern, id: StageId): Stage | undefined {
  return pattern.stages.find((stage) => stage.id === id);
}

/** The stage a step belongs to. */
export function stageOfStep(pattern: Pattern, stepId: string): Stage | undefined {
  return pattern.stages.find((stage) => stage.steps.some((step) => step.id === stepId));
}

/** The first step that asks this check. */
export function stepOfCheck(pattern: Pattern, checkId: string): Step | undefined {
  return allSteps(pattern).find((step) => step.checks.includes(checkId));
}

/**
 * The first step at which an item whose life goes by a date is in the hand, so that a date not on record is read there.
 * Undefined where a check reads the printed date, where every turnaround fits a new one, and where no step touches it.
 */
export function stepForDate(pattern: Pattern, item: Item): Step | undefined {
  if (item.life.kind !== "printed" && item.life.kind !== "fitted") return undefined;
  const checks = pattern.checks.filter((check) => check.item === item.id);
  const steps = allSteps(pattern).filter((step) => !step.optional && step.after === undefined);
  const isAsked = (check: Check) => steps.some((step) => step.checks.includes(check.id));
  if (checks.some((check) => check.kind === "date" && isAsked(check))) return undefined;
  if (steps.some((step) => step.renews.includes(item.id))) return undefined;
  const isInHand = (step: Step) => checks.some(({ id }) => step.checks.includes(id)) || step.stows.includes(item.id);
  return steps.find(isInHand);
}

/** The items whose date, where it is not on record, is read at this step. */
export function datesReadAt(pattern: Pattern, step: Step): readonly Item[] {
  return pattern.items.filter((item) => stepForDate(pattern, item)?.id === step.id);
}

/**
 * The items whose printed date a check of this step reads, and which no turnaround fits new by itself: whoever finds the
 * date too near fits a new one here, such as cells.
 */
export function fittedAtDate(pattern: Pattern, step: Step): readonly Item[] {
  const dated = pattern.checks.filter(({ id, kind }) => kind === "date" && step.checks.includes(id));
  const isRenewed = (id: string) => allSteps(pattern).some(({ renews }) => renews.includes(id));
  return pattern.items.filter(
    ({ id, life }) => life.kind === "printed" && !isRenewed(id) && dated.some(({ item }) => item === id),
  );
}

/** The checks that can find this mode: what proves it gone. */
export function checksFinding(pattern: Pattern, modeId: string): readonly Check[] {
  return pattern.checks.filter((check) => check.finds.includes(modeId));
}

/** The ways this item fails. */
export function modesOf(pattern: Pattern, itemId: string): readonly Mode[] {
  return pattern.modes.filter((mode) => mode.item === itemId);
}

/** The items fixed to this one, and stowed with it, at any depth. */
export function partsOf(pattern: Pattern, itemId: string): readonly Item[] {
  const direct = pattern.items.filter((item) => item.partOf === itemId);
  return direct.flatMap((item) => [item, ...partsOf(pattern, item.id)]);
}

/** What a place is called. */
export function placeNamed(pattern: Pattern, id: string): string | undefined {
  return pattern.container.places.find((place) => place.id === id)?.name;
}

/** The modes a person can pick from at a step: those its checks find, in order, each once. */
export function modesAtStep(pattern: Pattern, step: Step, checkId?: string): readonly Mode[] {
  const asked = checkId === undefined ? step.checks : [checkId];
  const ids = new Set(asked.flatMap((id) => checkNamed(pattern, id)?.finds ?? []));
  return [...ids].flatMap((id) => modeNamed(pattern, id) ?? []);
}
