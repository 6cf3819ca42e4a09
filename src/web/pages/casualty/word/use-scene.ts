import type { OnSceneAnswer } from "#questions";
import type { CasualtyState } from "#readiness";
import { freshnessOf, type Freshness } from "../soundings/freshness.ts";
import { lastKnownQuestion, sheetQuestion, spaceAt } from "#questions";
import { useShownClock } from "../soundings/sounding-clock.tsx";
import { useAsked, type Asked } from "./use-asked.ts";
import { useMinute } from "#web/timing/use-minute.ts";

/** What is computed of a sheet, and how old it is. */
export interface Scene {
  /** To show: as she is now; of a closed sheet, as she was when last sounded. */
  readonly shown: Asked<OnSceneAnswer>;
  /** As she is now; of a closed sheet, nothing. Of old soundings it says itself what is known no longer. */
  readonly live: Asked<OnSceneAnswer>;
  readonly freshness: Freshness;
  /** Nothing is forecast: what is shown is history. */
  readonly isHistory: boolean;
  /** The wall clock in whole minutes [ms]. */
  readonly minute: number;
}

/**
 * Computes a sheet anew with every line written and every minute.
 *
 * @param chosen - id of the space looked at
 */
export function useScene(casualty: CasualtyState, chosen: string | undefined): Scene {
  const minute = useMinute();
  const isClosed = casualty.closed !== undefined;
  const freshness = freshnessOf(casualty, spaceAt(casualty, chosen)?.id ?? "", minute);
  const isHistory = isClosed || freshness.isStale;
  const live = useAsked<OnSceneAnswer>("on-scene", isClosed ? undefined : sheetQuestion(casualty, minute, chosen));
  const last = useAsked<OnSceneAnswer>("on-scene", isClosed ? lastKnownQuestion(casualty, chosen) : undefined);
  useShownClock(casualty, spaceAt(casualty, chosen)?.id ?? "", live);
  return { shown: isClosed ? last : live, live, freshness, isHistory, minute };
}
