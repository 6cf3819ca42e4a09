import type { OnSceneAnswer } from "#questions";
import type { Bodies, CasualtyState } from "#readiness";
import { pumpKey } from "#questions";

/** Fewer soundings of a space show nothing of what its pumps move. */
const FEWEST = 3;

/**
 * What the page believes of each pump's delivery as the sheet is closed: of kits of ours alone, and only where soundings
 * show something of it.
 *
 * @param answer - to `on-scene`, as it stands
 */
export function deliveredOf(
  { pumps }: Pick<CasualtyState, "pumps">,
  answer: OnSceneAnswer | undefined,
): NonNullable<Bodies["casualty-closed"]["delivered"]> {
  const { reading } = answer ?? {};
  if (!answer || !reading || reading.soundings < FEWEST || reading.misfit) return [];
  return pumps
    .filter(({ kit, runs }) => kit !== undefined && runs.length > 0)
    .flatMap(({ pump }) => {
      const seen = answer.pumps.find((one) => one.pump === pumpKey(pump))?.seen;
      return seen ? [{ pump, p05: seen.p05, p50: seen.p50, p95: seen.p95 }] : [];
    });
}
