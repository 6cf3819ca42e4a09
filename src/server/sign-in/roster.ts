import { plainName } from "#base";
import { createFold, STATION_PLACE, type Entry, type Fold } from "#log";
import {
  applyDeviceEntry,
  applyPersonEntry,
  applyPlaceEntry,
  applyToStation,
  StationDraft,
  type Device,
  type Person,
  type Place,
} from "#readiness";
import type { Cursor, LogStore } from "#station";
import { LogFollower } from "../log/log-follower.ts";

/** Who and what the station's log knows, as of the last look into the store. */
export interface Roster {
  /** Takes in what any server process has added since. Cheap where nothing was. */
  catchUp(): Promise<void>;
  person(id: string): Person | undefined;
  /** Everybody there ever was, those who left too. */
  people(): readonly Person[];
  /** A person who has not left, by name, however it is spaced or capitalised. */
  personNamed(name: string): Person | undefined;
  /** Those who administer the station once these further entries are kept too. */
  administratorsAfter(further: readonly Entry[]): readonly Person[];
  device(id: string): Device | undefined;
  /** When a device first joined, by the clock of the server that let it in; undefined where it has not. */
  joined(device: string): string | undefined;
  place(id: string): Place | undefined;
  stationName(): string;
  /** True until the first person has joined. */
  isEmpty(): boolean;
  /** How far the station's place was read: what the roster says holds for it as it stood there. */
  readTo(): Cursor;
  /** What a new entry about this subject names in `after`. */
  newest(subject: string): readonly string[];
}

/** A roster that follows a store. */
export function createRoster(store: LogStore): Roster {
  return new FoldedRoster(store);
}

type State = Person | Device | Place | StationDraft | undefined;

class FoldedRoster implements Roster {
  #fold = createRosterFold();
  readonly #follower: LogFollower;

  constructor(store: LogStore) {
    this.#follower = new LogFollower(store, {
      places: () => Promise.resolve([STATION_PLACE]),
      take: (page) => this.#fold.add(page.map(({ entry }) => entry).filter(isRosterEntry)),
      startOver: () => (this.#fold = createRosterFold()),
    });
  }

  catchUp(): Promise<void> {
    return this.#follower.catchUp();
  }

  person(id: string): Person | undefined {
    return this.#state<Person>(`person:${id}`);
  }

  personNamed(name: string): Person | undefined {
    return this.people().find((person) => !person.left && plainName(person.name) === plainName(name));
  }

  administratorsAfter(further: readonly Entry[]): readonly Person[] {
    const touched = new Set(further.map(({ subject }) => subject).filter(isPerson));
    const untouched = this.people().filter(({ id }) => !touched.has(`person:${id}`));
    const changed = createRosterFold();
    for (const subject of touched) changed.add(this.#fold.allEntries(subject));
    changed.add(further.filter(({ subject }) => touched.has(subject)));
    const people = [...touched].flatMap((subject) => (changed.state(subject) as Person | undefined) ?? []);
    return [...untouched, ...people].filter(({ role, left }) => role === "administrator" && !left);
  }

  device(id: string): Device | undefined {
    return this.#state<Device>(`device:${id}`);
  }

  joined(device: string): string | undefined {
    const joins = this.#fold.entries(`device:${device}`).filter(({ kind }) => kind === "device-joined");
    return joins[0]?.at;
  }

  place(id: string): Place | undefined {
    return this.#state<Place>(`place:${id}`);
  }

  stationName(): string {
    return this.#state<StationDraft>("station")?.release().name ?? "";
  }

  isEmpty(): boolean {
    return this.people().length === 0;
  }

  readTo(): Cursor {
    return { [STATION_PLACE]: this.#follower.cursor[STATION_PLACE] ?? 0 };
  }

  newest(subject: string): readonly string[] {
    return this.#fold.heads(subject);
  }

  people(): readonly Person[] {
    const subjects = [...this.#fold.subjects()].filter(isPerson);
    return subjects.flatMap((subject) => this.#state<Person>(subject) ?? []);
  }

  #state<Wanted extends State>(subject: string): Wanted | undefined {
    return this.#fold.state(subject) as Wanted | undefined;
  }
}

function createRosterFold(): Fold<State> {
  return createFold<State>({ init: () => undefined, apply: applyEntry });
}

function isPerson(subject: string): boolean {
  return subject.startsWith("person:");
}

function isRosterEntry({ subject }: Entry): boolean {
  return subject === "station" || /^(person|device|place):/.test(subject);
}

function applyEntry(before: State, entry: Entry): State {
  const sort = entry.subject.split(":")[0];
  if (sort === "person") return applyPersonEntry(before as Person | undefined, entry);
  if (sort === "device") return applyDeviceEntry(before as Device | undefined, entry);
  if (sort === "place") return applyPlaceEntry(before as Place | undefined, entry);
  const station = (before as StationDraft | undefined) ?? new StationDraft();
  applyToStation(station, entry);
  return station;
}
