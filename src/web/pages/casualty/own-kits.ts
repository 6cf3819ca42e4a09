import type { Pattern } from "#kit";
import type { StationView } from "../../device/index.ts";
import { USUAL_LIFT } from "./pump-figures.ts";
import { useAsked } from "./use-asked.ts";

/** What one of this station's own kits moves, at the lift of a small boat's deck. */
export interface OwnKits {
  readonly pattern: Pattern;
  /** [m³/s] */
  readonly flow: number;
}

/** Over the side [m]. */
const RISE = 1;

/** The pattern most kits of this station are built to, and what one moves; undefined until that is computed. */
export function useOwnKits(view: StationView): OwnKits | undefined {
  const pattern = commonest(view);
  const { answer } = useAsked<{ readonly kind: string; readonly flow: number }>(
    "delivery",
    pattern && {
      kit: pattern.id,
      suction: { lift: USUAL_LIFT },
      discharge: { rise: RISE },
      water: { temperature: "12 °C", salinity: 35 },
    },
  );
  return pattern && answer && answer.flow > 0 ? { pattern, flow: answer.flow } : undefined;
}

/** The pattern that most kits are built to. */
export function commonest({ kits, patterns }: Pick<StationView, "kits" | "patterns">): Pattern | undefined {
  const counts = new Map<string, number>();
  for (const { pattern } of kits) counts.set(pattern, (counts.get(pattern) ?? 0) + 1);
  const [first] = [...counts].sort((one, other) => other[1] - one[1]);
  return first && patterns.get(first[0]);
}

/** How many kits are ready to go now, with limits or without. */
export function readyKits({ kits, standings }: Pick<StationView, "kits" | "standings">): number {
  return kits.filter(({ id }) => standings.get(id)?.standing.startsWith("ready") === true).length;
}
