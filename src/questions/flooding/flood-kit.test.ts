import { isInputError } from "#base";
import type { Pattern } from "#kit";
import { describe, expect, it } from "vitest";
import { ask } from "../ask.ts";

/** Only what the question reads; the loader's own tests make whole ones. */
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
const PUMP = {
  curve: [
    { flow: 0, head: 24 },
    { flow: 0.005, head: 19 },
    { flow: 0.009, head: 6 },
  ],
  greatestLift: 7.5,
};
const DISCHARGE = { length: 8, bore: 0.0508, hazenWilliams: 140, fittings: 2.4 };
const SUCTION = { length: 4.6, bore: 0.0508, roughness: 5e-5, fittings: 2.3 };
const PROOF = { grounds: 0.75, notes: 0.9 };
const BURNS = { tank: 0.0012, fuel: "petrol", burn: [{ throttle: 1, burn: 4e-7 }] } as NonNullable<Pattern["engine"]>;
const PATTERNS: readonly Pattern[] = [
  {
    ...BARE,
    id: "petrol",
    hydraulics: { pump: PUMP, suction: SUCTION, discharge: DISCHARGE, proof: PROOF },
    engine: BURNS,
  },
  { ...BARE, id: "sunk", hydraulics: { pump: PUMP, discharge: DISCHARGE, proof: PROOF } },
  { ...BARE, id: "dry" },
];
const context = { patterns: (id: string) => PATTERNS.find((pattern) => pattern.id === id) };

interface Answer {
  readonly series: readonly { readonly at: number; readonly pumped: number; readonly levels: Record<string, number> }[];
  readonly events: readonly { readonly kind: string; readonly at: number }[];
  readonly assumptions: readonly { readonly what: string }[];
}

/** A basin as large as a lake: the lift stays what it is. */
function flooded(pump: object, level = 1): Answer {
  const vessel = { outsideLevel: 2, compartments: [{ name: "hold", area: 1e4, level }] };
  return ask("flood", { vessel, openings: [], pumps: [pump], duration: "1 h", step: "1 min" }, context) as Answer;
}

function faultsOf(pump: object): readonly string[] {
  try {
    flooded(pump);
  } catch (thrown) {
    if (isInputError(thrown)) return thrown.faults.map(({ code, field }) => `${code} ${field}`);
    throw thrown;
  }
  return [];
}

describe("a kit's pattern that stands for a pump in a flood (against the answers of `delivery`)", () => {
  it.each([1, 2.5, 4])("moves at a lift of %d m what `delivery` says of it, suction hose and all", (lift) => {
    const asked = { kit: "petrol", suction: { lift }, discharge: { rise: 0 } };
    const { flow } = ask("delivery", asked, context) as { flow: number };
    const { series } = flooded({ kit: "petrol", dischargeHeight: 1 + lift });
    expect(series[0]!.pumped / flow).toBeCloseTo(1, 9);
  });

  it("hung in the water it pumps up to its discharge", () => {
    const { flow } = ask("delivery", { kit: "sunk", suction: { lift: 0 }, discharge: { rise: 3 } }, context) as {
      flow: number;
    };
    expect(flooded({ kit: "sunk", dischargeHeight: 4 }).series[0]!.pumped / flow).toBeCloseTo(1, 9);
  });

  it("moves nothing from deeper than it can lift", () => {
    expect(flooded({ kit: "petrol", dischargeHeight: 11 }).series[0]!.pumped).toBe(0);
  });

  it("stands still to refuel when its own tank is empty: tank / burn = 0.0012 / 4e-7 s", () => {
    const { events } = flooded({ kit: "petrol", dischargeHeight: 3 });
    expect(events.find(({ kind }) => kind === "refuel")!.at).toBeCloseTo(3000, 6);
    expect(flooded({ kit: "sunk", dischargeHeight: 4 }).events).toEqual([]);
  });

  it("discharges over her deck edge where no height is told, and says so", () => {
    const hull = { form: "box", length: 9, beam: 3, depth: 1.5, draught: 0.7 };
    const vessel = { hull, kg: 0.6, compartments: [{ name: "hold", from: 3, to: 6, permeability: 0.9, level: 0.5 }] };
    const given = (more: object) => ({ vessel, openings: [], pumps: [{ kit: "petrol", ...more }], duration: 60 });
    const left = ask("flood", given({}), context) as Answer;
    expect(left).toEqual(ask("flood", given({ dischargeHeight: 1.5 }), context));
    expect(left.assumptions.map(({ what }) => what).join()).toContain("1.5 m above the keel");
  });

  it.each([
    ["an unknown one", { kit: "nobody's", dischargeHeight: 3 }, ["QU-107 pumps[0].kit"]],
    ["one and a flow", { kit: "petrol", flow: 0.01, dischargeHeight: 3 }, ["QU-261 pumps[0].flow"]],
    ["one with no height to lift to, where there is no deck", { kit: "petrol" }, ["QU-130 pumps[0].dischargeHeight"]],
    ["one whose pattern states no pump", { kit: "dry", dischargeHeight: 3 }, ["QU-260 pumps[0].kit"]],
  ])("refuses %s", (_, pump, faults) => {
    expect(faultsOf(pump)).toEqual(faults);
  });
});

describe("cans before launch", () => {
  const CALL = { boat: "motor boat", length: 10, distance: 10_000, holeDiameter: 0.05 };
  const asked = (more: object) =>
    ask("kits-needed", { ...CALL, ...more }, context) as {
      readonly cansPerKit: number;
      readonly assumptions: readonly { readonly what: string }[];
    };
  const tanks = ({ assumptions }: ReturnType<typeof asked>) =>
    assumptions.filter(({ what }) => what.startsWith("Tanks not known"));

  it("are none for a kit without an engine, and a guess that is told where no kit is named", () => {
    expect(asked({ kit: "sunk" }).cansPerKit).toBe(0);
    expect(asked({ kit: "petrol" }).cansPerKit).toBe(1);
    expect(tanks(asked({ kit: "petrol" }))).toEqual([]);
    expect(tanks(asked({}))).toHaveLength(1);
  });
});
