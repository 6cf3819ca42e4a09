import type { Spread } from "./kits-needed-spread.ts";

/** Chances with so many kits. */
export interface KitsChance {
  readonly kits: number;
  readonly holding: number;
  readonly gaining: number;
  readonly holdingPatched: number;
  /** Each of them lies between these nine times in ten: what the draws leave open, and how surely kits start. */
  readonly spreads: Readonly<Record<"holding" | "gaining" | "holdingPatched", Spread>>;
}

/** What to do with the kits there are. */
export interface KitsPlan {
  /** Kits to take with the first boat. */
  readonly now: number;
  /** Whether the hole has to be slowed for them to hold nine times in ten. */
  readonly patch: boolean;
  /** Kits to send after her: by another boat, from another place, or on a second trip. */
  readonly follow: number;
  /** Whether the kits of all boats are enough nine times in ten; where not, take all there are and slow the hole. */
  readonly enough: boolean;
  /** Chance that the first boat's kits hold: with the hole halved where `patch`. */
  readonly chance: number;
  /** Between what that lies nine times in ten. */
  readonly spread: Spread;
}

/** Chances from this on are taken for sure enough to plan by [1]. */
export const SURE = 0.9;
/** A lone kit that fails leaves none. */
const LEAST = 2;

/**
 * How many kits to take now, whether to slow the hole meanwhile, and how many to send after.
 *
 * The kits wanted are the fewest that gain nine times in ten, where none do the fewest that hold, and never one alone. Where
 * the first boat cannot take them all she takes what she can, the hole is slowed, and the rest follow.
 *
 * @param byKits - chances with 1, 2, … kits, in the order in which they are taken
 * @param carries - how many the first boat carries and hands over
 * @returns the plan
 * @range 0 kits carried or more
 * @source this program's judgement, docs/methods/kits-needed.md
 */
export function planKits(byKits: readonly KitsChance[], carries: number): KitsPlan {
  const fewest = byKits.find(({ gaining }) => gaining >= SURE) ?? byKits.find(({ holding }) => holding >= SURE);
  const wanted = fewest ? Math.max(LEAST, fewest.kits) : byKits.length;
  const now = Math.min(wanted, carries);
  const first = byKits[now - 1];
  const patch = first === undefined || first.holding < SURE;
  const chance = first === undefined ? 0 : patch ? first.holdingPatched : first.holding;
  const spread = first?.spreads[patch ? "holdingPatched" : "holding"] ?? { p05: 0, p95: 0 };
  return { now, patch, follow: wanted - now, enough: fewest !== undefined, chance, spread };
}
