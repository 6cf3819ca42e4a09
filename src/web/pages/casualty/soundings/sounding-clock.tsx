import type { OnSceneAnswer } from "#questions";
import type { CasualtyState } from "#readiness";
import { useEffect } from "react";
import { lastSounding } from "./freshness.ts";
import { useWatched } from "#web/watched/index.ts";
import { instantOn, nextSoundingQuestion } from "#questions";
import { clockKey, setClock, showSpace, shownSpaces } from "./sounding-clocks.ts";
import { useAsked, type Asked } from "../word/use-asked.ts";

interface SoundingClockProps {
  readonly casualty: CasualtyState;
  readonly space: string;
}

/** Keeps the clock of one space that no sheet shows, asking anew only when something about that space is written. Draws nothing. */
export function SoundingClock({ casualty, space }: SoundingClockProps) {
  const key = clockKey(casualty.id, space);
  const isShown = useWatched(shownSpaces).includes(key);
  const asked = useAsked<OnSceneAnswer>("on-scene", isShown ? undefined : nextSoundingQuestion(casualty, space));
  const at = nextOf(casualty, space, asked);
  useEffect(() => {
    if (!isShown) setClock(key, at);
  }, [key, at, isShown]);
  useEffect(() => () => setClock(key, undefined), [key]);
  return null;
}

/** Keeps the clock of the space that a sheet shows, by the answer that it shows. */
export function useShownClock(casualty: CasualtyState, space: string, asked: Asked<OnSceneAnswer>): void {
  const key = clockKey(casualty.id, space);
  const at = nextOf(casualty, space, asked);
  const isOpen = casualty.closed === undefined;
  useEffect(() => (isOpen ? showSpace(key) : undefined), [key, isOpen]);
  useEffect(() => {
    if (isOpen && at !== undefined) setClock(key, at);
  }, [key, at, isOpen]);
}

/** Where nothing can be computed she is sounded all the same, as often as where little is known [ms]. */
const UNCOMPUTED = 120_000;

function nextOf(casualty: CasualtyState, space: string, asked: Asked<OnSceneAnswer>): number | undefined {
  const last = lastSounding(casualty, space);
  if (last && asked.error !== undefined) return Date.parse(last.at) + UNCOMPUTED;
  const next = asked.answer?.reading?.nextSounding;
  return next === undefined ? undefined : instantOn(casualty, next);
}
