import type { CasualtyState, KeptForecast } from "#readiness";

/** So many are kept of one casualty. */
const MOST = 500;
/** Chances that differ by less are the same: devices may round apart [1]. */
const SAME = 0.005;

/** What is kept of the forecasts of a casualty that was gone through. */
export function toKeep(forecasts: readonly KeptForecast[]): KeptForecast[] {
  return forecasts.slice(0, MOST);
}

/**
 * Whether what was kept when a casualty was gone through is what would be kept now: later lines, such as those of a device that was
 * without a network, may have changed it.
 */
export function isKeptAlready({ reviewed }: Pick<CasualtyState, "reviewed">, now: readonly KeptForecast[]): boolean {
  const kept = reviewed?.forecasts;
  const wanted = toKeep(now);
  return kept?.length === wanted.length && wanted.every((one) => kept.some((other) => isSame(one, other)));
}

function isSame(one: KeptForecast, other: KeptForecast): boolean {
  const isOfSame = one.of === other.of && one.at === other.at && one.kit === other.kit;
  return isOfSame && one.came === other.came && Math.abs(one.chance - other.chance) < SAME;
}
