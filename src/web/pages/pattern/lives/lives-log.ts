import type { LivesLog } from "#station";
import type { StationView } from "#web/device/index.ts";

/** The station as lives are read from it: every kit with its lines, those taken off charge too. */
export function livesLogOf(view: StationView): LivesLog {
  const kits = [...view.kits, ...view.retired].map((kit) => ({ kit, lines: view.entriesOf(`kit:${kit.id}`) }));
  return { kits, patterns: view.patterns, policy: view.policy, now: `${view.today}T12:00:00Z` };
}
