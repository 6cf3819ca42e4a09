import { familyOf, type Pattern } from "#kit";
import type { CasualtyState, KitState, StepReport } from "#readiness";
import { picturesTold, type PictureTold } from "./card-told.ts";
import { checksFound } from "./checks-found.ts";
import { findingsRead, togetherIn, type Together } from "./findings-read.ts";
import { linesHard } from "./lines-hard.ts";
import { minutesTaken } from "./minutes-taken.ts";
import { modesFound, unnamedFound, type UnnamedFound } from "./modes-found.ts";
import { openingsOf } from "./openings-read.ts";
import { OPENINGS_TO_TELL, proposalsOf, type CardFigures, type Proposal } from "./proposals.ts";

/** What the log says of a pattern. */
export interface ReportCard extends CardFigures {
  readonly kits: number;
  readonly openings: number;
  /** Pictures of its card for strangers that were reported, most often first. */
  readonly pictures: readonly PictureTold[];
  readonly unnamed: UnnamedFound;
  /** Findings that count once, as they are of one start that failed. */
  readonly together: Together;
  /** Openings it takes on top until a check that never found anything can be said to find something seldom; 0 where enough. */
  readonly openingsWanted: number;
  readonly proposals: readonly Proposal[];
}

/**
 * A pattern's report card: what its checks found, which modes were found by accident, which lines were not possible or
 * reported, the minutes really taken, and what the log would change.
 *
 * @param pattern - its newest version
 * @param kits - of the station, those taken off charge too; kits of other patterns are left out
 * @param reports - on lines of this pattern, and on pictures of its card for strangers
 * @param casualties - of the station: a start that failed on one counts once with what was found of it afterwards
 * @returns all of it; figures of too few openings propose nothing
 * @source DERIVED: docs/methods/reliability.md
 */
export function reportCard(
  pattern: Pattern,
  kits: readonly KitState[],
  reports: readonly StepReport[],
  casualties: readonly CasualtyState[] = [],
): ReportCard {
  const openings = openingsOf(kits, pattern.id);
  const findings = findingsRead(pattern, kits, casualties);
  const figures = {
    checks: checksFound(pattern, openings, findings),
    modes: modesFound(pattern, findings),
    lines: linesHard(pattern, openings, reports),
    minutes: minutesTaken(pattern, openings),
  };
  return {
    kits: kits.filter((kit) => familyOf(kit.pattern) === pattern.id).length,
    openings: openings.length,
    openingsWanted: Math.max(0, OPENINGS_TO_TELL - openings.length),
    ...figures,
    pictures: picturesTold(pattern, reports),
    unnamed: unnamedFound(pattern, findings),
    together: togetherIn(findings),
    proposals: proposalsOf(pattern, figures),
  };
}
