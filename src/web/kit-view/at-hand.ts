import { allSteps, patternAfter, stepsAsked, type Pattern } from "#kit";
import type { KitState, Turnaround } from "#readiness";
import type { StationView } from "../device/sync/contract.ts";

/** A kit with its pattern, as every page about it begins. */
export interface KitAtHand {
  readonly view: StationView;
  readonly kit: KitState;
  readonly pattern: Pattern;
}

/** A kit that stands open, with its turnaround. */
export interface OpenKit extends KitAtHand {
  readonly turnaround: Turnaround;
}

/** The kit of a page's address; undefined where this device knows no such kit or not its pattern. */
export function findKit(view: StationView, id: string): KitAtHand | undefined {
  return atHand(
    view,
    view.kits.find((one) => one.id === id),
  );
}

/** The same for pages that only tell of the kit: one that was taken off charge is found too. */
export function findKitEver(view: StationView, id: string): KitAtHand | undefined {
  const retired = view.retired.find((one) => one.id === id);
  return findKit(view, id) ?? atHand(view, retired);
}

function atHand(view: StationView, kit: KitState | undefined): KitAtHand | undefined {
  const pattern = kit && view.patterns.get(kit.turnaround?.pattern ?? kit.pattern);
  return pattern && { view, kit, pattern: patternFor(kit, pattern) };
}

/** With the steps that belong to what the kit met, and without those for what it did not meet. */
function patternFor({ turnaround }: KitState, pattern: Pattern): Pattern {
  if (!turnaround) return pattern;
  const answered = new Set(Object.values(turnaround.answers).map(({ step }) => step));
  const isAsked = stepsAsked(pattern, turnaround);
  const key = allSteps(pattern)
    .flatMap((step) => (isAsked(step) || answered.has(step.id) ? [] : [step.id]))
    .join(" ");
  const known = PATTERNS.get(pattern) ?? new Map<string, Pattern>();
  const found = known.get(key) ?? patternAfter(pattern, turnaround, answered);
  PATTERNS.set(pattern, known.set(key, found));
  return found;
}

/** The same object each time, so that what is drawn from a pattern is not drawn anew at every line. */
const PATTERNS = new WeakMap<Pattern, Map<string, Pattern>>();

/** The same with its open turnaround, where there is one. */
export function withTurnaround(at: KitAtHand): OpenKit | undefined {
  const turnaround = at.kit.turnaround;
  return turnaround && { ...at, turnaround };
}

/** Name of a person; the id where this device has not heard of them. */
export function nameOf(view: Pick<StationView, "people">, person: string): string {
  return view.people.find((one) => one.id === person)?.name ?? person;
}

/** "Ada, 14:05" or, where the answer came from another device, "Ada, 14:05, on Boat room tablet". */
export function sayWho(
  view: Pick<StationView, "people" | "devices" | "device">,
  mark: { readonly by: string; readonly at: string; readonly device: string },
) {
  const device = view.devices.find((one) => one.id === mark.device);
  const where = mark.device === view.device ? "" : `, on ${device?.name ?? "another device"}`;
  return `${nameOf(view, mark.by)}, ${mark.at.slice(11, 16)}${where}`;
}
