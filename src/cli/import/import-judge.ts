import { InputError, printGiven, type Fault } from "#base";
import { hashBytes, judgeClock, type ChainHead, type Entry, type ExportItem, type KeptEntry } from "#log";
import { judgeBody } from "#readiness";
import {
  isBuilding,
  judgeEntry,
  PHOTO_BYTES_LIMIT,
  photosNamed,
  sniffPhoto,
  type EntryFacts,
  type StationFold,
} from "#station";
import { consentOf, type Consent, type Said } from "./consent.ts";

/** What a file holds of lines that nothing shows this station to have had. */
export interface Judged {
  /** By whose say the rest is taken; undefined where nobody spoke. */
  readonly consent: Consent | undefined;
  readonly leftOut: readonly Entry[];
  /** Lines that follow on where this station's log ends: by an administrator's word they are as the file has them. */
  readonly following: readonly KeptEntry[];
  /** Ids of lines that a log kept, but none that joins this one: they are taken as lines never sent. */
  readonly foreign: ReadonlySet<string>;
  /** The first line that names each photo, by the photo's hash. */
  readonly named: ReadonlyMap<string, Entry>;
}

/** Judges an exported log before any of it is taken in. */
export interface ImportJudge {
  /** Notes one item; entries must come in the file's order. */
  see(item: ExportItem): void;
  /** @throws InputError with every fault, each under the id of its entry or the hash of its photo */
  finish(): Judged;
}

/** The station as it is before a file is taken in. */
export interface StationHere {
  /** Grows with what the file brings. */
  readonly fold: StationFold;
  /** Where each place's log ends; none where the station is empty. */
  readonly heads: ReadonlyMap<string, ChainHead>;
}

/**
 * An empty station takes what a store kept as it is: it was judged when it was kept, here only that every kind and body
 * is known. Anybody can make a chain, or go on with one they read. So a station that has lines takes no other from a
 * file unless somebody speaks for it, whether a device had not yet sent it or the file says that a store kept it. It is
 * judged as the server would judge it, for the person and device that it names, and by the clock; lines that a store
 * kept, taken by an administrator's word, by kind, body and clock alone. What is already here is neither judged nor
 * spoken for again.
 *
 * @param now - RFC 3339
 * @param said - who speaks for lines that nothing shows this station to have had
 */
export function createImportJudge({ fold, heads }: StationHere, now: string, said: Said): ImportJudge {
  const faults: Fault[] = [];
  const leftOut: Entry[] = [];
  const following: KeptEntry[] = [];
  const foreign = new Set<string>();
  const joins = new JoinedChains(heads);
  const known = new KnownLines(fold);
  const named = new Map<string, Entry>();
  let consent: Consent | undefined;
  const noteNamed = (entry: Entry): void => {
    for (const hash of photosNamed(entry)) if (!named.has(hash)) named.set(hash, entry);
  };
  const judgeEntryHere = (entry: Entry, found: readonly Fault[]): void => {
    faults.push(...found.map((fault) => ({ ...fault, field: `entry ${entry.id}: ${fault.field}` })));
    noteNamed(entry);
    known.add(entry);
    fold.add([entry]);
  };
  const isSpokenFor = (entry: Entry): boolean => {
    consent ??= consentOf(said, fold);
    if (consent?.covers(entry)) return true;
    leftOut.push(entry);
    return false;
  };
  const seeUnsent = (entry: Entry): void => {
    if (known.has(entry) || !isSpokenFor(entry)) return;
    judgeEntryHere(entry, [...judgeTime(entry, now), ...judgeUnsent(entry, fold)]);
  };
  const seeKept = (kept: KeptEntry): void => {
    const { entry } = kept;
    const isNext = joins.see(kept);
    if (heads.size === 0) return judgeEntryHere(entry, judgeBody(entry));
    if (known.has(entry) || !isSpokenFor(entry)) return;
    const isWord = consent?.by === "word";
    if (isNext && isWord) following.push(kept);
    else foreign.add(entry.id);
    judgeEntryHere(entry, [...judgeTime(entry, now), ...(isWord ? judgeBody(entry) : judgeUnsent(entry, fold))]);
  };
  return {
    see: (item) => {
      if (item.kind === "photo") faults.push(...judgePhoto(item));
      else if (item.kind === "kept") seeKept(item.kept);
      else seeUnsent(item.entry);
    },
    finish: () => {
      if (faults.length > 0) throw new InputError(faults);
      return { consent, leftOut, following, foreign, named };
    },
  };
}

/** Which of a file's chains go through the last line that the station has of their place. */
class JoinedChains {
  readonly #heads: ReadonlyMap<string, ChainHead>;
  readonly #joined = new Set<string>();

  constructor(heads: ReadonlyMap<string, ChainHead>) {
    this.#heads = heads;
  }

  /**
   * Notes the next line of a place.
   *
   * @returns whether it comes after all that the station has of the place, and follows on it
   */
  see({ entry: { place }, seq, hash }: KeptEntry): boolean {
    const head = this.#heads.get(place);
    if (head?.seq === seq && head.hash === hash) this.#joined.add(place);
    return head === undefined || (seq > head.seq && this.#joined.has(place));
  }
}

/** Which lines the station has, each subject looked through once. */
class KnownLines {
  readonly #fold: StationFold;
  readonly #ids = new Map<string, Set<string>>();

  constructor(fold: StationFold) {
    this.#fold = fold;
  }

  has({ id, subject }: Entry): boolean {
    return this.#of(subject).has(id);
  }

  add({ id, subject }: Entry): void {
    this.#of(subject).add(id);
  }

  #of(subject: string): Set<string> {
    const known = this.#ids.get(subject) ?? new Set(this.#fold.allEntriesOf(subject).map(({ id }) => id));
    this.#ids.set(subject, known);
    return known;
  }
}

/** As the station's door judges a photo: by its bytes, whatever the file calls it. */
function judgePhoto({ hash, mime, bytes }: Extract<ExportItem, { kind: "photo" }>): readonly Fault[] {
  const kind = sniffPhoto(bytes);
  const field = `photo ${hash.slice(0, 64)}`;
  const remedy =
    "The file was changed, or made by something else: a picture of that name is none. Nothing was taken in.";
  const fault = (got: string, allowed: string): Fault => ({ code: "CL-122", field, got, allowed, remedy });
  if (kind === undefined) return [fault(`${bytes.length} bytes that are no picture`, "a JPEG, PNG or WebP picture")];
  if (kind !== mime) return [fault(`a picture of kind ${kind}, called ${printGiven(mime)}`, "the kind that it is")];
  if (bytes.length > PHOTO_BYTES_LIMIT) return [fault(`${bytes.length} bytes`, `at most ${PHOTO_BYTES_LIMIT} bytes`)];
  return hashBytes(bytes) === hash ? [] : [fault("bytes with another hash", "the bytes that its hash names")];
}

function judgeTime({ at }: Entry, now: string): readonly Fault[] {
  const verdict = judgeClock(at, now);
  if (verdict.kind === "plausible") return [];
  const allowed = "a time not after now";
  return [{ code: "CL-121", field: "at", got: printGiven(at), allowed, remedy: verdict.because }];
}

function judgeUnsent(entry: Entry, fold: StationFold): readonly Fault[] {
  const facts = factsFor(entry, fold);
  if (facts !== undefined) return judgeEntry(entry, facts);
  const remedy = "Import the station's own export first: it brings its people.";
  return [{ code: "CL-120", field: "by", got: entry.by, allowed: "a person of this station", remedy }];
}

function factsFor(entry: Entry, fold: StationFold): EntryFacts | undefined {
  const { people, places, patterns } = fold.read();
  const writer = people.find(({ id, left }) => id === entry.by && !left);
  if (!writer) return undefined;
  return {
    person: entry.by,
    role: writer.role,
    device: entry.device,
    hasPlace: (id) => places.some((place) => place.id === id),
    hasPattern: (version) => patterns.has(version),
    patternNamed: (version) => patterns.get(version),
    allPatterns: () => [...patterns.values()],
    builtTo: (subject) =>
      fold
        .allEntriesOf(subject)
        .filter(isBuilding)
        .flatMap(({ pattern }) => pattern ?? []),
    find: (id) => fold.allEntriesOf(entry.subject).find((known) => known.id === id),
  };
}
