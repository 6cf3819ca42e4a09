import { checkNamed, stepNamed } from "#kit";
import type { Entry } from "#log";
import type { Bodies, EntryKind } from "#readiness";
import { sayDuration, type Words } from "#words";
import type { KitAtHand } from "./at-hand.ts";
import { sayAnswer } from "../act/wording.ts";

/** What one entry of a difference said, in a line. */
export function sayCandidate({ view, kit, pattern }: KitAtHand, entry: string, words: ViewWords): string {
  const found = view.entriesOf(`kit:${kit.id}`).find((one) => one.id === entry);
  return found ? sayEntry(found, words, pattern) : words.notReceived();
}

type ViewWords = Words["kitView"];

type Tell = {
  readonly [K in EntryKind]?: (body: Bodies[K], words: ViewWords, pattern: KitAtHand["pattern"]) => string;
};

const TELL: Tell = {
  "step-answered": (body, words, pattern) => {
    const check = body.check === undefined ? undefined : checkNamed(pattern, body.check);
    const line = stepNamed(pattern, body.step)?.line ?? body.step;
    return words.lineSaid({ line, answer: sayAnswer({ ...body, mark: NO_MARK }, check) });
  },
  "turnaround-opened": ({ sealSeen: seal }, words) => (seal === "" ? words.openedNoSeal() : words.openedSeal({ seal })),
  sealed: ({ seal }, words) => words.sealedWith({ seal }),
  "closed-grounded": ({ reason }, words) => words.closedGrounded({ reason }),
  "timer-stopped": ({ seconds }, words) => words.timed({ duration: sayDuration(seconds) }),
  "prime-timed": ({ seconds }, words) => words.primed({ duration: sayDuration(seconds) }),
  "pulls-counted": ({ pulls }, words) => words.pulls({ count: pulls }),
  "handed-over": ({ to }, words) => words.handedTo({ vessel: to }),
  "item-fitted": ({ fitted }, words) => words.fitted({ day: fitted }),
  "date-read": ({ date }, words) => (date === undefined ? words.dateUnread() : words.dateRead({ date })),
};

const NO_MARK = { entry: "", at: "", by: "", device: "" } as const;

function sayEntry(entry: Entry, words: ViewWords, pattern: KitAtHand["pattern"]): string {
  const tell = TELL[entry.kind as EntryKind] as
    ((body: unknown, words: ViewWords, pattern: KitAtHand["pattern"]) => string) | undefined;
  return tell ? tell(entry.body, words, pattern) : entry.kind.replaceAll("-", " ");
}
