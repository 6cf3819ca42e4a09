import type { BoatBodies } from "../registry/boat.ts";
import type { CasualtyBodies } from "../registry/casualty.ts";
import type { DeviceBodies } from "../registry/device.ts";
import type { KitBodies } from "../registry/kit.ts";
import type { PartBodies } from "../registry/part.ts";
import type { PatternBodies } from "../registry/pattern.ts";
import type { PersonBodies } from "../registry/person.ts";
import type { PlaceBodies } from "../registry/place.ts";
import type { QualificationBodies } from "../registry/qualification.ts";
import type { AnyBodies } from "../registry/any.ts";
import type { StationBodies } from "../registry/station.ts";
import type { VisitBodies } from "../registry/visit.ts";

/**
 * What an entry may say, by kind. Kind names and bodies are the log's lasting form: add fields, never change or reuse
 * them. Each kind has a file of its own, `NAME.kind.ts` in the folder of its subject matter, with its schema, from which
 * the type follows, who may write it, and what it does.
 *
 * Dates are "YYYY-MM-DD" or, where only a month is printed, "YYYY-MM". Instants are RFC 3339 with offset.
 * Quantities are SI; `text` keeps what the person typed.
 */
export type Bodies = KitBodies &
  CasualtyBodies &
  PartBodies &
  VisitBodies &
  PatternBodies &
  StationBodies &
  PlaceBodies &
  PersonBodies &
  DeviceBodies &
  BoatBodies &
  QualificationBodies &
  AnyBodies;
export type EntryKind = keyof Bodies;

export type { CasualtyBodies, KitBodies, PartBodies, VisitBodies };
