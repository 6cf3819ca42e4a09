import type { Pattern, Step, TroubleSign } from "#kit";
import { startCheckOf, type TimerState } from "#readiness";
import { ButtonLink } from "#web/parts/index.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

interface FaultAtLineProps {
  readonly open: OpenKit;
  readonly step: Step;
}

/** From a line at which the kit is asked to work, and does not, to what may be behind it. Pulls have their own way there. */
export function FaultAtLine({ open: { kit, pattern, turnaround }, step }: FaultAtLineProps) {
  const signs = signsAt(pattern, step, turnaround.timers[step.id]);
  if (signs.length === 0) return null;
  const query = signs.length === 1 ? `?sign=${signs[0]}` : "";
  return (
    <ButtonLink wide to={`/kit/${kit.id}/fault${query}`}>
      {step.timer?.kind === "prime" ? "No water: find out why" : "It will not start: find out why"}
    </ButtonLink>
  );
}

const NO_START: readonly TroubleSign[] = ["will-not-crank", "no-spark", "will-not-start"];
const NO_PRIME: readonly TroubleSign[] = ["no-prime", "no-water"];

/** Signs of the pattern's troubles by which a line fails; none where it asks for no start, or water came. */
function signsAt(pattern: Pattern, { timer, checks }: Step, clock: TimerState | undefined): readonly TroubleSign[] {
  const told = (signs: readonly TroubleSign[]) =>
    (pattern.troubles ?? []).flatMap(({ sign }) => (signs.includes(sign) ? [sign] : []));
  if (timer?.kind === "prime") return clock && clock.started === undefined && !clock.reached ? told(NO_PRIME) : [];
  const start = timer?.kind === "pulls" ? undefined : startCheckOf(pattern);
  return start && checks.includes(start.id) ? told(NO_START) : [];
}
