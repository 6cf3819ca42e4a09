import type { CautionId, Fault } from "#base";
import { simulateFlood, type FloodCase, type FloodRun } from "#flooding";
import { z } from "zod";
import { assumptionsOut, type Assumption } from "../assumptions.ts";
import { compartmentIn, floodPumpIn, hullIn, placedOpeningIn, prismIn } from "./casualty-fields.ts";
import { omitMissing, resolveFixed, resolveFloating, resolveOpenings, throwAny } from "./casualty-input.ts";
import { cautionsOut } from "../cautions-out.ts";
import { wrongMarks, wrongOpenings, wrongStrainers } from "../guards/openings.ts";
import { namedTwice, wrongSpaces } from "../guards/places.ts";
import { eventIn, resolveEvent, unknownName } from "./flood-events.ts";
import { resolvePumps } from "./flood-pumps.ts";
import { answered, quantity } from "../quantity-field.ts";
import { defineQuestion, type QuestionContext } from "../question.ts";

const floatingIn = z.strictObject({
  hull: hullIn,
  draught: quantity("length", "As she floats dry; the hull's own if left out", { above: 0, atMost: 60 }).optional(),
  trim: quantity("length", "Draught aft less draught forward, dry", { atLeast: -20, atMost: 20 }).optional(),
  kg: quantity("length", "Centre of gravity above the keel, dry", { above: 0, atMost: 60 }).optional(),
  compartments: z.array(compartmentIn).min(1).max(12),
  lostWhen: z.enum(["deck-edge", "foundered"]).optional().describe("What counts as lost; deck-edge if left out"),
});
const fixedIn = z.strictObject({
  outsideLevel: quantity("length", "Outside level the vessel is held at, above the keel", { atLeast: 0, atMost: 60 }),
  compartments: z.array(prismIn).min(1).max(12),
});

/** A vessel in a question: afloat with a hull, or held at an outside level. */
export const vesselIn = z
  .union([floatingIn, fixedIn])
  .describe(
    "{hull, compartments: [{from, to, permeability}], …} afloat, or {outsideLevel, compartments: [{area}]} held in place",
  );

const record = (what: string): z.ZodRecord<z.ZodString, z.ZodNumber> => z.record(z.string(), z.number()).describe(what);

const sampleOut = z.strictObject({
  at: answered("time", "Since the start"),
  levels: record("Level above the keel in the middle of each compartment [m]; its floor when empty"),
  water: record("Water in each compartment [m³]"),
  inflow: answered("flow", "Through the hull, inward positive"),
  pumped: answered("flow", "Out by all pumps"),
  attitude: z
    .strictObject({
      draught: answered("length", "Amidships"),
      heel: answered("angle", "To starboard"),
      trim: answered("length", "By the stern"),
      freeboard: answered("length", "Least height of the deck edge above the water"),
      stiffness: z.number().describe("Displaced volume × GM, floodwater free to move [m⁴]"),
      gm: answered("length", "Stiffness over displaced volume"),
    })
    .optional(),
});

/** Most samples of one series: a reader wants tens, and a step of no length would want more than there is memory. */
const MOST_SAMPLES = 10_000;

const floodIn = z
  .strictObject({
    vessel: vesselIn,
    openings: z.array(placedOpeningIn).max(30),
    pumps: z.array(floodPumpIn).max(20),
    events: z.array(eventIn).max(100).optional().describe("What is known to change, and when"),
    duration: quantity("time", "How long to follow it", { above: 0, atMost: 7 * 86_400 }),
    step: quantity("time", "Between the samples of the series; a sixtieth of the duration if left out", {
      above: 0,
    }).optional(),
    marks: z
      .array(
        z.strictObject({
          compartment: z.string().trim(),
          level: quantity("length", "Above the keel", { atLeast: 0, atMost: 60 }),
        }),
      )
      .max(20)
      .optional()
      .describe("Levels whose passing is wanted as an event"),
    accuracy: z
      .strictObject({
        relative: quantity("ratio", "Error per step; 1e-6 if left out", { atLeast: 1e-12, atMost: 1e-2 }).optional(),
        linearBelow: quantity("length", "Head below which √h is straight; 1 mm if left out", {
          atLeast: 1e-9,
          atMost: 0.1,
        }).optional(),
      })
      .optional(),
  })
  .superRefine(({ duration, step }, context) => {
    if (step === undefined || duration / step <= MOST_SAMPLES) return;
    const message = `at least ${duration / MOST_SAMPLES} s: ${MOST_SAMPLES} samples of this duration`;
    context.addIssue({ code: "custom", path: ["step"], message });
  });

export const floodQuestion = defineQuestion({
  name: "flood",
  summary:
    "How a flooding goes on: levels, draught, heel and stability in time, with pumps starting, stopping and failing.",
  input: floodIn,
  output: z.strictObject({
    series: z.array(sampleOut),
    events: z.array(z.strictObject({ kind: z.string(), at: answered("time", "Since the start"), name: z.string() })),
    outcome: z.strictObject({
      kind: z.enum(["gaining", "holding", "losing", "dry", "lost", "gave-up"]),
      because: z.string(),
      at: answered("time", "When, where it has a time").optional(),
    }),
    volumeError: answered("volume", "Water unaccounted for: rounding only"),
    assumptions: assumptionsOut,
    cautions: cautionsOut,
  }),
  example: {
    vessel: {
      hull: { form: "family", length: "9 m", beam: "3 m", depth: "1.5 m", draught: "0.8 m", blockCoefficient: 0.5 },
      compartments: [
        { name: "engine room", from: "1 m", to: "4 m", permeability: 0.85 },
        { name: "cabin", from: "4 m", to: "8 m", permeability: 0.95 },
      ],
    },
    openings: [{ name: "split", kind: "hole", diameter: "50 mm", height: "0.2 m", compartment: "engine room" }],
    pumps: [{ name: "kit", compartment: "engine room", flow: "250 L/min", from: "15 min", runtime: "110 min" }],
    duration: "1 h",
    step: "10 min",
  },
  answer: (input, context) => {
    const assumptions: Assumption[] = [QUASI_STEADY];
    const { series, events, outcome, volumeError } = simulateFlood(resolveCase(input, assumptions, context));
    const run = { series: [...series], events: [...events], outcome, volumeError };
    return { ...run, assumptions, cautions: cautionsFor(run) };
  },
});

const QUASI_STEADY: Assumption = {
  what: "Level water, no waves, openings and pumps as given.",
  effect: "In a seaway water also comes in over the edge and pumps lose prime; take the times as the best case.",
};

function resolveCase(input: z.output<typeof floodIn>, assumptions: Assumption[], context: QuestionContext): FloodCase {
  const faults: Fault[] = [];
  const vessel =
    "hull" in input.vessel ? resolveFloating(input.vessel, faults, assumptions) : resolveFixed(input.vessel, faults);
  const names = vessel.compartments.map((one) => one.name);
  const openings = resolveOpenings(input.openings, vessel, faults);
  const pumps = resolvePumps(input.pumps, vessel, { faults, assumptions, context });
  const targets = { pumps: pumps.map((one) => one.name), openings: openings.map((one) => one.name) };
  const changes = (input.events ?? []).map((event, i) => resolveEvent(event, i, targets, faults));
  input.marks?.forEach((mark, i) => {
    if (!names.includes(mark.compartment)) faults.push(unknownName(`marks[${i}].compartment`, mark.compartment, names));
  });
  faults.push(...namedTwice(openings, "openings"), ...namedTwice(pumps, "pumps"));
  throwAny(faults);
  throwAny([
    ...wrongSpaces(vessel),
    ...wrongOpenings(vessel, openings, input.openings),
    ...wrongStrainers(vessel, pumps),
    ...wrongMarks(vessel, input.marks ?? []),
  ]);
  const accuracy = omitMissing(input.accuracy ?? {});
  return {
    vessel,
    openings,
    pumps,
    changes,
    duration: input.duration,
    accuracy,
    ...omitMissing({ step: input.step, marks: input.marks }),
  };
}

function cautionsFor({ series, events, outcome }: Pick<FloodRun, "series" | "events" | "outcome">): CautionId[] {
  const cautions: CautionId[] = ["no-one-below-alone", "estimate"];
  const isUnder = events.some(({ kind }) => kind === "deck-edge");
  if (outcome.kind === "lost" && !isUnder) return ["free-surface", "no-stable-lie", ...cautions];
  const isLoose = series.some(
    (sample) => sample.attitude !== undefined && (sample.attitude.gm < 0.35 || Math.abs(sample.attitude.heel) > 0.09),
  );
  return isLoose ? ["free-surface", ...cautions] : cautions;
}
