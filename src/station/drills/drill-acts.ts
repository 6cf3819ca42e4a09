import type { Fault } from "#base";
import {
  commitmentOf,
  compareDrill,
  drillsOn,
  flushDue,
  isHiding,
  sayMet,
  type Bodies,
  type Comparison,
  type Drill,
  type KitState,
} from "#readiness";
import { ENGLISH } from "#words";
import { aboutKit, allow, unless, type Act, type ActContext } from "../acts/draft.ts";
import { needClosed, needHere, needNewSeal, needOnCharge } from "../acts/needs.ts";
import { patternOf } from "../acts/turnaround-acts.ts";
import { because, noSuchPerson } from "../judging/faults.ts";
import { drillOn, needDrill, needNotTrainee } from "./drill-needs.ts";

/** Sets a kit aside and opens it for a drill: from here on it does not count as ready. */
export function beginDrill(doing: ActContext, kit: KitState, body: Bodies["drill-begun"]): Act<"drill-begun"> {
  const here = doing.people.filter(({ left }) => !left).map(({ id }) => id);
  const stranger = body.trainees.find((one) => !here.includes(one));
  const remedy = "A drill is on it: end that one first.";
  return allow(doing, aboutKit(kit, "drill-begun", body), [
    needOnCharge(kit),
    needHere(kit),
    needClosed(kit),
    needFlushed(doing, kit),
    unless(drillsOn(kit).length === 0, because("SN-380", "kit", kit.name, "a kit with no drill on", remedy)),
    stranger === undefined ? undefined : noSuchPerson(stranger),
  ]);
}

/** What it met eats at it as long as it waits, and a drill makes it wait. */
function needFlushed(doing: ActContext, kit: KitState): Fault | undefined {
  const pattern = patternOf(doing, kit);
  const due = pattern && flushDue(kit, pattern);
  if (due === undefined) return undefined;
  const got = `${sayMet(
    due.all.map(({ what }) => what),
    ENGLISH.standing,
  )}, not flushed`;
  const remedy = "Flush it first, and write that down on its page: Flushed now.";
  return because("SN-390", "kit", got, "a kit with no first flush due or overdue", remedy);
}

/** Writes that faults were planted: only their hash. By the second person, before the trainee opens the kit. */
export function plantFaults(doing: ActContext, kit: KitState, body: Bodies["faults-planted"]): Act<"faults-planted"> {
  const drill = drillOn(kit, body.drill);
  const isPlanted = drill !== undefined && Object.keys(drill.plants).length > 0;
  const remedy = "What was planted is written down once. Strike that line if it is wrong, then plant again.";
  return allow(doing, aboutKit(kit, "faults-planted", body), [
    needDrill(kit, body.drill),
    needNotTrainee(doing, drill),
    needClosed(kit),
    unless(!isPlanted, because("SN-383", "body.plant", body.plant, "a drill with nothing planted yet", remedy)),
    body.seal === undefined ? undefined : needNewSeal(doing, body.seal),
  ]);
}

/** Shows what was planted; only a list that gives the hash written when it was planted is taken. */
export function revealDrill(doing: ActContext, kit: KitState, body: Bodies["drill-revealed"]): Act<"drill-revealed"> {
  const drill = drillOn(kit, body.drill);
  const isIt = drill?.plants[commitmentOf({ kit: kit.id, ...body })] !== undefined;
  const remedy =
    "Items, modes, the words and the letters must be those that were planted. If they are lost, end the drill as not compared.";
  const shown = body.faults.map(({ item, mode }) => `${item} ${mode}`).join(", ");
  return allow(doing, aboutKit(kit, "drill-revealed", body), [
    needDrill(kit, body.drill),
    needNotTrainee(doing, drill),
    drill && unless(isIt, because("SN-384", "body.faults", shown, "the list that was planted", remedy)),
  ]);
}

/** Names one planted fault taken out; each by itself, after the reveal. */
export function removePlanted(
  doing: ActContext,
  kit: KitState,
  body: Bodies["planted-removed"],
): Act<"planted-removed"> {
  const drill = drillOn(kit, body.drill) ?? kit.drills?.find(({ id }) => id === body.drill);
  const faults = drill ? compared(doing, kit, drill).faults : [];
  const left = faults.filter(({ removed }) => !removed).map(({ plant, number }) => `${plant} ${number}`);
  const isLeft = left.includes(`${body.plant} ${body.fault}`);
  const remedy = "Take it out of the kit first, then name it, one by one.";
  return allow(doing, aboutKit(kit, "planted-removed", body), [
    drill ? undefined : needDrill(kit, body.drill),
    unless(isLeft, because("SN-386", "body.fault", body.fault, "a planted fault that is still in", remedy)),
  ]);
}

/** Says whether something that was found and not planted is real. By the second person, after the reveal. */
export function judgeDrillFinding(
  doing: ActContext,
  kit: KitState,
  body: Bodies["drill-finding-judged"],
): Act<"drill-finding-judged"> {
  const drill = drillOn(kit, body.drill);
  const told = drill && !isHiding(drill) ? compared(doing, kit, drill) : undefined;
  const those = told ? [...told.unjudged, ...told.wrong, ...told.real] : [];
  const isOne = those.some(({ id }) => id === body.finding);
  const remedy = "Only what was found and not planted is judged, once what was planted is revealed.";
  return allow(doing, aboutKit(kit, "drill-finding-judged", body), [
    needDrill(kit, body.drill),
    needNotTrainee(doing, drill),
    unless(isOne, because("SN-387", "body.finding", body.finding, "a finding that was not planted", remedy)),
  ]);
}

/** Ends a drill: compared, with nothing left to be done, or as not compared, with a reason. */
export function endDrill(doing: ActContext, kit: KitState, body: Bodies["drill-ended"]): Act<"drill-ended"> {
  const drill = drillOn(kit, body.drill);
  return allow(doing, aboutKit(kit, "drill-ended", body), [
    needDrill(kit, body.drill),
    needNotTrainee(doing, drill),
    drill && (body.how === "compared" ? needDone(drill, compared(doing, kit, drill)) : needNotShown(drill)),
  ]);
}

function needDone(drill: Drill, { faults, unjudged }: Comparison): Fault | undefined {
  const left = faults.filter(({ removed }) => !removed).length + unjudged.length;
  if (!isHiding(drill) && left === 0) return undefined;
  const got = isHiding(drill) ? "not revealed" : `${left} to do`;
  const remedy = "Reveal what was planted, name each fault removed, and say of each other finding whether it is real.";
  return because("SN-388", "body.how", got, "a drill with nothing left to do", remedy);
}

/** What was shown is compared; only what cannot be shown is not. */
function needNotShown(drill: Drill): Fault | undefined {
  if (isHiding(drill)) return undefined;
  const remedy = "What was planted is known: name each fault removed, then end it as compared.";
  return because("SN-389", "body.how", "not-compared", "compared", remedy);
}

function compared(doing: ActContext, kit: KitState, drill: Drill): Comparison {
  return compareDrill(kit, drill, patternOf(doing, kit));
}
