import { sayCount } from "#base";
import { checkNamed, stepNamed } from "#kit";
import type { Entry } from "#log";
import type { Bodies, EntryKind } from "#readiness";
import { sayDuration } from "#words";
import type { KitAtHand } from "./at-hand.ts";
import { sayAnswer } from "../act/wording.ts";

/** What one entry of a difference said, in a line. */
export function sayCandidate({ view, kit, pattern }: KitAtHand, entry: string): string {
  const found = view.entriesOf(`kit:${kit.id}`).find((one) => one.id === entry);
  return found ? sayEntry(found, pattern) : "An entry this device has not received yet.";
}

type Tell = { readonly [K in EntryKind]?: (body: Bodies[K], pattern: KitAtHand["pattern"]) => string };

const TELL: Tell = {
  "step-answered": (body, pattern) => {
    const check = body.check === undefined ? undefined : checkNamed(pattern, body.check);
    const line = stepNamed(pattern, body.step)?.line ?? body.step;
    return `Line ${line}: ${sayAnswer({ ...body, mark: NO_MARK }, check)}`;
  },
  "turnaround-opened": (body) =>
    `Turnaround opened, ${body.sealSeen === "" ? "no seal found" : `seal read ${body.sealSeen}`}`,
  sealed: (body) => `Sealed with ${body.seal}`,
  "closed-grounded": (body) => `Closed as grounded: ${body.reason}`,
  "timer-stopped": (body) => `Timed ${sayDuration(body.seconds)}`,
  "prime-timed": (body) => `Primed in ${sayDuration(body.seconds)}`,
  "pulls-counted": (body) => `${sayCount(body.pulls, "pull")} counted`,
  "handed-over": (body) => `Handed over to ${body.to}`,
  "item-fitted": (body) => `Fitted, ${body.fitted}`,
  "date-read": (body) => `Date read: ${body.date ?? "cannot be read"}`,
};

const NO_MARK = { entry: "", at: "", by: "", device: "" } as const;

function sayEntry(entry: Entry, pattern: KitAtHand["pattern"]): string {
  const tell = TELL[entry.kind as EntryKind] as ((body: unknown, pattern: KitAtHand["pattern"]) => string) | undefined;
  return tell ? tell(entry.body, pattern) : entry.kind.replaceAll("-", " ");
}
