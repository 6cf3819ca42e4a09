import type { Words } from "#words";
import type { Bodies, CasualtyBoatKind, CasualtySituation } from "#readiness";
import { situationOf } from "./situation/situation.ts";
import { tellingsOf, withLevel, type ToldLevel } from "./told/tellings.ts";
import type { Way } from "./our-boat.ts";
import type { Light, UsableKit } from "./usable-kits.ts";
import { sayBoatKind } from "../sheet/say.ts";
import { likelySpace, sayRise, sayTyped, type TypedSizeKind } from "./sizes.ts";

/** What has been told so far of a casualty, and of who goes to her. SI; what is not known is left out. */
export interface Call extends CasualtySituation {
  readonly kind?: CasualtyBoatKind | undefined;
  readonly length?: number | undefined;
  readonly distance?: number | undefined;
  readonly hole?: number | undefined;
  readonly holeDepth?: number | undefined;
  readonly tellings?: readonly ToldLevel[] | undefined;
  readonly rising?: number | undefined;
  /** When the rise was told [ms]. */
  readonly toldAt?: number | undefined;
  /** Id of the boat that goes, or "another". */
  readonly boat?: string | undefined;
  /** For this call, in place of the boat's own figures. */
  readonly speed?: number | undefined;
  readonly launch?: number | undefined;
  readonly setUp?: number | undefined;
  readonly carries?: number | undefined;
  readonly light?: Light | undefined;
  readonly herMains?: boolean | undefined;
}

/** What of a call is a number. */
export const CALL_SIZES = [
  "length",
  "distance",
  "hole",
  "holeDepth",
  "rising",
  "toldAt",
  "speed",
  "launch",
  "setUp",
  "carries",
] as const;

/** What is told at once: a part of the call, or one more level. */
export type Told = Partial<Call> & { readonly water?: number | undefined };

/** The call with what is told now; a level and a rise mean little without their time. */
export function tell(call: Call, { water, ...part }: Told, now: number, isLevel = false): Call {
  const tellings = isLevel || water !== undefined ? withLevel(call.tellings ?? [], water, now) : call.tellings;
  return { ...call, ...part, tellings, ...("rising" in part && { toldAt: now }) };
}

/** How long kits are counted on to run at full throttle [s]. This program's judgement. */
export const ON_SCENE = 3 * 3600;

/** The question to ask, once the distance is told: what else nobody has told is not known. */
export function kitsQuestion(
  call: Call,
  now: number,
  way: Omit<Way, "boat" | "place" | "mains" | "isGuessed">,
  kits?: readonly UsableKit[],
): object | undefined {
  if (call.distance === undefined) return undefined;
  return {
    boat: call.kind ?? "not known",
    length: call.length ?? "not known",
    distance: call.distance,
    holeDiameter: call.hole,
    holeDepth: call.holeDepth,
    ...toldWater(call, now),
    speed: way.speed,
    toLaunch: way.launch,
    setUp: way.setUp,
    carries: way.carries,
    onScene: ON_SCENE,
    ...(kits && {
      kit: kits[0]?.kit,
      kits: kits.map(({ name, kit, proved, runs, follows }) => ({ name, kit, proved, runs, follows })),
    }),
  };
}

function toldWater({ tellings = [], rising }: Call, now: number): object {
  return { ...(tellings.length > 0 && { tellings: tellingsOf(tellings, now) }), rising };
}

/** What stands in for a kind and a length that nobody knows: a sheet is drawn of some boat. */
const STAND_IN = { kind: "motor boat", length: 10 } as const;

/** What an opening takes its words from: a name for the space, and a note. */
export interface OpeningWords {
  readonly told: Words["casualtyTold"];
  readonly launch: Words["launchTold"];
}

/** The boat a sheet is opened for, with what stands in for what nobody knows. */
export function boatOf({ kind, length }: Call): Bodies["casualty-opened"]["boat"] {
  return { kind: kind ?? STAND_IN.kind, length: length ?? STAND_IN.length };
}

/** How the sheet of this casualty begins. */
export function openingOf(call: Call, name: string, words: OpeningWords): Bodies["casualty-opened"] {
  const boat = boatOf(call);
  const hole = {
    ...(call.hole !== undefined && { diameter: call.hole }),
    ...(call.holeDepth !== undefined && { depth: call.holeDepth }),
  };
  const situation = situationOf(call);
  const note = noteOf(call, words);
  return {
    name: name.trim(),
    boat,
    space: likelySpace(boat.kind, words.told),
    ...(Object.keys(hole).length > 0 && { hole }),
    ...toldOf(call),
    ...(situation && { situation }),
    ...(note !== undefined && { note }),
  };
}

function toldOf({ tellings = [], rising, toldAt }: Call): Pick<Bodies["casualty-opened"], "told"> {
  const last = tellings.at(-1);
  const at = last?.at ?? toldAt;
  const isRise = rising !== undefined && rising >= 0;
  if (at === undefined || (!last && !isRise)) return {};
  const when = new Date(at).toISOString();
  return { told: { at: when, ...(last && { water: last.water }), ...(isRise && { rising }) } };
}

/**
 * What stands in, levels told before the last, and a fall: a rise has a place of its own. Nobody knows who reads it, so
 * it is in both units.
 */
function noteOf(
  { kind, length, tellings = [], rising = 0, toldAt }: Call,
  { told, launch }: OpeningWords,
): string | undefined {
  const parts = [
    kind === undefined && launch.kindUnknown({ kind: sayBoatKind(STAND_IN.kind, told) }),
    length === undefined && launch.lengthUnknown({ length: inBoth("length", STAND_IN.length, launch) }),
    ...tellings
      .slice(0, -1)
      .map(({ at, water }) => launch.toldBefore({ water: inBoth("water", water, launch), time: utc(at) })),
    rising < 0 &&
      toldAt !== undefined &&
      launch.toldFalls({
        metric: sayRise(-rising, "metric", launch),
        us: sayRise(-rising, "us", launch),
        time: utc(toldAt),
      }),
  ].filter((part) => part !== false);
  return parts.length === 0 ? undefined : parts.join(" ");
}

/** "30 cm (12 in)". */
function inBoth(kind: TypedSizeKind, si: number, words: Words["launchTold"]): string {
  return words.inBoth({ metric: sayTyped(kind, si, "metric"), us: sayTyped(kind, si, "us") });
}

function utc(at: number): string {
  return new Date(at).toISOString().slice(11, 16);
}
