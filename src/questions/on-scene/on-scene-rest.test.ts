import { describe, expect, it } from "vitest";
import { onSceneQuestion } from "./on-scene.ts";

/** A cabin forward, whose floor lies high over the keel: as high inside as outside at 27 cm (a flood followed elsewhere). */
const YACHT = {
  boat: { kind: "sailing yacht", length: 8.4, beam: 3.2 },
  spaces: [{ name: "cabin", sort: "cabin", part: "forward" }],
  pumping: [],
};
const AT = [17, 160, 378, 544, 719, 892, 1091, 1282];
const LEVELS = [0.06, 0.14, 0.22, 0.23, 0.28, 0.28, 0.29, 0.28];

describe("a level that comes to rest with the sea", () => {
  it("is not forecast to rise on for half an hour, though her beam was told", () => {
    const readings = LEVELS.map((level, k) => ({ at: AT[k]!, level }));
    const { reading } = onSceneQuestion.answer({ ...YACHT, readings, now: 1282 }, {});
    const soon = reading!.fan.find(({ at }) => at >= 1882)!;
    expect(soon.p05).toBeLessThan(0.275);
    expect(soon.p95).toBeGreaterThan(0.275);
  });
});
