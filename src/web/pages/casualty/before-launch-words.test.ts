import { ask, type KitsNeededAnswer } from "#questions";
import { describe, expect, it } from "vitest";
import { kitsQuestion, type Call } from "./before-launch.ts";
import { sayArrival, sayKits } from "./before-launch-words.ts";
import { sayChance } from "./say.ts";

const MILE = 1852;
const CALL: Call = { kind: "motor boat", length: 9, distance: 5 * MILE };
const PLENTY = 20;

function answerTo(call: Partial<Call>): KitsNeededAnswer {
  const question = kitsQuestion({ ...CALL, ...call }, undefined, undefined);
  return ask("kits-needed", JSON.parse(JSON.stringify(question))) as KitsNeededAnswer;
}

describe("how many kits to take", () => {
  it("is one more than gain nine times in ten", () => {
    const answer = answerTo({ hole: 0.04, holeDepth: 0.6 });
    expect(sayKits(answer, PLENTY).take).toBe(`Take ${answer.forGaining! + 1} kits`);
    expect(sayKits(answer, PLENTY).why).toContain("to gain on the water");
  });

  it("does not say that kits gain which only hold", () => {
    const answer = answerTo({});
    expect([answer.forHolding, answer.forGaining]).toEqual([6, undefined]);
    expect(sayKits(answer, PLENTY).why).toContain("6 kits to hold the water, but not to gain on it");
  });

  it("is no number where none of those looked at is enough", () => {
    const words = sayKits(answerTo({ hole: 0.4, holeDepth: 0.6 }), PLENTY);
    expect(words.take).toBe("More than 6 kits, and a patch");
    expect(words.why).toContain("Slow the hole first");
    expect(words.patch).toContain("get people off early");
  });

  it("says of the hole halved the chance that its table has", () => {
    const answer = answerTo({ hole: 0.09, holeDepth: 0.6 });
    const row = answer.byKits.find(({ kits }) => kits === answer.forHoldingPatched)!;
    expect(row.holdingPatched - row.holding).toBeGreaterThan(0.3);
    expect(sayKits(answer, PLENTY).patch).toContain(`with a chance of ${sayChance(row.holdingPatched)}.`);
  });

  it("counts cans for the kits taken", () => {
    const answer = { ...answerTo({ hole: 0.04, holeDepth: 0.6 }), cansPerKit: 2 };
    expect(sayKits(answer, PLENTY).fuel).toBe("Fuel: 2 cans of 5 L with each kit, 6 in all.");
    expect(sayKits({ ...answer, cansPerKit: 0 }, PLENTY).fuel).toContain("no cans needed");
  });
});

describe("a boat that may be gone before anybody can pump", () => {
  it("is warned of where she is likelier gone than not, and a patch goes along", () => {
    const answer = answerTo({ length: 11, distance: 20 * MILE, hole: 0.09, holeDepth: 0.6, water: 1 });
    const { take, late } = sayKits(answer, PLENTY);
    expect(take).toMatch(/and a patch$/);
    expect(late?.isWarning).toBe(true);
    expect(late?.words).toContain("her deck edge is still dry when your first pump runs: less than 1 in 100.");
    expect(late?.words).toContain("boats nearer");
  });

  it("is remarked on from even chances to nine in ten, and not mentioned above that", () => {
    const answer = answerTo({ hole: 0.04, holeDepth: 0.6 });
    const lateAt = (afloatOnArrival: number) => sayKits({ ...answer, afloatOnArrival }, PLENTY).late;
    expect(lateAt(0.49)?.isWarning).toBe(true);
    expect(lateAt(0.5)).toEqual({
      isWarning: false,
      words: "Chance that her deck edge is still dry when your first pump runs: 50 in 100.",
    });
    expect(lateAt(0.9)).toBeUndefined();
    expect(sayKits({ ...answer, afloatOnArrival: 0.5 }, PLENTY).why).toContain("if she still floats");
  });

  it("is told with the time to the first pump, and not as water over her side", () => {
    const words = sayArrival(answerTo({}));
    expect(words).toContain("Your first pump can be pumping in about 25\u00a0min.");
    expect(words).toMatch(/Chance that her deck edge is still dry then: \d+ in 100\.$/);
  });
});

describe("kits that are not there", () => {
  const three = { ...answerTo({ hole: 0.04, holeDepth: 0.6 }), forGaining: 2 };

  it("are asked of another station, so many", () => {
    expect(sayKits(three, 2).short).toBe("2 kits are ready at this station; 3 wanted: ask another station for 1.");
    expect(sayKits(three, 1).short).toContain("1 kit is ready");
    expect(sayKits(three, 0).short).toContain("No kit is ready at this station; 3 wanted");
  });

  it("are not missed where there are enough", () => {
    expect(sayKits(three, 3).short).toBeUndefined();
  });

  it("are asked for without a number where none is known", () => {
    const answer = answerTo({ hole: 0.4, holeDepth: 0.6 });
    expect(sayKits(answer, 6).short).toContain("more than 6 wanted: ask another station for more.");
    expect(sayKits(answer, 7).short).toBeUndefined();
  });
});
