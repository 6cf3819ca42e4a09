import { expect, test } from "vitest";
import { nearestAt } from "./focus-field.ts";

test("the way to a fault ends in its field, or in the nearest around it that is shown", () => {
  const places = ["stages/2/steps/0/checks", "stages/2/steps/0/text", "container/mass"];
  expect(nearestAt(["stages", 2, "steps", 0, "checks"], places)).toBe("stages/2/steps/0/checks");
  expect(nearestAt(["stages", 2, "steps", 0, "checks", 1], places)).toBe("stages/2/steps/0/checks");
  expect(nearestAt(["stages", 2, "steps", 0], places)).toBeUndefined();
});
