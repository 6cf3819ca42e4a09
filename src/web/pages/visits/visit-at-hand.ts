import { checkNamed, stepNamed, type Check, type Pattern, type Step } from "#kit";
import { drawnIn, visitKey, type DrawnLine, type KitState, type Reexamined, type Visit } from "#readiness";
import { isLineShown, linesHidden } from "#station";
import type { StationView } from "#web/device/index.ts";

/** A line to look at, with what is asked there. Nothing of what the keeper wrote. */
export interface LineToLook extends DrawnLine {
  readonly key: string;
  readonly ofKit: KitState;
  readonly pattern: Pattern;
  readonly atStep: Step;
  readonly ofCheck: Check;
  readonly stage: string;
  /** What was seen of it in this visit. */
  readonly seen?: Reexamined;
}

/** Names of the places of a visit. */
export function sayPlaces({ places }: Pick<StationView, "places">, { begun }: Visit): string {
  return begun.places.map((id) => places.find((one) => one.id === id)?.name ?? id).join(", ");
}

/** Lines of a visit that this person is shown and this device has kit and pattern for, in the order of kits and lines. */
export function linesToLook(view: Pick<StationView, "kits" | "patterns" | "me">, visit: Visit): readonly LineToLook[] {
  const keys = new Map(visit.begun.of.map(({ kit, pattern }) => [kit, pattern]));
  const shown = drawnIn(visit).filter((line) => isLineShown(view, visit, line));
  const lines = shown.flatMap((line): readonly LineToLook[] => {
    const ofKit = view.kits.find(({ id }) => id === line.kit);
    const pattern = view.patterns.get(keys.get(line.kit) ?? "");
    const [atStep, ofCheck] = pattern ? [stepNamed(pattern, line.step), checkNamed(pattern, line.check)] : [];
    if (!ofKit || !pattern || !atStep || !ofCheck) return [];
    const stage = pattern.stages.find(({ steps }) => steps.includes(atStep))?.name ?? "";
    const seen = visit.seen[visitKey(line)];
    return [{ ...line, key: visitKey(line), ofKit, pattern, atStep, ofCheck, stage, ...(seen && { seen }) }];
  });
  return lines.toSorted(byKit);
}

/** A kit, and how many of its lines are left that this person is not shown. */
export interface HiddenOf {
  readonly kit: string;
  readonly name: string;
  readonly left: number;
}

/** How much is left of what this person is not shown, kit by kit. */
export function hiddenLeft(view: Pick<StationView, "kits" | "me">, visit: Visit): readonly HiddenOf[] {
  return [...linesHidden(view, visit)].map(([kit, left]) => {
    return { kit, left, name: view.kits.find(({ id }) => id === kit)?.name ?? kit };
  });
}

/** Kits by name, so that one is done before the next is opened; lines of one stay in the pattern's order. */
function byKit(one: LineToLook, other: LineToLook): number {
  if (one.kit === other.kit) return one.atStep.line - other.atStep.line;
  return one.ofKit.name.localeCompare(other.ofKit.name, "en", { numeric: true });
}
