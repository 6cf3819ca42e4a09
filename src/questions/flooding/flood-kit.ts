import { InputError, printGiven, type Fault } from "#base";
import type { PumpDelivery } from "#flooding";
import { deliveryOf } from "#hydraulics";
import type { Pattern } from "#kit";
import type { Assumption } from "../assumptions.ts";
import { resolveDelivery } from "../hydraulics/delivery-input.ts";
import { resolveKit } from "../kit/kit-pattern.ts";
import type { QuestionContext } from "../question.ts";

/** Between the lifts a kit is worked out at [m], and the highest looked at. */
const STEP = 0.25;
const HIGHEST = 12;

/** What stands for a pump in a flood where only its kit is named. */
export interface FloodKit {
  readonly delivery: PumpDelivery;
  /** On one tank at full throttle [s]; absent where nothing is burnt. */
  readonly runtime?: number;
}

/**
 * A kit at work on a flooding boat: it stands where it discharges, its suction hose down to the water; a submersible one
 * hangs in the water and pumps up to there.
 *
 * @param kit - id of the pattern; `field` its path, for a fault; `dischargeHeight` above the keel [m]
 * @returns what it moves against the height from water to discharge, through its own hoses, and how long a tank lasts
 * @throws InputError QU-107 where the pattern is not known, and what its pattern does not state
 * @source DERIVED: `delivery` asked at each lift; docs/methods/flooding.md, "Pumps"
 */
export function floodKit(
  { kit, field, dischargeHeight }: { readonly kit: string; readonly field: string; readonly dischargeHeight: number },
  context: QuestionContext,
  assumptions: Assumption[],
): FloodKit {
  const pattern = resolveKit(kit, context, field)!;
  if (pattern.hydraulics === undefined) throw new InputError([dumb(kit, field)]);
  const isHung = pattern.hydraulics.suction === undefined;
  const points: { lift: number; flow: number }[] = [];
  for (let lift = 0; lift <= HIGHEST && (points.at(-1)?.flow ?? 1) > 0; lift += STEP) {
    points.push({ lift, flow: flowAtLift(kit, isHung, lift, context) });
  }
  assumptions.push(standing(dischargeHeight, isHung));
  return { delivery: { kind: "table", points, dischargeHeight }, ...runtimeOf(pattern) };
}

function flowAtLift(kit: string, isHung: boolean, lift: number, context: QuestionContext): number {
  const heights = isHung ? { lift: 0, rise: lift } : { lift, rise: 0 };
  const input = { kit, suction: { lift: heights.lift }, discharge: { rise: heights.rise } };
  const { flow, kind } = deliveryOf(resolveDelivery(input, context).rig);
  return kind === "cannot-lift" ? 0 : flow;
}

function runtimeOf({ engine }: Pattern): { readonly runtime?: number } {
  const burn = engine?.burn.at(-1)?.burn;
  return engine === undefined || burn === undefined || !(burn > 0) ? {} : { runtime: engine.tank / burn };
}

function standing(height: number, isHung: boolean): Assumption {
  const where = isHung ? "The kit hangs in the water and discharges" : "The kit stands and discharges";
  return {
    what: `${where} ${Number(height.toFixed(2))} m above the keel, primed, at full throttle, through its own hoses, refuelled when its tank is empty.`,
    effect: "Higher, worn, half throttled or with air in its suction it moves less; an unproved kit may not start.",
  };
}

function dumb(kit: string, field: string): Fault {
  const allowed = "a pattern that states its pump and hoses";
  return { code: "QU-260", field, got: printGiven(kit), allowed, remedy: "Give flow or curve of this kit instead." };
}

/** A pump that is given by its kit and by figures too, or by neither. */
export function oneOfThree(
  told: { readonly flow?: unknown; readonly curve?: unknown; readonly kit?: unknown },
  field: string,
): Fault[] {
  const count = [told.flow, told.curve, told.kit].filter((one) => one !== undefined).length;
  if (count === 1) return [];
  const allowed = "flow, curve or kit, one of them";
  const got = count === 0 ? "none" : `${count} of them`;
  return [{ code: "QU-261", field: `${field}.flow`, got, allowed, remedy: "Give the one you know." }];
}
