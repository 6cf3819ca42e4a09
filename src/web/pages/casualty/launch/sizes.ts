import type { Words } from "#words";
import { formatQuantity, inUnit, type UnitSystem } from "#base";
import { BOAT_LIMITS, type CasualtyBoatKind, type CasualtyHole, type CasualtySpace } from "#readiness";

/* What people can say over a bad radio, with the figure it stands for. SI; absent where nobody knows. */

/** One of a few answers, as big as a thumb. */
export interface Pick {
  readonly id: string;
  readonly words: string;
  /** SI; undefined for "not known". */
  readonly si?: number;
}

/** Id of what is typed instead of picked. */
export const OTHER = "other";

/**
 * Which answer of a row is pressed: the one counted with, what is typed where none of them is. Nothing told is the same as "not
 * known", but for what was typed and refused: that is not what the person said.
 *
 * @param si - counted with; undefined where nothing is
 * @param isRefused - a figure stands typed that cannot be
 * @returns its id; undefined where none is
 */
export function pressedOf(picks: readonly Pick[], si: number | undefined, isRefused: boolean): string | undefined {
  if (isRefused) return OTHER;
  return picks.find((pick) => pick.si === si)?.id ?? (si === undefined ? undefined : OTHER);
}

const FOOT = 0.3048;
const IN_METRES = [5, 7, 9, 11, 13, 16, 20, 25];
const IN_FEET = [16, 22, 28, 35, 42, 52, 65, 80];

type ToldWords = Words["launchTold"];

/** Nothing told is the same. */
function notKnown(words: ToldWords): Pick & { readonly id: "unknown" } {
  return { id: "unknown", words: words.notKnown() };
}

/** Length of the boat, "not known" first, in round figures of the person's own unit [m]. */
export function lengthPicks(units: UnitSystem, words: ToldWords): readonly Pick[] {
  const known =
    units === "metric"
      ? IN_METRES.map((si) => ({ id: `${si}`, words: `${si} m`, si }))
      : IN_FEET.map((feet) => ({ id: `${feet}`, words: `${feet} ft`, si: feet * FOOT }));
  return [notKnown(words), ...known];
}

/** Distance to her [m]: sea miles in either system. */
export function distancePicks(words: ToldWords): readonly Pick[] {
  return [0, 1, 3, 5, 8, 12, 20].map((miles) => ({
    id: `d${miles}`,
    words: miles === 0 ? words.here() : `${miles} nmi`,
    si: miles * 1852,
  }));
}

const SHORTEST = BOAT_LIMITS.length.atLeast;
const LONGEST = BOAT_LIMITS.length.atMost;

/** What may be typed instead of picked [m]. */
const TYPED = {
  length: { least: SHORTEST, most: LONGEST },
  distance: { least: 0, most: 200 * 1852 },
  hole: { least: 0.005, most: 1 },
  holeDepth: { least: 0.01, most: 6 },
  water: { least: 0, most: 6 },
};

function inFeet(si: number): number {
  return Math.round(si / FOOT);
}

export type TypedSizeKind = keyof typeof TYPED;

/** Units a size is typed and read back in: metric, then the other. */
const TYPED_UNITS: Readonly<Record<TypedSizeKind, readonly [metric: string, us: string]>> = {
  length: ["m", "ft"],
  distance: ["nmi", "nmi"],
  hole: ["mm", "in"],
  holeDepth: ["m", "ft"],
  water: ["cm", "in"],
};

/** The unit a bare number typed is taken to be in. */
export function typedUnit(kind: TypedSizeKind, units: UnitSystem): string {
  return TYPED_UNITS[kind][units === "metric" ? 0 : 1];
}

/** What is wrong with a typed size [m]; undefined where nothing is. */
export function sizeFault(kind: TypedSizeKind, si: number, words: ToldWords): string | undefined {
  const { least, most } = TYPED[kind];
  if (si >= least && si <= most) return undefined;
  const limits = words[`${kind}Limits`]({ least, most, leastFeet: inFeet(least), mostFeet: inFeet(most) });
  return `${limits} ${words.notCounted()}`;
}

/** A typed size in the unit it is told in: "40 cm", "6.5 nmi". */
export function sayTyped(kind: TypedSizeKind, si: number, units: UnitSystem): string {
  return sayRound(si, typedUnit(kind, units), 3);
}

/** A typed size read back so that a slip of the unit shows, no finer than anybody tells it: "5 nmi, 9.3 km". */
export function sayBack(kind: TypedSizeKind, si: number): string {
  const [metric, us] = TYPED_UNITS[kind];
  return `${sayRound(si, metric, 3)}, ${sayRound(si, metric === us ? "km" : us, 2)}`;
}

/** A rise or fall that somebody may tell of by a mark [m/s]: at most a metre in two minutes. */
export function isRiseTold(si: number): boolean {
  return Math.abs(si) <= 1 / TWO_MINUTES;
}

/** A rise [m/s] over the two minutes it is told by: "3 cm in 2 min". */
export function sayRise(si: number, units: UnitSystem, words: ToldWords): string {
  return words.inTwoMinutes({ figure: sayRound(si * TWO_MINUTES, typedUnit("water", units), 2) });
}

/** A hole as it was told: "hole 90 mm across, 0.6 m below the waterline"; undefined where nothing was. */
export function sayToldHole(
  { diameter, depth }: CasualtyHole,
  units: UnitSystem,
  words: ToldWords,
): string | undefined {
  const across = diameter === undefined ? undefined : sayTyped("hole", diameter, units);
  const below = depth === undefined ? undefined : sayTyped("holeDepth", depth, units);
  if (across === undefined) return below === undefined ? undefined : words.toldHoleBelow({ below });
  return below === undefined ? words.toldHoleAcross({ across }) : words.toldHole({ across, below });
}

function sayRound(si: number, unit: string, figures: number): string {
  return `${Number(inUnit(si, unit, "length").toPrecision(figures))}\u00a0${unit}`;
}

/** The hole across [m]. */
const HOLES = { finger: 0.02, hose: 0.04, fist: 0.09, plate: 0.2, larger: 0.4 };
/** The hole below the waterline [m]. */
const DEPTHS = { aHand: 0.2, anArm: 0.6, deeper: 1 };
/** Water inside now [m]. */
const WATERS = { ankle: 0.1, shin: 0.3, knee: 0.5, waist: 1 };
/** Rise at one mark in two minutes, below 0 where it falls [m]. */
const RISES = { slowly: 0.01, steadily: 0.03, fast: 0.1, veryFast: 0.3, falling: -0.03 };
const TWO_MINUTES = 120;

export type SizeKind = "hole" | "holeDepth" | "water" | "rising";

type SizeWord = keyof (typeof HOLES & typeof DEPTHS & typeof WATERS & typeof RISES);

const SIZES: Readonly<Record<SizeKind, Readonly<Partial<Record<SizeWord, number>>>>> = {
  hole: HOLES,
  holeDepth: DEPTHS,
  water: WATERS,
  rising: RISES,
};

/** What may be told of a size, "not known" first: the word, and the figure it stands for in the person's own unit. */
export function sizePicks(kind: SizeKind, units: UnitSystem, words: ToldWords): readonly Pick[] {
  const known = Object.entries(SIZES[kind]).map(([id, si]) => {
    const word = words[id as SizeWord]();
    const figure = sayFigure(kind, Math.abs(si), units);
    return kind === "rising"
      ? { id, words: words.rise({ word, figure }), si: si / TWO_MINUTES }
      : { id, words: words.size({ word, figure }), si };
  });
  return [notKnown(words), ...known];
}

function sayFigure(kind: SizeKind, si: number, units: UnitSystem): string {
  if (units === "us") return formatQuantity(si, "length", { unit: si < 1 ? "in" : "ft", digits: 2 });
  const unit = kind === "hole" ? "mm" : kind === "holeDepth" ? "m" : "cm";
  return formatQuantity(si, "length", { unit, digits: unit === "m" || (unit === "cm" && si < 0.1) ? 1 : 2 });
}

/** Kinds of boats. */
export const BOATS = [
  { id: "open boat", says: "openBoat" },
  { id: "motor boat", says: "motorBoat" },
  { id: "sailing yacht", says: "sailingYacht" },
  { id: "fishing boat", says: "fishingBoat" },
] as const;

/** Kinds of boats, "not known" first. */
export function kindPicks(words: ToldWords) {
  return [notKnown(words), ...BOATS.map(({ id, says }) => ({ id, words: words[says]() }))];
}

interface SpacePick<Id> {
  readonly id: Id;
  readonly words: string;
}

/** What is in a space. */
export function spaceSorts(words: Words["casualtyTold"]): readonly SpacePick<CasualtySpace["sort"]>[] {
  return [
    { id: "engine-room", words: words.engineRoom() },
    { id: "cabin", words: words.cabin() },
    { id: "hold", words: words.holdStores() },
    { id: "open", words: words.openWell() },
  ];
}

/** Which part of her a space is. */
export function spaceParts(words: Words["casualtyTold"]): readonly SpacePick<CasualtySpace["part"]>[] {
  return [
    { id: "aft", words: words.aft() },
    { id: "middle", words: words.middle() },
    { id: "forward", words: words.forward() },
    { id: "whole", words: words.allOfHer() },
  ];
}

/** Where water is on such a boat until somebody says otherwise. */
export function likelySpace(kind: CasualtyBoatKind, words: Words["casualtyTold"]): CasualtySpace {
  if (kind === "open boat") return { id: "space-1", name: words.openWell(), sort: "open", part: "whole" };
  if (kind === "sailing yacht") return { id: "space-1", name: words.cabin(), sort: "cabin", part: "whole" };
  return { id: "space-1", name: words.engineRoom(), sort: "engine-room", part: "aft" };
}
