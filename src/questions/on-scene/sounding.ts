import type { CautionId, Fault } from "#base";
import {
  likelyPrior,
  readSoundings,
  spaceOf,
  uprightSpace,
  type FloatingVessel,
  type SoundedSpace,
  type SoundingPrior,
} from "#flooding";
import type { z } from "zod";
import type { Assumption } from "../assumptions.ts";
import { omitMissing, resolveFloating, throwAny } from "../flooding/casualty-input.ts";
import { hasNoLie, withoutForecast, type Told } from "../guards/no-lie.ts";
import { instantsSaid, onOneClock } from "../guards/one-clock.ts";
import { wrongSpaces } from "../guards/places.ts";
import { wrongReadings, wrongSoundings } from "../guards/soundings.ts";
import { defineQuestion } from "../question.ts";
import { soundingIn, soundingOut, type soundedBoatIn, type soundedSpaceIn } from "./sounding-fields.ts";

type SoundingInput = z.output<typeof soundingIn>;

export const soundingQuestion = defineQuestion({
  name: "sounding",
  summary: "What timed soundings say: hole, delivery, are we gaining, when dry, what would change it most.",
  input: soundingIn,
  output: soundingOut,
  example: {
    compartment: { area: "12 m²", outsideLevel: "1.2 m", lossLevel: "1.1 m" },
    readings: [
      { at: 0, level: "0.50 m" },
      { at: "5 min", level: "0.58 m" },
      { at: "10 min", level: "0.57 m" },
      { at: "15 min", level: "0.55 m" },
      { at: "20 min", level: "0.54 m" },
    ],
    pumping: [{ from: "5 min", flow: "250 L/min" }],
  },
  check: onOneClock,
  answer: (input, _context, given) => {
    const assumptions: Assumption[] = [ONE_HOLE];
    const faults: Fault[] = [];
    faults.push(...wrongSoundings(input, instantsSaid(given)));
    const space = resolveSpace(input, faults, assumptions);
    throwAny([...faults, ...wrongReadings(input)]);
    const { now, horizon, ...gains } = input.options ?? {};
    const result = readSoundings({
      space,
      readings: input.readings,
      pumping: input.pumping.map((one) => omitMissing(one)),
      prior: resolvePrior(input, assumptions),
      options: omitMissing({ horizon }),
      gains: omitMissing(gains),
      ...omitMissing({ now }),
    });
    const vessel = boatOf(input);
    return vessel !== undefined && hasNoLie(vessel)
      ? answerOf(withoutForecast(result), assumptions, ["no-stable-lie"])
      : answerOf(result, assumptions);
  },
});

const ONE_HOLE: Assumption = {
  what: "One space, one hole, pumps that move some steady share of what is stated; level water.",
  effect: "A second inflow, a blocked strainer or a wrong sounding shows as a misfit.",
};

/** The boat as she was told, found valid before. */
function boatOf({ vessel }: SoundingInput): FloatingVessel | undefined {
  return vessel && resolveFloating(vessel, [], []);
}

function answerOf(result: Told, assumptions: Assumption[], more: readonly CautionId[] = []) {
  const { rounds: _rounds, advice, warnings, forecast, ...rest } = result;
  const cautions: CautionId[] = ["free-surface", ...more, "no-one-below-alone", "estimate"];
  const { fan, chances, dry, loss } = forecast;
  return {
    ...rest,
    forecast: { fan: [...fan], chances, dry, loss },
    advice: [...advice],
    warnings: [...warnings],
    assumptions,
    cautions,
  };
}

function fault(code: string, field: string, got: string, allowed: string, remedy: string): Fault {
  return { code, field, got, allowed, remedy };
}

function resolveSpace(input: SoundingInput, faults: Fault[], assumptions: Assumption[]): SoundedSpace {
  const { vessel, compartment } = input;
  if (vessel !== undefined && typeof compartment !== "object")
    return boatSpace(vessel, compartment, faults, assumptions);
  if (typeof compartment === "object" && vessel === undefined) return givenSpace(compartment, input, assumptions);
  const got = vessel === undefined ? "neither" : "both";
  faults.push(fault("QU-134", "compartment", got, "a vessel, or compartment {area}", "Give one of the two."));
  return uprightSpace({ area: 1, outside: 1, outsideDoubt: 1 });
}

function boatSpace(
  given: z.output<typeof soundedBoatIn>,
  name: string | undefined,
  faults: Fault[],
  assumptions: Assumption[],
): SoundedSpace {
  const vessel = resolveFloating(given, faults, assumptions);
  const names = vessel.compartments.map((one) => one.name);
  const wanted = name ?? names[0]!;
  if (!names.includes(wanted)) {
    faults.push(
      fault("QU-135", "compartment", JSON.stringify(wanted), names.join(", "), "Use the name of a compartment."),
    );
  }
  throwAny(faults);
  throwAny(wrongSpaces(vessel));
  return spaceOf(vessel, wanted);
}

function givenSpace(
  given: z.output<typeof soundedSpaceIn>,
  input: SoundingInput,
  assumptions: Assumption[],
): SoundedSpace {
  const highest = Math.max(...input.readings.map((reading) => reading.level));
  if (given.outsideLevel === undefined) {
    assumptions.push({
      what: `An outside level of ${(highest + 0.5).toFixed(2)} m above the floor, give or take 0.3 m.`,
      effect: "Inflow goes with the square root of the head: say how deep she floats over the floor of the space.",
    });
  }
  return uprightSpace({
    area: given.area * (given.permeability ?? 1),
    outside: given.outsideLevel ?? highest + 0.5,
    outsideDoubt: given.outsideLevel === undefined ? 0.3 : 0.04,
    ...omitMissing({ sinkage: given.sinkage, lossLevel: given.lossLevel }),
  });
}

function resolvePrior(input: SoundingInput, assumptions: Assumption[]): SoundingPrior {
  const given = input.prior ?? {};
  const usual = likelyPrior(input.readings[0]!.level);
  if (given.noise === undefined) {
    assumptions.push({
      what: "Soundings good to 15 mm.",
      effect: "Rougher soundings give wider answers: say so if she rolls.",
    });
  }
  const area =
    given.holeArea ?? (given.holeDiameter === undefined ? undefined : (Math.PI / 4) * given.holeDiameter ** 2);
  return {
    holeArea: { median: area ?? usual.holeArea.median, logSpread: given.holeLogSpread ?? usual.holeArea.logSpread },
    areaLogSpread: given.areaLogSpread ?? usual.areaLogSpread,
    delivery: {
      median: given.deliveryMedian ?? usual.delivery.median,
      logSpread: given.deliveryLogSpread ?? usual.delivery.logSpread,
      lowSpread: given.deliveryLowSpread ?? given.deliveryLogSpread ?? usual.delivery.lowSpread,
    },
    startLevel: {
      median: given.startLevel ?? usual.startLevel.median,
      spread: given.startSpread ?? usual.startLevel.spread,
    },
    noise: given.noise ?? usual.noise,
  };
}
