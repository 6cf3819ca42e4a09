import { InputError, printGiven, type Fault } from "#base";
import { hashBytes, judgeClock, type Entry, type ExportItem } from "#log";
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

/** What a file holds of lines that no store ever took. */
export interface Judged {
  /** By whose say the rest is taken; undefined where nobody spoke. */
  readonly consent: Consent | undefined;
  readonly leftOut: readonly Entry[];
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

/**
 * What a store kept was judged when it was kept: here only that every kind and body is known. What a device had not yet
 * sent needs somebody who speaks for it, and is judged as the server would judge it, for the person and device that it
 * names, and by the clock. What is already here is neither judged nor spoken for again.
 *
 * @param fold - the station as it is here; grows with what the file brings
 * @param now - RFC 3339
 * @param said - who speaks for lines never sent
 */
export function createImportJudge(fold: StationFold, now: string, said: Said): ImportJudge {
  const faults: Fault[] = [];
  const leftOut: Entry[] = [];
  const named = new Map<string, Entry>();
  let consent: Consent | undefined;
  const noteNamed = (entry: Entry): void => {
    for (const hash of photosNamed(entry)) if (!named.has(hash)) named.set(hash, entry);
  };
  const judgeEntryHere = (entry: Entry, found: readonly Fault[]): void => {
    faults.push(...found.map((fault) => ({ ...fault, field: `entry ${entry.id}: ${fault.field}` })));
    noteNamed(entry);
    fold.add([entry]);
  };
  const seeUnsent = (entry: Entry): void => {
    if (isHere(fold, entry)) return;
    consent ??= consentOf(said, fold);
    if (consent?.covers(entry)) judgeEntryHere(entry, [...judgeTime(entry, now), ...judgeUnsent(entry, fold)]);
    else leftOut.push(entry);
  };
  return {
    see: (item) => {
      if (item.kind === "photo") faults.push(...judgePhoto(item));
      else if (item.kind === "kept") judgeEntryHere(item.kept.entry, judgeBody(item.kept.entry));
      else seeUnsent(item.entry);
    },
    finish: () => {
      if (faults.length > 0) throw new InputError(faults);
      return { consent, leftOut, named };
    },
  };
}

function isHere(fold: StationFold, { id, subject }: Entry): boolean {
  return fold.allEntriesOf(subject).some((known) => known.id === id);
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
