import type { Words } from "#words";
import type { Pattern } from "#kit";
import { cautionNamed, SIGNAL_WORDS, type CautionId } from "#base";
import type { CasualtySpace, CasualtyState } from "#readiness";

/** What a hand is about to do. */
export type Moment =
  | { readonly kind: "lift"; readonly load?: Load }
  | { readonly kind: "start"; readonly drive: Drive }
  | { readonly kind: "sound"; readonly space: CasualtySpace | undefined }
  | { readonly kind: "tow" };

/** What is lifted, by the container of its pattern: people at the lift, and its mass [kg]. */
export type Load = Pick<Pattern["container"], "lifters" | "mass">;

/** What turns a pump; nobody knows it of a pump that is no kit of ours. */
export type Drive = "engine" | "key" | "mains" | "unknown";

const SHORT: Readonly<Partial<Record<CautionId, Exclude<keyof Words["hazards"], "hazards" | "heavyLiftOf">>>> = {
  "heavy-lift": "heavyLift",
  "line-pulls": "linePulls",
  "smell-before-start": "smellBeforeStart",
  "carbon-monoxide": "carbonMonoxide",
  "pressurised-hose": "pressurisedHose",
  "turns-by-key": "turnsByKey",
  "recoil-kick": "recoilKick",
  "electric-shock": "electricShock",
  "no-one-below-alone": "notBelowAlone",
  "batteries-under-water": "batteriesUnder",
  "under-tow": "underTow",
};

/** What to heed, in a few words: the line a hazard comes down to. */
export function sayShort(id: CautionId, words: Words["hazards"], load?: Load): string | undefined {
  if (id === "heavy-lift" && load)
    return words.heavyLiftOf({ count: load.lifters, mass: `${Math.round(load.mass)}\u00a0kg` });
  const short = SHORT[id];
  return short && words[short]();
}

const STARTING: Readonly<Record<Drive, readonly CautionId[]>> = {
  engine: ["smell-before-start", "carbon-monoxide", "pressurised-hose", "recoil-kick"],
  key: ["smell-before-start", "carbon-monoxide", "turns-by-key", "pressurised-hose"],
  mains: ["electric-shock", "smell-before-start", "pressurised-hose"],
  unknown: ["smell-before-start", "carbon-monoxide", "pressurised-hose"],
};

/** Where batteries stand, and where somebody has to go below. */
const SOUNDING: Readonly<Record<CasualtySpace["sort"], readonly CautionId[]>> = {
  "engine-room": ["no-one-below-alone", "batteries-under-water"],
  cabin: ["no-one-below-alone", "batteries-under-water"],
  hold: ["no-one-below-alone"],
  open: ["batteries-under-water"],
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
  return SOUNDING[moment.space?.sort ?? "hold"];
}

/** The hazards of a moment: those that come for the first time on this casualty, and those that were met before. */
export interface HazardsMet {
  readonly fresh: readonly CautionId[];
  readonly met: readonly CautionId[];
}

/**
 * The hazards of a moment, sorted by whether the thing itself was done before, by the casualty's lines: a kit handed over,
 * a pump with the same hazard started, a space with it sounded, her sounded since she was taken in tow.
 *
 * @param moment - what a hand is about to do
 * @param driveOf - what turns the pump of a kit
 * @param above - hazards that stand above on the screen already
 */
export function hazardsMet(
  casualty: CasualtyState,
  moment: Moment,
  driveOf: (kit: string | undefined) => Drive,
  above: readonly CautionId[] = [],
): HazardsMet {
  const before = new Set([...above, ...doneBefore(casualty, moment, driveOf).flatMap(hazardsAt)]);
  const ids = hazardsAt(moment);
  return { fresh: ids.filter((id) => !before.has(id)), met: ids.filter((id) => before.has(id)) };
}

/**
 * Moments of this kind that this casualty has behind her. A pump that nobody knows of what turns it stands for none that
 * is known: her own may be electric, and then nobody has heeded an exhaust.
 */
function doneBefore(
  { soundings, spaces, pumps, tow }: CasualtyState,
  moment: Moment,
  driveOf: (kit: string | undefined) => Drive,
): readonly Moment[] {
  const { kind } = moment;
  if (kind === "lift") return pumps.some(({ kit }) => kit !== undefined) ? [{ kind }] : [];
  if (kind === "start") {
    const started = pumps.filter(({ runs }) => runs.length > 0).map((pump) => driveOf(pump.kit));
    return started
      .filter((drive) => drive !== "unknown" || moment.drive === "unknown")
      .map((drive) => ({ kind, drive }));
  }
  if (kind === "sound") {
    const sounded = new Set(soundings.map(({ space }) => space));
    return spaces.filter(({ id }) => sounded.has(id)).map((space) => ({ kind, space }));
  }
  const since = tow?.under === true ? Date.parse(tow.at) : Infinity;
  return soundings.some(({ at }) => Date.parse(at) >= since) ? [{ kind }] : [];
}

/** True where the first of these is graver than the first of those: it stands above them. */
export function isGraver(these: readonly CautionId[], those: readonly CautionId[]): boolean {
  const [one, other] = [these[0], those[0]];
  return one !== undefined && other !== undefined && rankOf(one) < rankOf(other);
}

function rankOf(id: CautionId): number {
  return Object.keys(SIGNAL_WORDS).indexOf(cautionNamed(id).signal);
}
