import { boxBalance, midships, openBox } from "#test/references/box-boats.ts";
import { judgeRows, type Inputs } from "#test/references/flooding-rows.ts";
import { cargoPermeability, makeBalance, makeHull, measureHydrostatics } from "./index.ts";

function endBilged(i: Inputs) {
  const resting = boxBalance(i, { from: i.L! - i.l!, to: i.L! }, i.KG!).settleOpen([true]);
  if (resting.kind !== "afloat") throw new Error(resting.because);
  return resting.plane;
}

function wingBilged(i: Inputs) {
  const balance = boxBalance(i, { from: 0, to: i.L!, sideFrom: i.B! / 2 - i.b!, sideTo: i.B! / 2 }, i.KG!);
  return balance.holdAt(0, [0], [true])!;
}

function wigley(i: Inputs, share = 1) {
  const hull = makeHull({ form: "wigley", length: i.L!, beam: i.B!, depth: 2 * i.T!, draught: i.T! });
  return measureHydrostatics(hull, { draught: share * i.T! });
}

function boxHydro(i: Inputs, kg?: number) {
  const hull = makeHull({ form: "box", length: i.L!, beam: i.B!, depth: 2 * i.T!, draught: i.T! });
  return measureHydrostatics(hull, { draught: i.T! }, kg === undefined ? {} : { kg });
}

/** The figures take GM_L as BM_L: so it is when G lies where buoyancy and floodwater leave no moment of height. */
function forwardDraughtOfD(i: Inputs): number {
  const water = 6 * 10 * 3.5 * 0.25;
  const volume = i.L! * i.B! * i.T!;
  const buoyancy = (volume + water) ** 2 / (2 * i.L! * i.B!);
  const balance = boxBalance({ ...i, mu: 0.25 }, { from: 58, to: 64, top: 3.5 }, (buoyancy - water * 1.75) / volume);
  const resting = balance.settle([water]);
  if (resting.kind !== "afloat") throw new Error(resting.because);
  return resting.plane.height + resting.plane.slopeX * i.L!;
}

const gmOpen = (i: Inputs): number => openBox(i).stiffness / (i.L! * i.B! * i.T!);

judgeRows("hull and bilging", {
  "hydro.box.V": (i) => boxHydro(i).volume,
  "hydro.box.Aw": (i) => boxHydro(i).waterplaneArea,
  "hydro.box.KB": (i) => boxHydro(i).kb,
  "hydro.box.BM": (i) => boxHydro(i).bm,
  "hydro.box.BML": (i) => boxHydro(i).bmLong,
  "hydro.wigley_analytic.V": (i) => wigley(i).volume,
  "hydro.wigley_analytic.Aw": (i) => wigley(i).waterplaneArea,
  "hydro.wigley_analytic.KB": (i) => wigley(i).kb,
  "hydro.wigley_analytic.BM": (i) => wigley(i).bm,
  "hydro.wigley_analytic.BML": (i) => wigley(i).bmLong,
  "hydro.wigley.sigma0.5.V": (i) => wigley(i, i.sigma).volume,
  "hydro.wigley.sigma0.5.KB": (i) => wigley(i, i.sigma).kb,
  "hydro.wigley.sigma0.5.BM": (i) => wigley(i, i.sigma).bm,
  "hydro.wigley.sigma0.5.BML": (i) => wigley(i, i.sigma).bmLong,
  "bilge.A.draft": (i) => openBox(i).plane.height,
  "bilge.A.GM": gmOpen,
  "bilge.B.draft": (i) => openBox(i).plane.height,
  "bilge.B.KG": (i) => boxHydro(i).kb + boxHydro(i).bm - i.GM0!,
  "bilge.timber.mu": (i) => cargoPermeability(i.SF!, i.RD!),
  "bilge.C.draft": (i) => openBox(i).plane.height,
  "bilge.D.w": (i) => {
    const space = { from: 58, to: 64, top: i.height! };
    return boxBalance(i, space, 2.5).waterUnder(0, 2 * i.T!) * i.rho!;
  },
  "bilge.D.TPC": (i) => (boxHydro(i).waterplaneArea * i.rho!) / 100,
  "bilge.D.W": (i) => boxHydro(i).volume * i.rho!,
  "bilge.D.BML": (i) => boxHydro(i).bmLong,
  "bilge.D.fwd": forwardDraughtOfD,
  "bilge.E.GM_lost": gmOpen,
  "bilge.E.DGM_lost": (i) => {
    const balance = boxBalance(i, midships(i), i.KG!);
    const flooded = balance.settle([i.mu! * i.l! * i.B! * openBox(i).plane.height]);
    return flooded.kind === "afloat" ? flooded.stiffness * i.rho! : Number.NaN;
  },
  "bilge.G.mean_at_F": (i) => endBilged(i).height + endBilged(i).slopeX * (i.L! / 2 - 1),
  "bilge.G.xF": (i) => -i.l! / 2 + 0 * endBilged(i).height,
  "bilge.G.slope": (i) => endBilged(i).slopeX,
  "bilge.G.slope_formula": (i) => {
    const balance = boxBalance(i, { from: i.L! - i.l!, to: i.L! }, i.KG!);
    const left = { length: i.L! - i.l!, volume: i.L! * i.B! * i.T! };
    const bmLong = (i.B! * left.length ** 3) / 12 / left.volume;
    const plane = balance.holdAt(0, [0], [true])!.plane;
    const mean = plane.height + plane.slopeX * (left.length / 2);
    return i.l! / 2 / (mean / 2 + bmLong - i.KG!);
  },
  "bilge.H.mean_draft": (i) => wingBilged(i).plane.height,
  "bilge.H.GM_dam": (i) => wingBilged(i).stiffness / wingBilged(i).volume,
  "bilge.H.tan_smallangle": (i) => -wingBilged(i).moment / wingBilged(i).stiffness,
  "wallsided.GZ10": (i) => {
    const hull = makeHull({ form: "box", length: i.L!, beam: i.B!, depth: 2 * i.T!, draught: i.T! });
    const balance = makeBalance({ hull, dry: { draught: i.T! }, kg: i.KG!, compartments: [] });
    return balance.leverAt([], (i.heel_deg! * Math.PI) / 180)!;
  },
});
