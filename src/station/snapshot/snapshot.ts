import { canonicalText, hashText, type PlaceChain } from "#log";
import { practiceOf, type CasualtyState, type StepReport } from "#readiness";
import type { StationReading } from "../station-reading.ts";
import { lightKit } from "./light-kit.ts";
import { lightPart } from "./light-part.ts";

/** Raised with every change of what a fold gives: a device that folds by other rules leaves a snapshot alone. */
export const SNAPSHOT_FORM = 5;
/** Of what grows with the years, so many of the newest are in a snapshot. */
const NEWEST = { casualties: 5, visits: 5, broughtBack: 20 } as const;

/**
 * What a station's lines come to, up to a head of each place: enough for the board, and for writing the next line. Never
 * the truth: it is worked out from the log, and thrown away where the log says otherwise.
 */
export interface StationSnapshot extends Omit<StationReading, "patterns" | "reports"> {
  readonly form: number;
  /** RFC 3339: when the station made it. */
  readonly at: string;
  /** Where each place stood: it is about every line up to there, and no other. */
  readonly heads: readonly PlaceChain[];
  /** "id@version" of the patterns it was folded with. */
  readonly patterns: readonly string[];
  readonly reports: readonly (readonly [pattern: string, reports: readonly StepReport[]])[];
  /** By subject, what a new line about it names in `after`. */
  readonly after: readonly (readonly [subject: string, heads: readonly string[]])[];
}

/** What a snapshot is made from: a fold of exactly the lines up to the heads. */
export interface Folded {
  read(): StationReading;
  subjects(): Iterable<string>;
  heads(subject: string): readonly string[];
}

/**
 * A snapshot of a station. Its size goes with the number of kits, not with the years they have been here.
 *
 * @param fold - of exactly the lines up to `heads`
 * @param at - RFC 3339
 */
export function snapshotOf(fold: Folded, heads: readonly PlaceChain[], at: string): StationSnapshot {
  const reading = fold.read();
  const { patterns, reports, kits, casualties, broughtBack, parts, visits, ...rest } = reading;
  const subjects = [...fold.subjects()].sort();
  return {
    form: SNAPSHOT_FORM,
    at,
    heads: heads.toSorted((one, other) => (one.place < other.place ? -1 : 1)),
    patterns: [...patterns.keys()].sort(),
    ...rest,
    broughtBack: broughtBack.slice(-NEWEST.broughtBack),
    kits: kits.map((kit) => lightKit(kit, patterns.get(kit.pattern))),
    parts: parts.map(lightPart),
    practised: practiceOf(reading).practised,
    casualties: [...casualties.filter(isOpen), ...casualties.filter((one) => !isOpen(one)).slice(0, NEWEST.casualties)],
    visits: visits.filter(({ ended }, at) => ended === undefined || at < NEWEST.visits),
    reports: [...reports].sort(([one], [other]) => (one < other ? -1 : 1)),
    after: subjects.map((subject) => [subject, fold.heads(subject)]),
  };
}

/** The same for two snapshots exactly where they say the same, whenever they were made and in whatever order written. */
export function snapshotMark({ at: _at, ...said }: StationSnapshot): string {
  return hashText(canonicalText(JSON.parse(JSON.stringify(said))));
}

function isOpen({ closed }: CasualtyState): boolean {
  return closed === undefined;
}
