import { normalChance } from "#numerics";

/** What one sounding may be: read well, read in a slosh, or a slip of the pen; spread [m] and how often. */
export const READ = [
  { kind: "well", spread: 0.015, log: Math.log(0.88) },
  { kind: "slosh", spread: 0.038, log: Math.log(0.11) },
  { kind: "slip", spread: 0.5, log: Math.log(0.01) },
] as const;

/** A rate of rise before anything was seen of it: about nothing, give or take 5 cm a minute, now and then 20 [m/s]. */
const ANY_RATE = 0.05 / 60;
const FAST_RATE = 0.2 / 60;
const FAST = 0.15;
/** By so much an untold change moves a rate: 2.5 cm a minute [m/s]. */
const UNTOLD_RATE = 0.025 / 60;
/** Untold changes come once in so long [s]: a strainer blocks, a plug comes out, a second hole. */
const UNTOLD_EVERY = 3600;
/** Rates bend by so much of themselves, and by so much at least, in five minutes [1], [m/s]. */
const BENDS = 0.2;
const BENDS_LEAST = 0.0004 / 60;
const FIVE_MINUTES = 300;

/**
 * One way in which the soundings so far may have come about: level and rate as a normal, with the log of its weight,
 * and what it takes each sounding for.
 */
export interface Path {
  readonly weight: number;
  readonly level: number;
  readonly rate: number;
  /** Variances of level and rate, and their covariance. */
  readonly levels: number;
  readonly rates: number;
  readonly both: number;
  /** By sounding: index into {@link READ}; 8 is added where an untold change came just before it. */
  readonly taken: readonly number[];
}

/** Added to how a sounding is taken where an untold change came just before it. */
export const UNTOLD = 8;

/** A first sounding: the level is about it, the rate anything. */
export function firstPaths(level: number): readonly Path[] {
  const rates = [
    [ANY_RATE, 1 - FAST],
    [FAST_RATE, FAST],
  ] as const;
  return READ.slice(0, 2).flatMap(({ spread, log }, k) =>
    rates.map(([rate, chance]) => ({
      weight: log + Math.log(chance),
      level,
      rate: 0,
      levels: spread ** 2,
      rates: rate ** 2,
      both: 0,
      taken: [k],
    })),
  );
}

/** So many seconds on, nothing changed: the level goes on as it went, bending a little. */
export function carryOn(path: Path, seconds: number): Path {
  const bend = (BENDS * Math.abs(path.rate)) ** 2 + BENDS_LEAST ** 2;
  const drift = (bend * seconds) / FIVE_MINUTES;
  return {
    ...path,
    level: path.level + path.rate * seconds,
    levels: path.levels + 2 * path.both * seconds + path.rates * seconds ** 2 + (drift * seconds ** 2) / 3,
    both: path.both + path.rates * seconds + (drift * seconds) / 2,
    rates: path.rates + drift,
  };
}

/** A told change: the level stays, the rate may be anything from now on. */
export function tellChange(path: Path): Path {
  return { ...path, rate: 0, rates: ANY_RATE ** 2, both: 0 };
}

/** The two ways on through so many seconds: as before, or with an untold change half-way. */
export function bothWays(path: Path, seconds: number): readonly (readonly [Path, number])[] {
  const chance = 1 - Math.exp(-seconds / UNTOLD_EVERY);
  const half = carryOn(path, seconds / 2);
  const changed = carryOn({ ...half, rates: half.rates + UNTOLD_RATE ** 2 }, seconds / 2);
  return [
    [{ ...carryOn(path, seconds), weight: path.weight + Math.log(1 - chance) }, 0],
    [{ ...changed, weight: path.weight + Math.log(chance) }, UNTOLD],
  ];
}

/** The path after a sounding taken in one of the ways. */
export function takeSounding(path: Path, level: number, how: number, untold: number): Path {
  const { spread, log } = READ[how]!;
  const spreads = path.levels + spread ** 2;
  const off = level - path.level;
  const share = path.levels / spreads;
  const pull = path.both / spreads;
  return {
    weight: path.weight + log - Math.log(spreads) / 2 - (off * off) / (2 * spreads),
    level: path.level + share * off,
    rate: path.rate + pull * off,
    levels: path.levels * (1 - share),
    rates: path.rates - pull * path.both,
    both: path.both * (1 - share),
    taken: [...path.taken, how + untold],
  };
}

/** Paths kept from sounding to sounding. */
const KEPT = 48;

/** The likeliest, with their weights scaled to add up to one. */
export function keepLikeliest(paths: readonly Path[]): readonly Path[] {
  const kept = paths.toSorted((a, b) => b.weight - a.weight).slice(0, KEPT);
  const most = kept[0]!.weight;
  const all = Math.log(kept.reduce((sum, { weight }) => sum + Math.exp(weight - most), 0)) + most;
  return kept.map((path) => ({ ...path, weight: path.weight - all }));
}

/** Chance that the rate lies below a value [m/s]. */
export function chanceBelow(paths: readonly Path[], rate: number): number {
  return chanceOf(paths, (one) => normalChance((rate - one.rate) / Math.sqrt(one.rates)));
}

/** Chance that the level falls on one of the paths. */
export function fallOf({ rate, rates }: Path): number {
  return normalChance(-rate / Math.sqrt(rates));
}

/** Mean over the paths of what holds of each. */
export function chanceOf(paths: readonly Path[], of: (path: Path) => number): number {
  return paths.reduce((sum, path) => sum + Math.exp(path.weight) * of(path), 0);
}
