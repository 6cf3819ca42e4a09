import { isInputError, printGiven, type Fault } from "#base";
import { hashEntry, isStrike, judgeClock, validateEntry, type Entry } from "#log";
import type { Device, Person } from "#readiness";
import { judgeEntry } from "#station";

/** A line that another device wrote and handed over, and the station is not yet known to have. */
export interface HandedLine {
  readonly entry: Entry;
  /** Who sat at the device that handed it over, and which it was, as it said itself. */
  readonly from: { readonly by: string; readonly device: string };
  /** RFC 3339: when it was taken here. */
  readonly taken: string;
}

/** What this device knows, to judge by. */
export interface Known {
  readonly now: string;
  readonly people: readonly Person[];
  readonly devices: readonly Device[];
  /** A line held here, wherever it came from. */
  find(subject: string, id: string): Entry | undefined;
}

/** What came of the lines of a sheet that was handed over. */
export interface Sorted {
  /** Not here before. */
  readonly fresh: readonly Entry[];
  /** Here already, word for word. */
  readonly known: number;
  readonly refused: readonly Refused[];
}

/** A line that was not taken, and why. */
export interface Refused {
  /** Its place among those handed over, from 1. */
  readonly place: number;
  /** Absent where it is no line at all. */
  readonly entry?: Entry;
  readonly faults: readonly Fault[];
}

/**
 * Judges lines that were handed over by the rules of the station itself, as far as a device can: their form, that whoever
 * is named as the writer may write such a line, that it is not of the future. That they wrote it nothing here shows.
 */
export function sortHanded(lines: readonly unknown[], known: Known): Sorted {
  const [fresh, refused]: [Entry[], Refused[]] = [[], []];
  const taken = new Map<string, Entry>();
  let count = 0;
  const inOrder = lines.map((given, at) => readLine(given, at)).toSorted(strikesLast);
  for (const read of inOrder) {
    if ("faults" in read) refused.push(read);
    else {
      const { entry, place } = read;
      const held = known.find(entry.subject, entry.id) ?? taken.get(entry.id);
      const faults = held === undefined ? judgeLine(entry, known, taken) : judgeHeld(held, entry);
      if (faults.length > 0) refused.push({ place, entry, faults });
      else if (held !== undefined) count += 1;
      else {
        fresh.push(entry);
        taken.set(entry.id, entry);
      }
    }
  }
  return { fresh, known: count, refused };
}

type Read = { readonly entry: Entry; readonly place: number } | Omit<Refused, "entry">;

function readLine(given: unknown, at: number): Read {
  const place = at + 1;
  try {
    return { place, entry: validateEntry(given, `lines[${at}]`) };
  } catch (cause) {
    if (isInputError(cause)) return { place, faults: cause.faults };
    throw cause;
  }
}

/** A strike is judged by what it strikes, and a strike of a strike after that. */
function strikesLast(one: Read, other: Read): number {
  const [first, second] = [one, other].map((read) => ("entry" in read && isStrike(read.entry) ? read.entry.id : ""));
  return first === second ? 0 : first! < second! ? -1 : 1;
}

function judgeHeld(held: Entry, entry: Entry): readonly Fault[] {
  if (hashEntry(held) === hashEntry(entry)) return [];
  const remedy = "One of the two was changed. What is here stays.";
  return [faultOf("WE-130", "id", entry.id, "the same content as held here under this id", remedy)];
}

function judgeLine(entry: Entry, known: Known, taken: ReadonlyMap<string, Entry>): readonly Fault[] {
  const { people, devices, now } = known;
  const writer = people.find(({ id }) => id === entry.by);
  const rules = judgeEntry(entry, {
    person: entry.by,
    role: writer?.role ?? "crew",
    device: entry.device,
    hasPlace: () => true,
    hasPattern: () => true,
    find: (id) => taken.get(id) ?? known.find(entry.subject, id),
  });
  const isShutOut = devices.some(({ id, shutOut }) => id === entry.device && shutOut);
  return [
    ...(entry.subject.startsWith("casualty:") ? [] : [notOfASheet(entry)]),
    ...(isShutOut ? [ofShutOut(entry)] : []),
    ...judgeTime(entry, now),
    ...rules,
  ];
}

function judgeTime(entry: Entry, now: string): readonly Fault[] {
  if (judgeClock(entry.at, now).kind === "plausible") return [];
  const remedy = "The clock of one of the two devices is wrong. Set its date and time, then hand over anew.";
  return [faultOf("WE-131", "at", entry.at, "a time not after now", remedy)];
}

function notOfASheet({ subject }: Entry): Fault {
  return faultOf("WE-132", "subject", subject, "a line of a casualty's sheet", "Other lines go through the station.");
}

function ofShutOut({ device }: Entry): Fault {
  return faultOf("WE-133", "device", device, "a device that is not shut out", "Ask the keeper about that device.");
}

function faultOf(code: string, field: string, got: string, allowed: string, remedy: string): Fault {
  return { code, field, got: printGiven(got), allowed, remedy };
}
