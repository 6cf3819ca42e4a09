import { describe, expect, it } from "vitest";
import { InputError } from "#base";
import type { Pattern } from "#kit";
import { ask } from "./ask.ts";

type Answer = Record<string, unknown> & {
  readonly kind: string;
  readonly flow: number;
  readonly assumptions: readonly { readonly what: string }[];
  readonly cautions: readonly string[];
};
const answerOf = (name: string, given: unknown): Answer => ask(name, given, { patterns }) as Answer;
const number = (answer: Answer, field: string): number => answer[field] as number;

/** Only what questions read; the loader's own tests make whole ones. */
const HYDRAULICS: NonNullable<Pattern["hydraulics"]> = {
  pump: {
    curve: [
      { flow: 0, head: 24 },
      { flow: 0.005, head: 19 },
      { flow: 0.009, head: 6 },
    ],
    greatestLift: 7.5,
  },
  suction: { length: 4.6, bore: 0.0508, roughness: 5e-5, fittings: 2.3 },
  discharge: { length: 8, bore: 0.0508, hazenWilliams: 140, fittings: 2.4 },
  primer: { stroke: 5e-4, strokesPerMinute: 45, deadVolume: 0.003 },
  proof: { grounds: 0.75, notes: 0.9 },
};
const BARE = {
  version: 1,
  name: "n",
  summary: "s",
  container: { name: "c", mass: 60, lifters: 2, places: [], markings: [] },
  policy: {},
  items: [],
  modes: [],
  checks: [],
  stages: [],
};
const PATTERNS: readonly Pattern[] = [
  {
    ...BARE,
    id: "petrol",
    hydraulics: HYDRAULICS,
    engine: { tank: 0.006, fuel: "petrol", burn: [{ throttle: 1, burn: 4e-7 }] } as NonNullable<Pattern["engine"]>,
  },
  {
    ...BARE,
    id: "sunk",
    hydraulics: { pump: HYDRAULICS.pump, discharge: HYDRAULICS.discharge, proof: HYDRAULICS.proof },
  },
  { ...BARE, id: "dry" },
];
function patterns(id: string): Pattern | undefined {
  return PATTERNS.find((pattern) => pattern.id === id);
}

const HEIGHTS = { suction: { lift: "3 m" }, discharge: { rise: "1 m" } };

describe("delivery by kit", () => {
  it("is the same as with pump and hoses written out", () => {
    const written = answerOf("delivery", {
      pump: HYDRAULICS.pump,
      suction: { lift: 3, bore: 0.0508, length: 4.6, roughness: 5e-5, fittings: 2.3 },
      discharge: { rise: 1, bore: 0.0508, length: 8, hazenWilliams: 140, fittings: 2.4 },
    });
    expect(answerOf("delivery", { kit: "petrol", ...HEIGHTS })).toEqual(written);
  });

  it("takes what is given before what the pattern says", () => {
    const asIs = answerOf("delivery", { kit: "petrol", ...HEIGHTS });
    const longer = answerOf("delivery", { kit: "petrol", ...HEIGHTS, discharge: { rise: "1 m", length: "60 m" } });
    expect(longer.flow).toBeLessThan(asIs.flow);
    const other = answerOf("delivery", { kit: "petrol", ...HEIGHTS, discharge: { rise: "1 m", roughness: "1 mm" } });
    expect(other.flow).not.toBe(asIs.flow);
  });

  it("of a pump that stands in the water knows no suction, and warns of electricity", () => {
    const answer = answerOf("delivery", { kit: "sunk", suction: { lift: 9.8 }, discharge: { rise: 1 } });
    expect(answer).toMatchObject({ kind: "delivers", suctionLoss: 0 });
    expect(answer.cautions).toContain("electric-shock");
    expect(answer.cautions).not.toContain("carbon-monoxide");
  });

  it("says what neither gives", () => {
    expect(codesOf(() => answerOf("delivery", { kit: "nowhere", ...HEIGHTS }))).toEqual(["QU-107 kit"]);
    expect(codesOf(() => answerOf("delivery", { kit: "dry", ...HEIGHTS }))).toContain("QU-101 pump");
    expect(codesOf(() => answerOf("delivery", HEIGHTS))).toEqual([
      "QU-101 pump",
      "QU-101 suction.roughness",
      "QU-101 suction.bore",
      "QU-101 suction.length",
      "QU-101 discharge.roughness",
      "QU-101 discharge.bore",
      "QU-101 discharge.length",
    ]);
  });
});

describe("delivery", () => {
  const kit = { kit: "petrol", ...HEIGHTS };

  it("shows the cautions of an engine, carbon monoxide first", () => {
    const { cautions } = answerOf("delivery", kit);
    expect(cautions[0]).toBe("carbon-monoxide");
    expect(cautions).toEqual(
      expect.arrayContaining(["never-pump-fuel", "hot-exhaust", "noise", "refuel-stopped-and-cool"]),
    );
  });

  it("turns slower where the air is thin and hot, and says so", () => {
    const low = answerOf("delivery", { ...kit, air: { altitude: "0 m", temperature: "15 °C" } });
    const high = answerOf("delivery", { ...kit, air: { altitude: "2000 m", temperature: "30 °C" } });
    expect(number(low, "speedRatio")).toBe(1);
    expect(number(high, "speedRatio")).toBeLessThan(0.95);
    expect(high.flow).toBeLessThan(low.flow);
    expect(high.assumptions.some((one) => one.what.includes("SAE J1349"))).toBe(true);
  });

  it("states every default it took", () => {
    const said = answerOf("delivery", kit)
      .assumptions.map((one) => one.what)
      .join("\n");
    for (const part of ["15 °C", "Fresh water", "Sea level", "greatest lift"]) expect(said).toContain(part);
  });

  it("advises unless told not to, and passes the speed on", () => {
    expect((answerOf("delivery", kit)["advice"] as unknown[]).length).toBeGreaterThan(0);
    const pump = { ...HYDRAULICS.pump, speed: "3600 /min" };
    const quiet = answerOf("delivery", { ...kit, pump, throttle: 0.5, advise: false });
    expect(quiet["advice"]).toEqual([]);
    expect(number(quiet, "speed")).toBeCloseTo(30, 9);
  });

  it("says practice at high lifts", () => {
    expect(saidAt("5 m")).toContain("the loss is plain");
    expect(saidAt("8 m")).toContain("not attempted");
    expect(saidAt("3 m")).not.toContain("Practice");
  });

  it("takes exactly one resistance", () => {
    const suction = { lift: 3, roughness: "1 mm", hazenWilliams: 140 };
    expect(codesOf(() => answerOf("delivery", { ...kit, suction }))).toEqual(["QU-108 suction"]);
  });
});

describe("prime", () => {
  it("takes hose and primer from the kit, and strokes per minute as they are named", () => {
    const byKit = answerOf("prime", { kit: "petrol", lift: 3 });
    const written = answerOf("prime", {
      lift: 3,
      hose: { bore: 0.0508, length: 4.6 },
      stroke: 5e-4,
      deadVolume: 0.003,
      strokesPerMinute: 45,
    });
    expect(byKit).toEqual(written);
    expect(number(byKit, "seconds") / number(byKit, "strokes")).toBeCloseTo(60 / 45, 9);
  });

  it("names the leak a slow prime implies", () => {
    expect(answerOf("prime", { kit: "petrol", lift: 3, observed: "90 s" })["leak"]).toMatchObject({ kind: "leaks" });
    expect(answerOf("prime", { kit: "petrol", lift: 3, observed: "30 s" })["leak"]).toMatchObject({
      kind: "as-expected",
    });
  });

  it("says when it will not, and what is missing", () => {
    const high = { kit: "petrol", lift: 10.4, hose: { length: "12 m" } };
    expect(answerOf("prime", high)).toMatchObject({ kind: "will-not-prime" });
    expect(codesOf(() => answerOf("prime", { lift: 1 }))).toEqual([
      "QU-101 hose.bore",
      "QU-101 hose.length",
      "QU-101 deadVolume",
      "QU-101 stroke",
    ]);
  });
});

describe("fuel", () => {
  it("reads the reserve as a volume, a share or a time", () => {
    expect(refuelWith("1 L")).toBeCloseTo(3 * 3600, 6);
    expect(refuelWith(0.001)).toBeCloseTo(3 * 3600, 6);
    expect(refuelWith("25 %")).toBeCloseTo(3 * 3600, 6);
    expect(refuelWith(0.25)).toBeCloseTo(3 * 3600, 6);
    expect(refuelWith("60 min")).toBeCloseTo(3 * 3600, 6);
    expect(codesOf(() => refuelWith("5 L"))).toEqual(["QU-110 reserve"]);
  });

  it("takes burn, or power and consumption, or the kit's engine", () => {
    const byPower = answerOf("fuel", { tank: 0.0036, shaftPower: 2500, bsfc: "400 g/kWh", fuelDensity: 745 });
    expect(number(byPower, "runtime")).toBeCloseTo(9655.2, 6);
    expect(number(answerOf("fuel", { kit: "petrol" }), "runtime")).toBeCloseTo(15_000, 6);
    const slow = answerOf("fuel", { kit: "petrol", throttle: 0.5 });
    expect(slow.assumptions.some((one) => one.what.includes("no burn at this throttle"))).toBe(true);
    expect(codesOf(() => answerOf("fuel", { tank: "4 L" }))).toEqual(["QU-101 burn"]);
    expect(codesOf(() => answerOf("fuel", { tank: "4 L", shaftPower: "2 kW" }))).toEqual(["QU-101 bsfc"]);
    expect(codesOf(() => answerOf("fuel", { tank: "4 L", burn: "1 L/h", bsfc: "400 g/kWh" }))).toContain("QU-109 burn");
  });

  it("takes diesel as EN 590 sells it, 820 to 845 kg/m³, where the fuel or the kit's engine says so", () => {
    const given = { tank: 0.01, shaftPower: 6000, bsfc: "270 g/kWh" };
    const diesel = answerOf("fuel", { ...given, fuel: "diesel" });
    expect(number(diesel, "burn")).toBeCloseTo((6000 * 0.27) / 3.6e6 / 832, 15);
    expect(diesel.assumptions.map(({ what }) => what)).toContain("Diesel of 832 kg/m³.");
    expect(diesel["cautions"]).toContain("diesel-fuel");
    expect(diesel["cautions"]).not.toContain("petrol-vapour");
    expect(number(answerOf("fuel", given), "burn")).toBeCloseTo((6000 * 0.27) / 3.6e6 / 745, 15);
  });

  it("counts cans for a passage", () => {
    const answer = answerOf("fuel", { tank: "4 L", burn: "1.5 L/h", passage: "10 h", can: "5 L", reserve: "1 L" });
    expect(number(answer, "cansNeeded")).toBe(3);
    expect(number(answer, "passageFuel")).toBeCloseTo(0.015, 12);
  });
});

function codesOf(act: () => unknown): string[] {
  try {
    act();
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.faults.map((fault) => `${fault.code} ${fault.field}`);
    throw thrown;
  }
  return [];
}

function saidAt(lift: string): string {
  const given = { kit: "petrol", ...HEIGHTS, suction: { lift, length: "9 m" } };
  return answerOf("delivery", given)
    .assumptions.map((one) => one.what)
    .join("\n");
}

function refuelWith(reserve: unknown): number {
  return number(answerOf("fuel", { tank: "4 L", burn: "1 L/h", reserve }), "refuelAt");
}
