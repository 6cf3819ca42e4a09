import type { Entry } from "#log";
import { bareMark, markOf, type KitDraft } from "../draft.ts";
import type { Turnaround } from "../state.ts";

/** A turnaround that was closed is closed once more, differently. */
export function differClosing(
  draft: KitDraft,
  closed: NonNullable<Turnaround["closed"]>,
  second: string,
  entry: Entry,
): void {
  const about = `Closed twice: ${closed.seal ?? "no seal"} and ${second}.`;
  draft.differ({ what: "seal", about }, [bareMark(closed), markOf(entry)]);
}
