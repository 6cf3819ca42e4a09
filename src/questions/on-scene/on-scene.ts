import type { CautionId } from "#base";
import {
  lieAsSeen,
  likelyCompartment,
  likelyHull,
  spaceOf,
  type FloatingVessel,
  type Lying,
  type SeenOfHer,
  type Sounding,
} from "#flooding";
import { hullAlone } from "#readiness";
import type { z } from "zod";
import { instantsSaid, onOneClock } from "../guards/one-clock.ts";
import { omitMissing, throwAny } from "../flooding/casualty-input.ts";
import { onSceneIn, onSceneOut, type LyingOut, type OnSceneInput, type readingOut } from "./on-scene-fields.ts";
import { assumedOf } from "./on-scene-assumptions.ts";
import { changedUnsounded, isLone, sayLastKnown, watchedLately } from "./on-scene-age.ts";
import type { WatchedSpace } from "./on-scene-between.ts";
import { faultsOf } from "./on-scene-faults.ts";
import { readScene } from "./on-scene-reading.ts";
import { isAboveDeck, warnOf, type Scene } from "./on-scene-warnings.ts";
import { signsToLeave } from "./on-scene-leave.ts";
import { timesOf } from "./on-scene-times.ts";
import { isEarned, sayWord, wordOf } from "./on-scene-word.ts";
import { pumpsOf } from "./on-scene-pumps.ts";
import { defineQuestion } from "../question.ts";

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
      { at: "10 min", level: "0.53 m" },
      { at: "15 min", level: "0.49 m" },
    ],
    pumping: [{ from: "5 min", flow: "250 L/min" }],
    now: "16 min",
  },
  check: onOneClock,
  answer: (asked, _context, given) => {
    throwAny(faultsOf(asked, instantsSaid(given)));
    const input = watchedLately(asked);
    const dry = boatOf(input, []);
    const scene = sceneOf(input, dry);
    const { sounding, lying, dryFreeboard } = scene;
    return {
      word: scene.word,
      pumps: [...scene.pumps],
      ...(sounding && { reading: readingOf(scene, sounding) }),
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
  const sounding = input.readings.length === 0 ? undefined : readScene(input, spaces[0]!.space);
  const levelNow = sounding?.stale ? input.readings.at(-1)!.level : sounding?.quantities.levelNow.p50;
  const levels = input.spaces.map((space, i) => (i === 0 ? levelNow : space.level) ?? 0);
  const lying = lieAsSeen(boatOf(input, levels), seenOf(input));
  const hull = hullOf(input);
  const above = isAboveDeck({ input, hull });
  const word = wordOf({ input, isAboveDeck: above, ...(sounding && { sounding }) });
  const pumps = pumpsOf(input, sounding);
  const known = {
    input,
    hull,
    lying,
    dryFreeboard: hull.depth - hull.draught,
    spaces,
    word,
    isAboveDeck: above,
    pumps,
  };
  return { ...known, ...(sounding && { sounding }) };
}

function seenOf({ list, trimSeen: trim, rollPeriod, righting }: OnSceneInput): SeenOfHer {
  return omitMissing({ list, trim, rollPeriod, righting });
}

function hullOf({ boat }: OnSceneInput): ReturnType<typeof likelyHull> {
  return likelyHull(omitMissing(hullAlone(boat).boat) as Parameters<typeof likelyHull>[0]);
}

function hullAs({ length, beam, depth, draught }: Scene["hull"], { compartments }: FloatingVessel) {
  const spaces = compartments.map(({ name, from, to }) => ({ name, from, to }));
  return { length, beam, depth, draught, spaces };
}

const CAUTIONS: CautionId[] = ["carbon-monoxide", "never-pump-fuel", "free-surface", "no-one-below-alone", "estimate"];

/**
 * Inner floor above the keel, as a share of her length: levels are counted from it, frames and ceiling lie below. This
 * program's judgement.
 */
const FLOOR = 0.008;

function boatOf(input: OnSceneInput, levels: readonly number[]): FloatingVessel {
  const hull = hullOf(input);
  const floor = FLOOR * hull.length;
  const compartments = input.spaces.map((space, i) => ({
    ...likelyCompartment(space, hull.length),
    floor,
    level: Math.min(floor + (levels[i] ?? 0), hull.depth),
  }));
  return { kind: "floating", hull, compartments };
}

/** Small craft stand so much higher at the bow, as a share of their length. This program's judgement. */
const SHEER = 0.03;

/** By how much the list seen brings her deck edge down amidships [m]. */
function dipOf(input: OnSceneInput): number {
  return Math.tan(Math.abs(input.list ?? 0)) * (hullOf(input).beam / 2);
}

/** Every space with soundings, and what was pumped out of it; the first is the one that is read. */
function watchedSpaces(input: OnSceneInput, dry: FloatingVessel): readonly WatchedSpace[] {
  return input.spaces
    .map(({ name, readings = [], pumping = [] }, i) => ({ name, ...(i === 0 ? input : { readings, pumping }) }))
    .filter(({ readings }) => readings.length > 0)
    .map(({ name, readings, pumping }, i) => ({
      name,
      space: spaceOf(dry, name, { dip: i === 0 ? dipOf(input) : 0, sheer: SHEER * input.boat.length }),
      readings,
      pumping,
    }));
}

/** No trend is told by a sounding that has to be looked at first: a slip of the unit would be carried on. */
function readingOf({ input, word, isAboveDeck: isToCheck }: Scene, sounding: Sounding): z.input<typeof readingOut> {
  const { verdict, chances, holding, quantities, forecast, misfit, trend, advice, nextSounding, age, stale } = sounding;
  return {
    soundings: input.readings.length,
    age,
    stale,
    expected: changedUnsounded(input) !== undefined,
    says: sayWord(word),
    ...(stale && { lastKnown: sayLastKnown(input, input.readings.at(-1)!.level, age) }),
    verdict: isLone(input) ? { ...verdict, kind: "unknown" } : verdict,
    chances,
    holding,
    inflow: quantities.inflow,
    levelNow: quantities.levelNow,
    fan: [...forecast.fan],
    ...timesOf(word, sounding),
    misfit: misfit.flagged,
    ...(trend && !isToCheck && { trend }),
    advice: advice.filter(({ action }) => canDo(input, action)),
    nextSounding: dueAfter(input, isEarned(word.kind) ? nextSounding : Math.min(nextSounding, LOOK_AT_CHANGE)),
  };
}

/** A change is looked at this soon, and whatever no word has been earned of [s]. */
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
