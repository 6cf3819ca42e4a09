import { describe, expect, it } from "vitest";
import { needKits, runningShareAt, type CallForHelp } from "../index.ts";

const KIT = { flow: 0.004, starts: 0.92 };
const CALL: CallForHelp = {
  length: 10,
  kind: "motor boat",
  holeDiameter: 0.05,
  holeDepth: 0.4,
  waterInside: 0,
  arrival: 1800,
  usual: KIT,
  share: runningShareAt,
  onScene: 3 * 3600,
  burn: 0.0015 / 3600,
  fuelInKit: 0,
  can: 0.005,
};
const { length: _length, kind: _kind, holeDiameter: _hole, holeDepth: _depth, waterInside: _water, ...BARE } = CALL;

function widthOf({ inflow }: ReturnType<typeof needKits>): number {
  return inflow.p95 / inflow.p05;
}

function toldSo(ago: number): ReturnType<typeof needKits> {
  return needKits({ ...CALL, tellings: [{ ago, water: 0.3 }] });
}

describe("kits needed before launching", () => {
  it("a known hole's median inflow, the space empty, is the orifice's", () => {
    const { inflow, noWorseThan } = needKits(CALL);
    const orifice = 0.6 * (Math.PI / 4) * 0.05 ** 2 * Math.sqrt(2 * 9.80665 * 0.4);
    expect(inflow.p50 / orifice).toBeCloseTo(1, 1);
    expect(noWorseThan).toBeGreaterThan(inflow.p95);
  });

  it("no hole that was told passes more than its whole area at a coefficient of 1", () => {
    const { inflow, noWorseThan } = needKits({ ...CALL, holeDiameter: 0.09, holeDepth: 0.6 });
    const most = (Math.PI / 4) * 0.09 ** 2 * Math.sqrt(2 * 9.80665 * 0.6);
    expect(inflow.p95).toBeLessThan(1.2 * most);
    expect(noWorseThan).toBeLessThan(1.35 * most);
  });

  it("more kits never lower a chance, and a patch never raises the number of kits", () => {
    const { byKits, forHolding, forHoldingPatched } = needKits({ ...CALL, holeDiameter: 0.09 });
    byKits.slice(1).forEach((row, k) => expect(row.holding).toBeGreaterThanOrEqual(byKits[k]!.holding));
    expect(forHoldingPatched!).toBeLessThanOrEqual(forHolding ?? Infinity);
    byKits.forEach((row) => expect(row.gaining).toBeLessThanOrEqual(row.holding));
  });

  it("where no number of kits is likely to hold, none is named", () => {
    expect(needKits({ ...CALL, holeDiameter: 0.4 }).forHolding).toBeUndefined();
  });

  it("more rise told raises inflow and kits and lowers the chance to find her afloat, whatever else is told", () => {
    for (const rest of [BARE, { ...BARE, length: 9, kind: "fishing boat" as const, waterInside: 0.3 }, CALL]) {
      const answers = [0, 1e-4, 3e-4, 1e-3, 3e-3].map((rising) => needKits({ ...rest, rising }));
      answers.slice(1).forEach((one, i) => {
        const before = answers[i]!;
        expect(one.inflow.p50).toBeGreaterThan(before.inflow.p50);
        expect(one.inflow.p95).toBeGreaterThan(before.inflow.p95 * 0.999);
        expect(one.forHolding ?? 7).toBeGreaterThanOrEqual(before.forHolding ?? 7);
        expect(one.byKits[1]!.holding).toBeLessThanOrEqual(before.byKits[1]!.holding + 1e-9);
        expect(one.afloatOnArrival).toBeLessThanOrEqual(before.afloatOnArrival + 0.005);
      });
    }
  });

  it("a level that falls is evidence: less comes in than her pumps move, and never more kits than with nothing told", () => {
    for (const rest of [BARE, { ...BARE, length: 9, kind: "fishing boat" as const, waterInside: 0.3 }, CALL]) {
      const untold = needKits(rest);
      for (const rising of [-1e-4, -3e-4, -1e-3]) {
        const { inflow, forHolding, afloatOnArrival, riseBeyondHole } = needKits({ ...rest, rising });
        expect(inflow.p95).toBeLessThan(untold.inflow.p95);
        expect(inflow.p50).toBeGreaterThan(0);
        expect(forHolding ?? 7).toBeLessThanOrEqual(untold.forHolding ?? 7);
        expect(afloatOnArrival).toBeGreaterThanOrEqual(untold.afloatOnArrival - 0.005);
        expect(riseBeyondHole).toBeUndefined();
      }
    }
  });

  it("a fall does not say that the hole is shut: her pumps may hide much of it", () => {
    const fall = needKits({ ...CALL, rising: -1e-4 }).inflow;
    const still = needKits({ ...CALL, rising: 0 }).inflow;
    expect(fall.p50).toBeGreaterThan(still.p50);
  });

  it("two levels told, the later lower, say the same as a fall told, within their doubt", () => {
    const tellings = [
      { ago: 1800, water: 0.6 },
      { ago: 0, water: 0.24 },
    ];
    const [levels, rate] = [needKits({ ...BARE, tellings }), needKits({ ...BARE, waterInside: 0.24, rising: -2e-4 })];
    expect(levels.inflow.p50 / rate.inflow.p50).toBeCloseTo(1, 0);
  });

  it("two levels told ten minutes apart narrow the inflow more than a word for the rise does", () => {
    const open = { ...BARE, length: 10, kind: "motor boat" } as const;
    const word = needKits({ ...open, waterInside: 0.4, rising: 3e-4 });
    const two = {
      tellings: [
        { ago: 600, water: 0.22 },
        { ago: 0, water: 0.4 },
      ],
    };
    expect(widthOf(word)).toBeLessThan(widthOf(needKits({ ...open, waterInside: 0.4 })) / 5);
    expect(widthOf(needKits({ ...open, ...two }))).toBeLessThanOrEqual(widthOf(word) * 1.02);
  });

  it("what was told a while ago has gone on since", () => {
    expect(toldSo(1800).afloatOnArrival).toBeLessThan(toldSo(0).afloatOnArrival);
  });

  it("water not told is not dry: she may be gone sooner than one told to be dry", () => {
    const { waterInside: _, ...untold } = { ...CALL, holeDiameter: 0.07, arrival: 5400 };
    expect(needKits(untold).afloatOnArrival).toBeLessThan(
      needKits({ ...untold, waterInside: 0 }).afloatOnArrival - 0.01,
    );
  });

  it("a kind and a length that nobody knows make it wider, and never NaN", () => {
    const rate = { waterInside: 0.3, rising: 5e-4 };
    const known = needKits({ ...BARE, ...rate, length: 10, kind: "motor boat" }).inflow;
    const unknown = needKits({ ...BARE, ...rate }).inflow;
    expect(unknown.p95 / unknown.p05).toBeGreaterThan(1.2 * (known.p95 / known.p05));
    expect(Object.values(unknown).every((flow) => Number.isFinite(flow) && flow >= 0)).toBe(true);
  });

  it("a rise that the hole told cannot give is believed before the hole, and said", () => {
    const { riseBeyondHole, inflow, byKits, afloatOnArrival } = needKits({ ...CALL, rising: 0.1 });
    expect(riseBeyondHole).toBe(true);
    expect(Object.values(inflow).every(Number.isFinite)).toBe(true);
    expect(byKits[5]!.holding).toBeLessThan(0.1);
    expect(afloatOnArrival).toBeLessThan(0.5);
    expect(needKits({ ...CALL, rising: 3e-4 })).not.toHaveProperty("riseBeyondHole");
  });

  it("a longer way leaves less chance of finding her afloat", () => {
    expect(needKits({ ...CALL, arrival: 7200 }).afloatOnArrival).toBeLessThan(needKits(CALL).afloatOnArrival);
  });

  it("asks only what is not known, people first", () => {
    const all = needKits({ ...BARE, arrival: 0 }).ask;
    expect(all[0]).toContain("people");
    expect(needKits(CALL).ask.length).toBeLessThan(all.length);
    const told = {
      tellings: [
        { ago: 300, water: 0.2 },
        { ago: 0, water: 0.3 },
      ],
    };
    expect(needKits({ ...BARE, ...told }).ask.some((one) => one.includes("again in two minutes"))).toBe(false);
  });

  it("counts cans for the time on scene", () => {
    expect(needKits(CALL).cansPerKit).toBe(1);
    expect(needKits({ ...CALL, onScene: 7 * 3600 }).cansPerKit).toBe(3);
  });
});

describe("kits of their own", () => {
  it("one that never starts adds nothing, and one that is weaker adds less", () => {
    const dead = needKits({ ...CALL, kits: [{ flow: 0.004, starts: 0 }, KIT] }).byKits;
    expect(dead[0]!.holding).toBe(0);
    const alone = needKits({ ...CALL, kits: [KIT] }).byKits[0]!.holding;
    expect(Math.abs(dead[1]!.holding - alone)).toBeLessThan(0.02);
    const weak = needKits({ ...CALL, kits: [{ ...KIT, flow: 0.001 }] }).byKits[0]!;
    expect(weak.holding).toBeLessThan(alone);
  });

  it("no lone kit is surer than that it starts", () => {
    const [one, two] = needKits({ ...CALL, holeDiameter: 0.01, kits: [{ flow: 0.01, starts: 0.8 }] }).byKits;
    expect(one!.holding).toBeLessThan(0.81);
    expect(two!.holding).toBeGreaterThan(one!.holding + 0.1);
  });

  it("fail one by one: two that start 8 times in 10 both fail 4 times in 100, not 20", () => {
    const pair = { flow: 0.05, starts: 0.8 };
    const { byKits } = needKits({ ...CALL, holeDiameter: 0.01, kits: [pair, pair] });
    expect(byKits[1]!.holding).toBeGreaterThan(0.945);
    expect(byKits[1]!.holding).toBeLessThan(0.975);
  });
});

describe("the plan", () => {
  const big = { ...CALL, holeDiameter: 0.09, holeDepth: 0.6 };

  it("takes what is wanted where the boat carries it, and never one kit alone", () => {
    expect(needKits({ ...CALL, holeDiameter: 0.01 }).plan).toMatchObject({ now: 2, patch: false, follow: 0 });
    const { forGaining, forHolding, plan } = needKits(big);
    expect(plan.now + plan.follow).toBe(forGaining ?? forHolding ?? 6);
  });

  it("two now, a patch, the rest to follow, where the boat carries two and the hole wants more", () => {
    const all = needKits(big);
    const { plan, byKits } = needKits({ ...big, carries: 2 });
    expect(plan).toMatchObject({ now: 2, patch: true, follow: all.plan.now - 2 });
    expect(plan.chance).toBe(byKits[1]!.holdingPatched);
  });

  it("no kit now where the boat carries none", () => {
    expect(needKits({ ...CALL, carries: 0 }).plan).toMatchObject({ now: 0, patch: true, chance: 0 });
  });
});
