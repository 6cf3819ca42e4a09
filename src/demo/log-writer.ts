import type { Entry } from "#log";
import type { Bodies, EntryKind } from "#readiness";
import { inventId, type Chance } from "./chance.ts";

/** Who writes, on what. */
export interface Hand {
  readonly by: string;
  readonly device: string;
}

/** Writes invented entries the way a device would: an id, an instant, and what it knew. */
export interface LogWriter {
  readonly chance: Chance;
  readonly entries: readonly Entry[];
  write<K extends EntryKind>(line: {
    readonly kind: K;
    readonly subject: string;
    readonly place: string;
    readonly ms: number;
    readonly hand: Hand;
    readonly body: Bodies[K];
    readonly pattern?: string;
    /** The line it was written in sight of, where that is not the newest about its subject: it is told of afterwards. */
    readonly after?: string;
  }): Entry;
  newId(ms: number): string;
  /** Writes into the same log by a chance of its own, so that a story more changes no other. */
  apart(chance: Chance): LogWriter;
}

/** A writer that keeps what it wrote. */
export function createLogWriter(chance: Chance): LogWriter {
  return writerInto(chance, [], new Map());
}

function writerInto(chance: Chance, entries: Entry[], newest: Map<string, string>): LogWriter {
  return {
    apart: (other) => writerInto(other, entries, newest),
    chance,
    entries,
    newId: (ms) => inventId(ms, chance),
    write: ({ kind, subject, place, ms, hand, body, pattern, after }) => {
      const known = after ?? newest.get(subject);
      const entry: Entry = {
        id: inventId(ms, chance),
        place,
        subject,
        kind,
        at: rfc3339(ms),
        by: hand.by,
        device: hand.device,
        ...(pattern === undefined ? {} : { pattern }),
        ...(known === undefined ? {} : { after: [known] }),
        body,
      };
      if (after === undefined) newest.set(subject, entry.id);
      entries.push(entry);
      return entry;
    },
  };
}

/** RFC 3339 in UTC, whole seconds. */
export function rfc3339(ms: number): string {
  return new Date(ms).toISOString().replace(/\.\d+Z$/, "+00:00");
}

/** Calendar day in UTC. */
export function dayOf(ms: number): string {
  return new Date(ms).toISOString().slice(0, 10);
}
