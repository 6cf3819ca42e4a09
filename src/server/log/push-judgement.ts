import { isInputError, printGiven, type Fault } from "#base";
import { hashEntry, isStrike, judgeClock, targetOf, validateEntry, type Earlier, type Entry } from "#log";
import { idOf, type Bodies } from "#readiness";
import { FAULT, isBuilding, judgeEntry, type Cursor, type EntryFacts } from "#station";
import { setImmediate as breathe } from "node:timers/promises";
import { callerAsOfNow } from "../http/gate.ts";
import type { Parts } from "../parts.ts";
import type { Caller } from "../sign-in/sessions.ts";

/** Lines looked up before others are served: each is a question to the database, and a line may name sixteen. */
const AT_ONCE = 50;

/** One entry of a push, judged. */
export type Arrival =
  | { readonly kind: "good"; readonly entry: Entry }
  /** Refused by today's rules, but kept already as it is: what was acknowledged once stays acknowledged. */
  | { readonly kind: "kept"; readonly entry: Entry }
  | { readonly kind: "refused"; readonly id: string; readonly faults: readonly Fault[] };

/** Entries of a push, judged, and where the station's list of people must still stand for the judgement to hold. */
export interface Judgement {
  readonly arrivals: readonly Arrival[];
  readonly onlyAt: Cursor;
}

/**
 * Judges the entries of a push one by one: shape, person, device, clock, place, role and content. An entry may rest on
 * an earlier one of the same push, such as a place just made or a line just written and then struck.
 *
 * @param from - number of the first among all that were pushed, for the faults
 * @param deviceAhead - how far the clock of the device that sends is ahead of the station's, where it said [ms]
 * @throws Refusal where the caller, or their device, has lost the right to push since the gate let them in
 */
export async function judgeArrivals(
  parts: Parts,
  caller: Caller,
  given: readonly unknown[],
  from: number,
  deviceAhead?: number,
): Promise<Judgement> {
  await parts.roster.catchUp();
  const read = given.map((one, i) => readEntry(one, `entries[${from + i}]`));
  const kept = await findNamed(parts, read);
  if (read.some(raisesFinding)) await parts.kitPatterns.catchUp();
  // The caller, the list and where it stands belong to one moment: nothing is awaited between here and the judgement.
  const facts = factsOf(parts, callerAsOfNow(parts, caller, "push-log"), kept, deviceAhead);
  const onlyAt = parts.roster.readTo();
  const judged = read.map((arrival) => judgeArrival(parts, caller, facts, arrival));
  const arrivals = await Promise.all(judged.map((arrival, i) => recognise(parts, arrival, read[i]!)));
  return { arrivals, onlyAt: facts.people().length > 0 ? onlyAt : {} };
}

function readEntry(given: unknown, field: string): Arrival {
  try {
    return { kind: "good", entry: validateEntry(given, field) };
  } catch (cause) {
    if (isInputError(cause)) return { kind: "refused", id: idGiven(given), faults: cause.faults };
    throw cause;
  }
}

function idGiven(given: unknown): string {
  const id = typeof given === "object" && given !== null && "id" in given ? given.id : undefined;
  return typeof id === "string" ? id.slice(0, 100) : "";
}

/** What the station knows, growing with each entry found good. */
interface GrowingFacts extends EntryFacts {
  note(entry: Entry): void;
  /** Entries about people among those found good. */
  people(): readonly Entry[];
  /** The latest time that may be now, RFC 3339: no right device is refused where it is the station's clock that is off. */
  readonly latest: string;
  /** What came before whatever was written on top of this entry. */
  cameFirst(id: string): readonly Earlier[];
  /** Remembers what an entry refused for its time came after: what was written on top of it came after that too. */
  noteTooEarly(id: string, earlier: readonly Earlier[]): void;
}

function factsOf(
  parts: Parts,
  caller: Caller,
  kept: Map<string, Entry>,
  deviceAhead: number | undefined,
): GrowingFacts {
  const patterns = new Map(parts.patterns.map((one) => [`${one.id}@${one.version}`, one]));
  const places = new Set<string>();
  const people: Entry[] = [];
  const tooEarly = new Map<string, readonly Earlier[]>();
  return {
    person: caller.person.id,
    role: caller.person.role,
    device: caller.device,
    hasPlace: (id) => places.has(id) || parts.roster.place(id) !== undefined,
    hasPattern: (version) => patterns.has(version),
    patternNamed: (version) => patterns.get(version),
    allPatterns: () => parts.patterns,
    builtTo: (subject) => [...parts.kitPatterns.of(subject), ...builtNow(kept.values(), subject)],
    find: (id) => kept.get(id),
    note(entry) {
      kept.set(entry.id, entry);
      if (entry.kind === "place-set") places.add(idOf(entry.subject));
      if (entry.subject.startsWith("person:")) people.push(entry);
    },
    people: () => people,
    latest: parts.clocks.latest(deviceAhead),
    cameFirst: (id) => tooEarly.get(id) ?? lineAlreadyThere(kept.get(id)),
    noteTooEarly: (id, earlier) => void tooEarly.set(id, earlier),
  };
}

function raisesFinding(arrival: Arrival): boolean {
  return arrival.kind === "good" && ["finding-raised", "returned", "item-robbed"].includes(arrival.entry.kind);
}

/** Patterns that a kit is built to by lines of the same push. */
function builtNow(entries: Iterable<Entry>, subject: string): readonly string[] {
  return [...entries].flatMap((entry) => (entry.subject === subject && isBuilding(entry) ? (entry.pattern ?? []) : []));
}

function lineAlreadyThere(entry: Entry | undefined): readonly Earlier[] {
  return entry === undefined ? [] : [{ at: entry.at, what: "a line that its writer already had" }];
}

/** The kept entries that those of this push name: what they strike, and what their writer had before them. */
async function findNamed(parts: Parts, arrivals: readonly Arrival[]): Promise<Map<string, Entry>> {
  const good = arrivals.flatMap((arrival) => (arrival.kind === "good" ? [arrival.entry] : []));
  const struck = good.filter(isStrike).map(targetOf);
  const own = new Set(good.map(({ id }) => id));
  const named = new Set([...struck, ...good.flatMap(({ after }) => after ?? [])].filter((id) => !own.has(id)));
  const found = new Map<string, Entry>();
  let looked = 0;
  for (const id of named) {
    const kept = await parts.store.find(id);
    if (kept !== undefined) found.set(id, kept.entry);
    if (++looked % AT_ONCE === 0) await breathe();
  }
  return found;
}

function judgeArrival(parts: Parts, caller: Caller, facts: GrowingFacts, arrival: Arrival): Arrival {
  if (arrival.kind !== "good") return arrival;
  const { entry } = arrival;
  const faults = [
    ...judgeTime(parts, caller, facts, entry),
    ...judgeEntry(entry, facts),
    ...judgeLastAdministrator(parts, facts, entry),
    ...judgeName(parts, entry),
  ];
  if (faults.length > 0) return { kind: "refused", id: entry.id, faults };
  facts.note(entry);
  return arrival;
}

/** A line by a clock far behind sorts into the past, before what its writer had read: it is told apart by that. */
function judgeTime(parts: Parts, caller: Caller, facts: GrowingFacts, entry: Entry): readonly Fault[] {
  const joined = parts.roster.joined(caller.device);
  const earlier = [
    ...(joined === undefined ? [] : [{ at: joined, what: "this device joined the station" }]),
    ...(entry.after ?? []).flatMap((id) => facts.cameFirst(id)),
  ];
  const verdict = judgeClock(entry.at, facts.latest, earlier);
  if (verdict.kind === "plausible") return [];
  if (verdict.kind === "too-early") facts.noteTooEarly(entry.id, earlier);
  const allowed = "a time between what its writer already had and now";
  return [{ code: FAULT.clock, field: "at", got: printGiven(entry.at), allowed, remedy: verdict.because }];
}

/** A station without an administrator could invite nobody ever again. */
function judgeLastAdministrator({ roster }: Parts, facts: GrowingFacts, entry: Entry): readonly Fault[] {
  if (!entry.subject.startsWith("person:")) return [];
  const before = facts.people();
  const leavesNone = roster.administratorsAfter([...before, entry]).length === 0;
  if (!leavesNone || roster.administratorsAfter(before).length === 0) return [];
  const remedy = "Make another person administrator first.";
  const allowed = "someone who is not the only administrator";
  return [{ code: "SV-172", field: "subject", got: printGiven(entry.subject), allowed, remedy }];
}

/** Two people of one name could not both sign in by it. */
function judgeName({ roster }: Parts, entry: Entry): readonly Fault[] {
  if (entry.kind !== "person-joined" && entry.kind !== "person-changed") return [];
  const { name } = entry.body as Partial<Bodies["person-changed"]>;
  const held = name === undefined ? undefined : roster.personNamed(name);
  if (held === undefined || held.id === idOf(entry.subject)) return [];
  const allowed = "a name that nobody else at the station has";
  const remedy = "Write the name so that nobody mixes the two up.";
  return [{ code: "SV-173", field: "body.name", got: printGiven(name), allowed, remedy }];
}

/** A refused entry that is kept already, word for word, was sent again because the first reply never arrived. */
async function recognise(parts: Parts, judged: Arrival, read: Arrival): Promise<Arrival> {
  if (judged.kind !== "refused" || read.kind !== "good") return judged;
  const kept = await parts.store.find(read.entry.id);
  const same = kept !== undefined && hashEntry(kept.entry) === hashEntry(read.entry);
  return same ? { kind: "kept", entry: read.entry } : judged;
}
