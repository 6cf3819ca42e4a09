import type { Pattern } from "#kit";
import { bandsOf, type Band, type DayRange, type KitState, type StationPolicy } from "#readiness";
import type { StationView } from "../device/sync/contract.ts";

interface Read {
  readonly policy: StationPolicy;
  readonly patterns: ReadonlyMap<string, Pattern>;
  readonly from: string;
  readonly bands: readonly Band[];
}

/** The bands of each kit, worked out once and kept while the kit, the day, the policy and the patterns are the same. */
export class BandShelf {
  readonly #read = new WeakMap<KitState, Read>();

  /** Empty where this device has not the kit's pattern. */
  bandsOf(
    kit: KitState,
    { policy, patterns }: Pick<StationView, "policy" | "patterns">,
    range: DayRange,
  ): readonly Band[] {
    const before = this.#read.get(kit);
    const isSame = before?.policy === policy && before.patterns === patterns && before.from === range.from;
    if (before && isSame) return before.bands;
    const pattern = patterns.get(kit.pattern);
    if (!pattern) return [];
    const bands = bandsOf(kit, pattern, range, policy, { otherPatternVersions: [...patterns.values()] });
    this.#read.set(kit, { policy, patterns, from: range.from, bands });
    return bands;
  }
}
