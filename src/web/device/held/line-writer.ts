import { STATION_PLACE, type Entry } from "#log";
import type { EntryKind } from "#readiness";
import type { Ambient } from "#station";
import type { Draft } from "../sync/contract.ts";

/** What the device knows that goes on a line beside what the person says. */
export interface Writer {
  readonly ambient: Ambient;
  readonly person: string;
  readonly device: string;
  /** Newest lines about a subject. */
  heads(subject: string): readonly string[];
  /** Where a kit is and what it is built to; undefined for anything else. */
  kit(subject: string): { readonly place: string; readonly pattern: string } | undefined;
}

/** Makes the entry: who, when, on which device, under which pattern, in sight of which lines. */
export function writeLine<K extends EntryKind>(draft: Draft<K>, writer: Writer): Entry {
  const kit = writer.kit(draft.subject);
  const pattern = draft.pattern ?? kit?.pattern;
  const after = writer.heads(draft.subject);
  return {
    id: writer.ambient.newId(),
    place: draft.place ?? kit?.place ?? STATION_PLACE,
    subject: draft.subject,
    kind: draft.kind,
    at: writer.ambient.now(),
    by: writer.person,
    device: writer.device,
    ...(pattern !== undefined && pattern !== "" && { pattern }),
    ...(after.length > 0 && { after }),
    body: draft.body,
  };
}

/** Makes several entries, each in sight of those before it about the same thing. */
export function writeLines(drafts: readonly Draft[], writer: Writer): readonly Entry[] {
  const last = new Map<string, string>();
  return drafts.map((draft) => {
    const before = last.get(draft.subject);
    const heads = (subject: string) => (before === undefined ? writer.heads(subject) : [before]);
    const entry = writeLine(draft, { ...writer, heads });
    last.set(draft.subject, entry.id);
    return entry;
  });
}
