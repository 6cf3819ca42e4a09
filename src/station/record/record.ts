import type { UnitSystem } from "#base";
import type { Entry } from "#log";
import type { Pattern } from "#kit";
import type { KitState, Turnaround } from "#readiness";

/** What the record of one turnaround is told from, on paper and on the screen. */
export interface RecordRead {
  readonly kit: KitState;
  readonly turnaround: Turnaround;
  readonly pattern: Pattern;
  /** Name by person id. */
  readonly people: ReadonlyMap<string, string>;
  /** Lines of the log about this turnaround that stand, oldest first: readings taken again are all among them. */
  readonly entries: readonly Entry[];
  readonly units: UnitSystem;
}

/** One part of a record as a table: what stands above each column, how much of the width it takes, and the rows. */
export interface RecordTable {
  readonly columns: readonly { readonly name: string; readonly part: number }[];
  readonly rows: readonly { readonly cells: readonly string[]; readonly bold?: boolean }[];
}
