import { RESTING, SHARP, eventAt, hole, levelAt, steadyPump } from "#test/references/flood-readers.ts";
import { judgeRows, type Inputs } from "#test/references/flooding-rows.ts";
import { deliveryAt, flowThrough, simulateFlood, strengthOf, type FloodCase, type FloodRun } from "./index.ts";

/** Held at a level, one prismatic space, one hole at its floor. */
function held(i: Inputs, more: Partial<FloodCase> = {}): FloodRun {
  return simulateFlood({
    vessel: { kind: "fixed", outsideLevel: i.H!, compartments: [{ name: "hold", area: i.Ap!, level: i.h0 ?? 0 }] },
    openings: [{ name: "hole", opening: hole(i.d!), into: "hold" }],
    pumps: i.Qp === undefined ? [] : [steadyPump(i.Qp)],
    duration: 3600,
    accuracy: SHARP,
    ...more,
  });
}

function timeToLevel(i: Inputs, level: number): number {
  return eventAt(held(i, { marks: [{ compartment: "hold", level }] }), "mark");
}

const settledLevel = (i: Inputs): number => i.H! - (i.Qp! / strengthOf(hole(i.d!))) ** 2;

/** Two spaces joined by an opening below both levels. */
function joined(i: Inputs, more: Partial<FloodCase> = {}): FloodRun {
  return simulateFlood({
    vessel: {
      kind: "fixed",
      outsideLevel: 0,
      compartments: [
        { name: "hold", area: i.A1!, level: i.h1! },
        { name: "next", area: i.A2!, level: i.h2! },
      ],
    },
    openings: [{ name: "gap", opening: { kind: "hole", area: i.A!, height: 0 }, from: "hold", into: "next" }],
    pumps: [],
    duration: 400,
    accuracy: SHARP,
    ...more,
  });
}

const restOf = (i: Inputs): number => (i.A1! * i.h1! + i.A2! * i.h2!) / (i.A1! + i.A2!);

const joinedAfter = (i: Inputs): number => restOf(i) + 0.01 * (i.h1! - i.h2!) * (i.A2! / (i.A1! + i.A2!));

const bendOf = (i: Inputs): number => (i.shutoff_head! - i.lift_ref!) / i.Q_at_7m! ** 2;

const curved = (i: Inputs) =>
  ({ kind: "parabola", shutOffHead: i.shutoff_head!, bend: bendOf(i), dischargeHeight: i.discharge_z! }) as const;

function pumpedOut(i: Inputs): FloodRun {
  return simulateFlood({
    vessel: { kind: "fixed", outsideLevel: 0, compartments: [{ name: "hold", area: i.Ap!, level: i.h0! }] },
    openings: [],
    pumps: [{ name: "pump", compartment: "hold", delivery: curved(i), suctionHeight: i.h1! }],
    duration: 3000,
    accuracy: SHARP,
  });
}

function twoSpaces(i: Inputs, duration: number, accuracy = SHARP): FloodRun {
  return simulateFlood({
    vessel: {
      kind: "fixed",
      outsideLevel: i.H!,
      compartments: [
        { name: "hold", area: i.A1!, level: i.h1_0! },
        { name: "next", area: i.A2!, level: i.h2_0! },
      ],
    },
    openings: [
      { name: "sea", opening: hole(i.d_sea!), into: "hold" },
      { name: "between", opening: hole(i.d_between!), from: "hold", into: "next" },
    ],
    pumps: [steadyPump(i.Qp!)],
    duration,
    step: 300,
    accuracy,
  });
}

judgeRows("held levels", {
  "S01.K": (i) => strengthOf(hole(i.d!)),
  "S01.Q0": (i) => flowThrough(hole(i.d!), { outside: i.H!, inside: 0 }),
  "S01.t_level_0p75H": (i) => timeToLevel(i, 0.75 * i.H!),
  "S01.t_head_1e_4": (i) => timeToLevel(i, i.H! * (1 - 1e-4)),
  "S01.t_full": (i) => timeToLevel(i, i.H! * (1 - 1e-4)) / (1 - Math.sqrt(1e-4)),
  "S03.h_eq": settledLevel,
  "S03.h_300": (i) => levelAt(held(i), 300),
  "S03.h_600": (i) => levelAt(held(i), 600),
  "S03.h_3600": (i) => levelAt(held(i), 3600),
  "S03.t_to_99pct_of_h_eq": (i) => timeToLevel(i, 0.99 * settledLevel(i)),
  "S03.e_fold_s": (i) => {
    const flowAt = (level: number): number => flowThrough(hole(i.d!), { outside: i.H!, inside: level });
    const level = settledLevel(i);
    return (-i.Ap! * 2e-5) / (flowAt(level + 1e-5) - flowAt(level - 1e-5));
  },
  "S04.h_120": (i) => levelAt(held(i), 120),
  "S04.h_600": (i) => levelAt(held(i), 600),
  "S04.h_1800": (i) => levelAt(held(i), 1800),
  "S04.h_eq": settledLevel,
  "S10.h_final": (i) => levelAt(joined(i, { accuracy: RESTING }), 400),
  "S10.t_diff_1pct": (i) => eventAt(joined(i, { marks: [{ compartment: "hold", level: joinedAfter(i) }] }), "mark"),
  "S10.h1_then": joinedAfter,
  "S10.t_equal": (i) =>
    eventAt(joined(i, { marks: [{ compartment: "hold", level: joinedAfter(i) }] }), "mark") / (1 - Math.sqrt(0.01)),
  "S13.c": bendOf,
  "S13.t_empty": (i) => eventAt(pumpedOut(i), "suction-dry"),
  "S13.Q_start": (i) => deliveryAt(curved(i), i.h0!),
  "S13.Q_end": (i) => deliveryAt(curved(i), i.h1!),
  "S16.h1_300": (i) => levelAt(twoSpaces(i, 900), 300),
  "S16.h2_300": (i) => levelAt(twoSpaces(i, 900), 300, "next"),
  "S16.h1_900": (i) => levelAt(twoSpaces(i, 900), 900),
  "S16.h_eq": (i) => levelAt(twoSpaces(i, 36_000, RESTING), 36_000),
});
