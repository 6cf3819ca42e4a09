import { judgeRows, type Inputs } from "#test/references/flooding-rows.ts";
import { PERMEABILITIES, equalisationTime, freeSurfaceLoss, joinedResistance, riseOfGravity } from "./index.ts";

function crossing(i: Inputs): number {
  return equalisationTime({ water: i.W!, area: i.S!, resistance: i.sum_k!, head: i.H0!, finalHead: i.hf! });
}

judgeRows("surfaces and ducts", {
  "fs.derrett.GG1": (i) => {
    const taken = { mass: (i.l! * i.b! * i.depth! * i.rho! * 1000) / 2, kg: (3 * i.depth!) / 4 };
    return riseOfGravity({ mass: i.W! * 1000, kg: i.KG! }, taken);
  },
  "fs.derrett.GGv": (i) => {
    const left = i.W! * 1000 - 153_750;
    return freeSurfaceLoss({ length: i.l!, breadth: i.b!, density: i.rho! * 1000 }, left);
  },
  "fs.uscg0449": (i) => {
    const surface = { length: i.l!, breadth: i.b!, count: i.n!, density: i.sg_tank! * 1000 };
    return freeSurfaceLoss(surface, i.displacement_t! * 1000);
  },
  "fs.gateA": (i) => freeSurfaceLoss({ length: i.l!, breadth: i.b!, density: 1 }, 1),
  "crossflood.1": (i) => crossing(i),
  "crossflood.3": (i) => crossing(i),
  "crossflood.ksum": (i) =>
    joinedResistance([
      { resistance: i.k1!, area: i.S1! },
      { resistance: i.k2!, area: i.S2! },
    ]),
  "perm.stores/cargo full": () => PERMEABILITIES.stores,
  "perm.accommodation": () => PERMEABILITIES.accommodation,
  "perm.machinery": () => PERMEABILITIES.machinery,
});
