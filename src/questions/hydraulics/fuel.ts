import { InputError, isQuantity, parseQuantity, printGiven, type CautionId, type Fault } from "#base";
import {
  DIESEL_DENSITY,
  FUEL_LIMITS,
  HYDRAULIC_LIMITS,
  PETROL_DENSITY,
  burnAtThrottle,
  burnOfPower,
  cansForPassage,
  fuelPlan,
} from "#hydraulics";
import { fuelKindOf, type Engine, type FuelKind } from "#kit";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { cautionsOut } from "../cautions-out.ts";
import { leftOut } from "./hose-fields.ts";
import { kitIn, resolveKit } from "../kit/kit-pattern.ts";
import { answered, quantity } from "../quantity-field.ts";
import { defineQuestion, type QuestionContext } from "../question.ts";

const fuelIn = z.strictObject({
  kit: kitIn.optional(),
  tank: quantity("volume", "Fuel in the full tank", FUEL_LIMITS.tank).optional(),
  cans: quantity("volume", "Fuel in cans beside it, all together; none if left out", FUEL_LIMITS.cans).optional(),
  burn: quantity("flow", "Fuel burnt, such as '1.4 L/h'", FUEL_LIMITS.burn).optional(),
  throttle: quantity(
    "ratio",
    "Speed ratio at which a kit's engine burns; full if left out",
    HYDRAULIC_LIMITS.speedRatio,
  ).optional(),
  shaftPower: quantity("power", "Shaft power, with bsfc in place of burn", FUEL_LIMITS.shaftPower).optional(),
  bsfc: quantity(
    "specific-consumption",
    "Brake specific fuel consumption, with shaftPower",
    FUEL_LIMITS.bsfc,
  ).optional(),
  fuelDensity: quantity(
    "density",
    "Density of the fuel, with bsfc; that of its kind if left out",
    FUEL_LIMITS.density,
  ).optional(),
  fuel: z
    .enum(["petrol", "diesel"])
    .optional()
    .describe("Kind of fuel, for density and cautions; the kit's own, or petrol, if left out"),
  reserve: z
    .union([z.number(), z.string()])
    .optional()
    .describe(
      "Fuel to have left when refuelling: a volume ('0.5 L'), a share of the tank ('15 %') or a time ('10 min'); a bare number is m³, or a share where it is more than the tank",
    ),
  passage: quantity("time", "Running time to plan for", FUEL_LIMITS.passage).optional(),
  can: quantity("volume", "Volume of one can, with passage", { above: 0, atMost: 0.1 }).optional(),
});

export const fuelOut = z.strictObject({
  runtime: answered("time", "From a full tank to empty"),
  refuelAt: answered("time", "When to stop and refuel, with the reserve left"),
  total: answered("time", "Tank and cans together"),
  burn: answered("flow", "Fuel burnt"),
  reserve: answered("volume", "Fuel left when refuelling"),
  passageFuel: answered("volume", "Fuel the passage burns").optional(),
  cansNeeded: answered("ratio", "Whole cans to take along").optional(),
  assumptions: assumptionsOut,
  cautions: cautionsOut,
});

type FuelInput = z.output<typeof fuelIn>;

export const fuelQuestion = defineQuestion({
  name: "fuel",
  summary: "How long the fuel lasts, when to refuel, and how many cans a passage needs.",
  input: fuelIn,
  output: fuelOut,
  example: { tank: "3.6 L", cans: "20 L", burn: "1.4 L/h", reserve: "15 %" },
  answer: (input, context) => {
    const assumptions: Assumption[] = [];
    const { tank, burn, kind } = resolveEngine(input, context, assumptions);
    const reserve = resolveReserve(input.reserve, tank, burn, assumptions);
    const plan = { tank, cans: input.cans ?? 0, burn, reserve };
    return {
      ...fuelPlan(plan),
      burn,
      reserve,
      ...passageNeeds(input, plan, assumptions),
      assumptions,
      cautions: CAUTIONS[kind],
    };
  },
});

const CAUTIONS: Readonly<Record<FuelKind, CautionId[]>> = {
  petrol: ["petrol-vapour", "refuel-stopped-and-cool", "hot-exhaust", "estimate", "unit-manual-first"],
  diesel: ["diesel-fuel", "hot-exhaust", "estimate", "unit-manual-first"],
};

/** Density of each kind [kg/m³], what it spreads over, and what that makes of a time. */
const DENSITY = {
  petrol: { usual: PETROL_DENSITY, spread: "Petrol spreads from 720 to 780: about 4 % in time." },
  diesel: { usual: DIESEL_DENSITY, spread: "Diesel spreads from 820 to 845: about 2 % in time." },
} as const;

function resolveEngine(input: FuelInput, context: QuestionContext, assumptions: Assumption[]) {
  const faults: Fault[] = [];
  const pattern = resolveKit(input.kit, context);
  const engine = pattern?.engine;
  const kind = input.fuel ?? (pattern && fuelKindOf(pattern)) ?? "petrol";
  const tank = input.tank ?? engine?.tank;
  if (tank === undefined) faults.push(leftOut("tank", "the fuel in the full tank [m³]"));
  const burn = resolveBurn({ ...input, fuel: kind }, engine, faults, assumptions);
  if (tank === undefined || burn === undefined || faults.length > 0) throw new InputError(faults);
  return { tank, burn, kind };
}

function resolveBurn(
  input: FuelInput,
  engine: Engine | undefined,
  faults: Fault[],
  assumptions: Assumption[],
): number | undefined {
  const { burn, shaftPower, bsfc } = input;
  if (burn !== undefined && (shaftPower !== undefined || bsfc !== undefined)) faults.push(twoBurns());
  if (burn !== undefined) return burn;
  if (shaftPower !== undefined && bsfc !== undefined) return burnByPower(input, shaftPower, bsfc, assumptions);
  if (shaftPower !== undefined || bsfc !== undefined)
    faults.push(leftOut(bsfc === undefined ? "bsfc" : "shaftPower", "both shaftPower and bsfc"));
  else if (engine && engine.burn.length > 0) return burnByThrottle(engine, input.throttle ?? 1, assumptions);
  else faults.push(leftOut("burn", "burn, or shaftPower and bsfc"));
  return undefined;
}

function twoBurns(): Fault {
  const allowed = "burn, or shaftPower and bsfc";
  return { code: "QU-109", field: "burn", got: "both", allowed, remedy: "Keep the one you know best." };
}

function burnByPower(input: FuelInput, shaftPower: number, bsfc: number, assumptions: Assumption[]): number {
  const kind = input.fuel ?? "petrol";
  const { usual, spread } = DENSITY[kind];
  if (input.fuelDensity === undefined) {
    const named = kind === "petrol" ? "Petrol" : "Diesel";
    assumptions.push({ what: `${named} of ${usual} kg/m³.`, effect: spread });
  }
  return burnOfPower(shaftPower, bsfc, input.fuelDensity ?? usual);
}

function burnByThrottle(engine: Engine, throttle: number, assumptions: Assumption[]): number {
  const { burn, kind } = burnAtThrottle(engine.burn, throttle);
  if (kind === "nearest-point") {
    assumptions.push({
      what: "The pattern gives no burn at this throttle; the nearest one it gives is taken.",
      effect:
        throttle < 1 ? "At less throttle the fuel lasts longer than said." : "The fuel may not last as long as said.",
    });
  }
  return burn;
}

function resolveReserve(
  given: string | number | undefined,
  tank: number,
  burn: number,
  assumptions: Assumption[],
): number {
  if (given === undefined) {
    assumptions.push({
      what: "No reserve.",
      effect: "The refuel clock rings when the tank is empty; give a reserve to be early.",
    });
    return 0;
  }
  const reserve = readReserve(given, tank, burn);
  if (reserve >= 0 && reserve < tank) return reserve;
  const allowed = "0 or more and less than the tank";
  throw new InputError([
    { code: "QU-110", field: "reserve", got: printGiven(given), allowed, remedy: "Check the number and its unit." },
  ]);
}

function readReserve(given: string | number, tank: number, burn: number): number {
  if (typeof given === "number") return given <= tank ? given : given * tank;
  if (isQuantity(given, "volume")) return parseQuantity(given, "volume", "reserve");
  if (isQuantity(given, "time")) return parseQuantity(given, "time", "reserve") * burn;
  if (isQuantity(given, "ratio")) return readReserve(parseQuantity(given, "ratio", "reserve"), tank, burn);
  return parseQuantity(given, "volume", "reserve");
}

function passageNeeds(input: FuelInput, plan: Parameters<typeof cansForPassage>[0], assumptions: Assumption[]) {
  if (input.passage === undefined) return {};
  const can = input.can ?? USUAL_CAN;
  if (input.can === undefined)
    assumptions.push({ what: "Cans of 5 L (1.3 US gal).", effect: "Twice the can, half the cans." });
  const { cans, fuel } = cansForPassage(plan, input.passage, can);
  return { passageFuel: fuel, cansNeeded: cans };
}

/** Volume of a can where none is given [m³]. */
const USUAL_CAN = 0.005;
