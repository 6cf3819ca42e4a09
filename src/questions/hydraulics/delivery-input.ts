import { InputError, type Fault } from "#base";
import { HYDRAULIC_LIMITS, greatestSpeedRatio, powerCorrection, type DeliveryCase, type Hose } from "#hydraulics";
import type { Pattern } from "#kit";
import { z } from "zod";
import type { Assumption } from "../assumptions.ts";
import { hoseFields, leftOut, resolveHose } from "./hose-fields.ts";
import { hoseOf, kitIn, resolveKit } from "../kit/kit-pattern.ts";
import { quantity } from "../quantity-field.ts";
import type { QuestionContext } from "../question.ts";
import { airIn, resolveAir, resolveWater, waterIn, type Air } from "./surroundings.ts";

const LIMITS = HYDRAULIC_LIMITS;

const pointIn = z.strictObject({
  flow: quantity("flow", "Flow at this point", LIMITS.flow),
  head: quantity("length", "Head at this point", LIMITS.head),
});

const pumpIn = z
  .strictObject({
    curve: z
      .array(pointIn)
      .min(1)
      .max(200)
      .describe("Points at rated speed, by rising flow: one (the duty point), two, three (from no flow), or many"),
    between: z
      .enum(["straight", "smooth"])
      .optional()
      .describe("Between two or many points: straight (never too high where the curve bends down) or a smooth curve"),
    speed: quantity("rate", "Rated speed, only passed on", { above: 0, atMost: 1000 }).optional(),
    npshRequired: z.array(pointIn).max(200).optional().describe("NPSH required at rated speed, by rising flow"),
    greatestLift: quantity("length", "Greatest suction lift the maker states", LIMITS.greatestLift).optional(),
    standsInWater: z.boolean().optional().describe("True for a pump that stands in the water: it has no suction hose"),
    drive: z.enum(["engine", "electric"]).optional().describe("What turns it; engine if left out"),
  })
  .describe("The pump");

/** What `delivery` takes. */
export const deliveryIn = z.strictObject({
  kit: kitIn.optional(),
  water: waterIn.optional(),
  air: airIn.optional(),
  pump: pumpIn.optional(),
  throttle: quantity("ratio", "Running speed over rated speed; full if left out", LIMITS.speedRatio).optional(),
  suction: z
    .strictObject({
      lift: quantity("length", "Pump above the water it takes; negative where it is below", LIMITS.lift),
      ...hoseFields,
    })
    .describe("Suction side: the lift, and the hose where no kit gives it"),
  discharge: z
    .strictObject({
      rise: quantity("length", "End of the discharge hose above the pump", LIMITS.rise),
      ...hoseFields,
      exitLoss: z.boolean().optional().describe("Whether the jet's velocity head is lost at the end; true if left out"),
    })
    .describe("Discharge side: the rise, and the hose where no kit gives it"),
  pumpsInParallel: z
    .int()
    .min(LIMITS.pumps.atLeast)
    .max(LIMITS.pumps.atMost)
    .optional()
    .describe("Pumps of this kind, each with its own suction hose, on one discharge hose; 1 if left out"),
  advise: z.boolean().optional().describe("Whether to say what to change; true if left out"),
});

export type DeliveryInput = z.output<typeof deliveryIn>;

/** A rig as hydraulics needs it, and what was taken for granted on the way. */
export interface ResolvedDelivery {
  readonly rig: DeliveryCase;
  readonly electric: boolean;
  readonly assumptions: readonly Assumption[];
}

/**
 * Puts together what was given and what the kit's pattern knows.
 *
 * @throws InputError with everything that neither gives
 */
export function resolveDelivery(input: DeliveryInput, context: QuestionContext): ResolvedDelivery {
  const faults: Fault[] = [];
  const assumptions: Assumption[] = [];
  const pattern = resolveKit(input.kit, context);
  const pump = resolvePump(input, pattern, faults);
  const suction = resolveSuction(input, pattern, faults);
  const discharge = resolveHose(input.discharge, patternHose(pattern, "discharge"), "discharge", faults);
  if (faults.length > 0 || pump === undefined) throw new InputError(faults);
  const electric = input.pump?.drive === undefined ? isElectric(pattern) : input.pump.drive === "electric";
  const water = resolveWater(input.water, assumptions);
  const air = resolveAir(input.air, assumptions);
  const throttle = input.throttle ?? 1;
  const rig: DeliveryCase = {
    water,
    airPressure: air.pressure,
    pump,
    speedRatio: electric ? throttle : derated(throttle, air, assumptions),
    lift: input.suction.lift,
    ...(suction ? { suction } : {}),
    rise: input.discharge.rise,
    discharge,
    exitLoss: input.discharge.exitLoss ?? true,
    pumps: input.pumpsInParallel ?? 1,
  };
  return { rig, electric, assumptions };
}

function resolvePump(
  input: DeliveryInput,
  pattern: Pattern | undefined,
  faults: Fault[],
): DeliveryCase["pump"] | undefined {
  const { pump } = input;
  if (pump === undefined) {
    if (pattern?.hydraulics) return pattern.hydraulics.pump;
    if (input.kit === undefined) faults.push(leftOut("pump", "the pump {curve: [{flow, head}]}"));
    else if (pattern) faults.push(leftOut("pump", "the pump: this pattern states no hydraulics"));
    return undefined;
  }
  return {
    curve: pump.curve,
    ...(pump.between === undefined ? {} : { between: pump.between }),
    ...(pump.npshRequired === undefined ? {} : { npshRequired: pump.npshRequired }),
    ...(pump.greatestLift === undefined ? {} : { greatestLift: pump.greatestLift }),
  };
}

function resolveSuction(input: DeliveryInput, pattern: Pattern | undefined, faults: Fault[]): Hose | undefined {
  const known = patternHose(pattern, "suction");
  const standsInWater = input.pump?.standsInWater ?? (pattern?.hydraulics !== undefined && known === undefined);
  return standsInWater ? undefined : resolveHose(input.suction, known, "suction", faults);
}

function patternHose(pattern: Pattern | undefined, side: "suction" | "discharge"): Hose | undefined {
  const run = pattern?.hydraulics?.[side];
  return run && hoseOf(run);
}

function isElectric(pattern: Pattern | undefined): boolean {
  return pattern !== undefined && pattern.engine === undefined;
}

/** The speed an engine holds in this air: the throttle asked for, or less where the air leaves it too little power. */
function derated(throttle: number, air: Air, assumptions: Assumption[]): number {
  const power = 1 / powerCorrection(air.dryPressure, air.temperature);
  if (power >= 1) return throttle;
  const held = greatestSpeedRatio(air.dryPressure, air.temperature);
  if (held >= throttle) return throttle;
  assumptions.push({
    what: `In this air the engine has ${(100 * power).toFixed(0)} % of its rated power (SAE J1349), and the pump is taken to need all of it at rated speed.`,
    effect: `Speed is held to ${(100 * held).toFixed(1)} % of rated; an engine with power to spare holds more.`,
  });
  return held;
}
