import { STATION_PLACE } from "#log";
import { isSheetOf, type Bodies, type CasualtyState } from "#readiness";
import { allow, unless, type Act, type ActContext } from "../acts/draft.ts";
import { because } from "../judging/faults.ts";

/** What of two sheets is the same beside her kits: spaces, and pumps that are no kits. */
export type SameThings = Pick<Bodies["casualty-joined"], "spaces" | "pumps">;

/**
 * Says that another sheet is of this same casualty. Open or closed, either way round: nothing of either is lost, and
 * striking the line parts them again.
 */
export function joinSheets(
  doing: ActContext,
  casualty: CasualtyState,
  other: CasualtyState,
  same: SameThings = {},
): Act<"casualty-joined"> {
  const remedy = "Choose another open sheet of the same casualty.";
  const draft = {
    subject: `casualty:${casualty.id}`,
    kind: "casualty-joined",
    body: { with: other.id, ...same },
    place: STATION_PLACE,
  } as const;
  return allow(doing, draft, [
    unless(
      !isSheetOf(casualty, other.id),
      because("SN-173", "body.with", other.name, "a sheet that is not joined with this one", remedy),
    ),
  ]);
}
