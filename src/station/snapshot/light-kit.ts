import type { Pattern } from "#kit";
import type { KitState, Turnaround } from "#readiness";

/** Of what grows with a kit's years, so many of the newest are kept. */
const NEWEST = { seals: 20, runs: 60, turnarounds: 4, findings: 30, drawn: 60 } as const;

/**
 * A kit as light as its standing allows: what is open whole, of what is over the newest. Of a closed turnaround only the
 * answers are kept that a standing goes by: what was not seen right, the newest reading of each line, and the lines of
 * the proof run.
 * The name of a kit with the same seal is left out, since it is found anew; so are its runs on casualties.
 *
 * @param pattern - the one it is built to, where it is to be had
 */
export function lightKit({ sealTwin: _twin, ...kit }: KitState, pattern: Pattern | undefined): KitState {
  const isRun = runStepsOf(pattern);
  const read = newestReadings(kit.turnarounds);
  const closed = kit.findings.filter((finding) => finding.closed !== undefined);
  const old = new Set(closed.slice(0, Math.max(0, closed.length - NEWEST.findings)));
  return {
    ...kit,
    seals: kit.seals.slice(-NEWEST.seals),
    runs: kit.runs.filter(({ casualty }) => casualty === undefined).slice(-NEWEST.runs),
    turnarounds: telling(kit.turnarounds).map((one) => lightTurnaround(one, isRun, read)),
    ...(kit.drawn && { drawn: kit.drawn.slice(-NEWEST.drawn) }),
    findings: kit.findings.filter((finding) => !old.has(finding)),
  };
}

/** The newest, and however old the last that was sealed and the last that was not set aside, with what came after it. */
function telling(closed: readonly Turnaround[]): readonly Turnaround[] {
  const sealed = closed.findLastIndex((one) => one.closed?.how === "sealed");
  const stood = closed.findLastIndex((one) => one.closed?.how !== "set-aside");
  const from = Math.min(Math.max(0, closed.length - NEWEST.turnarounds), stood < 0 ? closed.length : stood);
  return closed.filter((_, at) => at >= from || at === sealed);
}

function runStepsOf(pattern: Pattern | undefined): ReadonlySet<string> {
  const steps = pattern?.stages.filter(({ id }) => id === "run").flatMap((stage) => stage.steps) ?? [];
  return new Set(steps.map(({ id }) => id));
}

/** The closed turnaround in which each line was last seen right with a reading, by the key of the answer. */
function newestReadings(closed: readonly Turnaround[]): ReadonlyMap<string, string> {
  const readings = new Map<string, string>();
  for (const { id, answers } of closed) {
    for (const [key, { answer, value }] of Object.entries(answers)) {
      if (answer === "seen" && value !== undefined) readings.set(key, id);
    }
  }
  return readings;
}

function lightTurnaround(
  turnaround: Turnaround,
  isRun: ReadonlySet<string>,
  newest: ReadonlyMap<string, string>,
): Turnaround {
  const telling = Object.entries(turnaround.answers).filter(
    ([key, { answer, step }]) => answer !== "seen" || newest.get(key) === turnaround.id || isRun.has(step),
  );
  return { ...turnaround, answers: Object.fromEntries(telling) };
}
