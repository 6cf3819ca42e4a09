import { useSheet } from "../sheet/use-sheet.ts";
import { Hazards } from "./hazards.tsx";
import { isFirstTime, type Moment } from "./moments.ts";

/** The hazards of a moment of this casualty. */
export function HazardsNow({ moment }: { readonly moment: Moment }) {
  const { casualty } = useSheet();
  return <Hazards moment={moment} isFirst={isFirstTime(casualty, moment)} />;
}
