import type { OnSceneAnswer } from "#questions";
import type { CasualtyState } from "#readiness";
import { useEffect } from "react";
import { lastSounding } from "./freshness.ts";
import { instantOn, nextSoundingQuestion } from "./on-scene-question.ts";
import { clockKey, setClock } from "./sounding-clocks.ts";
import { useAsked, type Asked } from "./use-asked.ts";

interface SoundingClockProps {
  readonly casualty: CasualtyState;
  readonly space: string;
}

/** Keeps the clock of one space, asking anew only when something about that space is written. Draws nothing. */
export function SoundingClock({ casualty, space }: SoundingClockProps) {
  const asked = useAsked<OnSceneAnswer>("on-scene", nextSoundingQuestion(casualty, space));
  const key = clockKey(casualty.id, space);
  const at = nextOf(casualty, space, asked);
  useEffect(() => setClock(key, at), [key, at]);
  useEffect(() => () => setClock(key, undefined), [key]);
  return null;
}

/** Where nothing can be computed she is sounded all the same, as often as where little is known [ms]. */
const UNCOMPUTED = 120_000;

function nextOf(casualty: CasualtyState, space: string, asked: Asked<OnSceneAnswer>): number | undefined {
  const last = lastSounding(casualty, space);
  if (last && asked.error !== undefined) return Date.parse(last.at) + UNCOMPUTED;
  const next = asked.answer?.reading?.nextSounding;
  return next === undefined ? undefined : instantOn(casualty, next);
}
