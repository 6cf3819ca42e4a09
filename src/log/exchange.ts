import { InputError, printGiven, type Fault, sayCount } from "#base";
import { canonicalText } from "./canonical.ts";
import { emptyChain, followsOn, type ChainHead } from "./chain.ts";
import type { Entry, KeptEntry } from "./entry.ts";
import { parseInstant } from "./instant.ts";
import { validateEntry } from "./validate.ts";

/**
 * First line of an exported log. Version 2: the time of receipt is hashed with new lines. A file of version 1 holds only
 * lines without, and is read as ever.
 */
export interface ExportHeader {
  readonly format: "drykeel-log";
  readonly version: 1 | 2;
  /** Where each place's chain ended when the file was written: a file cut short is found out. */
  readonly chains: readonly PlaceChain[];
}

export interface PlaceChain extends ChainHead {
  readonly place: string;
}

/** What one line after the first holds. */
export type ExportItem =
  | { readonly kind: "kept"; readonly kept: KeptEntry }
  /** Made on a device and not yet taken by any store. */
  | { readonly kind: "unsent"; readonly entry: Entry }
  | { readonly kind: "photo"; readonly hash: string; readonly mime: string; readonly bytes: Uint8Array };

/** Reads an exported log line by line, checking shape, numbering and hashes as it goes. */
export interface ExportReader {
  /**
   * @returns what the line holds; undefined for the header and for an empty line
   * @throws InputError naming the line number: LG-140 to LG-144, or the faults of the entry in it
   */
  read(line: string): ExportItem | undefined;
  /** @throws InputError LG-145 when the file ended before every chain did, LG-140 when it never began */
  finish(): void;
}

/** The first line of an export, without line end. */
export function exportHeader(chains: readonly PlaceChain[]): string {
  const ends = chains.map(({ place, seq, hash }) => ({ place, seq, hash }));
  return canonicalText({ format: "drykeel-log", version: 2, chains: ends } satisfies ExportHeader);
}

/** One line of an export, without line end. */
export function exportLine(item: ExportItem): string {
  if (item.kind === "kept") return canonicalText(item.kept);
  if (item.kind === "unsent") return canonicalText({ entry: item.entry });
  const { hash, mime, bytes } = item;
  return canonicalText({ photo: { hash, mime, base64: toBase64(bytes) } });
}

/**
 * A log as lines of JSON: a header, then the kept entries.
 *
 * @param kept - whole chains, each place in order of seq
 * @returns lines without line ends
 * @example [...exportLines([])].length; // 1
 */
export function* exportLines(kept: readonly KeptEntry[]): Generator<string> {
  const ends = new Map(kept.map(({ entry, seq, hash }) => [entry.place, { place: entry.place, seq, hash }]));
  yield exportHeader([...ends.values()]);
  for (const one of kept) yield exportLine({ kind: "kept", kept: one });
}

/**
 * Reads a whole exported log, from a list of lines or as it streams in.
 *
 * @param lines - lines without line ends
 * @throws InputError naming the line at which it cannot be read
 */
export async function* parseExport(lines: Iterable<string> | AsyncIterable<string>): AsyncGenerator<ExportItem> {
  const reader = createExportReader();
  for await (const line of lines) {
    const item = reader.read(line);
    if (item !== undefined) yield item;
  }
  reader.finish();
}

/** A reader for one exported log; give it every line in order, then finish. */
export function createExportReader(): ExportReader {
  let header: ExportHeader | undefined;
  let number = 0;
  const ends = new Map<string, ChainHead>();
  return {
    read(line) {
      number += 1;
      const field = `line ${number}`;
      if (header !== undefined) return line.trim() === "" ? undefined : readItem(line, field, ends);
      header = readHeader(line, field);
      return undefined;
    },
    finish() {
      if (header === undefined) throw faulty("LG-140", "line 1", undefined, HEADER, NO_EXPORT);
      const short = header.chains.flatMap((chain) => judgeEnd(chain, ends.get(chain.place)));
      if (short.length > 0) throw new InputError(short);
    },
  };
}

const HEADER = 'a header: {"format":"drykeel-log","version":2,"chains":[...]}';
const NO_EXPORT = "Choose a file written by drykeel export or by a device's own export.";
const HASH_GIVEN = "the hash that the entry and its time of receipt give";
const DAMAGED = "The file was changed or damaged on its way; fetch it anew from where it was written.";

function readHeader(line: string, field: string): ExportHeader {
  const header = readJson(line, field) as Partial<ExportHeader>;
  if (header.format !== "drykeel-log") throw faulty("LG-140", field, line, HEADER, NO_EXPORT);
  if (header.version !== 1 && header.version !== 2) {
    const remedy = "The file was written by a newer version; bring this one up to date.";
    throw faulty("LG-141", `${field}.version`, header.version, "1 or 2", remedy);
  }
  if (!Array.isArray(header.chains) || !header.chains.every(isPlaceChain)) {
    throw faulty("LG-140", `${field}.chains`, header.chains, "a list of {place, seq, hash}", DAMAGED);
  }
  return header as ExportHeader;
}

function isPlaceChain(given: unknown): given is PlaceChain {
  if (typeof given !== "object" || given === null) return false;
  const { place, seq, hash } = given as Partial<PlaceChain>;
  return typeof place === "string" && Number.isSafeInteger(seq) && typeof hash === "string";
}

function readItem(line: string, field: string, ends: Map<string, ChainHead>): ExportItem {
  const { entry, photo, ...rest } = readJson(line, field);
  if (photo !== undefined) return readPhoto(photo, `${field}.photo`);
  const valid = validateEntry(entry, `${field}.entry`);
  if (Object.keys(rest).length === 0) return { kind: "unsent", entry: valid };
  const { seq, hash, received } = rest;
  if (typeof received !== "string" || parseInstant(received) === undefined) {
    throw faulty("LG-143", `${field}.received`, received, "an RFC 3339 instant", DAMAGED);
  }
  const head = ends.get(valid.place) ?? emptyChain(valid.place);
  const kept = { entry: valid, seq: head.seq + 1, hash: String(hash), received };
  if (seq !== kept.seq) throw faulty("LG-144", `${field}.seq`, seq, `${kept.seq}, the next of its place`, DAMAGED);
  if (!followsOn(head, kept)) throw faulty("LG-144", `${field}.hash`, hash, HASH_GIVEN, DAMAGED);
  ends.set(valid.place, { seq: kept.seq, hash: kept.hash });
  return { kind: "kept", kept };
}

function readPhoto(given: unknown, field: string): ExportItem {
  const { hash, mime, base64 } = (given ?? {}) as Record<string, unknown>;
  if (typeof hash !== "string" || typeof mime !== "string" || typeof base64 !== "string") {
    throw faulty("LG-143", field, given, "hash, mime and base64", DAMAGED);
  }
  try {
    return { kind: "photo", hash, mime, bytes: fromBase64(base64) };
  } catch {
    throw faulty("LG-143", `${field}.base64`, base64, "base64", DAMAGED);
  }
}

function readJson(line: string, field: string): Record<string, unknown> {
  const shape = "a JSON object on one line";
  let read: unknown;
  try {
    read = JSON.parse(line);
  } catch {
    throw faulty("LG-142", field, line, shape, DAMAGED);
  }
  if (typeof read !== "object" || read === null || Array.isArray(read))
    throw faulty("LG-142", field, line, shape, DAMAGED);
  return read as Record<string, unknown>;
}

function judgeEnd(chain: PlaceChain, end: ChainHead | undefined): Fault[] {
  if (end?.seq === chain.seq && end.hash === chain.hash) return [];
  const got = `${sayCount(end?.seq ?? 0, "entry", "entries")} of place ${chain.place}`;
  return [{ code: "LG-145", field: "file", got, allowed: `${chain.seq}, as its header says`, remedy: DAMAGED }];
}

function toBase64(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(text);
}

function fromBase64(text: string): Uint8Array {
  return Uint8Array.from(atob(text), (char) => char.charCodeAt(0));
}

function faulty(code: string, field: string, got: unknown, allowed: string, remedy: string): InputError {
  return new InputError([{ code, field, got: printGiven(got), allowed, remedy }]);
}
