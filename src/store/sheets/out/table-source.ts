import type { Entry } from "#log";
import type { Pattern } from "#kit";
import type { KitState } from "#readiness";
import type { StationReading } from "#station";

/** What tables are made of: a station as its log tells it, on a day. */
export interface TableSource extends Pick<
  StationReading,
  | "kits"
  | "places"
  | "people"
  | "parts"
  | "qualifications"
  | "practised"
  | "casualties"
  | "visits"
  | "patterns"
  | "policy"
> {
  /** "YYYY-MM-DD". */
  readonly today: string;
  /** RFC 3339. */
  readonly now: string;
  /** Every line of the log, those struck too, in any order. */
  readonly lines: () => Iterable<Entry>;
}

/** A row of a table that is written out. */
export type OutRow = readonly (string | number)[];

/** A kit on charge with its pattern, where that is to be had. */
export function onCharge({ kits, patterns }: TableSource): readonly { kit: KitState; pattern: Pattern | undefined }[] {
  return kits
    .filter(({ retired }) => retired === undefined)
    .map((kit) => ({ kit, pattern: patterns.get(kit.pattern) }));
}

/** The name of what has this id, or the id. */
export function nameIn(all: readonly { readonly id: string; readonly name: string }[], id: string): string {
  return all.find((one) => one.id === id)?.name ?? id;
}
