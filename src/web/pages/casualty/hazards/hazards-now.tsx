import type { CautionId } from "#base";
import { driveOf } from "../pumps/drive.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { Hazards } from "./hazards.tsx";
import { hazardsMet, type HazardsMet, type Moment } from "./moments.ts";

interface HazardsNowProps {
  readonly moment: Moment;
  /** Hazards that stand above on the screen already. */
  readonly above?: readonly CautionId[];
}

/** The hazards of a moment of this casualty. */
export function HazardsNow({ moment, above = [] }: HazardsNowProps) {
  const load = moment.kind === "lift" ? moment.load : undefined;
  return <Hazards {...useHazards(moment, above)} load={load} />;
}

/** The hazards of a moment of this casualty, new and met before. */
export function useHazards(moment: Moment, above: readonly CautionId[] = []): HazardsMet {
  const { casualty, view } = useSheet();
  return hazardsMet(casualty, moment, (kit) => driveOf(view, kit), above);
}
