import type { StageId } from "#kit";

/** What a qualification is for: a stage of every pattern or of one, one step of a pattern, or the sheet of a casualty. */
export type Tie =
  | { readonly to: "stage"; readonly stage: StageId; readonly pattern?: string }
  | { readonly to: "step"; readonly step: string; readonly pattern: string }
  | { readonly to: "sheet" };

/** What an entry with subject "qualification:..." may say. */
export interface QualificationBodies {
  /** Every part anew: what is amended is written whole. */
  "qualification-set": {
    readonly name: string;
    readonly ties: readonly Tie[];
    /** Who held it still holds it so long after doing it, as a span. */
    readonly every: string;
    /** Who may be the second person: who holds it; or keepers too. */
    readonly seenBy: "holders" | "keepers";
    /** Whether who does not hold it may go on with a note where nobody saw it done. */
    readonly alone: "with-note" | "never";
  };
  "qualification-retired": { readonly reason: string };
}

/** What an entry with subject "kit:..." may say of who saw a thing done in a turnaround. */
export interface SecondBodies {
  /** Who sees what the writer of this line does in the turnaround under this qualification: a person's id. */
  "second-named": { readonly turnaround: string; readonly qualification: string; readonly second: string };
  /** The writer goes on without a second person, and says why. */
  "gone-on-alone": { readonly turnaround: string; readonly qualification: string; readonly note: string };
}

/** What an entry with subject "person:..." may say of what was done away from a turnaround and a casualty. */
export interface PracticeBodies {
  /** Done on this day, in the keeper's words: a course, a drill, at another station. */
  "practice-told": {
    readonly qualification: string;
    readonly day: string;
    readonly how: string;
    readonly second?: string;
  };
}
