import { isInputError, printGiven, type Fault } from "#base";
import { hashEntry, isStrike, judgeClock, targetOf, validateEntry, type Entry } from "#log";
import { idOf, type Bodies } from "#readiness";
import { FAULT, judgeEntry, type EntryFacts } from "#station";
import type { Parts } from "./parts.ts";
import type { Caller } from "./sessions.ts";

/** One entry of a push, judged. */
export type Arrival =
  | { readonly kind: "good"; readonly entry: Entry }
  /** Refused by today's rules, but kept already as it is: what was acknowledged once stays acknowledged. */
  | { readonly kind: "kept"; readonly entry: Entry }
  | { readonly kind: "refused"; readonly id: string; readonly faults: readonly Fault[] };

/**
 * Judges the entries of a push one by one: shape, person, device, clock, place, role and content. An entry may rest on
 * an earlier one of the same push, such as a place just made or a line just written and then struck.
 *
 * @param from - number of the first among all that were pushed, for the faults
 */
export async function judgeArrivals(
  parts: Parts,
  caller: Caller,
  given: readonly unknown[],
  from: number,
): Promise<readonly Arrival[]> {
  await parts.roster.catchUp();
  const read = given.map((one, i) => readEntry(one, `entries[${from + i}]`));
  const kept = await findTargets(parts, read);
  const facts = factsOf(parts, caller, kept);
  const judged = read.map((arrival) => judgeArrival(parts, caller, facts, arrival));
  return Promise.all(judged.map((arrival, i) => recognise(parts, arrival, read[i]!)));
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
}

function factsOf(parts: Parts, caller: Caller, kept: Map<string, Entry>): GrowingFacts {
  const versions = new Set(parts.patterns.map(({ id, version }) => `${id}@${version}`));
  const places = new Set<string>();
  return {
    person: caller.person.id,
    role: caller.person.role,
    device: caller.device,
    hasPlace: (id) => places.has(id) || parts.roster.place(id) !== undefined,
    hasPattern: (version) => versions.has(version),
    find: (id) => kept.get(id),
    note(entry) {
      kept.set(entry.id, entry);
      if (entry.kind === "place-set") places.add(idOf(entry.subject));
    },
  };
}

/** The kept entries that strikes of this push name. */
async function findTargets(parts: Parts, arrivals: readonly Arrival[]): Promise<Map<string, Entry>> {
  const found = new Map<string, Entry>();
  for (const arrival of arrivals) {
    if (arrival.kind !== "good" || !isStrike(arrival.entry)) continue;
    const target = await parts.store.find(targetOf(arrival.entry));
    if (target !== undefined) found.set(target.entry.id, target.entry);
  }
  return found;
}

function judgeArrival(parts: Parts, caller: Caller, facts: GrowingFacts, arrival: Arrival): Arrival {
  if (arrival.kind !== "good") return arrival;
  const { entry } = arrival;
  const faults = [
    ...judgeTime(parts, caller, entry),
    ...judgeEntry(entry, facts),
    ...judgeLastAdministrator(parts, entry),
  ];
  if (faults.length > 0) return { kind: "refused", id: entry.id, faults };
  facts.note(entry);
  return arrival;
}

function judgeTime(parts: Parts, caller: Caller, entry: Entry): readonly Fault[] {
  const verdict = judgeClock(entry.at, parts.ambient.now(), parts.roster.joined(caller.device));
  if (verdict.kind === "plausible") return [];
  const allowed = "a time between the device's joining and now";
  return [{ code: FAULT.clock, field: "at", got: printGiven(entry.at), allowed, remedy: verdict.because }];
}

/** A station without an administrator could invite nobody ever again. */
function judgeLastAdministrator(parts: Parts, entry: Entry): readonly Fault[] {
  if (!takesRights(entry)) return [];
  const administrators = parts.roster.administrators();
  if (administrators.length !== 1 || administrators[0]!.id !== idOf(entry.subject)) return [];
  const remedy = "Make another person administrator first.";
  const allowed = "someone who is not the only administrator";
  return [{ code: "SV-172", field: "subject", got: printGiven(entry.subject), allowed, remedy }];
}

function takesRights(entry: Entry): boolean {
  if (entry.kind === "person-left") return true;
  if (entry.kind !== "person-changed" && entry.kind !== "person-joined") return false;
  const { role } = entry.body as Partial<Bodies["person-changed"]>;
  return role !== undefined && role !== "administrator";
}

/** A refused entry that is kept already, word for word, was sent again because the first reply never arrived. */
async function recognise(parts: Parts, judged: Arrival, read: Arrival): Promise<Arrival> {
  if (judged.kind !== "refused" || read.kind !== "good") return judged;
  const kept = await parts.store.find(read.entry.id);
  const same = kept !== undefined && hashEntry(kept.entry) === hashEntry(read.entry);
  return same ? { kind: "kept", entry: read.entry } : judged;
}
