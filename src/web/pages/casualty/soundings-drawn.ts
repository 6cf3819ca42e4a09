import type { OnSceneAnswer } from "#questions";
import type { CasualtyState } from "#readiness";
import type { FanPoint, SoundingsDrawn } from "../../drawing/sounding-chart-scales.ts";
import { instantOn } from "./on-scene-question.ts";

/** Soundings, pumping and forecast of one space, on the wall clock. */
export function soundingsDrawn(
  casualty: CasualtyState,
  space: string,
  answer: OnSceneAnswer | undefined,
  now: number,
): SoundingsDrawn {
  const readings = casualty.soundings
    .filter((one) => one.space === space)
    .map(({ at, level }) => ({ at: Date.parse(at), level }));
  return {
    readings,
    fan: (answer?.reading?.fan ?? []).map(({ at, ...spread }) => ({ ...spread, at: instantOn(casualty, at) })),
    runs: runsOf(casualty, space, now),
    now: Math.max(now, readings.at(-1)?.at ?? now),
  };
}

function runsOf({ pumps }: CasualtyState, space: string, now: number): SoundingsDrawn["runs"] {
  return pumps.flatMap(({ runs }) =>
    runs
      .filter((run) => run.space === space)
      .map(({ from, to }) => ({ from: Date.parse(from), to: to === undefined ? now : Date.parse(to) })),
  );
}

/** Every fourth instant of the forecast: ten-minute steps of an hour, for a table. */
export function fanRows(fan: readonly FanPoint[]): readonly FanPoint[] {
  return fan.filter((_, i) => i % 4 === 0);
}
