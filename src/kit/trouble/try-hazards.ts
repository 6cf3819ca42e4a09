import type { Hazard } from "../hazard.ts";
import { allSteps } from "../look-ups.ts";
import type { Pattern } from "../pattern.ts";
import { workOf } from "../work/forbids.ts";
import { startCheckOf } from "./start-check.ts";
import type { TroubleTry } from "./trouble.ts";

/** What the hand does to start it: over once it runs. */
const STARTING: ReadonlySet<Hazard> = new Set<Hazard>(["pulls-cord", "turns-key"]);

/**
 * What a try does that can hurt: its own hazards, then those of the pattern's line that shows that the kit starts. A try
 * that starts it has all of them; a try at the running pump has those that go on while it runs.
 *
 * @param pattern - of the kit
 * @param one - a try of its troubles
 * @returns each hazard once; its own alone where the pattern has no such line, or nothing is started or pumped
 */
export function tryHazards(pattern: Pattern, { hazards }: Pick<TroubleTry, "hazards">): readonly Hazard[] {
  const work = workOf({ hazards });
  const ofStart = startHazards(pattern);
  if (work.includes("start")) return once([...hazards, ...ofStart]);
  return work.includes("water") ? once([...hazards, ...ofStart.filter((one) => !STARTING.has(one))]) : hazards;
}

function startHazards(pattern: Pattern): readonly Hazard[] {
  const start = startCheckOf(pattern)?.id;
  return allSteps(pattern).find(({ checks }) => start !== undefined && checks.includes(start))?.hazards ?? [];
}

function once(hazards: readonly Hazard[]): readonly Hazard[] {
  return [...new Set(hazards)];
}
