import type { Fault } from "#base";
import { drillsOn, isHiding, type Drill, type KitState } from "#readiness";
import { unless, type ActContext } from "../acts/draft.ts";
import { because } from "../judging/faults.ts";

/** The drill of this id that is on. */
export function drillOn(kit: KitState, id: string): Drill | undefined {
  return drillsOn(kit).find((one) => one.id === id);
}

/** The kit has a drill of this id, and it is on. */
export function needDrill(kit: KitState, id: string): Fault | undefined {
  return unless(
    drillOn(kit, id) !== undefined,
    because(
      "SN-381",
      "body.drill",
      id,
      "a drill that is on",
      "Begin a drill on this kit, or look at those that are over.",
    ),
  );
}

/** Somebody who is not drilled themselves: the second person of a drill. */
export function needNotTrainee({ me }: ActContext, drill: Drill | undefined): Fault | undefined {
  const isTrainee = drill?.begun.trainees.includes(me.id) ?? false;
  const remedy = "Let the second person of the drill do this: one who does not look for the faults.";
  return unless(!isTrainee, because("SN-382", "by", me.name, "somebody who is not drilled", remedy));
}

/** Nobody who knows what is planted looks for it, as long as it is hidden. */
export function needNotPlanter({ me }: ActContext, kit: KitState): Fault | undefined {
  const knows = drillsOn(kit)
    .filter(isHiding)
    .some(({ plants }) => Object.values(plants).some(({ by }) => by === me.id));
  const remedy = "You planted the faults: let the trainee look. After the reveal anybody goes on.";
  return unless(!knows, because("SN-385", "by", me.name, "somebody who did not plant", remedy));
}
