import { describe, expect, it } from "vitest";
import { onSceneQuestion } from "./on-scene.ts";

const FLOW = "470 L/min";
const BOAT = {
  boat: { kind: "fishing boat", length: "12 m" },
  spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
  hole: { diameter: "90 mm" },
};

/** Soundings as [s, cm]. */
function ask(soundings: readonly (readonly [number, number])[], more: object = {}) {
  const readings = soundings.map(([at, cm]) => ({ at, level: cm / 100 }));
  const now = (soundings.at(-1)?.[0] ?? 0) + 10;
  return onSceneQuestion.answer({ ...BOAT, readings, pumping: [], now, ...more }, {});
}

const TWO_PUMPS = [
  { from: 420, flow: FLOW },
  { from: 540, flow: FLOW },
];

describe("the word at the top", () => {
  it("is not gaining where the level has only risen more slowly, and no time to dry is told", () => {
    const rising = [
      [60, 55],
      [240, 62],
      [480, 66],
      [660, 67],
      [840, 68],
    ] as const;
    const { word, reading } = ask(rising, { pumping: TWO_PUMPS });
    expect(word.kind).not.toMatch(/gaining/);
    expect(word).toMatchObject({ since: 540, soundings: 2 });
    expect(reading).not.toHaveProperty("dry");
  });

  it("is gaining by the soundings alone where no pump is told, and says that the forecast does not know what pumps", () => {
    const falling = [
      [60, 50],
      [240, 46],
      [420, 43],
      [600, 40],
      [780, 36],
    ] as const;
    const { word, warnings } = ask(falling);
    expect(word.kind).toBe("gaining");
    expect(warnings).toContainEqual(expect.objectContaining({ kind: "falls-unpumped", signal: "CAUTION" }));
    const pumped = ask(falling, { pumping: [{ from: 0, flow: FLOW }] });
    expect(pumped.warnings.map(({ kind }) => kind)).not.toContain("falls-unpumped");
  });

  it("is never gaining of a pump first sounded a minute after its start", () => {
    const { word, reading } = ask(
      [
        [60, 55],
        [240, 62],
        [480, 66],
      ],
      { pumping: [TWO_PUMPS[0]] },
    );
    expect(word.kind).toMatch(/^(should-be-gaining|too-soon)$/);
    expect(reading).not.toHaveProperty("dry");
    expect(reading!.nextSounding).toBeLessThanOrEqual(480 + 120);
  });

  it("doubts a pump under which the level rises as before, and gives the loss as without it", () => {
    const straight = [
      [0, 50],
      [180, 56],
      [360, 62],
      [540, 68],
      [720, 74],
    ] as const;
    const [dead, none] = [[{ from: 370, flow: FLOW }], []].map((pumping) => ask(straight, { pumping }));
    expect(dead!.word.kind).toBe("losing");
    expect(dead!.pumps[0]).toMatchObject({ doubt: "dead" });
    expect(dead!.warnings.map(({ kind }) => kind)).toContain("pump-dead");
    const [withIt, without] = [dead, none].map((one) => one!.reading!.loss!.time!.p50);
    expect(withIt! / without!).toBeGreaterThan(0.7);
    expect(withIt! / without!).toBeLessThan(1.5);
  });

  it("is holding after four soundings that neither rise nor fall, and says that no stick tells more", () => {
    const steady = [
      [0, 52],
      [180, 56],
      [360, 60],
      [540, 60],
      [720, 61],
      [900, 60],
      [1080, 61],
    ] as const;
    const { word } = ask(steady, { pumping: [{ from: 370, flow: FLOW }] });
    expect(word).toMatchObject({ kind: "holding", soundings: 4, since: 370 });
    expect(word.because).toContain("4 soundings over 9\u00a0min since the last change");
  });

  it("is gaining only as soundings since the change fall, and stays so while they do", () => {
    const all = [
      [0, 60],
      [180, 64],
      [360, 68],
      [540, 63],
      [720, 58],
      [900, 53],
      [1080, 48],
    ] as const;
    const words = [4, 5, 6].map(
      (count) => ask(all.slice(0, count), { pumping: [{ from: 370, flow: "900 L/min" }] }).word,
    );
    expect(words.map(({ kind }) => kind)).toEqual(["should-be-gaining", "gaining", "gaining"]);
    expect(words[2]!.certainty).toBeGreaterThan(0.97);
  });

  it("does not stay gaining where the last sounding has stopped falling", () => {
    const { word } = ask(
      [
        [0, 60],
        [180, 55],
        [360, 50],
        [540, 45],
        [720, 46],
      ],
      { pumping: [{ from: 0, flow: FLOW }] },
    );
    expect(word.kind).not.toBe("gaining");
  });

  it("is not gaining by a last sounding that may be a slosh or something new, as 31 after 49, 44, 42", () => {
    const odd = [
      [280, 50],
      [581, 49],
      [901, 44],
      [1218, 42],
      [1512, 31],
    ] as const;
    const { word, reading } = ask(odd, { pumping: [{ from: 300, flow: FLOW }] });
    expect(word.kind).not.toBe("gaining");
    expect(reading).not.toHaveProperty("dry");
  });

  it("puts fuel first, then a level above her deck, then age", () => {
    const two = [
      [0, 40],
      [180, 45],
    ] as const;
    expect(ask(two, { fuelSmelt: true, now: 9000 }).word.kind).toBe("fuel");
    expect(
      ask(
        [
          [0, 40],
          [180, 400],
        ],
        { now: 9000 },
      ).word.kind,
    ).toBe("above-deck");
    expect(ask(two, { now: 9000 }).word).toMatchObject({ kind: "not-known", certainty: 0 });
    expect(ask([]).word.kind).toBe("not-known");
    expect(ask(two.slice(0, 1)).word.kind).toBe("one-sounding");
  });
});

describe("a wrong reading", () => {
  it("is named by its level and time, the likelier culprit: 57, 62, 75 for 51, 46, 41 does not blame the 62", () => {
    const slipped = [
      [0, 57],
      [180, 62],
      [420, 75],
      [600, 46],
      [780, 41],
    ] as const;
    const { warnings } = ask(slipped, {
      pumping: [
        { from: 200, flow: FLOW },
        { from: 200, flow: FLOW },
      ],
    });
    const said = warnings.map(({ says }) => says).join(" ");
    expect(said).toContain("The sounding of 75\u00a0cm, 7 min after the first");
    expect(said).not.toContain("62");
  });
});

describe("physical bounds", () => {
  it("hold before anything is seen: a hole of 90 mm passes 1,930 L/min at the most (Cd 1, its head)", () => {
    expect(60_000 * ask([[0, 40]]).reading!.inflow.p95).toBeLessThan(1930);
  });

  it("hold after a patch: dry no sooner than both pumps at their full stated flow need", () => {
    const rising = [
      [0, 60],
      [180, 66],
      [360, 72],
      [540, 73],
      [720, 74],
    ] as const;
    const pumping = [0, 1].map(() => ({ from: 370, flow: FLOW }));
    const { word, reading } = ask([...rising, [840, 70], [960, 64], [1080, 58]], {
      pumping,
      patches: [{ at: 730, open: 0.1 }],
    });
    expect(word.kind).toBe("gaining");
    expect(reading!.dry!.time!.p05).toBeGreaterThan(3.6 * 60);
  });
});

describe("a word once earned", () => {
  const LOST_PUMP = { pumping: [{ from: 600, flow: "300 L/min" }], hole: undefined };
  const RISING = [
    [120, 55],
    [300, 62],
    [480, 68],
    [660, 72],
    [900, 77],
    [1260, 86],
    [1560, 95],
    [1860, 106],
    [2220, 117],
  ] as const;

  it("is losing as long as it is likelier than not that the rise goes on, and is then never only expected", () => {
    expect(ask(RISING, LOST_PUMP).word.kind).toBe("losing");
    const { word } = ask([...RISING, [2520, 118]], LOST_PUMP);
    expect(word.kind).toBe("losing");
    expect(word.certainty).toBeLessThan(0.95);
  });

  it("turns from losing where the level is steady or falls", () => {
    const fallen = [...RISING, [2520, 112], [2820, 104]] as const;
    expect(ask(fallen, LOST_PUMP).word.kind).not.toBe("losing");
    const steady = [...RISING, [2520, 117], [2820, 117], [3120, 117], [3420, 117]] as const;
    expect(ask(steady, LOST_PUMP).word.kind).not.toBe("losing");
  });
});

describe("a boat that is pumped down to the strainer", () => {
  const DOWN = [
    [60, 30],
    [240, 33],
    [420, 37],
    [660, 36],
    [840, 23],
    [1020, 10],
    [1200, 2],
    [1380, 4],
    [1560, 3],
    [1740, 4],
  ] as const;
  const { word, warnings, pumps } = ask(DOWN, { pumping: [{ from: 600, flow: "300 L/min" }], hole: undefined });

  it("is holding by the last soundings alone, and says so", () => {
    expect(word).toMatchObject({
      kind: "holding",
      because: expect.stringMatching(/^The last 4 soundings all found 4/),
    });
  });

  it("warns of no fall that slowed, and doubts no pump that has nothing left to move", () => {
    expect(warnings.map(({ kind }) => kind)).not.toContain("fall-has-slowed");
    expect(pumps.map(({ doubt }) => doubt)).toEqual(["none"]);
  });

  it("was holding when last sounded, once that is long ago", () => {
    const later = ask(DOWN, { pumping: [{ from: 600, flow: "300 L/min" }], hole: undefined, now: 1740 + 40 * 60 });
    expect(later.word.kind).toBe("not-known");
    expect(later.reading?.lastKnown).toMatch(/: Holding: \d+ in 100\.$/);
  });

  it("is not holding once the water comes back", () => {
    const back = [...DOWN, [1920, 9], [2100, 15], [2280, 22]] as const;
    const { word: then } = ask(back, { pumping: [{ from: 600, flow: "300 L/min" }], hole: undefined });
    expect(then.kind).not.toBe("holding");
  });
});

describe("times beside the word", () => {
  it("tell no time to dry from two soundings since the last change, of which one may be a slosh", () => {
    const sloshed = [
      [60, 55],
      [240, 59],
      [420, 63],
      [660, 62],
      [840, 45],
    ] as const;
    const pumping = [{ from: 600, flow: "300 L/min" }];
    expect(ask(sloshed, { pumping, hole: undefined }).reading).not.toHaveProperty("dry");
    const on = ask([...sloshed, [1020, 32], [1200, 20]], { pumping, hole: undefined });
    expect(on.word.kind).toBe("gaining");
    expect(on.reading?.dry?.time).toBeDefined();
  });

  it("warn of a loss from the same chance on that leaving goes by", () => {
    const steady = [
      [0, 57],
      [240, 57],
      [480, 56],
      [720, 75],
      [960, 56],
    ] as const;
    const { leave, warnings, reading } = ask(steady, { hole: undefined });
    expect(reading?.loss?.chance ?? 0).toBeLessThan(0.1);
    expect([leave.kind, ...warnings.map(({ kind }) => kind)]).not.toContain("loss-possible");
  });
});
