import { InputError, type Fault } from "#base";
import type { Entry, ExportItem } from "#log";
import { judgeBody } from "#readiness";
import { isBuilding, judgeEntry, type EntryFacts, type StationFold } from "#station";

/** Judges an exported log before any of it is taken in. */
export interface ImportJudge {
  /** Notes one item; entries must come in the file's order. */
  see(item: ExportItem): void;
  /** @throws InputError with every fault, each under the id of its entry */
  finish(): void;
}

/**
 * What a store kept was judged when it was kept: here only that every kind and body is known. What a device had not yet
 * sent is judged as the server would judge it, for the person and device that it names.
 *
 * @param fold - the station as it is here; grows with what the file brings
 */
export function createImportJudge(fold: StationFold): ImportJudge {
  const faults: Fault[] = [];
  return {
    see: (item) => {
      if (item.kind === "photo") return;
      const entry = item.kind === "kept" ? item.kept.entry : item.entry;
      const found = item.kind === "kept" ? judgeBody(entry) : judgeUnsent(entry, fold);
      faults.push(...found.map((fault) => ({ ...fault, field: `entry ${entry.id}: ${fault.field}` })));
      fold.add([entry]);
    },
    finish: () => {
      if (faults.length > 0) throw new InputError(faults);
    },
  };
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
    builtTo: (subject) =>
      fold
        .allEntriesOf(subject)
        .filter(isBuilding)
        .flatMap(({ pattern }) => pattern ?? []),
    find: (id) => fold.allEntriesOf(entry.subject).find((known) => known.id === id),
  };
}
