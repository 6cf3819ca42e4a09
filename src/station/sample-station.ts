import type { Pattern } from "#kit";
import type { Entry } from "#log";
import type { Bodies, EntryKind, Role } from "#readiness";
import type { Act, ActContext, Draft } from "./acts/draft.ts";
import { createStationFold, type StationFold } from "./station-fold.ts";

/* A station to act upon, for the tests of this room: two places, four people, one small pattern. */

const STEP = {
  checks: [],
  stows: [],
  renews: [],
  hazards: [],
  cautions: [],
  measuresDelivery: false,
  needs: { people: 1, minutes: 1, tools: [] },
  optional: false,
};

export const SMALL_PATTERN: Pattern = {
  id: "small",
  version: 1,
  name: "Small pump",
  summary: "A pump made up for tests.",
  container: { name: "Drum", mass: 20, lifters: 1, places: [{ id: "well", name: "Well" }], markings: [] },
  policy: {},
  items: [
    { id: "pump", name: "Pump", place: "well", quantity: 1, life: { kind: "none" }, lapse: "notes", extendable: false },
    {
      id: "cells",
      name: "Cells",
      place: "well",
      quantity: 2,
      life: { kind: "printed" },
      lapse: "grounds",
      extendable: false,
    },
  ],
  modes: [{ id: "seized", item: "pump", name: "seized", effect: "grounds" }],
  checks: [
    { id: "turns", kind: "look", item: "pump", ask: "Turn it.", expect: "It turns.", finds: ["seized"] },
    {
      id: "volts",
      kind: "measure",
      item: "cells",
      ask: "Measure.",
      expect: "At least 1.4 V.",
      finds: [],
      dimension: "voltage",
      unit: "V",
      atLeast: 1.4,
    },
    {
      id: "seal-number",
      kind: "match",
      item: "pump",
      ask: "Read the seal.",
      expect: "As on record.",
      finds: [],
      first: "Seal",
      second: "Record",
      against: "recorded-seal",
    },
  ],
  stages: [
    {
      id: "examine",
      name: "Examine",
      steps: [{ ...STEP, id: "look", line: 1, text: "Look.", checks: ["turns", "volts", "seal-number"] }],
    },
    {
      id: "restow",
      name: "Restow",
      steps: [{ ...STEP, id: "stow", line: 2, text: "Put back.", stows: ["pump", "cells"] }],
    },
  ],
};

/** A station with its log, in which people act and their lines are kept at once. */
export class Desk {
  readonly fold: StationFold;
  today = "2026-01-10";
  private count = 0;

  constructor(small: Pattern = SMALL_PATTERN, ...others: readonly Pattern[]) {
    this.fold = createStationFold([small, { ...small, version: 2 }, ...others]);
    for (const [person, role] of [
      ["ann", "keeper"],
      ["ben", "crew"],
      ["cat", "assessor"],
      ["ada", "administrator"],
    ]) {
      this.keep({
        subject: `person:${person}`,
        kind: "person-joined",
        place: "station",
        body: { name: person!, role: role as Role },
      });
    }
    for (const place of ["north", "south"]) {
      const body = { name: place, strength: 1, zone: "UTC" };
      this.keep({ subject: `place:${place}`, kind: "place-set", place: "station", body });
    }
    this.keep({ subject: "device:tablet", kind: "device-joined", place: "station", body: { name: "Tablet" } });
  }

  /** The station as this person meets it. */
  as(person: string): ActContext {
    const reading = this.fold.read();
    const me = reading.people.find((one) => one.id === person);
    if (!me) throw new Error(`Nobody is called ${person}.`);
    return { ...reading, me, today: this.today };
  }

  kit(id = "k1") {
    const kit = this.fold.kit(id);
    if (!kit) throw new Error(`There is no kit ${id}.`);
    return kit;
  }

  /** Keeps the line of an act that was allowed. */
  do<Kind extends EntryKind>(act: Act<Kind>, by = "ann"): Entry<Kind, Bodies[Kind]> {
    if (act.kind === "refused") throw new Error(act.because.map((fault) => `${fault.code} ${fault.got}`).join("; "));
    return this.keep(act.draft, by);
  }

  private keep<Kind extends EntryKind>(draft: Draft<Kind>, by = "ann"): Entry<Kind, Bodies[Kind]> {
    const number = (this.count++).toString(16).padStart(12, "0");
    const entry = {
      ...draft,
      id: `0190a000-0000-7000-8000-${number}`,
      at: `${this.today}T08:00:00Z`,
      by,
      device: "tablet",
      after: this.fold.heads(draft.subject),
    };
    this.fold.add([entry]);
    return entry;
  }
}

/** Codes of what refused an act; empty where it was allowed. */
export function refusalsOf(act: Act): readonly string[] {
  return act.kind === "refused" ? act.because.map((fault) => fault.code) : [];
}

/** Lines as they come in, so many at a time, with the sample's one pattern. */
export function foldInPieces(lines: readonly Entry[], size = lines.length): StationFold {
  const fold = createStationFold([SMALL_PATTERN]);
  for (let at = 0; at < lines.length; at += size) fold.add(lines.slice(at, at + size));
  return fold;
}
