import type { Pattern } from "#kit";
import type { Entry, KeptEntry, PlaceChain } from "#log";
import {
  createStationFold,
  readSnapshot,
  SNAPSHOT_FORM,
  snapshotMark,
  type SentSnapshot,
  type StationSnapshot,
} from "#station";
import type { StationView } from "../sync/contract.ts";
import type { DeviceStore } from "../held/device-store.ts";
import { StationCopy, type Looking } from "../sync/station-copy.ts";

/** Note on the disk: what the station said its lines come to, until they are all here. */
export const SNAPSHOT = "snapshot";
/** Note on the disk: when what it said was found not to be what its lines say, until a person has read that. */
const FALSE_SNAPSHOT = "false-snapshot";

/** A snapshot as it is kept, with how many lines it stands for. One of before its third form has no text. */
export interface KeptSnapshot {
  readonly lines: number;
  /** As it was sent, as JSON: one text is written and read sooner than a hundred thousand small things. */
  readonly text?: string;
}

interface Told {
  readonly lines: number;
  readonly snapshot: StationSnapshot;
}

/**
 * The board before the log is here: from the station's snapshot, with the lines that came after it laid over it. Once
 * every line it stands for is here it is held against them, and then thrown away either way.
 */
export class EarlyBoard {
  readonly #snapshot: StationSnapshot;
  readonly #of: number;
  readonly #copy: StationCopy;
  readonly #heads: ReadonlyMap<string, PlaceChain>;
  /** Places whose head is in the log as the snapshot has it. */
  readonly #met = new Set<string>();
  readonly #beyond: KeptEntry[] = [];
  #here = 0;

  constructor({ snapshot, lines }: Told, patterns: readonly Pattern[]) {
    this.#snapshot = snapshot;
    this.#of = lines;
    this.#copy = new StationCopy(createStationFold(patterns, snapshot));
    this.#heads = new Map(snapshot.heads.map((head) => [head.place, head]));
  }

  /** Its lines written on this device, and any others that the snapshot does not stand for. */
  add(entries: Iterable<Entry>): void {
    this.#copy.add(entries);
  }

  /** Takes note of lines of the log. @returns those that the snapshot stands for */
  take(fresh: readonly KeptEntry[]): readonly KeptEntry[] {
    const inside = fresh.filter(({ entry, seq }) => seq <= (this.#heads.get(entry.place)?.seq ?? 0));
    const beyond = fresh.filter(({ entry, seq }) => seq > (this.#heads.get(entry.place)?.seq ?? 0));
    for (const { entry, seq, hash } of inside) {
      const head = this.#heads.get(entry.place);
      if (head?.seq === seq && head.hash === hash) this.#met.add(entry.place);
    }
    this.#here += inside.length;
    this.#beyond.push(...beyond);
    this.#copy.add(beyond);
    return inside;
  }

  /** Lines of the log after those that the snapshot stands for. */
  get beyond(): readonly KeptEntry[] {
    return this.#beyond;
  }

  /** True where the lines come to what the snapshot says. @param copy - of exactly the lines it stands for */
  isBorneOut(copy: StationCopy): boolean {
    if (this.#met.size < this.#heads.size) return false;
    return snapshotMark(copy.snapshot(this.#snapshot.heads, this.#snapshot.at)) === snapshotMark(this.#snapshot);
  }

  get sight(): StationCopy {
    return this.#copy;
  }

  view(looking: Looking): StationView | undefined {
    const view = this.#copy.view(looking);
    return view && { ...view, early: { at: this.#snapshot.at, here: this.#here, of: this.#of } };
  }
}

/** The board to show ahead of the log, where a snapshot is here that was folded as this device folds. */
export async function readEarlyBoard(
  store: DeviceStore,
  patterns: readonly Pattern[],
): Promise<EarlyBoard | undefined> {
  const kept = await store.note<KeptSnapshot>(SNAPSHOT);
  if (kept?.text === undefined) return undefined;
  const sent = JSON.parse(kept.text) as SentSnapshot;
  const { lines } = kept;
  return isFoldedAlike(sent, patterns) ? new EarlyBoard({ lines, snapshot: readSnapshot(sent) }, patterns) : undefined;
}

/** Throws the snapshot away; where the lines do not bear it out, that is written down for a person to read. */
export async function dropSnapshot(store: DeviceStore, falseAt?: string): Promise<void> {
  if (falseAt !== undefined) await store.putNote(FALSE_SNAPSHOT, falseAt);
  await store.putNote(SNAPSHOT, undefined);
}

/** RFC 3339: when a snapshot was found not to be borne out, where no person has read that yet. */
export function readFalseSnapshot(store: DeviceStore): Promise<string | undefined> {
  return store.note<string>(FALSE_SNAPSHOT);
}

export function forgetFalseSnapshot(store: DeviceStore): Promise<void> {
  return store.putNote(FALSE_SNAPSHOT, undefined);
}

function isFoldedAlike({ form, patterns }: SentSnapshot, here: readonly Pattern[]): boolean {
  const versions = here.map(({ id, version }) => `${id}@${version}`).sort();
  return form === SNAPSHOT_FORM && JSON.stringify(versions) === JSON.stringify(patterns);
}
