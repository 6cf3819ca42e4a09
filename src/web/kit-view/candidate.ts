import { checkNamed, stepNamed } from "#kit";
import type { Entry } from "#log";
import type { Bodies, EntryKind } from "#readiness";
import { sayDuration, type Words } from "#words";
import type { KitAtHand } from "./at-hand.ts";
import { sayAnswer, type AnswerWords } from "../act/wording.ts";

/** What one entry of a difference said, in a line. */
export function sayCandidate({ view, kit, pattern }: KitAtHand, entry: string, words: CandidateWords): string {
  const found = view.entriesOf(`kit:${kit.id}`).find((one) => one.id === entry);
  return found ? sayEntry(found, { pattern, words }) : words.view.notReceived();
}

/** What a kit with something to settle is told in. */
export interface CandidateWords extends AnswerWords {
  readonly view: Words["kitView"];
}

type ViewWords = Words["kitView"];

interface Telling {
  readonly pattern: KitAtHand["pattern"];
  readonly words: CandidateWords;
}

type Tell = {
  readonly [K in EntryKind]?: (body: Bodies[K], words: ViewWords, telling: Telling) => string;
};

const TELL: Tell = {
  "step-answered": (body, view, { pattern, words }) => {
    const check = body.check === undefined ? undefined : checkNamed(pattern, body.check);
    const line = stepNamed(pattern, body.step)?.line ?? body.step;
    return view.lineSaid({ line, answer: sayAnswer({ ...body, mark: NO_MARK }, check, words) });
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

function sayEntry(entry: Entry, telling: Telling): string {
  const tell = TELL[entry.kind as EntryKind] as
    ((body: unknown, words: ViewWords, telling: Telling) => string) | undefined;
  return tell ? tell(entry.body, telling.words.view, telling) : entry.kind.replaceAll("-", " ");
}
