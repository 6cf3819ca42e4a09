import type { OnSceneAnswer } from "#questions";
import type { CasualtyState } from "#readiness";
import type { FanPoint, SoundingsDrawn } from "#web/drawing/sounding-chart-scales.ts";
import { instantOn } from "#questions";

/**
 * Soundings, pumping and forecast of one space, on the wall clock. A closed sheet has no now and no forecast, and ends
 * with what was last written about her: a pump is drawn no further than that, however late the sheet was closed.
 *
 * @param answer - whose forecast to draw; undefined for none
 * @param now - [ms]
 */
export function soundingsDrawn(
  casualty: CasualtyState,
  space: string,
  answer: OnSceneAnswer | undefined,
  now: number,
): SoundingsDrawn {
  const readings = casualty.soundings
    .filter((one) => one.space === space)
    .map(({ at, level }) => ({ at: Date.parse(at), level }));
  if (casualty.closed) return { readings, fan: [], runs: runsOf(casualty, space, lastWritten(casualty)) };
  return {
    readings,
    fan: fanOf(casualty, answer),
    runs: runsOf(casualty, space, now),
    now: Math.max(now, readings.at(-1)?.at ?? now),
  };
}

/** The forecast, no higher than her deck edge: beyond it she is under and no level means anything. */
function fanOf(casualty: CasualtyState, answer: OnSceneAnswer | undefined): readonly FanPoint[] {
  const cap = (level: number) => Math.min(level, answer?.hull.depth ?? level);
  return (answer?.reading?.fan ?? []).map(({ at, p05, p25, p50, p75, p95 }) => ({
    at: instantOn(casualty, at),
    p05: cap(p05),
    p25: cap(p25),
    p50: cap(p50),
    p75: cap(p75),
    p95: cap(p95),
  }));
}

/** When pumps ran, to `end` at the latest [ms]. */
function runsOf({ pumps }: CasualtyState, space: string, end: number): SoundingsDrawn["runs"] {
  return pumps.flatMap(({ runs }) =>
    runs
      .filter((run) => run.space === space)
      .map((run) => ({ from: Date.parse(run.from), to: run.to === undefined ? end : Date.parse(run.to) }))
      .map(({ from, to }) => ({ from, to: Math.max(from, Math.min(to, end)) })),
  );
}

/** The last sounding, patch, or start or stop of a pump before the closing [ms]. */
function lastWritten({ soundings, patches, pumps, closed }: CasualtyState): number {
  const runs = pumps.flatMap((pump) => pump.runs.flatMap(({ from, to }) => (to === undefined ? [from] : [from, to])));
  const written = [...[...soundings, ...patches].map(({ at }) => at), ...runs].filter((at) => at !== closed?.at);
  return Math.max(...written.map((at) => Date.parse(at)));
}

/** Every fourth instant of the forecast: ten-minute steps of an hour, for a table. */
export function fanRows(fan: readonly FanPoint[]): readonly FanPoint[] {
  return fan.filter((_, i) => i % 4 === 0);
}
