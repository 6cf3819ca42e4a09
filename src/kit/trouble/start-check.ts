import type { Check, Pattern, StageId } from "../pattern.ts";
import type { TroubleSign } from "./trouble.ts";

/** Stages in which a kit is asked to work for the first time in an opening. */
const FIRST_ASKED: ReadonlySet<StageId> = new Set<StageId>(["prime", "run"]);
const NO_START: ReadonlySet<TroubleSign> = new Set<TroubleSign>([
  "will-not-pull",
  "will-not-crank",
  "no-spark",
  "will-not-start",
]);

/**
 * The check by which an opening shows that a kit starts, by cord, key or plug: the first proof by doing, in the stages in
 * which it is asked to work, that can find a cause of its not starting; any mode that grounds, where the pattern tells
 * of no troubles.
 *
 * @param pattern - of the kit
 * @returns undefined where it has none
 */
export function startCheckOf(pattern: Pattern): Check | undefined {
  const causes = causesOfNoStart(pattern);
  const steps = pattern.stages.filter(({ id }) => FIRST_ASKED.has(id)).flatMap((stage) => stage.steps);
  const asked = steps.flatMap(({ checks }) =>
    checks.flatMap((id) => pattern.checks.find((one) => one.id === id) ?? []),
  );
  return asked.find(({ kind, finds }) => kind === "prove" && finds.some((mode) => causes.has(mode)));
}

function causesOfNoStart({ modes, troubles = [] }: Pattern): ReadonlySet<string> {
  if (troubles.length === 0) return new Set(modes.flatMap(({ id, effect }) => (effect === "grounds" ? [id] : [])));
  const signs = troubles.filter(({ sign }) => NO_START.has(sign));
  return new Set(signs.flatMap(({ causes }) => causes.flatMap(({ mode }) => mode ?? [])));
}
