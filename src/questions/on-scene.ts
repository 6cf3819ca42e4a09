import type { CautionId } from "#base";
import {
  lieWithWater,
  likelyCompartment,
  likelyHull,
  spaceOf,
  type FloatingVessel,
  type Lying,
  type Sounding,
} from "#flooding";
import type { z } from "zod";
import type { Assumption } from "./assumptions.ts";
import { omitMissing, throwAny } from "./casualty-input.ts";
import { onSceneIn, onSceneOut, type LyingOut, type OnSceneInput, type readingOut } from "./on-scene-fields.ts";
import { faultsOf } from "./on-scene-faults.ts";
import { readWatches } from "./on-scene-reading.ts";
import { signsToLeave, warnOf } from "./on-scene-warnings.ts";
import { defineQuestion } from "./question.ts";

export const onSceneQuestion = defineQuestion({
  name: "on-scene",
  summary: "The whole casualty sheet: are we gaining, how she lies, what matters now, when to sound next.",
  input: onSceneIn,
  output: onSceneOut,
  example: {
    boat: { kind: "motor boat", length: "10 m" },
    spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
    readings: [
      { at: 0, level: "0.50 m" },
      { at: "5 min", level: "0.56 m" },
      { at: "10 min", level: "0.54 m" },
      { at: "15 min", level: "0.51 m" },
    ],
    pumping: [{ from: "5 min", flow: "200 L/min" }],
    now: "16 min",
  },
  answer: (input) => {
    throwAny(faultsOf(input));
    const assumptions = assumedOf(input);
    const dry = boatOf(input, []);
    const sounding = input.readings.length === 0 ? undefined : readWatches(input, spaceOf(dry, input.spaces[0]!.name));
    const levels = input.spaces.map((space, i) => (i === 0 ? sounding?.quantities.levelNow.p50 : space.level) ?? 0);
    const lying = lieWithWater(boatOf(input, levels));
    const hull = likelyHull(omitMissing(input.boat) as Parameters<typeof likelyHull>[0]);
    const scene = { input, hull, lying, dryFreeboard: hull.depth - hull.draught, ...(sounding && { sounding }) };
    return {
      ...(sounding && { reading: readingOf(input, sounding) }),
      lying: lyingAs(lying),
      dryFreeboard: scene.dryFreeboard,
      hull: {
        length: hull.length,
        beam: hull.beam,
        depth: hull.depth,
        draught: hull.draught,
        spaces: dry.compartments.map(({ name, from, to }) => ({ name, from, to })),
      },
      warnings: warnOf(scene),
      leave: signsToLeave(scene),
      assumptions,
      cautions: CAUTIONS,
    };
  },
});

const CAUTIONS: CautionId[] = ["carbon-monoxide", "never-pump-fuel", "free-surface", "no-one-below-alone", "estimate"];

function boatOf(input: OnSceneInput, levels: readonly number[]): FloatingVessel {
  const hull = likelyHull(omitMissing(input.boat) as Parameters<typeof likelyHull>[0]);
  const compartments = input.spaces.map((space, i) => ({
    ...likelyCompartment(space, hull.length),
    level: Math.min(levels[i] ?? 0, hull.depth),
  }));
  return { kind: "floating", hull, compartments };
}

function readingOf(input: OnSceneInput, sounding: Sounding): z.input<typeof readingOut> {
  const { verdict, chances, holding, quantities, forecast, misfit, advice, nextSounding } = sounding;
  return {
    soundings: input.readings.length,
    verdict,
    chances,
    holding,
    inflow: quantities.inflow,
    levelNow: quantities.levelNow,
    fan: [...forecast.fan],
    dry: forecast.dry,
    loss: forecast.loss,
    misfit: misfit.flagged,
    advice: advice.filter(({ action }) => canDo(input, action)),
    nextSounding: input.readings.at(-1)!.at + nextSounding,
  };
}

/** Only what is left to do: nothing with a pump while fuel is smelt, no engine opened up that is wide open. */
function canDo(input: OnSceneInput, action: Sounding["advice"][number]["action"]): boolean {
  if (action === "patch-half") return true;
  if (input.fuelSmelt === true) return false;
  if (action === "more-throttle") return input.canOpenUp !== false;
  return action !== "shorter-lift" || input.canLower !== false;
}

function lyingAs(lying: Lying): LyingOut {
  return lying.kind === "afloat" ? { ...lying, inside: [...lying.inside] } : lying;
}

function assumedOf({ boat, hole }: OnSceneInput): Assumption[] {
  const all: (Assumption | false)[] = [
    ONE_HOLE,
    boat.beam === undefined && GUESSED_BOAT,
    hole?.diameter === undefined && GUESSED_HOLE,
    GRAVITY,
    SOUNDED,
  ];
  return all.filter((one): one is Assumption => one !== false);
}

const ONE_HOLE: Assumption = {
  what: "One space, one hole, pumps that move what is stated, all steady between the times written down; no waves.",
  effect: "A new inflow, a blocked strainer or a wrong sounding shows as soundings that do not fit.",
};
const GUESSED_BOAT: Assumption = {
  what: "Beam, depth and draught guessed from kind and length; the space a third of her, or the whole.",
  effect: "Amounts of water and times may be a third out; rising or falling is seen all the same.",
};
const GUESSED_HOLE: Assumption = {
  what: "A hole of about 50 mm (15 to 160 mm) before any sounding; soundings then say.",
  effect: "With few soundings the answer is wide.",
};
const GRAVITY: Assumption = {
  what: "A centre of gravity at 0.8 of the depth, or lower.",
  effect: "List and stability are guesses: trust how she rolls and comes back.",
};
const SOUNDED: Assumption = {
  what: "Soundings good to 20 mm, always at the same mark.",
  effect: "Rougher soundings, or another mark, look like gaining or losing.",
};
