import type { Entry } from "#log";
import type { StationView } from "#web/device/sync/contract.ts";

/** What is needed of the station to look through its whole log. */
export type WholeStation = Pick<
  StationView,
  "kits" | "retired" | "casualties" | "people" | "devices" | "places" | "patterns" | "historyOf"
>;

/** Where a device shows in the log; what this device has not heard of is absent. */
export interface DeviceTrace {
  /** Its first joining: when, and who signed in. */
  readonly joined?: Entry;
  /** The newest line written on it. */
  readonly last?: Entry;
}

/** Ids of the people who have written at least one line, struck ones counted. */
export function writersOf(view: WholeStation): ReadonlySet<string> {
  return new Set(allLines(view).map(({ by }) => by));
}

/** By device id. */
export function deviceTracesOf(view: WholeStation): ReadonlyMap<string, DeviceTrace> {
  const traces = new Map<string, DeviceTrace>();
  for (const line of allLines(view)) {
    const before = traces.get(line.device);
    traces.set(line.device, before?.last && isLater(before.last, line) ? before : { ...before, last: line });
  }
  for (const { id } of view.devices) {
    const joined = joiningOf(view, id);
    if (joined) traces.set(id, { ...traces.get(id), joined });
  }
  return traces;
}

/** The line by which a device first joined. */
export function joiningOf(view: Pick<StationView, "historyOf">, device: string): Entry | undefined {
  return view.historyOf(`device:${device}`).find(({ entry }) => entry.kind === "device-joined")?.entry;
}

function isLater(one: Entry, other: Entry): boolean {
  return Date.parse(one.at) > Date.parse(other.at);
}

function allLines(view: WholeStation): readonly Entry[] {
  return subjectsOf(view).flatMap((subject) => view.historyOf(subject).map(({ entry }) => entry));
}

function subjectsOf(view: WholeStation): readonly string[] {
  return [
    "station",
    ...named("kit", [...view.kits, ...view.retired]),
    ...named("casualty", view.casualties),
    ...named("person", view.people),
    ...named("device", view.devices),
    ...named("place", view.places),
    ...new Set(named("pattern", [...view.patterns.values()])),
  ];
}

function named(sort: string, all: readonly { readonly id: string }[]): readonly string[] {
  return all.map(({ id }) => `${sort}:${id}`);
}
