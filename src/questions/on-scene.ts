import type { CautionId } from "#base";
import {
  lieWithWater,
  likelyCompartment,
  likelyHull,
  spaceOf,
  type FloatingVessel,
  type Lying,
  type SoundedSpace,
  type Sounding,
} from "#flooding";
import { hullAlone } from "#readiness";
import type { z } from "zod";
import { omitMissing, throwAny } from "./casualty-input.ts";
import { onSceneIn, onSceneOut, type LyingOut, type OnSceneInput, type readingOut } from "./on-scene-fields.ts";
import { assumedOf } from "./on-scene-assumptions.ts";
import { asLastSounded, changedUnsounded, isLone, sayLastKnown, sayReading, watchedLately } from "./on-scene-age.ts";
import type { WatchedSpace } from "./on-scene-between.ts";
import { faultsOf } from "./on-scene-faults.ts";
import { readWatches } from "./on-scene-reading.ts";
import { signsToLeave, warnOf, type Scene } from "./on-scene-warnings.ts";
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
  answer: (asked) => {
    throwAny(faultsOf(asked));
    const input = watchedLately(asked);
    const dry = boatOf(input, []);
    const scene = sceneOf(input, dry);
    const { sounding, lying, dryFreeboard, spaces } = scene;
    return {
      ...(sounding && { reading: readingOf(input, sounding, spaces[0]!.space) }),
      lying: lyingAs(lying),
      dryFreeboard,
      hull: hullAs(scene.hull, dry),
      warnings: warnOf(scene),
      leave: signsToLeave(scene),
      assumptions: assumedOf(input),
      cautions: CAUTIONS,
    };
  },
});

/** Soundings read, and how she lies with the water now in her. */
function sceneOf(input: OnSceneInput, dry: FloatingVessel): Scene {
  const spaces = watchedSpaces(input, dry);
  const sounding = input.readings.length === 0 ? undefined : readWatches(input, spaces[0]!.space);
  const levels = input.spaces.map((space, i) => (i === 0 ? sounding?.quantities.levelNow.p50 : space.level) ?? 0);
  const lying = lieWithWater(boatOf(input, levels));
  const hull = hullOf(input);
  return { input, hull, lying, dryFreeboard: hull.depth - hull.draught, spaces, ...(sounding && { sounding }) };
}

function hullOf({ boat }: OnSceneInput): ReturnType<typeof likelyHull> {
  return likelyHull(omitMissing(hullAlone(boat).boat) as Parameters<typeof likelyHull>[0]);
}

function hullAs({ length, beam, depth, draught }: Scene["hull"], { compartments }: FloatingVessel) {
  const spaces = compartments.map(({ name, from, to }) => ({ name, from, to }));
  return { length, beam, depth, draught, spaces };
}

const CAUTIONS: CautionId[] = ["carbon-monoxide", "never-pump-fuel", "free-surface", "no-one-below-alone", "estimate"];

function boatOf(input: OnSceneInput, levels: readonly number[]): FloatingVessel {
  const hull = hullOf(input);
  const compartments = input.spaces.map((space, i) => ({
    ...likelyCompartment(space, hull.length),
    level: Math.min(levels[i] ?? 0, hull.depth),
  }));
  return { kind: "floating", hull, compartments };
}

/** Every space with soundings, and what was pumped out of it; the first is the one that is read. */
function watchedSpaces(input: OnSceneInput, dry: FloatingVessel): readonly WatchedSpace[] {
  return input.spaces
    .map(({ name, readings = [], pumping = [] }, i) => ({ name, ...(i === 0 ? input : { readings, pumping }) }))
    .filter(({ readings }) => readings.length > 0)
    .map(({ name, readings, pumping }) => ({ name, space: spaceOf(dry, name), readings, pumping }));
}

function readingOf(input: OnSceneInput, sounding: Sounding, space: SoundedSpace): z.input<typeof readingOut> {
  const { verdict, chances, holding, quantities, forecast, misfit, trend, advice, nextSounding, age, stale } = sounding;
  return {
    soundings: input.readings.length,
    age,
    stale,
    expected: changedUnsounded(input) !== undefined,
    says: sayReading(input, sounding),
    ...(stale && { lastKnown: sayLastKnown(input, readWatches(asLastSounded(input), space), age) }),
    verdict: isLone(input) ? { ...verdict, kind: "unknown" } : verdict,
    chances,
    holding,
    inflow: quantities.inflow,
    levelNow: quantities.levelNow,
    fan: [...forecast.fan],
    dry: forecast.dry,
    loss: forecast.loss,
    misfit: misfit.flagged,
    ...(trend && { trend }),
    advice: advice.filter(({ action }) => canDo(input, action)),
    nextSounding: dueAfter(input, nextSounding),
  };
}

/** A change is looked at this soon [s]. */
const LOOK_AT_CHANGE = 120;

/** When the next sounding is due, on the readings' clock: sooner where something was changed since the last. */
function dueAfter(input: OnSceneInput, usual: number): number {
  const changed = changedUnsounded(input) ?? Number.POSITIVE_INFINITY;
  return Math.min(input.readings.at(-1)!.at + usual, changed + LOOK_AT_CHANGE);
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
