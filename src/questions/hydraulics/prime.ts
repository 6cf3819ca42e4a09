import { InputError, type CautionId, type Fault } from "#base";
import {
  HYDRAULIC_LIMITS,
  PRACTICE_LIFT,
  leakFromPrime,
  primingOf,
  type PrimeLeak,
  type Priming,
  type PrimingCase,
} from "#hydraulics";
import type { Pattern } from "#kit";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { cautionsOut } from "../cautions-out.ts";
import { leftOut } from "./hose-fields.ts";
import { kitIn, resolveKit } from "../kit/kit-pattern.ts";
import { answered, perMinute, quantity } from "../quantity-field.ts";
import { defineQuestion, type QuestionContext } from "../question.ts";
import { airIn, resolveAir, resolveWater, waterIn } from "./surroundings.ts";

const LIMITS = HYDRAULIC_LIMITS;
/** Taken where nobody says how fast the primer is worked [1/s]. */
const USUAL_STROKE_RATE = 1;

const primeIn = z.strictObject({
  kit: kitIn.optional(),
  lift: quantity("length", "Pump above the water", LIMITS.lift),
  hose: z
    .strictObject({
      bore: quantity("length", "Inner diameter of the suction hose", LIMITS.bore).optional(),
      length: quantity("length", "Length of the suction hose, at least the lift", LIMITS.length).optional(),
    })
    .optional(),
  deadVolume: quantity("volume", "Air in casing and primer beside the hose", LIMITS.deadVolume).optional(),
  stroke: quantity("volume", "Volume one stroke of the primer takes", LIMITS.stroke).optional(),
  strokesPerMinute: perMinute("Strokes of the primer", LIMITS.strokesPerMinute).optional(),
  airLeak: quantity("flow", "Air that leaks in, at outside pressure; none if left out", LIMITS.airLeak).optional(),
  observed: quantity("time", "Seconds a prime really took; the air leak it implies is then given", {
    above: 0,
    atMost: 3600,
  }).optional(),
  water: waterIn.optional(),
  air: airIn.optional(),
});

const leakOut = z.strictObject({
  kind: z.enum(["as-expected", "leaks", "cannot-prime"]),
  expectedSeconds: answered("time", "Seconds to be expected with no leak").optional(),
  airLeak: answered("flow", "Air that leaks in, at outside pressure").optional(),
  share: answered("ratio", "Share of what the primer takes out").optional(),
  greatestLift: answered("length", "With this leak it will not prime above").optional(),
  because: z.string(),
  lookFirst: z.array(z.string()).optional().describe("Where to look, in order"),
});

export const primeOut = z.strictObject({
  kind: z.enum(["primes", "will-not-prime"]),
  strokes: answered("ratio", "Strokes until water is at the pump, the last one counted as the part needed").optional(),
  wholeStrokes: answered("ratio", "The same in whole strokes").optional(),
  seconds: answered("time", "Seconds of stroking").optional(),
  greatestLift: answered("length", "It will not prime above"),
  reaches: answered("length", "Height the water reaches in the end, where it does not prime").optional(),
  because: z.string(),
  leak: leakOut.optional(),
  assumptions: assumptionsOut,
  cautions: cautionsOut,
});

export const primeQuestion = defineQuestion({
  name: "prime",
  summary: "Strokes and seconds until a pump is primed, the greatest lift, and the air leak a slow prime implies.",
  input: primeIn,
  output: primeOut,
  example: {
    lift: "3 m",
    hose: { bore: "76 mm", length: "6 m" },
    deadVolume: "4 L",
    stroke: "0.9 L",
    strokesPerMinute: 50,
    water: { temperature: "12 °C", salinity: 35 },
    air: { altitude: "0 m" },
  },
  answer: (input, context) => {
    const assumptions: Assumption[] = [];
    const given = resolvePriming(input, context, assumptions);
    const leak = input.observed === undefined ? undefined : leakFromPrime(given, input.observed);
    const outcome = primingOf(given);
    return {
      ...outcome,
      ...(leak === undefined ? {} : { leak: leakAnswer(leak) }),
      assumptions: [...assumptions, ...practice(outcome, given.lift)],
      cautions: CAUTIONS,
    };
  },
});

const CAUTIONS: CautionId[] = ["never-pump-fuel", "strainer-suction", "never-run-dry", "estimate", "unit-manual-first"];

function resolvePriming(
  input: z.output<typeof primeIn>,
  context: QuestionContext,
  assumptions: Assumption[],
): PrimingCase {
  const faults: Fault[] = [];
  const pattern = resolveKit(input.kit, context);
  const { hydraulics } = pattern ?? {};
  const need = (value: number | undefined, field: string, meaning: string): number => {
    if (value === undefined) faults.push(leftOut(field, meaning));
    return value ?? 0;
  };
  const bore = need(input.hose?.bore ?? hydraulics?.suction?.bore, "hose.bore", "the hose's inner diameter [m]");
  const length = need(input.hose?.length ?? hydraulics?.suction?.length, "hose.length", "the hose's length [m]");
  const deadVolume = need(input.deadVolume ?? hydraulics?.primer?.deadVolume, "deadVolume", "air in the casing [m³]");
  const stroke = need(input.stroke ?? hydraulics?.primer?.stroke, "stroke", "volume of a stroke [m³]");
  if (faults.length > 0) throw new InputError(faults);
  return {
    lift: input.lift,
    hose: { bore, length },
    deadVolume,
    stroke,
    strokeRate: strokeRate(input.strokesPerMinute, pattern, assumptions),
    airLeak: airLeak(input.airLeak, assumptions),
    water: resolveWater(input.water, assumptions),
    airPressure: resolveAir(input.air, assumptions).pressure,
  };
}

function strokeRate(given: number | undefined, pattern: Pattern | undefined, assumptions: Assumption[]): number {
  const primer = pattern?.hydraulics?.primer;
  if (given !== undefined) return given;
  if (primer) return primer.strokesPerMinute / 60;
  assumptions.push({ what: "One stroke a second.", effect: "Seconds go inversely with it; strokes do not change." });
  return USUAL_STROKE_RATE;
}

function airLeak(given: number | undefined, assumptions: Assumption[]): number {
  if (given === undefined)
    assumptions.push({ what: "No air leaks in.", effect: "A leak makes it slower, or stops it." });
  return given ?? 0;
}

function leakAnswer(leak: PrimeLeak): z.input<typeof leakOut> {
  return leak.kind === "leaks" ? { ...leak, lookFirst: [...leak.lookFirst] } : leak;
}

/** What practice says, beside the computed answer. */
function practice(outcome: Priming, lift: number): Assumption[] {
  const notes: Assumption[] = [];
  if (outcome.kind === "primes" && outcome.seconds > 60) notes.push(SLOW);
  if (lift > PRACTICE_LIFT.notBeyond) notes.push(TOO_HIGH);
  return notes;
}

const SLOW: Assumption = {
  what: "Practice: water comes within about a minute of starting to prime (US Army TM 10-4320-310-14, read in excerpt).",
  effect: "This rig needs longer by itself; put the pump lower or use a shorter hose.",
};
const TOO_HIGH: Assumption = {
  what: "Practice: suction lift beyond about 7.6 m (25 ft) is not attempted (US Army TM 10-4320-310-14, read in excerpt).",
  effect: "Real primers fall short of the computed limit; put the pump lower.",
};
