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

const FOOT = 0.3048;
/** Nothing told is the same. */
const NOT_KNOWN: Pick = { id: "unknown", words: "Not known" };
const IN_METRES = [5, 7, 9, 11, 13, 16, 20, 25];
const IN_FEET = [16, 22, 28, 35, 42, 52, 65, 80];

/** Length of the boat, "not known" first, in round figures of the person's own unit [m]. */
export function lengthPicks(units: UnitSystem): readonly Pick[] {
  const known =
    units === "metric"
      ? IN_METRES.map((si) => ({ id: `${si}`, words: `${si} m`, si }))
      : IN_FEET.map((feet) => ({ id: `${feet}`, words: `${feet} ft`, si: feet * FOOT }));
  return [NOT_KNOWN, ...known];
}

/** Distance to her [m]: sea miles in either system. */
export const DISTANCES: readonly Pick[] = [0, 1, 3, 5, 8, 12, 20].map((miles) => ({
  id: `d${miles}`,
  words: miles === 0 ? "Here" : `${miles} nmi`,
  si: miles * 1852,
}));

const SHORTEST = BOAT_LIMITS.length.atLeast;
const LONGEST = BOAT_LIMITS.length.atMost;
const IN_EITHER = `From ${SHORTEST} to ${LONGEST} m (${inFeet(SHORTEST)} to ${inFeet(LONGEST)} ft)`;

/** What may be typed instead of picked [m], and what is said of anything else. */
const TYPED = {
  length: { least: SHORTEST, most: LONGEST, says: `${IN_EITHER}: the estimate is for boats of this size only.` },
  distance: { least: 0, most: 200 * 1852, says: "From 0 to 200 nmi." },
  hole: { least: 0.005, most: 1, says: "From 5 mm to 1 m (0.2 to 39 in) across." },
  holeDepth: { least: 0.01, most: 6, says: "From 1 cm to 6 m (0.4 in to 20 ft)." },
  water: { least: 0, most: 6, says: "From 0 to 600 cm (20 ft)." },
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
export function sizeFault(kind: TypedSizeKind, si: number): string | undefined {
  const { least, most, says } = TYPED[kind];
  return si >= least && si <= most ? undefined : says;
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

/** A rise [m/s] over the two minutes it is told by: "3 cm in 2 min". */
export function sayRise(si: number, units: UnitSystem): string {
  return `${sayRound(si * TWO_MINUTES, typedUnit("water", units), 2)} in 2 min`;
}

/** A hole as it was told: "hole 90 mm across, 0.6 m below the waterline"; undefined where nothing was. */
export function sayToldHole({ diameter, depth }: CasualtyHole, units: UnitSystem): string | undefined {
  const across = diameter === undefined ? undefined : `${sayTyped("hole", diameter, units)} across`;
  const below = depth === undefined ? undefined : `${sayTyped("holeDepth", depth, units)} below the waterline`;
  const told = [across, below].filter((part) => part !== undefined);
  return told.length === 0 ? undefined : `hole ${told.join(", ")}`;
}

function sayRound(si: number, unit: string, figures: number): string {
  return `${Number(inUnit(si, unit, "length").toPrecision(figures))}\u00a0${unit}`;
}

/** The hole across [m]. */
const HOLES = { Finger: 0.02, Hose: 0.04, Fist: 0.09, Plate: 0.2, Larger: 0.4 };
/** The hole below the waterline [m]. */
const DEPTHS = { "A hand": 0.2, "An arm": 0.6, Deeper: 1 };
/** Water inside now [m]. */
const WATERS = { Ankle: 0.1, Shin: 0.3, Knee: 0.5, Waist: 1 };
/** Rise at one mark in two minutes, below 0 where it falls [m]. */
const RISES = { Slowly: 0.01, Steadily: 0.03, Fast: 0.1, "Very fast": 0.3, Falling: -0.03 };
const TWO_MINUTES = 120;

export type SizeKind = "hole" | "holeDepth" | "water" | "rising";

const SIZES: Readonly<Record<SizeKind, Readonly<Record<string, number>>>> = {
  hole: HOLES,
  holeDepth: DEPTHS,
  water: WATERS,
  rising: RISES,
};

/** What may be told of a size, "not known" first: the word, and the figure it stands for in the person's own unit. */
export function sizePicks(kind: SizeKind, units: UnitSystem): readonly Pick[] {
  const known = Object.entries(SIZES[kind]).map(([word, si]) => {
    const figure = sayFigure(kind, Math.abs(si), units);
    return kind === "rising"
      ? { id: word, words: `${word}, ${figure} in 2 min`, si: si / TWO_MINUTES }
      : { id: word, words: `${word}, ${figure}`, si };
  });
  return [NOT_KNOWN, ...known];
}

function sayFigure(kind: SizeKind, si: number, units: UnitSystem): string {
  if (units === "us") return formatQuantity(si, "length", { unit: si < 1 ? "in" : "ft", digits: 2 });
  const unit = kind === "hole" ? "mm" : kind === "holeDepth" ? "m" : "cm";
  return formatQuantity(si, "length", { unit, digits: unit === "m" || (unit === "cm" && si < 0.1) ? 1 : 2 });
}

export const BOATS: readonly { readonly id: CasualtyBoatKind; readonly words: string }[] = [
  { id: "open boat", words: "Open boat" },
  { id: "motor boat", words: "Motor boat" },
  { id: "sailing yacht", words: "Sailing yacht" },
  { id: "fishing boat", words: "Fishing boat" },
];

export const SPACE_SORTS: readonly { readonly id: CasualtySpace["sort"]; readonly words: string }[] = [
  { id: "engine-room", words: "Engine room" },
  { id: "cabin", words: "Cabin" },
  { id: "hold", words: "Hold, stores" },
  { id: "open", words: "Open well" },
];

export const SPACE_PARTS: readonly { readonly id: CasualtySpace["part"]; readonly words: string }[] = [
  { id: "aft", words: "Aft" },
  { id: "middle", words: "Middle" },
  { id: "forward", words: "Forward" },
  { id: "whole", words: "All of her" },
];

/** Where water is on such a boat until somebody says otherwise. */
export function likelySpace(kind: CasualtyBoatKind): CasualtySpace {
  if (kind === "open boat") return { id: "space-1", name: "Open well", sort: "open", part: "whole" };
  if (kind === "sailing yacht") return { id: "space-1", name: "Cabin", sort: "cabin", part: "whole" };
  return { id: "space-1", name: "Engine room", sort: "engine-room", part: "aft" };
}
