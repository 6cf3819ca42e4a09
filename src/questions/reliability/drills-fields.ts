import { foundByCheck, type Looks } from "#reliability";
import { z } from "zod";
import { refuse } from "./refuse.ts";

const counted = (least: number) => z.int().min(least).max(1_000_000);

/** Faults planted in drills, and found. */
export const looksIn = (leastPlanted: number) =>
  z.strictObject({
    found: counted(0).describe("Planted faults that were found [1]"),
    planted: counted(leastPlanted).describe("Faults planted that it can find, where it was made [1]"),
  });

/** What drills measured, as an answer states it. */
export const drilledOut = z
  .strictObject({
    share: z.number().describe("Share of hidden faults that a test finds, as it was used [1]"),
    p05: z.number().describe("One in twenty lies below [1]"),
    p95: z.number().describe("One in twenty lies above [1]"),
    found: z.int().describe("Planted faults that were found [1]"),
    planted: z.int().describe("Faults planted [1]"),
  })
  .describe("Where drills were given: what they measured");

/** The share that drills measured, with what it rests on. */
export function drilled({ found, planted }: Looks): z.output<typeof drilledOut> {
  const { mean, p05, p95 } = foundByCheck({ found, planted }).chance;
  return { share: mean, p05, p95, found, planted };
}

/** Refuses more found than planted. */
export function checkLooks(
  looks: Looks | undefined,
  path: readonly (string | number)[],
  context: z.RefinementCtx,
): void {
  if (looks && looks.found > looks.planted) refuse(context, [...path, "found"], { ...TOO_MANY, got: looks.found });
}

const TOO_MANY = {
  code: "QU-270",
  allowed: "no more found than planted",
  remedy: "Count every planted fault once, and those that were found among them.",
};
