import type { EntryKind } from "#readiness";

/** What each kind of line says, in a few words: for histories and for lines not yet sent. */
const ENTRY_WORDS: Readonly<Record<EntryKind, string>> = {
  "kit-enrolled": "Taken on charge",
  "kit-renamed": "Renamed",
  "kit-rebuilt": "Rebuilt to another pattern version",
  "kit-moved": "Moved to another place",
  "kit-retired": "Retired",
  "handed-over": "Handed over",
  returned: "Returned",
  mustered: "Mustered",
  "turnaround-opened": "Opened for a turnaround",
  "step-answered": "Step answered",
  "timer-started": "Clock started",
  "timer-stopped": "Clock stopped",
  "pulls-counted": "Pulls counted",
  "prime-timed": "Prime timed",
  "delivery-measured": "Delivery measured",
  "item-fitted": "Item fitted",
  "finding-raised": "Finding raised",
  "remedy-made": "Remedy made",
  "finding-proved": "Remedy proved",
  sealed: "Sealed",
  "closed-grounded": "Closed as grounded",
  settled: "Difference settled",
  "place-set": "Place set",
  "place-closed": "Place closed",
  "policy-set": "Policy set",
  "station-named": "Station named",
  "person-joined": "Person joined",
  "person-changed": "Person changed",
  "person-left": "Person left",
  "device-joined": "Device joined",
  "device-shut-out": "Device shut out",
  "step-reported": "Step reported",
  "report-answered": "Report answered",
  struck: "Line struck",
};

/** Words of a kind, also of one that a newer version of the app wrote. */
export function sayKind(kind: string): string {
  return (ENTRY_WORDS as Readonly<Record<string, string>>)[kind] ?? kind;
}
