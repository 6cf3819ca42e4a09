import { shorterSpan, parseSpan, type Span } from "#base";
import type { Entry } from "#log";
import { markOf } from "./draft.ts";
import type { PatternBodies, PeopleBodies, PlaceBodies } from "./kinds.ts";
import type { Device, Person, Place, Mark } from "./state.ts";

/** How long things last at this station, where it is stricter than the patterns. */
export interface StationPolicy {
  readonly proofRun?: Span;
  readonly muster?: Span;
  readonly turnaround?: Span;
  readonly fuelAge?: Span;
}

/** The station as a whole. */
export interface StationState {
  readonly name: string;
  readonly policy: StationPolicy;
}

/** A step that somebody found wrong, impossible or unclear, and what the pattern's owner said. */
export interface StepReport extends Mark {
  readonly step: string;
  readonly what: "wrong" | "impossible" | "unclear";
  readonly pattern?: string;
  readonly note?: string;
  readonly kit?: string;
  readonly answer?: Mark & { readonly text: string };
}

/** A person after one more entry. Who left may join again. */
export function applyPersonEntry(before: Person | undefined, entry: Entry): Person {
  const person = before ?? { id: idOf(entry.subject), name: idOf(entry.subject), role: "crew", left: false };
  if (entry.kind === "person-joined") {
    return { ...person, ...(entry.body as PeopleBodies["person-joined"]), left: false };
  }
  if (entry.kind === "person-changed") return { ...person, ...(entry.body as PeopleBodies["person-changed"]) };
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
  return entry.kind === "place-closed" ? { ...place, closed: true } : place;
}

/** The station after one more entry; each policy named replaces the one before it. */
export function applyStationEntry(before: StationState | undefined, entry: Entry): StationState {
  const station = before ?? { name: "", policy: {} };
  if (entry.kind === "station-named") {
    return { ...station, name: (entry.body as PlaceBodies["station-named"]).name };
  }
  if (entry.kind !== "policy-set") return station;
  const said = Object.entries(entry.body as PlaceBodies["policy-set"]);
  const policy = Object.fromEntries(said.map(([name, text]) => [name, parseSpan(text, name)]));
  return { ...station, policy: { ...station.policy, ...policy } };
}

/** Reports about a pattern's steps after one more entry. */
export function applyPatternEntry(before: readonly StepReport[] | undefined, entry: Entry): readonly StepReport[] {
  const reports = before ?? [];
  if (entry.kind === "step-reported") {
    const pattern = entry.pattern === undefined ? {} : { pattern: entry.pattern };
    return [...reports, { ...markOf(entry), ...pattern, ...(entry.body as PatternBodies["step-reported"]) }];
  }
  if (entry.kind !== "report-answered") return reports;
  const { report, answer } = entry.body as PatternBodies["report-answered"];
  const said = { ...markOf(entry), text: answer };
  return reports.map((one) => (one.entry === report ? { ...one, answer: said } : one));
}

/** What holds for a kit: the pattern's own span, or the station's where that is shorter. */
export function strictest(pattern: Span | undefined, station: Span | undefined): Span | undefined {
  return shorterSpan(pattern, station);
}

/** The id in a subject such as "kit:7f3k"; the subject itself where it has none. */
export function idOf(subject: string): string {
  return subject.slice(subject.indexOf(":") + 1);
}
