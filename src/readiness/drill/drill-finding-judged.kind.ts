import type { Entry } from "#log";
import { markOf, type KitDraft } from "../draft.ts";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { HANDS } from "../kinds/writers.ts";
import { closeFinding } from "./drill-findings.ts";
import { drillAt } from "./drill-fold.ts";
import type { Drill } from "./drill-state.ts";

export const subject = "kit";
export const writers = HANDS;

/** Something raised in a drill that was not planted: `real` where it is wrong all the same, and stays open. */
export const schema = ({ drillFindingJudged }: Shapes) => drillFindingJudged;
export type Body = BodyOf<typeof schema>;

/** What is not real is closed by who says so; said to be real afterwards, it is open again. */
export function fold(draft: KitDraft, body: Body, entry: Entry): void {
  const { drill: id, finding, ...said } = body;
  const drill = drillAt(draft, id, entry);
  const before = drill.judged[finding];
  const judged = draft.part(drill.judged as Record<string, Drill["judged"][string]>);
  judged[finding] = { ...markOf(entry), ...said };
  drill.judged = judged;
  closeFinding(draft, drill, finding, before);
}
