import { isSeenClosed, stageNamed } from "#kit";
import { describe, expect, it } from "vitest";
import { shippedPattern } from "./shipped-patterns.ts";

/** Lines, by their steps, at which something is seen while the container is still closed. */
function seenClosed(key: string): readonly string[] {
  const pattern = shippedPattern(key);
  const steps = pattern.stages.flatMap((stage) => stage.steps);
  return steps.filter(({ id, checks }) => checks.some((check) => isSeenClosed(pattern, id, check))).map(({ id }) => id);
}

describe("what an assessor sees of a closed container", () => {
  it.each([
    ["brinnet-450@2", ["read-seal", "look-round", "count-strips"]],
    ["ossel-200@2", ["crate-read-seal", "crate-outside-step"]],
    ["tarvock-900@1", ["read-seal", "look-sling", "look-round"]],
  ])("is the seal, the walls and the strips of %s, up to the line that opens it", (key, steps) => {
    expect(seenClosed(key)).toEqual(steps);
  });

  it("is nothing where no check reads the seal, or the line is not known", () => {
    const pattern = shippedPattern("ossel-200@2");
    const checks = pattern.checks.filter(({ kind }) => kind !== "match");
    const [first] = stageNamed(pattern, "open")!.steps;
    expect(isSeenClosed({ ...pattern, checks }, first!.id, first!.checks[0]!)).toBe(false);
    expect(isSeenClosed(pattern, "no-such-line", first!.checks[0]!)).toBe(false);
  });
});
