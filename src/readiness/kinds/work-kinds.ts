/** Which work on a kit: one opening settles all that needs its container opened. */
export type WorkKind = "opening" | "muster" | "return" | "settle";

/** What an entry with subject "kit:..." may say of work that is due. */
export interface WorkBodies {
  /** Who does it; nobody any more where `person` is absent. */
  "work-taken": { readonly work: WorkKind; readonly person?: string };
  /** The day it is to be done; no day any more where absent. */
  "work-dated": { readonly work: WorkKind; readonly day?: string };
  /** It may wait until the end of this day. It never waits past the last day before the kit is grounded. */
  "work-put-off": { readonly work: WorkKind; readonly until: string; readonly reason: string };
  /** The kit's openings of the year, each anew; none where the list is empty. */
  "openings-planned": { readonly openings: readonly PlannedWork[] };
}

/** One opening that was planned and accepted. */
export interface PlannedWork {
  /** The same when the opening is moved. */
  readonly id: string;
  /** The Monday of its week. */
  readonly week: string;
  /** Names of what is renewed or done then. */
  readonly renews: readonly string[];
  /** Persons who share the work. */
  readonly by: readonly string[];
  /** True where a person chose the week: planning again goes round it. */
  readonly fixed?: boolean;
}

/** What an entry with subject "person:..." may say of the time a person has. */
export interface TimeBodies {
  /** Hours a week for work on kits [h]. */
  "hours-set": { readonly hours: number };
  /** Away, both days included. */
  "absence-set": { readonly from: string; readonly to: string; readonly note?: string };
}
