import type { LinesProof } from "#log";
import type { StandingInWords } from "#readiness";
import type { Photo, RecordRead } from "#station";
import type { LateLine } from "../late-lines.ts";

/** What the record of one turnaround is printed from. */
export interface TurnaroundRecord extends RecordRead {
  readonly stationName: string;
  readonly placeName: string;
  /** The kit's standing now. */
  readonly standing: StandingInWords;
  /** Photos by hash, those that are to be had. */
  readonly photos: ReadonlyMap<string, Photo>;
  /** Lines behind the record with what shows that they are in the log, by place; empty where nothing signs. */
  readonly proofs: readonly LinesProof[];
  /** Lines behind the record that were received long after they were written. */
  readonly late: readonly LateLine[];
  /** RFC 3339 */
  readonly now: string;
}
