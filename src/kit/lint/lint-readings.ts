import { formatNumber, type Dimension } from "#base";
import { hit, type LintHit } from "./lint-fault.ts";
import type { Check, Pattern } from "../pattern.ts";

/** Are the limits of readings such as something in a kit can have? They catch a slip of sign or of unit. */
export function readingLint({ checks }: Pattern): readonly LintHit[] {
  return checks.flatMap((check) => limitsOf(check).flatMap((limit) => limitHits(check, limit)));
}

/** Longest that anybody times by hand at a kit [s]: as for a clock that is stood by. */
const LONGEST_TIMED = 4 * 3600;

// Greatest values of what is read at a kit of one davit load, by dimension, in SI units; common practice.
const GREATEST: Readonly<Partial<Record<Dimension, readonly [number, string]>>> = {
  length: [100, "100 m"],
  mass: [1000, "1000 kg"],
  volume: [1, "1 m³"],
  flow: [0.2, "0.2 m³/s"],
  pressure: [1e8, "1000 bar"],
  temperature: [1000, "1000 K"],
  time: [7 * 24 * 3600, "7 days"],
  voltage: [1000, "1000 V"],
};

function limitsOf(check: Check): readonly number[] {
  if (check.kind !== "measure" && check.kind !== "timed") return [];
  return [check.atLeast, check.atMost].filter((limit) => limit !== undefined);
}

function limitHits(check: Check, limit: number): readonly LintHit[] {
  const told = check.kind === "measure" ? whyNotRead(check.dimension as Dimension, limit) : whyNotTimed(limit);
  return told ? [hit("out-of-range", { what: "check", id: check.id }, told)] : [];
}

type Told = Pick<LintHit, "what" | "remedy">;

function whyNotRead(dimension: Dimension, limit: number): Told | undefined {
  if (limit < 0 && dimension !== "angle") return BELOW_ZERO;
  const [most, words] = GREATEST[dimension] ?? [];
  if (most === undefined || limit <= most) return undefined;
  const what = `Its limit is more than ${words}, which nothing in such a kit reads.`;
  return { what, remedy: "Look at the number and its unit again." };
}

const BELOW_ZERO: Told = {
  what: "Its limit is below zero: no such reading can be.",
  remedy: "Give it without a sign; write a vacuum as a positive number.",
};

function whyNotTimed(limit: number): Told | undefined {
  if (limit > 0 && limit <= LONGEST_TIMED) return undefined;
  const what = `${formatNumber(limit)} s is no time to be timed by hand.`;
  return { what, remedy: "Give more than nothing and at most 4 h." };
}
