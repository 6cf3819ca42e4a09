import { sayPercent } from "#words";
import { chanceToSee, sampleToSee } from "#reliability";
import type { Visit } from "#readiness";
import type { VisitResult } from "./visit-result.ts";

/** How far a visit really reached, whatever was asked of it. */
export interface VisitReach {
  /** Lines that were looked at and count. */
  readonly lines: number;
  /** Least chance that one of those is wrong where the share is, in the kits looked into [1]. */
  readonly ofLines: number;
  /** Kits in which a line was looked at. */
  readonly kits: number;
  /** Chance that a kit with something wrong is among them, where the share of the kits, rounded up, has [1]. */
  readonly ofKits: number;
}

/**
 * How far a visit reached: what was looked at, not what was drawn.
 *
 * @source hypergeometric for kits; for lines 1 − (1 − share)^n, the least that n of any number give. DERIVED
 */
export function reachOf({ begun }: Visit, { wrong, kits }: Pick<VisitResult, "wrong" | "kits">): VisitReach {
  const lines = wrong?.of ?? 0;
  const seen = kits.filter((kit) => kit.lines.some((line) => line.seen !== undefined)).length;
  const all = begun.of.length;
  const bad = sampleToSee(all, begun.share, begun.chance).wrong;
  return {
    lines,
    ofLines: 1 - (1 - begun.share) ** lines,
    kits: seen,
    ofKits: all === 0 ? 0 : chanceToSee(all, bad, seen),
  };
}

/** "3 lines in 1 of 3 kits were looked at. ..." */
export function sayReach({ begun }: Visit, { lines, ofLines, kits, ofKits }: VisitReach): string {
  const share = sayPercent(begun.share);
  return [
    `${lines === 1 ? "1 line" : `${lines} lines`} in ${kits} of ${begun.of.length} kits looked at.`,
    `Were ${share} of those kits' lines wrong, at least one is among them with a chance of ${sayPercent(ofLines)} or more;`,
    `had ${share} of the kits, rounded up, something wrong, one of those is with a chance of ${sayPercent(ofKits)}.`,
  ].join(" ");
}
