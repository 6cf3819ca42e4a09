import type { CautionId } from "#base";
import type { CasualtySpace, CasualtyState } from "#readiness";

/** What a hand is about to do. */
export type Moment =
  | { readonly kind: "lift" }
  | { readonly kind: "start"; readonly drive: Drive }
  | { readonly kind: "sound"; readonly space: CasualtySpace | undefined }
  | { readonly kind: "tow" };

/** What turns a pump; nobody knows it of a pump that is no kit of ours. */
export type Drive = "engine" | "mains" | "unknown";

/** What to heed, in a few words: the line a hazard comes down to. */
export const SHORT: Readonly<Partial<Record<CautionId, string>>> = {
  "heavy-lift": "two to lift, one calls it",
  "line-pulls": "hold the line, never wrap it",
  "smell-before-start": "smell low, before any start or switch",
  "carbon-monoxide": "exhaust downwind, clear of every hatch; nobody in the lee",
  "pressurised-hose": "cams closed and tied, hold the free end",
  "recoil-kick": "feet set, pull until it bites, then one long pull",
  "electric-shock": "dry hands, dry deck, through the cut-out; nobody in the water",
  "no-one-below-alone": "two, with a way out, and one on deck who calls",
  "batteries-under-water": "know where they are; nobody below once they are under",
  "under-tow": "slow; sound at once, and after each change of speed",
};

const STARTING: Readonly<Record<Drive, readonly CautionId[]>> = {
  engine: ["smell-before-start", "carbon-monoxide", "pressurised-hose", "recoil-kick"],
  mains: ["electric-shock", "smell-before-start", "pressurised-hose"],
  unknown: ["smell-before-start", "carbon-monoxide", "pressurised-hose"],
};

/**
 * The hazards of a moment, gravest first.
 *
 * @param moment - what a hand is about to do
 * @example hazardsAt({ kind: "start", drive: "mains" })[0] // "electric-shock"
 */
export function hazardsAt(moment: Moment): readonly CautionId[] {
  if (moment.kind === "lift") return ["line-pulls", "heavy-lift"];
  if (moment.kind === "start") return STARTING[moment.drive];
  if (moment.kind === "tow") return ["under-tow"];
  const hasBatteries = moment.space?.sort === "engine-room" || moment.space?.sort === "cabin";
  return hasBatteries ? ["no-one-below-alone", "batteries-under-water"] : ["no-one-below-alone"];
}

/**
 * True where a moment comes for the first time on this casualty, by its lines: nobody sounded this space, started a pump
 * or handed one over before; nobody sounded since she was taken in tow.
 */
export function isFirstTime({ soundings, pumps, tow }: CasualtyState, moment: Moment): boolean {
  if (moment.kind === "lift") return pumps.every(({ kit }) => kit === undefined);
  if (moment.kind === "start") return pumps.every(({ runs }) => runs.length === 0);
  if (moment.kind === "sound") return soundings.every(({ space }) => space !== moment.space?.id);
  return soundings.every(({ at }) => Date.parse(at) < Date.parse(tow?.at ?? at));
}
