import { shorterSpan, parseSpan, type Span } from "#base";
import type { Entry } from "#log";
import { markOf } from "./draft.ts";
import type { ReportsDraft } from "./drafts/reports-draft.ts";
import type { BoatBodies, PatternBodies, PeopleBodies, PlaceBodies } from "./kinds/kinds.ts";
import type { Device, Mark, Person, Place, RescueBoat } from "./state.ts";

/** How long things last at this station, where it is stricter than the patterns. */
export interface StationPolicy {
  readonly proofRun?: Span;
  readonly muster?: Span;
  readonly turnaround?: Span;
  readonly fuelAge?: Span;
  /** By pattern id: how often its kits are opened, as it was accepted for the plan; absent where nothing was. */
  readonly openings?: Readonly<Record<string, Span>>;
}

/** The station as a whole. */
export interface StationState {
  readonly name: string;
  readonly policy: StationPolicy;
  /** Lines that the database had lost and devices gave back, oldest first; absent where that never happened. */
  readonly broughtBack?: readonly BroughtBack[];
}

/** Lines that came to the station by another way than from their own device: mostly after it was put back to a copy. */
export interface BroughtBack extends Mark {
  readonly lines: readonly string[];
  /**
   * `vouched`: the station once kept them; `word`: nothing shows that, an administrator said so. `handed`: it never had
   * them, another device had handed them over, and an administrator said that they are genuine. `file-bringer`: from a
   * file that their own writer brought to the station's terminal; `file-word`: from a file, by an administrator's word.
   */
  readonly how: "vouched" | "word" | "handed" | "file-bringer" | "file-word";
  /** Ids of the devices on which lines from a file were written, where the log says so. */
  readonly from?: readonly string[];
}

/** A person after one more entry. Who left may join again. */
export function applyPersonEntry(before: Person | undefined, entry: Entry): Person {
  const person = before ?? { id: idOf(entry.subject), name: idOf(entry.subject), role: "crew", left: false };
  if (entry.kind === "person-joined") {
    return { ...person, ...(entry.body as PeopleBodies["person-joined"]), left: false };
  }
  if (entry.kind === "person-changed") return { ...person, ...(entry.body as PeopleBodies["person-changed"]) };
  if (entry.kind === "hours-set") return { ...person, hours: (entry.body as PeopleBodies["hours-set"]).hours };
  if (entry.kind === "absence-set") {
    const absence = { ...markOf(entry), ...(entry.body as PeopleBodies["absence-set"]) };
    return { ...person, away: [...(person.away ?? []), absence] };
  }
  if (entry.kind === "practice-told") {
    const told = { ...markOf(entry), ...(entry.body as PeopleBodies["practice-told"]) };
    return { ...person, told: [...(person.told ?? []), told] };
  }
  return entry.kind === "person-left" ? { ...person, left: true } : person;
}

/** A device after one more entry. A device that was shut out stays out, whatever its later entries say. */
export function applyDeviceEntry(before: Device | undefined, entry: Entry): Device {
  const device = before ?? { id: idOf(entry.subject), name: idOf(entry.subject), shutOut: false };
  if (entry.kind === "device-joined") return { ...device, name: (entry.body as PeopleBodies["device-joined"]).name };
  return entry.kind === "device-shut-out" ? { ...device, shutOut: true } : device;
}

/** A place after one more entry. */
export function applyPlaceEntry(before: Place | undefined, entry: Entry): Place {
  const id = idOf(entry.subject);
  const place = before ?? { id, name: id, strength: 0, zone: "UTC", closed: false };
  if (entry.kind === "place-set") return { ...place, ...(entry.body as PlaceBodies["place-set"]), closed: false };
  if (entry.kind === "shelves-set") return { ...place, ...(entry.body as PlaceBodies["shelves-set"]) };
  return entry.kind === "place-closed" ? { ...place, closed: true } : place;
}

/** A rescue boat after one more entry; undefined until she is set for the first time. Set again she is back. */
export function applyBoatEntry(before: RescueBoat | undefined, entry: Entry): RescueBoat | undefined {
  if (entry.kind === "boat-set") {
    return { id: idOf(entry.subject), ...(entry.body as BoatBodies["boat-set"]), retired: false };
  }
  return before && entry.kind === "boat-retired" ? { ...before, retired: true } : before;
}

/** The station after one more entry; each policy named replaces the one before it. */
export function applyStationEntry(before: StationState | undefined, entry: Entry): StationState {
  const station = before ?? { name: "", policy: {} };
  if (entry.kind === "station-named") {
    return { ...station, name: (entry.body as PlaceBodies["station-named"]).name };
  }
  if (entry.kind === "lines-brought-back" || entry.kind === "lines-handed-in") return noteBroughtBack(station, entry);
  if (entry.kind === "lines-imported") return noteImported(station, entry);
  if (entry.kind === "opening-interval-set") return { ...station, policy: withOpenings(station.policy, entry) };
  if (entry.kind !== "policy-set") return station;
  const said = Object.entries(entry.body as PlaceBodies["policy-set"]);
  const policy = Object.fromEntries(said.map(([name, text]) => [name, parseSpan(text, name)]));
  return { ...station, policy: { ...station.policy, ...policy } };
}

function withOpenings({ openings = {}, ...policy }: StationPolicy, entry: Entry): StationPolicy {
  const { pattern, every } = entry.body as PlaceBodies["opening-interval-set"];
  const { [pattern]: _before, ...others } = openings;
  const next = every === undefined ? others : { ...others, [pattern]: parseSpan(every, "every") };
  return Object.keys(next).length === 0 ? policy : { ...policy, openings: next };
}

function noteBroughtBack(station: StationState, entry: Entry): StationState {
  const { lines, by = "handed" } = entry.body as Partial<PlaceBodies["lines-brought-back"]> &
    PlaceBodies["lines-handed-in"];
  return { ...station, broughtBack: [...(station.broughtBack ?? []), { ...markOf(entry), lines, how: by }] };
}

function noteImported(station: StationState, entry: Entry): StationState {
  const { lines, by, from } = entry.body as PlaceBodies["lines-imported"];
  const taken: BroughtBack = { ...markOf(entry), lines, how: `file-${by}`, ...(from && { from }) };
  return { ...station, broughtBack: [...(station.broughtBack ?? []), taken] };
}

/** Folds one more entry into the reports about a pattern's steps. */
export function applyToReports(draft: ReportsDraft, entry: Entry): void {
  if (entry.kind === "step-reported") {
    const pattern = entry.pattern === undefined ? {} : { pattern: entry.pattern };
    draft.add({ ...markOf(entry), ...pattern, ...(entry.body as PatternBodies["step-reported"]) });
  } else if (entry.kind === "report-answered") {
    const { report, answer } = entry.body as PatternBodies["report-answered"];
    draft.answer(report, { ...markOf(entry), text: answer });
  }
}

/** What holds for a kit: the pattern's own span, or the station's where that is shorter. */
export function strictest(pattern: Span | undefined, station: Span | undefined): Span | undefined {
  return shorterSpan(pattern, station);
}

/** The id in a subject such as "kit:7f3k"; the subject itself where it has none. */
export function idOf(subject: string): string {
  return subject.slice(subject.indexOf(":") + 1);
}
