import type { UnitSystem } from "#base";
import type { Pattern } from "#kit";
import type { Turnaround } from "#readiness";
import { linesBehind, type RecordRead } from "#station";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** What the record of a turnaround is told from, as this device has it: the paper's own reading. */
export function readRecord(
  { kit, view }: KitAtHand,
  turnaround: Turnaround,
  pattern: Pattern,
  units: UnitSystem,
): RecordRead {
  const people = new Map(view.people.map(({ id, name }) => [id, name]));
  const entries = linesBehind(view.entriesOf(`kit:${kit.id}`), turnaround.id);
  return { kit, turnaround, pattern, people, entries, units };
}
