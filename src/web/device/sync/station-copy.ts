import { dayIn, type UnitSystem } from "#base";
import type { Entry, KeptEntry, PlaceChain } from "#log";
import type { KitState, Person, Place, Standing, StationPolicy } from "#readiness";
import { snapshotOf, standingAt, type StationFold, type StationReading, type StationSnapshot } from "#station";
import type { HistoryLine, StationView } from "./contract.ts";
import type { Known } from "../handed/index.ts";

/** Who looks, from where and when. */
export interface Looking {
  readonly person: Person;
  readonly device: string;
  /** Place chosen on this device, if one was. */
  readonly place: string | undefined;
  readonly now: string;
  readonly units: UnitSystem;
}

interface Judged {
  readonly kit: KitState;
  readonly day: string;
  readonly policy: StationPolicy;
  readonly standing: Standing;
}

/** The station in this window's memory: folded from the device's own lines, a line at a time. */
export class StationCopy {
  readonly #fold: StationFold;
  readonly #judged = new Map<string, Judged>();

  constructor(fold: StationFold) {
    this.#fold = fold;
  }

  add(entries: Iterable<Entry | KeptEntry>): void {
    this.#fold.add(entries);
  }

  get size(): number {
    return this.#fold.size;
  }

  heads(subject: string): readonly string[] {
    return this.#fold.heads(subject);
  }

  kit(subject: string): KitState | undefined {
    return subject.startsWith("kit:") ? this.#fold.kit(subject.slice("kit:".length)) : undefined;
  }

  /** What lines of other devices are judged by. */
  knows(): Pick<Known, "people" | "devices" | "find"> {
    const { people, devices } = this.#fold.read();
    const find: Known["find"] = (subject, id) => this.#fold.allEntriesOf(subject).find((entry) => entry.id === id);
    return { people, devices, find };
  }

  /** What the lines here come to. @param heads - where each place stands in exactly these lines */
  snapshot(heads: readonly PlaceChain[], at: string): StationSnapshot {
    return snapshotOf(this.#fold, heads, at);
  }

  /** What pages show; undefined until the log has brought the first place. */
  view(looking: Looking): StationView | undefined {
    const reading = this.#fold.read();
    const place = placeOf(reading, looking.place);
    if (!place) return undefined;
    const kits = reading.kits.filter((kit) => !kit.retired);
    // Once for each place: finding a day in a zone is costly, and there may be hundreds of kits.
    const days = new Map(reading.places.map(({ id, zone }) => [id, dayIn(zone, looking.now)]));
    const dayAt = (kit: KitState) => days.get(kit.place) ?? dayIn("UTC", looking.now);
    return {
      stationName: reading.stationName,
      today: dayIn(place.zone, looking.now),
      me: reading.people.find(({ id }) => id === looking.person.id) ?? looking.person,
      device: looking.device,
      place,
      places: reading.places.filter(({ closed }) => !closed),
      people: reading.people,
      devices: reading.devices,
      boats: reading.boats.filter(({ retired }) => !retired),
      parts: reading.parts,
      casualties: reading.casualties,
      qualifications: reading.qualifications,
      practised: reading.practised,
      visits: reading.visits,
      kits,
      retired: reading.kits.filter((kit) => kit.retired),
      standings: new Map(reading.kits.map((kit) => [kit.id, this.#standingOf(kit, reading, dayAt(kit))])),
      policy: reading.policy,
      broughtBack: reading.broughtBack.toReversed(),
      patterns: reading.patterns,
      reports: reading.reports,
      units: looking.units,
      entriesOf: (subject) => this.#fold.entriesOf(subject),
      subjects: () => this.#fold.subjects(),
      historyOf: (subject) => this.#historyOf(subject),
    };
  }

  #historyOf(subject: string): readonly HistoryLine[] {
    return this.#fold.allEntriesOf(subject).map((entry) => {
      const struck = this.#fold.struckBy(subject, entry.id);
      const received = this.#fold.receivedLate(entry.id);
      return { entry, ...(struck && { struck }), ...(received !== undefined && { received }) };
    });
  }

  /** Judged anew only when the kit, the day or the policy is another. */
  #standingOf(kit: KitState, reading: StationReading, day: string): Standing {
    const before = this.#judged.get(kit.id);
    if (before?.kit === kit && before.day === day && before.policy === reading.policy) return before.standing;
    const standing = standingAt(kit, reading, day);
    this.#judged.set(kit.id, { kit, day, policy: reading.policy, standing });
    return standing;
  }
}

function placeOf({ places }: StationReading, chosen: string | undefined): Place | undefined {
  const open = places.filter(({ closed }) => !closed);
  return open.find(({ id }) => id === chosen) ?? open[0];
}
