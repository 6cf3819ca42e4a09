import { sum } from "#base";
import { sayPercent } from "#words";
import { chanceToSee, sampleToSee } from "#reliability";
import type { Visit } from "#readiness";
import type { VisitResult } from "./visit-result.ts";

/** How far a visit really reached, whatever was asked of it. */
export interface VisitReach {
  /** Lines that were looked at and count. */
  readonly lines: number;
  /** Chance that one of those is wrong where the share, rounded up, of the lines that they were drawn from is [1]. */
  readonly ofLines: number;
  /** The chance is the least that it may be: how many lines they were drawn from is not at hand. */
  readonly isLeast: boolean;
  /** Kits in which a line was looked at. */
  readonly kits: number;
  /** Chance that a kit with something wrong is among them, where the share of the kits, rounded up, has [1]. */
  readonly ofKits: number;
}

/**
 * How far a visit reached: what was looked at, not what was drawn. The chance is the one that the sample was drawn by, so
 * that it stays as it was told where every line drawn was looked at.
 *
 * @source hypergeometric, `chanceToSee`; for lines drawn from so many as are not at hand 1 − (1 − share)^n, the least that
 *   n of any number give. DERIVED
 */
export function reachOf({ begun }: Visit, { wrong, kits }: Pick<VisitResult, "wrong" | "kits">): VisitReach {
  const lines = wrong?.of ?? 0;
  const seen = kits.filter((kit) => kit.lines.some((line) => line.seen !== undefined)).length;
  const all = begun.of.length;
  const bad = sampleToSee(all, begun.share, begun.chance).wrong;
  return {
    lines,
    ...chanceOfLines(begun, kits, lines),
    kits: seen,
    ofKits: all === 0 ? 0 : chanceToSee(all, bad, seen),
  };
}

/** A kit of which lines were drawn and none was looked at tells nothing, and is left out of what was drawn from. */
function chanceOfLines(
  { share, chance }: Visit["begun"],
  kits: VisitResult["kits"],
  looked: number,
): Pick<VisitReach, "ofLines" | "isLeast"> {
  const told = kits.filter(({ lines }) => lines.length === 0 || lines.some(({ seen }) => seen !== undefined));
  const all = sum(told.map(({ drawnFrom }) => drawnFrom ?? Number.NaN));
  if (!(all >= looked)) return { ofLines: 1 - (1 - share) ** looked, isLeast: true };
  const { wrong } = sampleToSee(all, share, chance);
  return { ofLines: looked === 0 ? 0 : chanceToSee(all, wrong, looked), isLeast: false };
}

/** "3 lines in 1 of 3 kits were looked at. ..." */
export function sayReach({ begun }: Visit, { lines, ofLines, isLeast, kits, ofKits }: VisitReach): string {
  const share = sayPercent(begun.share);
  return [
    `${lines === 1 ? "1 line" : `${lines} lines`} in ${kits} of ${begun.of.length} kits looked at.`,
    `Were ${share} of those kits' lines, rounded up, wrong, at least one is among them with a chance of ${sayPercent(ofLines)}${isLeast ? " or more" : ""};`,
    `had ${share} of the kits, rounded up, something wrong, one of those is with a chance of ${sayPercent(ofKits)}.`,
  ].join(" ");
}
