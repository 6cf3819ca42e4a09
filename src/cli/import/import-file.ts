import { newAmongRetaken, parseExport, STATION_PLACE, type Entry, type ExportItem, type KeptEntry } from "#log";
import type { Bodies } from "#readiness";
import { createStationFold, newestReceipt, type AppendResult, type LogStore, type StationFold } from "#station";
import { createReadStream } from "node:fs";
import { createInterface } from "node:readline";
import { uuidv7 } from "uuidv7";
import type { Call } from "../command.ts";
import { stationPatterns } from "../open-data.ts";
import { usageError } from "../usage-error.ts";
import { warnOfClock } from "../station-clock.ts";
import { readWholeLog } from "../whole-log.ts";
import type { Consent, Said } from "./consent.ts";
import { createImportJudge, type Judged } from "./import-judge.ts";

const PAGE = 2000;
/** A line that tells of lines taken in by somebody's say names at most so many. */
const TOLD_PAGE = 500;
/** The shell, where a line says on which device it was written. */
const TERMINAL = "terminal";

/** What became of a file. */
export interface Imported {
  accepted: number;
  repeated: number;
  photos: number;
  readonly clashing: string[];
  /** Photos that lines of the file name and that are not here. */
  readonly missing: readonly { readonly hash: string; readonly entry: Entry }[];
  /** Lines that nothing shows the station to have had, and that nobody spoke for. */
  readonly leftOut: readonly Entry[];
}

/**
 * Takes an exported log in. The whole file is read and judged before anything is kept, so that a damaged or bad one
 * changes nothing.
 *
 * @throws InputError with every fault
 */
export async function importFile(call: Call, log: LogStore, file: string, said: Said): Promise<Imported> {
  const fold = createStationFold(stationPatterns(call));
  const last = await newestReceipt(log);
  warnOfClock(call, last);
  const newest = last ?? call.surroundings.now;
  await readWholeLog(log, fold);
  const now = Date.parse(newest) > Date.parse(call.surroundings.now) ? newest : call.surroundings.now;
  const heads = new Map((await log.heads()).map(({ place, ...head }) => [place, head]));
  const judge = createImportJudge({ fold, heads }, now, said);
  await readThrough(file, async (item) => judge.see(item));
  const judged = judge.finish();
  const counts = await take(log, file, { judged, fold, received: call.surroundings.now });
  return { ...counts, leftOut: judged.leftOut, missing: await findMissing(log, judged) };
}

interface Taking {
  readonly judged: Judged;
  readonly fold: StationFold;
  readonly received: string;
}

type Counts = Pick<Imported, "accepted" | "repeated" | "photos" | "clashing">;

/**
 * What was kept keeps its time of receipt where the station was empty, or where it follows on and an administrator says
 * so; all else is received now.
 */
async function take(log: LogStore, file: string, taking: Taking): Promise<Counts> {
  const { judged } = taking;
  const counts: Counts = { accepted: 0, repeated: 0, photos: 0, clashing: [] };
  const kept = new Batch<KeptEntry>(counts, PAGE, (lines) => log.retake(lines));
  const newNow = (entry: Entry): KeptEntry => newAmongRetaken(entry, taking.received);
  const unsent = new Batch<Entry>(counts, TOLD_PAGE, (lines) => takeSpokenFor(log, lines.map(newNow), taking));
  await takeFollowing(log, counts, taking);
  const done = new Set([...judged.leftOut, ...judged.following.map(({ entry }) => entry)].map(({ id }) => id));
  await readThrough(file, async (item) => {
    if (item.kind === "photo") {
      await log.putPhoto(item);
      counts.photos += 1;
      return;
    }
    const entry = item.kind === "kept" ? item.kept.entry : item.entry;
    if (done.has(entry.id)) return;
    if (item.kind === "kept" && !judged.foreign.has(entry.id)) return kept.add(item.kept);
    await kept.flush();
    await unsent.add(entry);
  });
  await kept.flush();
  await unsent.flush();
  return counts;
}

/** Those of the station's own place first and in one piece: the line that tells of lines goes there, and comes after. */
async function takeFollowing(log: LogStore, counts: Counts, taking: Taking): Promise<void> {
  const { following } = taking.judged;
  const own = following.filter(({ entry }) => entry.place === STATION_PLACE);
  const others = following.filter(({ entry }) => entry.place !== STATION_PLACE);
  for (const [lines, page] of [[own, Math.max(own.length, 1)] as const, [others, TOLD_PAGE] as const]) {
    const batch = new Batch<KeptEntry>(counts, page, (some) => takeSpokenFor(log, some, taking));
    for (const one of lines) await batch.add(one);
    await batch.flush();
  }
}

/** The lines, and those that say by whose say they were taken, in one piece. */
async function takeSpokenFor(
  log: LogStore,
  lines: readonly KeptEntry[],
  { judged: { consent }, fold, received }: Taking,
): Promise<AppendResult> {
  const held = await Promise.all(lines.map(({ entry }) => log.find(entry.id)));
  const fresh = lines.filter((_, at) => held[at] === undefined).map(({ entry }) => entry);
  if (fresh.length === 0 || consent === undefined) return log.retake(lines);
  const told = [...pagesOfTold(fresh)].map((some) =>
    importedLine(some, consent, { after: fold.heads("station"), at: received }),
  );
  const result = await log.retake([...lines, ...told.map((one) => newAmongRetaken(one, received))]);
  const ids = new Set(told.map(({ id }) => id));
  return { ...result, accepted: result.accepted.filter(({ entry }) => !ids.has(entry.id)) };
}

function* pagesOfTold(fresh: readonly Entry[]): Generator<readonly Entry[]> {
  for (let at = 0; at < fresh.length; at += TOLD_PAGE) yield fresh.slice(at, at + TOLD_PAGE);
}

function importedLine(
  lines: readonly Entry[],
  { person, by }: Consent,
  { after, at }: { readonly after: readonly string[]; readonly at: string },
): Entry {
  const known = after.length === 0 ? {} : { after };
  const where = { place: STATION_PLACE, subject: "station", device: TERMINAL };
  const from = [...new Set(lines.map(({ device }) => device))];
  const body: Bodies["lines-imported"] = { lines: lines.map(({ id }) => id), by, from };
  return { id: uuidv7(), ...where, kind: "lines-imported", at, by: person.id, ...known, body };
}

/** Photos that lines of the file name and that are not here after all. */
async function findMissing(log: LogStore, { named }: Judged): Promise<Imported["missing"]> {
  const missing = await log.missingPhotos([...named.keys()]);
  return missing.map((hash) => ({ hash, entry: named.get(hash)! }));
}

/** Gathers what a store is to take, a page at a time, and counts what became of it. */
class Batch<T> {
  readonly #counts: Counts;
  readonly #page: number;
  readonly #take: (some: readonly T[]) => Promise<AppendResult>;
  #waiting: T[] = [];

  constructor(counts: Counts, page: number, take: (some: readonly T[]) => Promise<AppendResult>) {
    this.#counts = counts;
    this.#page = page;
    this.#take = take;
  }

  async add(one: T): Promise<void> {
    this.#waiting.push(one);
    if (this.#waiting.length >= this.#page) await this.flush();
  }

  async flush(): Promise<void> {
    if (this.#waiting.length === 0) return;
    const result = await this.#take(this.#waiting);
    this.#counts.accepted += result.accepted.length;
    this.#counts.repeated += result.repeated.length;
    this.#counts.clashing.push(...result.clashing);
    this.#waiting = [];
  }
}

async function readThrough(file: string, visit: (item: ExportItem) => Promise<void>): Promise<void> {
  const lines = createInterface({ input: createReadStream(file), crlfDelay: Infinity });
  try {
    for await (const item of parseExport(lines)) await visit(item);
  } catch (cause) {
    throw (cause as NodeJS.ErrnoException).code === "ENOENT" ? missingFile(file) : cause;
  }
}

function missingFile(file: string): Error {
  return usageError("FILE", file, "a file that is there", "Check the name; it is written by drykeel export.");
}
