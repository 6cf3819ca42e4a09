import { sayDuration } from "#words";
import type { Fault } from "#base";
import { likelyBeam, type BoatKind } from "#flooding";
import { BOAT_LIMITS, COAMING, wrongLevel, wrongMeasures } from "#readiness";
import { faultOf, metres } from "./guard-fault.ts";
import { twoAtOnce } from "./times.ts";

interface Read {
  readonly at: number;
  readonly level: number;
}

/** Readings may stand so much above the sea before they are called wrong: a stick, a sea running, a guessed floor [m]. */
const OVER_SEA = 0.3;
/** No boat's level rises faster for longer than a slip of the stick explains [m/s, m]. */
const FASTEST_RISE = 0.1;
const SLIP = 0.3;

/** QU-142: readings above the deck edge and the coaming on it, counted from the floor of the space. */
export function aboveDeck(readings: readonly Read[], deck: number, field = "readings"): readonly Fault[] {
  const most = deck + COAMING;
  const allowed = `at most ${metres(most)}: her deck edge is ${metres(deck)} above the floor, with ${metres(COAMING)} of coaming`;
  const remedy =
    "Look at the stick, the figure and its unit; levels count from the floor of the space. If it is right, correct her depth first.";
  return readings.flatMap(({ level }, i) =>
    level <= most ? [] : [faultOf("QU-142", `${field}[${i}].level`, metres(level), allowed, remedy)],
  );
}

/** QU-157: readings above the sea outside, which no hole can bring about. */
export function aboveSea(
  readings: readonly Read[],
  space: { readonly area: number; readonly outsideLevel?: number | undefined; readonly sinkage?: number | undefined },
): readonly Fault[] {
  const { area, outsideLevel, sinkage = 0 } = space;
  if (outsideLevel === undefined) return [];
  return readings.flatMap(({ level }, i) => {
    const sea = outsideLevel + sinkage * area * level;
    if (level <= sea + OVER_SEA) return [];
    const allowed = `at most the sea outside, ${metres(sea)} above the floor, and ${metres(OVER_SEA)}`;
    const remedy =
      "Look at the stick, the figure and its unit, and at outsideLevel: both count from the floor of the space.";
    return [faultOf("QU-157", `readings[${i}].level`, metres(level), allowed, remedy)];
  });
}

/** QU-159: readings that rise faster than any hole lets water in. */
export function risesTooFast(readings: readonly Read[], field = "readings"): readonly Fault[] {
  return readings.flatMap(({ at, level }, i) => {
    const before = readings[i - 1];
    if (before === undefined || at <= before.at) return [];
    const rise = level - before.level;
    const most = FASTEST_RISE * (at - before.at) + SLIP;
    if (rise <= most) return [];
    const allowed = `at most ${metres(most)} in ${sayDuration(at - before.at)}`;
    return [
      faultOf(
        "QU-159",
        `${field}[${i}].level`,
        `a rise of ${metres(rise)}`,
        allowed,
        "No hole gives such a rise: look at both levels, both times and their units.",
      ),
    ];
  });
}

interface Told {
  readonly kind?: BoatKind | undefined;
  readonly length?: number | undefined;
  readonly holeDiameter?: number | undefined;
  readonly holeDepth?: number | undefined;
  readonly waterInside?: number | undefined;
  readonly rising?: number | undefined;
  readonly tellings?: readonly { readonly ago: number; readonly water: number }[] | undefined;
  readonly spaceLength?: number | undefined;
}

/** What of a call can be wrong of a boat so long; limits of length are those of any kind, where none was told. */
interface Sized extends Told {
  readonly kind: BoatKind;
  readonly length: number;
}

/** Of a kind nobody knows, what no boat of her length has is wrong: the kind bears on no limit here. */
const ANY_KIND: BoatKind = "fishing boat";

/**
 * What was told of a boat by radio and cannot be: QU-142 water above her deck, QU-141 a space longer than she is,
 * QU-158 a hole deeper or wider than her hull, QU-159 levels that rise as no hole makes them, or fall where she is told dry,
 * QU-140 two levels of one time. Of a length nobody knows only the last two. A rise that the hole told cannot give is no
 * fault here: on the radio a hole is a guess, and the answer says that it set it aside.
 */
export function wrongCall(told: Told): readonly Fault[] {
  const { kind = ANY_KIND, length } = told;
  const timed = [...twoAtOnce(told.tellings ?? [], "tellings"), ...wrongRise(told), ...dryThatFalls(told)];
  if (length === undefined) return timed;
  const sized: Sized = { ...told, kind, length };
  return [...timed, ...wrongWater(sized), ...longSpace(sized), ...wrongHole(sized)];
}

/** Levels told, by time: the fields stay those of the order they were given in. */
function wrongRise({ tellings = [] }: Told): readonly Fault[] {
  const inOrder = tellings.map(({ ago, water }, i) => ({ at: -ago, level: water, i })).toSorted((a, b) => a.at - b.at);
  return risesTooFast(inOrder).map((fault) => {
    const [place] = /\d+/.exec(fault.field)!;
    return { ...fault, field: `tellings[${inOrder[Number(place)]!.i}].water` };
  });
}

function dryThatFalls({ waterInside, rising, tellings = [] }: Told): readonly Fault[] {
  if (rising === undefined || rising >= 0 || waterInside !== 0 || tellings.length > 0) return [];
  const remedy = "A dry floor has no level that falls: give the water inside, or leave one of the two out.";
  return [
    faultOf("QU-159", "rising", `a fall of ${metres(-rising * 60)} a minute`, "none, with no water inside", remedy),
  ];
}

function wrongWater({ kind, length, waterInside, tellings = [] }: Sized): readonly Fault[] {
  const told = [
    ...(waterInside === undefined ? [] : [{ water: waterInside, field: "waterInside" }]),
    ...tellings.map(({ water }, i) => ({ water, field: `tellings[${i}].water` })),
  ];
  return told.flatMap(({ water, field }) => {
    const wrong = wrongLevel({ kind, length }, water);
    return wrong === undefined ? [] : [{ code: "QU-142", ...wrong, field }];
  });
}

function longSpace({ length, spaceLength }: Sized): readonly Fault[] {
  if (spaceLength === undefined || spaceLength <= length) return [];
  return [
    faultOf(
      "QU-141",
      "spaceLength",
      metres(spaceLength),
      `at most her length, ${metres(length)}`,
      "A space lies within the boat: check both lengths and their units.",
    ),
  ];
}

function wrongHole({ kind, length, holeDiameter, holeDepth }: Sized): readonly Fault[] {
  const faults: Fault[] = [];
  const [deep] = holeDepth === undefined ? [] : wrongMeasures({ kind, length, draught: holeDepth });
  if (deep !== undefined && holeDepth! > deepest(length)) {
    faults.push(
      faultOf(
        "QU-158",
        "holeDepth",
        metres(holeDepth!),
        `at most ${metres(deepest(length))}, as deep as the hull of such a boat goes`,
        "Count from the waterline down to the hole; check the unit.",
      ),
    );
  }
  const widest = likelyBeam(length);
  if (holeDiameter !== undefined && holeDiameter > widest)
    faults.push(
      faultOf(
        "QU-158",
        "holeDiameter",
        metres(holeDiameter),
        `at most ${metres(widest)}, the beam of such a boat`,
        "Check the size and its unit: no hole is wider than the boat.",
      ),
    );
  return faults;
}

/** As deep as the hull of any boat of this length goes: what `wrongMeasures` allows for a yacht's keel. */
function deepest(length: number): number {
  return Math.min(BOAT_LIMITS.draught.atMost, 0.35 * length);
}
