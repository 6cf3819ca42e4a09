import { Link } from "wouter";
import { useSendState } from "#web/device/index.ts";
import type { SendState } from "#web/device/sync/contract.ts";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";
import { sayDay, sayTime } from "../words/say-time.ts";

export interface SendMarkProps {
  /** In few words, where there is little room: "3 not sent". Readers hear all of them. */
  readonly isShort?: boolean;
}

/** Always in sight: is everything on this device sent? Leads to the lines that are not. */
export function SendMark({ isShort = false }: SendMarkProps) {
  const state = useSendState();
  const words = useWords("frame");
  if (state === undefined) return null;
  return (
    <Link className={`send-mark send-${state.kind}`} to="/outbox">
      <SendShape kind={state.kind} />
      <span className={isShort ? "for-readers-only" : undefined}>{saySendState(state, words)}</span>
      {isShort && <span aria-hidden="true">{shorten(state, words)}</span>}
    </Link>
  );
}

/** "3 lines not sent since 14:02". A day is named once it is not today. */
export function saySendState(state: SendState, words: Words["frame"], today = new Date()): string {
  if (state.kind === "sent") return words.allSent();
  if (state.kind === "refused") return words.refused({ count: state.lines });
  const isToday = new Date(state.since).toDateString() === today.toDateString();
  const since = isToday ? sayTime(state.since) : sayDay(state.since);
  return state.lines > 0
    ? words.linesNotSent({ count: state.lines, since })
    : words.photosNotSent({ count: state.photos, since });
}

function shorten(state: SendState, words: Words["frame"]): string {
  if (state.kind === "sent") return words.allSent();
  if (state.kind === "refused") return words.refusedShort({ count: state.lines });
  return words.notSentShort({ count: state.lines + state.photos });
}

/** Sent: tick. Waiting: hollow mark. Refused: cross. */
function SendShape({ kind }: { readonly kind: SendState["kind"] }) {
  const shapes = { sent: "M3 9l4 4 7-9", waiting: "M8.5 3v6M8.5 12v2", refused: "M3 3l11 11M14 3 3 14" };
  return (
    <svg className="send-shape" viewBox="0 0 17 17" aria-hidden="true">
      <path d={shapes[kind]} fill="none" stroke="currentColor" strokeWidth="2.6" />
    </svg>
  );
}
