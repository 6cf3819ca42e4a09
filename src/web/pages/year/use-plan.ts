import { isInputError, InputError, type PlainDate } from "#base";
import { planInputOf, PROBLEM, type PlanInput } from "#station";
import { useCallback, useState } from "react";
import { useStation, useThisDevice, type StationView } from "#web/device/index.ts";
import { useDoing } from "#web/parts/index.ts";
import { useAsk } from "#web/worker/index.ts";
import { sayBecause } from "./say-because.ts";

/** An answer of `plan-year`. */
export interface PlanAnswer {
  readonly openings: readonly {
    readonly kit: string;
    readonly week: number;
    readonly renews: readonly string[];
    readonly by: readonly string[];
    readonly beside?: readonly string[];
    readonly lacking?: number;
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

/** Where a plan is from: bettered at the station, or the quick one of this device, and why no better one came. */
export type PlanFrom =
  | { readonly kind: "station" | "asking" | "no-time" | "no-network" }
  | { readonly kind: "refused"; readonly because: string };

/** A plan with what it was asked. */
export interface Planned {
  readonly answer: PlanAnswer;
  readonly input: PlanInput;
  readonly assumed: readonly string[];
  readonly from: PlanFrom;
}

const PATIENCE_MS = 60_000;

/** Asks for the year's plan, round what is fixed (`tried` is what was last): at once on this device, then for a better one at the station, where the solver is. */
export function usePlan() {
  const view = useStation();
  const { door } = useThisDevice();
  const ask = useAsk();
  const doing = useDoing();
  const [planned, setPlanned] = useState<Planned>();
  const [tried, setTried] = useState<PlanInput["fixed"]>();
  const { run } = doing;
  const plan = useCallback(
    (weeks: number, fixed: PlanInput["fixed"]) =>
      run(async () => {
        const asked = planInputOf(view, { today: view.today, weeks, fixed });
        const { input } = asked;
        setTried(fixed);
        try {
          const quick = (await ask("plan-year", { ...input, limitSeconds: 0 })) as PlanAnswer;
          setPlanned({ ...asked, answer: quick, from: { kind: "asking" } });
          const json = { method: "POST", path: "/api/ask/plan-year", json: input, patience: PATIENCE_MS } as const;
          const reply = await door.ask<PlanAnswer>(json);
          const answer = reply.kind === "answered" ? reply.value : quick;
          setPlanned({ ...asked, answer, from: fromOf(reply) });
        } catch (cause) {
          throw isInputError(cause) ? inNames(cause.faults, view, input.start) : cause;
        }
      }),
    [view, door, ask, run],
  );
  return { planned, tried, plan, isBusy: doing.isBusy, error: doing.error };
}

type Told =
  | { readonly kind: "answered" }
  | { readonly kind: "unreachable" }
  | { readonly kind: "refused"; readonly problem: { readonly code: string; readonly message: string } };

/** Why the plan that stands is the one it is, by what the station said. */
export function fromOf(reply: Told): PlanFrom {
  if (reply.kind === "answered") return { kind: "station" };
  if (reply.kind === "unreachable") return { kind: "no-network" };
  const { code, message } = reply.problem;
  return code === PROBLEM.tookTooLong ? { kind: "no-time" } : { kind: "refused", because: message };
}

/** Faults that name kits and people as people do. */
function inNames(faults: InputError["faults"], view: StationView, start: PlainDate): InputError {
  const named = [...view.kits, ...view.places, ...view.people, ...view.qualifications];
  const say = (text: string) => sayBecause(text, named, start);
  const [first, ...rest] = faults.map((one) => ({ ...one, got: say(one.got), allowed: say(one.allowed) }));
  return new InputError([first!, ...rest]);
}
