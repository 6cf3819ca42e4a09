import type { Pattern } from "#kit";
import type {
  BroughtBack,
  CasualtyState,
  Device,
  KitState,
  Person,
  Place,
  Practised,
  Qualification,
  RescueBoat,
  StationPolicy,
  StepReport,
  StockPart,
  Visit,
} from "#readiness";

/** The station as its log tells it. What an entry does not touch keeps its identity from one reading to the next. */
export interface StationReading {
  readonly stationName: string;
  readonly policy: StationPolicy;
  /** Lines that the station's database had lost and devices gave back, oldest first. */
  readonly broughtBack: readonly BroughtBack[];
  /** Every kit, retired ones too, by name. */
  readonly kits: readonly KitState[];
  readonly places: readonly Place[];
  readonly people: readonly Person[];
  readonly devices: readonly Device[];
  /** Rescue boats, retired ones too, by name. */
  readonly boats: readonly RescueBoat[];
  /** Parts, retired ones too, by name. */
  readonly parts: readonly StockPart[];
  /** Qualifications, retired ones too, by name. */
  readonly qualifications: readonly Qualification[];
  /**
   * What a summary of lines that are not at hand knew of who did what; empty where every line is. What was done before a
   * qualification was set is then only known once the lines have come.
   */
  readonly practised: readonly Practised[];
  /** Newest first, closed ones too; each once, whatever number of sheets was opened for her. */
  readonly casualties: readonly CasualtyState[];
  /** Visits of assessors, newest first. */
  readonly visits: readonly Visit[];
  /** By pattern id. */
  readonly reports: ReadonlyMap<string, readonly StepReport[]>;
  /** By "id@version". */
  readonly patterns: ReadonlyMap<string, Pattern>;
}
