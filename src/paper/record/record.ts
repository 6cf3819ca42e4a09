import type { UnitSystem } from "#base";
import type { Entry, LinesProof } from "#log";
import type { Pattern } from "#kit";
import type { KitState, Standing, Turnaround } from "#readiness";
import type { Photo } from "#station";
import type { LateLine } from "../late-lines.ts";

/** What the record of one turnaround is printed from. */
export interface TurnaroundRecord {
  readonly stationName: string;
  readonly placeName: string;
  readonly kit: KitState;
  readonly turnaround: Turnaround;
  readonly pattern: Pattern;
  /** The kit's standing now. */
  readonly standing: Standing;
  /** Name by person id. */
  readonly people: ReadonlyMap<string, string>;
  /** Lines of the log about this turnaround that stand, oldest first: readings taken again are all among them. */
  readonly entries: readonly Entry[];
  /** Photos by hash, those that are to be had. */
  readonly photos: ReadonlyMap<string, Photo>;
  /** Lines behind the record with what shows that they are in the log, by place; empty where nothing signs. */
  readonly proofs: readonly LinesProof[];
  /** Lines behind the record that were received long after they were written. */
  readonly late: readonly LateLine[];
  readonly units: UnitSystem;
  /** RFC 3339 */
  readonly now: string;
}
