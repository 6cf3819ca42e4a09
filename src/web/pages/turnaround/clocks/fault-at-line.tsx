import { startCheckOf, stepNamed, type Pattern, type Step, type TroubleSign } from "#kit";
import type { Bar, TimerState } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { ButtonLink } from "#web/parts/index.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

interface FaultAtLineProps {
  readonly open: OpenKit;
  readonly step: Step;
}

/** From a line at which the kit is asked to work, and does not, to what may be behind it. Pulls have their own way there. */
export function FaultAtLine({ open: { kit, pattern, turnaround }, step }: FaultAtLineProps) {
  const words = useWords("turnaroundLine");
  const signs = signsAt(pattern, step, turnaround.timers[step.id]);
  if (signs.length === 0) return null;
  const query = new URLSearchParams({ ...(signs.length === 1 && { sign: signs[0]! }), line: String(step.line) });
  return (
    <ButtonLink wide to={`/kit/${kit.id}/fault?${query.toString()}`}>
      {step.timer?.kind === "prime" ? words.noWaterWhy() : words.noStartWhy()}
    </ButtonLink>
  );
}

/** From a line that waits because the kit did not start, to what may be behind that; back to this line. */
export function FaultBehindBar({ open: { kit, pattern, turnaround }, bar, line }: FaultBehindBarProps) {
  const words = useWords("turnaroundLine");
  const start = startCheckOf(pattern);
  const found = kit.findings.find(({ id }) => id === bar.finding);
  const asked = bar.step === undefined ? undefined : stepNamed(pattern, bar.step);
  const isStart = start !== undefined && (asked?.checks.includes(start.id) ?? false);
  const isHere = found === undefined || found.turnaround === turnaround.id;
  if (!isStart || !isHere || pattern.troubles === undefined) return null;
  return (
    <ButtonLink wide to={`/kit/${kit.id}/fault?sign=will-not-start&line=${line}`}>
      {words.noStartWhy()}
    </ButtonLink>
  );
}

interface FaultBehindBarProps {
  readonly open: OpenKit;
  readonly bar: Bar;
  /** The line that waits. */
  readonly line: number;
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
