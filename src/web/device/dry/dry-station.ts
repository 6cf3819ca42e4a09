import { InputError, type UnitSystem } from "#base";
import type { Pattern } from "#kit";
import { STATION_PLACE, type Entry } from "#log";
import type { Person, Place } from "#readiness";
import { createStationFold, type Ambient } from "#station";
import type { Draft, Recorder, StationView } from "../sync/contract.ts";
import { StationCopy } from "../sync/station-copy.ts";
import { writeLines, type Writer } from "../held/line-writer.ts";

/** Kit and device of a dry run: such as no station has. */
export const DRY_KIT = "dry-run";
const DEVICE = "dry-run";
const SEAL = "DRY-RUN";

interface DryParts {
  /** The draft that is walked. */
  readonly pattern: Pattern;
  readonly me: Person;
  readonly place: Place;
  readonly units: UnitSystem;
  readonly ambient: Ambient;
}

/**
 * A station in memory with one kit, standing open, built to a draft: what is done there is judged and folded as ever, and
 * written nowhere. It is gone with the page.
 */
export class DryStation {
  readonly #parts: DryParts;
  readonly #copy: StationCopy;
  readonly #listeners = new Set<() => void>();
  #view: StationView | undefined;

  constructor(parts: DryParts) {
    this.#parts = parts;
    this.#copy = new StationCopy(createStationFold([parts.pattern]));
    this.#write(groundOf(parts));
    this.#write([openingOf(parts)]);
  }

  readonly now = (): StationView | undefined => this.#view;

  readonly hear = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly recorder: Recorder = {
    station: () => this.#view,
    record: async (draft) => this.#write([draft])[0]!,
    recordAll: async (drafts) => this.#write(drafts),
    strike: async ({ id, subject, place }, reason) =>
      this.#write([{ subject, place, kind: "struck", body: { entry: id, reason } }])[0]!,
    keepPhoto: async () => {
      throw noPhoto();
    },
    photoUrl: async () => undefined,
  };

  #write(drafts: readonly Draft[]): readonly Entry[] {
    const entries = writeLines(drafts, this.#writer());
    this.#copy.add(entries);
    const { me, units, ambient, place } = this.#parts;
    this.#view = this.#copy.view({ person: me, device: DEVICE, place: place.id, now: ambient.now(), units });
    for (const listener of this.#listeners) listener();
    return entries;
  }

  #writer(): Writer {
    return {
      ambient: this.#parts.ambient,
      person: this.#parts.me.id,
      device: DEVICE,
      heads: (subject) => this.#copy.heads(subject),
      kit: (subject) => this.#copy.kit(subject),
    };
  }
}

function groundOf({ pattern, me, place }: DryParts): readonly Draft[] {
  const { name, role } = me;
  const { strength, zone } = place;
  return [
    { subject: `person:${me.id}`, kind: "person-joined", place: STATION_PLACE, body: { name, role } },
    {
      subject: `place:${place.id}`,
      kind: "place-set",
      place: STATION_PLACE,
      body: { name: place.name, strength, zone },
    },
    {
      subject: `kit:${DRY_KIT}`,
      kind: "kit-enrolled",
      place: place.id,
      pattern: `${pattern.id}@${pattern.version}`,
      body: { name: `Dry run of ${pattern.name}`, serial: "DRY-RUN", seal: SEAL, items: [] },
    },
  ];
}

function openingOf({ ambient }: DryParts): Draft {
  const body = { turnaround: ambient.newId(), because: "routine", sealSeen: SEAL } as const;
  return { subject: `kit:${DRY_KIT}`, kind: "turnaround-opened", body };
}

function noPhoto(): InputError {
  const remedy = "Go on without one.";
  return new InputError([{ code: "WE-467", field: "photo", got: "a photo", allowed: "no photo in a dry run", remedy }]);
}
