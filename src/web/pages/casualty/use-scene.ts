import type { OnSceneAnswer } from "#questions";
import type { CasualtyState } from "#readiness";
import { freshnessOf, type Freshness } from "./freshness.ts";
import { lastKnownQuestion, onSceneQuestion, spaceAt } from "./on-scene-question.ts";
import { useAsked, type Asked } from "./use-asked.ts";
import { useMinute } from "./use-minute.ts";

/** What is computed of a sheet, and how old it is. */
export interface Scene {
  /** To show: as she is now; where the last sounding is too old, or the sheet closed, as she was when last sounded. */
  readonly shown: Asked<OnSceneAnswer>;
  /** Carried on to now however old the soundings are: warnings go by it, since they only grow with time. */
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
  const live = useAsked<OnSceneAnswer>("on-scene", isClosed ? undefined : onSceneQuestion(casualty, minute, chosen));
  const last = useAsked<OnSceneAnswer>("on-scene", isHistory ? lastKnownQuestion(casualty, chosen) : undefined);
  return { shown: isHistory ? last : live, live, freshness, isHistory, minute };
}
