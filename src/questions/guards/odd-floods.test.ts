import { describe, expect, it } from "vitest";
import { isInputError } from "#base";
import { ask } from "../ask.ts";
import { faultsOf, HOLD, HULL, sheet } from "./test-given.ts";

const CABIN = { name: "cabin", from: "4 m", to: "8 m", permeability: 0.95 };
const LEAK = { name: "leak", kind: "hole", diameter: "40 mm", compartment: "hold" };
const SLOT = { kind: "slot", width: "10 cm", sill: "0.2 m", top: "0.5 m" };
const HATCH = { kind: "deck-edge", width: "1 m", sill: "1.5 m" };
const PUMP = { name: "kit", flow: "200 L/min", compartment: "hold" };
const CURVED = { ...PUMP, flow: undefined, dischargeHeight: "1.4 m" };
const WEDGE = { ...HULL, form: "wedge" };
const ROUNDED = { ...HULL, form: "family", blockCoefficient: 0.5 };
const DRAWN = {
  form: "offsets",
  draught: 0.7,
  stations: [0, 4, 9].map((x) => ({
    x,
    offsets: [
      { z: 0, halfBreadth: 0.2 },
      { z: 1.4, halfBreadth: 1.3 },
    ],
  })),
};

function given(more: object = {}, vessel: object = {}): object {
  const boat = { hull: HULL, kg: "0.6 m", compartments: [HOLD, CABIN], ...vessel };
  return { vessel: boat, openings: [LEAK], pumps: [], duration: "10 min", ...more };
}
const flood = (more: object = {}, vessel: object = {}) => faultsOf("flood", given(more, vessel));
const space = (more: object, hull: object = HULL) =>
  flood({ openings: [] }, { hull, compartments: [{ ...HOLD, ...more }] });
const hole = (more: object, hull: object = HULL) => flood({ openings: [{ ...LEAK, ...more }] }, { hull });
const open = (opening: object) => flood({ openings: [opening] });
const pump = (more: object) => flood({ pumps: [{ ...PUMP, ...more }] });
const event = (more: object) => flood({ pumps: [PUMP], events: [{ at: 60, ...more }] });

const SPACE = "vessel.compartments[0]";

describe("a space that sticks out of the boat", () => {
  it.each<[object, object, readonly string[]]>([
    [{ sideFrom: "-4 m", sideTo: 0 }, HULL, [`QU-152 ${SPACE}.sideFrom`]],
    [{ sideFrom: 0, sideTo: "3 m" }, HULL, [`QU-152 ${SPACE}.sideTo`]],
    [{ sideFrom: -9, sideTo: 9 }, HULL, [`QU-152 ${SPACE}.sideFrom`, `QU-152 ${SPACE}.sideTo`]],
    [{ sideFrom: "1.4 m" }, HULL, [`QU-152 ${SPACE}`]],
    [{ sideTo: "-1.4 m" }, HULL, [`QU-152 ${SPACE}`]],
    [{ sideFrom: -2 }, DRAWN, [`QU-152 ${SPACE}.sideFrom`]],
    [{ top: "5 m" }, HULL, [`QU-152 ${SPACE}.top`]],
    [{ sideFrom: 0.9, top: 0.5 }, WEDGE, [`QU-152 ${SPACE}`]],
    [{ sideFrom: "-1.3 m", sideTo: "1.3 m", top: "1.4 m" }, HULL, []],
    [{ sideFrom: 0.2, top: 0.5 }, WEDGE, []],
    [{ floor: "0.4 m", level: "0.2 m" }, HULL, [`QU-153 ${SPACE}.level`]],
    [{ floor: "0.4 m", level: 0 }, HULL, []],
  ])("%j in %o", (more, hull, faults) => {
    expect(space(more, hull)).toEqual(faults);
  });
});

describe("an opening outside the shell, or larger than what it opens", () => {
  it.each<[object, object, readonly string[]]>([
    [{ y: 1.2, height: 0.1 }, WEDGE, ["QU-154 openings[0].y"]],
    [{ y: 1.2, height: 1.35 }, WEDGE, []],
    [{ y: -1.25, height: 0.05, x: 1.1 }, ROUNDED, ["QU-154 openings[0].y"]],
    [{ y: 1.2, height: 0.05 }, DRAWN, ["QU-154 openings[0].y"]],
    [{ y: 0.22, height: 0.05 }, DRAWN, []],
    [{ diameter: undefined, area: "8 m²" }, HULL, ["QU-154 openings[0].area"]],
  ])("a hole with %j in %o", (more, hull, faults) => {
    expect(hole(more, hull)).toEqual(faults);
  });

  it.each<[object, readonly string[]]>([
    [{ ...SLOT, top: "5 m" }, ["QU-154 openings[0].top"]],
    [{ ...SLOT, width: "40 m" }, ["QU-154 openings[0].width"]],
    [{ ...HATCH, width: "150 m" }, ["QU-154 openings[0].width"]],
    [HATCH, []],
    [SLOT, []],
  ])("%j", (opening, faults) => {
    expect(open(opening)).toEqual(faults);
  });

  it("a hole is no larger than the space it leads into", () => {
    const locker = { ...HOLD, from: "1 m", to: "1.3 m", sideFrom: 0, sideTo: "30 cm", top: "30 cm" };
    expect(flood({ openings: [{ ...LEAK, diameter: "80 cm" }] }, { compartments: [locker] })).toEqual([
      "QU-154 openings[0].diameter",
    ]);
  });
});

describe("pumps and what happens to them", () => {
  const RISING = [
    { flow: 0.001, head: 1 },
    { flow: 0.01, head: 8 },
  ];
  const FALLING = RISING.map(({ head }, i) => ({ flow: RISING[1 - i]!.flow, head }));

  it.each<[object, readonly string[]]>([
    [{ ...CURVED, curve: RISING }, ["QU-130 pumps[0].curve"]],
    [{ ...CURVED, curve: FALLING }, []],
    [
      { ...CURVED, curve: FALLING, dischargeHeight: "0.2 m", suctionHeight: "0.5 m" },
      ["QU-155 pumps[0].dischargeHeight"],
    ],
  ])("%j", (more, faults) => {
    expect(pump(more)).toEqual(faults);
  });

  it.each<[object, readonly string[]]>([
    [{ kind: "patch", name: "leak", share: 5 }, ["QU-132 events[0].share"]],
    [{ kind: "opens", name: "leak", share: 5 }, []],
    [{ kind: "pump-stops", name: "kit", share: 1 }, ["QU-132 events[0].share"]],
    [{ kind: "pump-fails", name: "kit", share: 0 }, []],
    [{ kind: "throttle", name: "kit", share: 9 }, ["QU-132 events[0].share"]],
  ])("an event %j", (more, faults) => {
    expect(event(more)).toEqual(faults);
  });

  it("a mark lies in its space", () => {
    expect(flood({ marks: [{ compartment: "hold", level: "9 m" }] })).toEqual(["QU-154 marks[0].level"]);
    expect(flood({ marks: [{ compartment: "hold", level: "1 m" }] })).toEqual([]);
  });
});

describe("one name for two things", () => {
  it("is refused however it is spaced, and on scene too", () => {
    expect(flood({}, { compartments: [HOLD, { ...CABIN, name: "hold " }] })).toEqual([
      "QU-150 vessel.compartments[1].name",
    ]);
    expect(flood({}, { compartments: [HOLD, { ...CABIN, name: " " }] })).toEqual([
      "QU-104 vessel.compartments[1].name",
    ]);
  });
});

/** What a fault says to somebody who reads it. */
function saidOf(asked: object): readonly string[] {
  try {
    ask("flood", asked);
  } catch (thrown) {
    if (isInputError(thrown))
      return thrown.faults.map(({ field, allowed, remedy }) => `${field}: ${allowed}. ${remedy}`);
    throw thrown;
  }
  return [];
}

describe("a fault says what is allowed and what to do", () => {
  it.each<[string, object, RegExp]>([
    ["not a number", given({}, { compartments: [{ ...HOLD, sideFrom: Number.NaN }] }), /Port limit.*\[m\]/],
    ["endless", given({ openings: [{ ...LEAK, height: Infinity }] }), /Centre above the keel.*\[m\]/],
    ["a form there is not", given({}, { hull: { ...HULL, form: "catamaran" } }), /"box", "wedge"/],
    [
      "a share as so many in a hundred",
      given({}, { compartments: [{ ...HOLD, permeability: 85 }] }),
      /at most 1\. .*0\.85.*85 %/,
    ],
    ["no space", given({ openings: [] }, { compartments: [] }), /at least 1 entry/],
    ["afloat and held at once", given({}, { outsideLevel: 1 }), /does not go with/],
  ])("%s", (_, asked, said) => {
    const [first] = saidOf(asked);
    expect(first).toMatch(said);
    expect(first).not.toMatch(/Invalid|\b1 1\b|Did you mean "outsideLevel"/);
  });

  it("two spaces of one name on scene", () => {
    const engine = { name: "engine room", sort: "engine-room", part: "aft" };
    const twice = [engine, { ...engine, sort: "cabin", part: "middle" }];
    expect(faultsOf("on-scene", sheet({ spaces: twice }))).toEqual(["QU-150 spaces[1].name"]);
  });
});
