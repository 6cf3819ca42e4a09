import { InputError } from "#base";
import { planInputOf, type PlanInput } from "#station";
import { useCallback, useState } from "react";
import { useStation, useThisDevice } from "#web/device/index.ts";
import { useDoing } from "#web/parts/index.ts";
import { useAsk } from "#web/worker/index.ts";

/** An answer of `plan-year`. */
export interface PlanAnswer {
  readonly openings: readonly {
    readonly kit: string;
    readonly week: number;
    readonly renews: readonly string[];
    readonly by: readonly string[];
  }[];
  readonly short: readonly { readonly place: string; readonly week: number; readonly by: number }[];
  readonly hours: readonly number[];
  readonly wasted: number;
  readonly gap: number;
  readonly naive: {
    readonly openings: number;
    readonly worstHours: number;
    readonly shortWeeks: number;
    readonly wasted: number;
  };
  readonly because?: string;
}

/** A plan with what it was asked. */
export interface Planned {
  readonly answer: PlanAnswer;
  readonly input: PlanInput;
  readonly assumed: readonly string[];
  /** True where the station's solver bettered it; false for the quick plan of this device. */
  readonly isSolved: boolean;
}

const PATIENCE_MS = 60_000;

/** Asks for the year's plan: at the station, where the solver is, or without a network on this device. */
export function usePlan() {
  const view = useStation();
  const { door } = useThisDevice();
  const ask = useAsk();
  const doing = useDoing();
  const [planned, setPlanned] = useState<Planned>();
  const { run } = doing;
  const plan = useCallback(
    (weeks: number, fixed: PlanInput["fixed"]) =>
      run(async () => {
        const { input, assumed } = planInputOf(view, { today: view.today, weeks, fixed });
        const asked = { method: "POST", path: "/api/ask/plan-year", json: input, patience: PATIENCE_MS } as const;
        const reply = await door.ask<PlanAnswer>(asked);
        if (reply.kind === "refused" && reply.problem.faults) throw new InputError(reply.problem.faults);
        const isSolved = reply.kind === "answered";
        const answer = isSolved ? reply.value : ((await ask("plan-year", input)) as PlanAnswer);
        setPlanned({ answer, input, assumed, isSolved });
      }),
    [view, door, ask, run],
  );
  return { planned, plan, isBusy: doing.isBusy, error: doing.error };
}
