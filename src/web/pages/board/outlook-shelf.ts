import type { Pattern } from "#kit";
import { outlookOf, type KitState, type Outlook, type StationPolicy } from "#readiness";
import type { StationView } from "../../device/contract.ts";

interface Read {
  readonly policy: StationPolicy;
  readonly patterns: ReadonlyMap<string, Pattern>;
  readonly outlook: Outlook;
}

/** What bears on each kit, read once and kept while the kit, the policy and the patterns are the same. */
export class OutlookShelf {
  readonly #read = new WeakMap<KitState, Read>();

  /** Undefined where this device has not the kit's pattern. */
  outlookOf(kit: KitState, { policy, patterns }: Pick<StationView, "policy" | "patterns">): Outlook | undefined {
    const before = this.#read.get(kit);
    if (before && before.policy === policy && before.patterns === patterns) return before.outlook;
    const pattern = patterns.get(kit.pattern);
    if (!pattern) return undefined;
    const outlook = outlookOf(kit, pattern, policy, { otherPatternVersions: [...patterns.values()] });
    this.#read.set(kit, { policy, patterns, outlook });
    return outlook;
  }
}
