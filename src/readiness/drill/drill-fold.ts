import type { Entry } from "#log";
import type { DrillBodies } from "../kinds/drill-kinds.ts";
import type { StepAnswer } from "../kinds/kinds.ts";
import { breakSeal, fitSeal, seeSeal } from "../kit/custody-fold.ts";
import { bareMark, markOf, type KitDraft, type Mutable } from "../draft.ts";
import type { Mark, Turnaround } from "../state.ts";
import { commitmentOf, inOrder } from "./commitment.ts";
import { isHiding, removalKey } from "./drill-now.ts";
import { closeFinding, closeFound } from "./drill-findings.ts";
import type { Drill } from "./drill-state.ts";

type Fold<Kind extends keyof DrillBodies> = (draft: KitDraft, body: DrillBodies[Kind], entry: Entry) => void;

/** Kinds that tell of a drill. */
export const drillFolds: { readonly [Kind in keyof DrillBodies]: Fold<Kind> } = {
  "drill-begun": begin,
  "faults-planted": plant,
  "drill-revealed": reveal,
  "planted-removed": remove,
  "drill-finding-judged": judge,
  "drill-ended": end,
};

/** A turnaround that is open while a drill is on belongs to it, whether its writer knew of the drill or not. */
function begin(draft: KitDraft, { drill: id, ...said }: DrillBodies["drill-begun"], entry: Entry): void {
  const drill = drillAt(draft, id, entry);
  drill.begun = { ...markOf(entry), ...said };
  const open = draft.kit.turnaround && draft.knownTurnaround(draft.kit.turnaround.id);
  if (open) open.drill ??= id;
  seeSeal(draft, said.sealSeen, entry);
  breakSeal(draft, entry);
}

function plant(draft: KitDraft, { drill: id, ...said }: DrillBodies["faults-planted"], entry: Entry): void {
  const drill = drillAt(draft, id, entry);
  if (said.seal !== undefined && !draft.kit.turnaround) fitSeal(draft, said.seal, entry);
  if (drill.plants[said.commitment]) return;
  const plants = draft.part(drill.plants as Record<string, Drill["plants"][string]>);
  plants[said.commitment] = { ...markOf(entry), ...said };
  drill.plants = plants;
  if (!drill.revealed[said.commitment]) drill.hidden += 1;
}

function reveal(draft: KitDraft, body: DrillBodies["drill-revealed"], entry: Entry): void {
  const { drill: id, plant: name, nonce, faults } = body;
  const drill = drillAt(draft, id, entry);
  const commitment = commitmentOf({ kit: draft.kit.id, ...body });
  if (drill.revealed[commitment]) return;
  const revealed = draft.part(drill.revealed as Record<string, Drill["revealed"][string]>);
  revealed[commitment] = { ...markOf(entry), plant: name, nonce, faults: inOrder(faults) };
  drill.revealed = revealed;
  if (!drill.plants[commitment]) return;
  drill.hidden -= 1;
  closeFound(draft, drill, entry);
}

function remove(draft: KitDraft, body: DrillBodies["planted-removed"], entry: Entry): void {
  const drill = drillAt(draft, body.drill, entry);
  const key = removalKey(body.plant, body.fault);
  if (drill.removed[key]) return;
  const removed = draft.part(drill.removed as Record<string, Mark>);
  removed[key] = markOf(entry);
  drill.removed = removed;
  closeFound(draft, drill, entry);
}

/** What is not real is closed by who says so; said to be real afterwards, it is open again. */
function judge(draft: KitDraft, body: DrillBodies["drill-finding-judged"], entry: Entry): void {
  const { drill: id, finding, ...said } = body;
  const drill = drillAt(draft, id, entry);
  const before = drill.judged[finding];
  const judged = draft.part(drill.judged as Record<string, Drill["judged"][string]>);
  judged[finding] = { ...markOf(entry), ...said };
  drill.judged = judged;
  closeFinding(draft, drill, finding, before);
}

function end(draft: KitDraft, { drill: id, ...said }: DrillBodies["drill-ended"], entry: Entry): void {
  const drill = drillAt(draft, id, entry);
  if (drill.ended) return;
  drill.ended = { ...markOf(entry), ...said };
  draft.endDrill(id);
}

/** Keeps what a trainee answered at a check, as long as nothing is revealed. */
export function keepForDrill(draft: KitDraft, { drill: id }: Turnaround, body: StepAnswer, entry: Entry): void {
  const drill = id === undefined ? undefined : draft.drill(id);
  if (!drill || body.check === undefined || !isHiding(drill)) return;
  const answers = draft.part(drill.answers as Record<string, Drill["answers"][string]>);
  answers[`${body.step}/${body.check}`] = { check: body.check, answer: body.answer, mark: markOf(entry) };
  drill.answers = answers;
}

/** The drill to write to; one not yet heard of is begun on the spot. */
function drillAt(draft: KitDraft, id: string, entry: Entry): Mutable<Drill> {
  return draft.drill(id) ?? draft.addDrill(blankDrill(id, entry));
}

function blankDrill(id: string, entry: Entry): Drill {
  const begun = { ...bareMark(markOf(entry)), trainees: [], sealSeen: "" };
  return { id, begun, plants: {}, revealed: {}, hidden: 0, answers: {}, removed: {}, judged: {} };
}
