import { ask, type KitsNeededAnswer } from "#questions";
import { describe, expect, it } from "vitest";
import { kitsQuestion, type Call } from "./before-launch.ts";
import { sayArrival, sayKits, sayRange, sayStarts } from "./before-launch-words.ts";
import { fetchWords } from "#words";

const messages = await fetchWords("en", "launchKits");
const launch = await fetchWords("en", "launch");
const french = await fetchWords("fr", "launch");

const MILE = 1852;
const NOW = Date.parse("2026-03-14T13:02:00Z");
const WAY = { speed: (20 * MILE) / 3600, launch: 0, setUp: 600, carries: 6 };
const CALL: Call = { kind: "motor boat", length: 9, distance: 5 * MILE };

function answerTo(call: Partial<Call>): KitsNeededAnswer {
  const question = kitsQuestion({ ...CALL, ...call }, NOW, WAY);
  return ask("kits-needed", JSON.parse(JSON.stringify(question))) as KitsNeededAnswer;
}

const FINGER = answerTo({ hole: 0.02, holeDepth: 0.6 });
const FIST = answerTo({ hole: 0.09, holeDepth: 0.6 });
const PLATE = answerTo({ hole: 0.4, holeDepth: 0.6 });

describe("how many kits to take", () => {
  it("is the fewest that gain nine times in ten, and never one alone", () => {
    expect(sayKits(FINGER, messages, true).take).toBe(`Take ${Math.max(2, FINGER.forGaining!)} kits`);
    expect(sayKits(FINGER, messages, true).why).toContain("to gain on the water");
    expect(sayKits({ ...FINGER, forGaining: 1 }, messages, true).why).toContain("one that fails leaves none");
  });

  it("does not say that kits gain which only hold", () => {
    const { forGaining: _, ...holding } = { ...FINGER, forHolding: 3 };
    expect(sayKits(holding, messages, true).why).toContain("3 kits to hold the water, but not to gain on it");
  });

  it("is no number where none of those looked at is enough", () => {
    expect(PLATE.plan.enough).toBe(false);
    const words = sayKits(PLATE, messages, true);
    expect(words.take).toBe("More than 6 kits, and a patch");
    expect(words.why).toContain("Slow the hole first");
    expect(words.patch).toContain("get people off early");
  });

  it("is two now, a patch and the rest to follow where the first boat takes two", () => {
    const plan = { now: 2, patch: true, follow: 2, enough: true, chance: 0.8, spread: { p05: 0.7, p95: 0.9 } };
    expect(sayKits({ ...FIST, plan }, messages, true).take).toBe("Take 2 now, a patch, 2 to follow");
    expect(sayKits({ ...FIST, plan: { ...plan, enough: false } }, messages, true).take).toBe(
      "Take 2 now, a patch, more to follow",
    );
  });

  it("says of the hole halved the chance that its table has", () => {
    const row = FIST.byKits.find(({ kits }) => kits === FIST.forHoldingPatched)!;
    expect(row.holdingPatched - row.holding).toBeGreaterThan(0.15);
    expect(sayKits(FIST, messages, true).patch).toContain(
      `with a chance of about ${sayRange(row.spreads.holdingPatched, messages)}.`,
    );
  });

  it("counts cans for the kits taken and those that follow", () => {
    const plan = { now: 2, patch: true, follow: 1, enough: true, chance: 0.8, spread: { p05: 0.7, p95: 0.9 } };
    expect(sayKits({ ...FIST, plan, cansPerKit: 2 }, messages, true).fuel).toBe(
      "Fuel: 2 cans of 5 L with each kit, 6 in all.",
    );
    expect(sayKits({ ...FIST, cansPerKit: 0 }, messages, true).fuel).toBe(
      "Fuel: full tanks last the 3\u00a0h counted on. How full they are is not known here: look before they go.",
    );
    expect(sayKits({ ...FIST, plan, cansPerKit: 1 }, messages, false).fuel).toBe(
      "Fuel: tank and burn are not known. As a guess 1 can of 5 L with each kit, 3 in all.",
    );
  });
});

describe("a boat that may be gone before anybody can pump", () => {
  it("is warned of where she is likelier gone than not, and a patch goes along", () => {
    const { take, late } = sayKits(
      answerTo({ length: 11, distance: 40 * MILE, hole: 0.2, holeDepth: 0.6, tellings: [{ at: NOW, water: 1 }] }),
      messages,
      true,
    );
    expect(take).toMatch(/and a patch$/);
    expect(late?.isWarning).toBe(true);
    expect(late?.words).toMatch(
      /^Chance that her deck edge is still dry when your first pump runs: about [\d a-z]+ in 100\./,
    );
    expect(late?.words).toContain("boats nearer");
  });

  it("is remarked on from even chances to nine in ten, and not mentioned above that", () => {
    const afloatSpread = { p05: 0.43, p95: 0.57 };
    const lateAt = (afloatOnArrival: number) =>
      sayKits({ ...FINGER, afloatOnArrival, afloatSpread }, messages, true).late;
    expect(lateAt(0.49)?.isWarning).toBe(true);
    expect(lateAt(0.5)).toEqual({
      isWarning: false,
      words: "Chance that her deck edge is still dry when your first pump runs: about 40 to 60 in 100.",
    });
    expect(lateAt(0.9)).toBeUndefined();
    expect(sayKits({ ...FINGER, afloatOnArrival: 0.5 }, messages, true).why).toContain("if she still floats");
  });

  it("is told with the time to the first pump, and not as water over her side", () => {
    const words = sayArrival(FINGER, messages);
    expect(words).toContain("Your first pump can be pumping in 20 to 30\u00a0min.");
    expect(words).toMatch(/Chance that her deck edge is still dry then: about (\d+ to \d+|more than \d+) in 100\.$/);
  });
});

describe("the chance that a kit starts, before launch", () => {
  const kit = { starts: 0.93, startsSpread: { p05: 0.84, p95: 0.985 } };

  it("says of what it is, its range, and by how many starts on record", () => {
    expect(sayStarts(kit, { of: 5, good: 4 }, launch)).toBe(
      "starts and gives water 93 in 100 (84 to 99), by 4 of its 5 starts on record beside ten usual ones",
    );
    expect(sayStarts(kit, { of: 5, good: 4 }, french)).toBe(
      "démarre et donne de l'eau 93 fois sur 100 (84 à 99), d'après 4 de ses 5 démarrages au journal, à côté de dix habituels",
    );
    expect(sayStarts(kit, undefined, launch)).toMatch(/, by no start of its own: as kits usually do$/);
  });
});

describe("kits that cannot go with the first boat", () => {
  const kit = {
    flow: 0.004,
    starts: 0.9,
    startsSpread: { p05: 0.72, p95: 0.99 },
    moves: { p05: 0.001, p50: 0.003, p95: 0.004 },
    follows: false,
  };
  const kits = [
    { ...kit, name: "Pump 1" },
    { ...kit, name: "Pump 2", follows: true },
    { ...kit, name: "Pump 7", follows: true },
  ];
  const plan = { now: 1, patch: true, follow: 3, enough: true, chance: 0.6, spread: { p05: 0.5, p95: 0.7 } };

  it("are our own first, by name, and the rest asked of another station, so many", () => {
    expect(sayKits({ ...FIST, kits, plan }, messages, true).short).toBe(
      "1 kit with the first boat; then Pump 2, Pump 7; ask another station for 1.",
    );
    expect(sayKits({ ...FIST, kits: [], plan: { ...plan, now: 0 } }, messages, true).short).toBe(
      "No kit can go with the first boat; ask another station for 3.",
    );
  });

  it("are not missed where there are enough", () => {
    expect(sayKits({ ...FIST, kits, plan: { ...plan, follow: 0 } }, messages, true).short).toBeUndefined();
    expect(sayKits({ ...FIST, kits, plan: { ...plan, follow: 1 } }, messages, true).short).toBe(
      "1 kit with the first boat; then Pump 2.",
    );
  });

  it("are told as to follow, with no time or chance of a first pump, where none goes with the first boat", () => {
    const answer = { ...FIST, kits, plan: { ...plan, now: 0, follow: 2 }, afloatOnArrival: 0.3 };
    const words = sayKits(answer, messages, true);
    expect(words.take).toBe("No kit to take: a patch, 2 to follow");
    expect(words.late).toBeUndefined();
    expect(sayArrival(answer, messages)).toBe(
      "The first boat brings no pump. When one that follows can be pumping is not known here.",
    );
  });

  it("are none, with no time or chance of a first pump, where no kit of the station can be used", () => {
    const answer = { ...FIST, kits: [], plan: { ...plan, now: 0 }, afloatOnArrival: 0.3 };
    const words = sayKits(answer, messages, true);
    expect(words.take).toBe("No pump of this station can come: ask another station now, and take a patch");
    expect(words.late).toBeUndefined();
    expect(words.short).toBe("No kit can go with the first boat; ask another station for 3.");
    expect(sayArrival(answer, messages)).toBe(
      "No pump of this station can come: there is no time of a first pump to tell. Have her people ready to leave her.",
    );
  });

  it("are asked for without a number where none is known to be enough", () => {
    expect(sayKits({ ...PLATE, kits, plan: { ...plan, enough: false } }, messages, true).short).toContain(
      "for all it has",
    );
  });
});

const range = (p05: number, p95: number) => sayRange({ p05, p95 }, messages);

describe("a chance before launch", () => {
  it("is told by what it lies between, and never as none or certain", () => {
    expect(range(0.31, 0.44)).toBe("30 to 45 in 100");
    expect(range(0.93, 0.999)).toBe("more than 93 in 100");
    expect(range(0.001, 0.12)).toBe("less than 15 in 100");
    expect(range(0.001, 0.999)).toBe("anything between none and all");
    expect(range(0.9993, 0.9999)).toBe("more than 99 in 100");
  });

  it("lies within the range of each number of kits, which grows where kits start less surely", () => {
    for (const { holding, spreads } of FIST.byKits) {
      expect(spreads.holding.p05).toBeLessThan(holding);
      expect(spreads.holding.p95).toBeGreaterThan(holding);
    }
  });

  it("is told with the time in one unit where both ends have it", () => {
    const spread = { p05: 110 * 60, p95: 150 * 60 };
    const words = sayArrival({ ...FINGER, arrivalSpread: spread }, messages);
    expect(words).toContain("pumping in 110\u00a0min to 2\u00a0h 30\u00a0min.");
  });
});
