import { solveOde } from "#numerics";
import { boxBalance, midships, openBox } from "#test/references/box-boats.ts";
import { RESTING, SHARP, eventAt, hole, levelAt, steadyPump, waterAt } from "#test/references/flood-readers.ts";
import { judgeRows, type Inputs } from "#test/references/flooding-rows.ts";
import {
  makeHull,
  measureHydrostatics,
  riseWithWater,
  signedRoot,
  simulateFlood,
  strengthOf,
  type FloodCase,
  type FloodRun,
} from "./index.ts";

/** Box boat with one space amidships and a hole at its floor. */
function box(i: Inputs, more: Partial<FloodCase> = {}): FloodRun {
  const half = i.comp_length! / 2;
  return simulateFlood({
    vessel: {
      kind: "floating",
      hull: { form: "box", length: i.L!, beam: i.B!, depth: i.D ?? 2 * i.T0!, draught: i.T0! },
      kg: 0.4,
      compartments: [{ name: "hold", from: i.L! / 2 - half, to: i.L! / 2 + half, permeability: i.mu! }],
    },
    openings: [{ name: "hole", opening: hole(i.d!), into: "hold" }],
    pumps: i.Qp === undefined ? [] : [steadyPump(i.Qp, { from: i.pump_starts ?? 0 })],
    duration: 7200,
    accuracy: SHARP,
    ...more,
  });
}

const floodableArea = (i: Inputs): number => i.mu! * i.comp_length! * i.B!;

const effectiveOf = (i: Inputs): number => 1 / (1 / floodableArea(i) - 1 / (i.L! * i.B!));

function timeToWater(i: Inputs, water: number): number {
  const level = water / floodableArea(i);
  return eventAt(box(i, { marks: [{ compartment: "hold", level }] }), "mark");
}

/** Linear hydrostatics: what a cubic metre aft does to the sea's level at the forward hole. */
const gammaOf = (i: Inputs): number =>
  -riseWithWater(
    makeHull({ form: "box", length: i.L!, beam: i.B!, depth: 2 * i.T0!, draught: i.T0! }),
    { draught: i.T0! },
    { water: { x: i.L! / 2 + i.x_comp! }, seen: { x: i.L! / 2 + i.x_hole! } },
  );

function liftsClear(i: Inputs): number {
  const [gamma, head, strength] = [gammaOf(i), i.T0! - i.z_hole!, strengthOf(hole(i.d!))];
  const run = solveOde(
    {
      from: 0,
      to: 3000,
      start: [0],
      rate: (_t, y, out) => void (out[0] = strength * signedRoot(head - gamma * y[0]!, 1e-9)),
    },
    {
      relative: 1e-11,
      absolute: 1e-13,
      events: [
        {
          name: "nearly clear",
          value: (_t, y) => head - gamma * y[0]! - 1e-4 * head,
          direction: "falling",
          terminal: true,
        },
      ],
    },
  );
  return run.t;
}

/**
 * The same boat with exact hydrostatics; the water kept to a metre of length so that it hardly runs. The rows do not
 * say how high the weights lie: 0.32 m is taken, a little under the centre of buoyancy, for boat and water together.
 */
function liftsClearExactly(i: Inputs, marks: FloodCase["marks"] = []): FloodRun {
  const at = i.L! / 2 + i.x_comp!;
  return simulateFlood({
    vessel: {
      kind: "floating",
      hull: { form: "box", length: i.L!, beam: i.B!, depth: 1.6, draught: i.T0! },
      kg: 0.32,
      compartments: [{ name: "hold", from: at - 0.5, to: at + 0.5, permeability: 1 }],
      lostWhen: "foundered",
    },
    openings: [{ name: "hole", opening: hole(i.d!, i.z_hole!), into: "hold", x: i.L! / 2 + i.x_hole! }],
    pumps: [],
    duration: 3000,
    marks,
    accuracy: RESTING,
  });
}

function wigley(i: Inputs, share = 1) {
  const hull = makeHull({ form: "wigley", length: i.L!, beam: i.B!, depth: 2 * i.T!, draught: i.T! });
  return measureHydrostatics(hull, { draught: share * i.T! });
}

function wigleyFloods(i: Inputs): FloodRun {
  return simulateFlood({
    vessel: {
      kind: "floating",
      hull: { form: "wigley", length: i.L!, beam: i.B!, depth: i.depth_at_loss!, draught: i.design_draft! },
      draught: i.T0!,
      kg: 0.5,
      compartments: [{ name: "hold", from: 0, to: i.L!, permeability: i.mu! }],
    },
    openings: [{ name: "hole", opening: hole(i.d!), into: "hold" }],
    pumps: [],
    duration: 3600,
    accuracy: SHARP,
  });
}

judgeRows("floating", {
  "S06.A_eff": (i) => {
    const hull = makeHull({ form: "box", length: i.L!, beam: i.B!, depth: 2, draught: i.T0! });
    const amidships = { x: i.L! / 2 };
    const rise = riseWithWater(hull, { draught: i.T0! }, { water: amidships, seen: amidships });
    return 1 / (1 / floodableArea(i) - rise);
  },
  "S06.T_final": (i) => openBox({ ...i, T: i.T0!, l: i.comp_length!, KG: 0.4 }).plane.height,
  "S06.w_final": (i) => floodableArea(i) * openBox({ ...i, T: i.T0!, l: i.comp_length!, KG: 0.4 }).plane.height,
  "S06.t_head_1pct": (i) => timeToWater(i, (1 - 0.01) * effectiveOf(i) * i.T0!),
  "S06.t_final": (i) => timeToWater(i, (1 - 0.01) * effectiveOf(i) * i.T0!) / (1 - Math.sqrt(0.01)),
  "S07.w_120": (i) => waterAt(box(i), 120),
  "S07.w_900": (i) => waterAt(box(i, { step: 60 }), 900),
  "S07.w_eq": (i) => waterAt(box(i, { duration: 36_000 }), 36_000),
  "S07.h_eq": (i) => levelAt(box(i, { duration: 36_000 }), 36_000),
  "S07.T_eq": (i) => box(i, { duration: 36_000 }).series.at(-1)!.attitude!.draught,
  "S08.w_loss": (i) => box({ ...i, Qp: 0 }).series.at(-1)!.water.hold!,
  "S08.T_final_if_it_could": (i) => {
    const tall = boxBalance({ ...i, T: i.T0!, B: i.B! }, midships({ ...i, l: i.comp_length! }), 0.2);
    const resting = tall.settleOpen([true]);
    return resting.kind === "afloat" ? resting.plane.height : Number.NaN;
  },
  "S08.t_loss_no_pump": (i) => eventAt(box({ ...i, Qp: 0 }), "lost"),
  "S08.w_at_pump_start": (i) => waterAt(box(i, { step: 60 }), i.pump_starts!),
  "S08.hold_pump_needed_at_start": (i) => {
    const run = box(i, { step: 60 });
    return run.series.find((sample) => sample.at === i.pump_starts!)!.inflow;
  },
  "S12.gamma": gammaOf,
  "S12.w_emerge": (i) => (i.T0! - i.z_hole!) / gammaOf(i),
  "S12.t_head_1e_4": liftsClear,
  "S12.t_emerge": (i) => liftsClear(i) / (1 - Math.sqrt(1e-4)),
  "S12.finite_angle_w_emerge": (i) => liftsClearExactly(i).series.at(-1)!.water.hold!,
  "S12.finite_angle_t_head_1e_4": (i) => {
    const last = liftsClearExactly(i).series.at(-1)!.levels.hold!;
    const level = (1 - 1e-4) * last;
    return eventAt(liftsClearExactly(i, [{ compartment: "hold", level }]), "mark");
  },
  "S18.V_T0": (i) => wigley({ ...i, T: i.design_draft! }, i.T0! / i.design_draft!).volume,
  "S18.w_loss": (i) => wigleyFloods(i).series.at(-1)!.water.hold!,
  "S18.h_at_loss": (i) => wigleyFloods(i).series.at(-1)!.levels.hold!,
  "S18.t_loss": (i) => eventAt(wigleyFloods(i), "lost"),
});
