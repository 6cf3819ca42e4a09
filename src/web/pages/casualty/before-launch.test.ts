import type { KitsNeededAnswer } from "#questions";
import { ask } from "#questions";
import { describe, expect, it } from "vitest";
import { kitsQuestion, openingOf, sayArrival, sayKits } from "./before-launch.ts";
import { sayChance } from "./say.ts";

const CALL = { kind: "motor boat", length: 9, distance: 9260 } as const;

function answerTo(call: object): KitsNeededAnswer {
  return ask(
    "kits-needed",
    JSON.parse(JSON.stringify(kitsQuestion({ ...CALL, ...call }, undefined, undefined))),
  ) as KitsNeededAnswer;
}

describe("before launch", () => {
  it("asks nothing until kind, length and distance are told, and then answers with the rest unknown", () => {
    expect(kitsQuestion({ kind: "motor boat", length: 9 }, undefined, undefined)).toBeUndefined();
    expect(answerTo({}).byKits).toHaveLength(6);
  });

  it("says one kit more than gains nine times in ten", () => {
    const answer = answerTo({ hole: 0.04, holeDepth: 0.6 });
    expect(sayKits(answer).take).toBe(`Take ${answer.forGaining! + 1} kits`);
  });

  it("does not name a number where none of those looked at is enough", () => {
    const words = sayKits(answerTo({ hole: 0.4, holeDepth: 0.6 }));
    expect(words.take).toBe("More than 6 kits, or a patch");
    expect(words.why).toContain("Slow the hole first");
    expect(words.patch).toContain("get people off early");
  });

  it("says of the hole halved the chance that its table has", () => {
    const answer = answerTo({ hole: 0.09, holeDepth: 0.6 });
    const row = answer.byKits.find(({ kits }) => kits === answer.forHoldingPatched)!;
    expect(row.holdingPatched - row.holding).toBeGreaterThan(0.3);
    expect(sayKits(answer).patch).toContain(`with a chance of ${sayChance(row.holdingPatched)}.`);
  });

  it("says when the first kit pumps", () => {
    expect(sayArrival(answerTo({}))).toContain("in about 25\u00a0min");
  });

  it("opens a sheet with what was told and a space such a boat floods in", () => {
    expect(openingOf({ ...CALL, hole: 0.04 }, " Grey boat ")).toEqual({
      name: "Grey boat",
      boat: { kind: "motor boat", length: 9 },
      space: { id: "space-1", name: "Engine room", sort: "engine-room", part: "aft" },
      hole: { diameter: 0.04 },
    });
  });
});
