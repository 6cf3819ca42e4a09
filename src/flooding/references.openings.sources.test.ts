import { STANDARD_GRAVITY } from "#water";
import { SHARP, disc, eventAt, hole } from "#test/references/flood-readers.ts";
import { judgeRows, type Inputs, type Judged } from "#test/references/flooding-rows.ts";
import published from "#test/references/flooding.json";
import { circularHoleRatio, flowThrough, printedCoefficient, simulateFlood, unwinCoefficient } from "./index.ts";

const GALLON = 231 * 0.0254 ** 3;

const slot = (i: Inputs) => ({ kind: "slot", width: i.b!, sill: i.sill!, top: i.top! }) as const;

const through =
  (outside: number, inside: number): Judged =>
  (i) =>
    flowThrough(slot(i), { outside, inside, linearBelow: 1e-9 });

function filledThroughSlot(i: Inputs, level: number): number {
  const run = simulateFlood({
    vessel: { kind: "fixed", outsideLevel: i.fill_outside_level!, compartments: [{ name: "hold", area: i.Ap! }] },
    openings: [{ name: "slot", opening: slot(i), into: "hold" }],
    pumps: [],
    duration: 300,
    marks: [{ compartment: "hold", level }],
    accuracy: SHARP,
  });
  return eventAt(run, "mark");
}

const flowOf: Judged = (i) =>
  flowThrough(
    { ...hole(i.d_m!), ...(i.Cd === undefined ? {} : { dischargeCoefficient: i.Cd }) },
    { outside: i.depth_m!, inside: 0 },
  );

const gallonRows = published.filter((row) => row.id.startsWith("gpm-"));

judgeRows("openings", {
  ...Object.fromEntries(gallonRows.map((row) => [row.id, flowOf])),
  "cd-eb1911-circ-1ft": (i) => printedCoefficient("circle", i.head_m!),
  "cd-eb1911-circ-4ft": (i) => printedCoefficient("circle", i.head_m!),
  "cd-eb1911-circ-10ft": (i) => printedCoefficient("circle", i.head_m!),
  "cd-eb1911-square-1ft": (i) => printedCoefficient("square", i.head_m!),
  "cd-eb1911-square-10ft": (i) => printedCoefficient("square", i.head_m!),
  "cd-eb1911-rect16-1ft": (i) => printedCoefficient("upright slot 16:1", i.head_m!),
  "cd-unwin-4ft-2in": (i) => unwinCoefficient(i.head_m!, i.d_m!),
  "cd-unwin-1ft-1in": (i) => unwinCoefficient(i.head_m!, i.d_m!),
  "cd-eb1911-thin-plate": () => printedCoefficient("circle", 0.3048),
  "cd-molesworth-tube": () => {
    const tube = { kind: "pipe", bore: 0.05, length: 0.0001, height: 0 } as const;
    return flowThrough(tube, { outside: 1, inside: 0 }) / (disc(0.05) * Math.sqrt(2 * STANDARD_GRAVITY));
  },
  "circ-vertical-just-covered": (i) => circularHoleRatio(i.R_over_h!),
  "rule-3600": (i) => {
    const opening = { kind: "hole", area: 0.3048 ** 2, height: 0, dischargeCoefficient: i.Cd! } as const;
    return flowThrough(opening, { outside: 0.3048, inside: 0 }) / (GALLON / 60);
  },
  "rule-20DsqrtH-is-wrong": (i) => {
    const opening = { ...hole(i.d_m!), dischargeCoefficient: 1 };
    return (20 * (i.d_m! / 0.0254) * (GALLON / 60)) / flowThrough(opening, { outside: 0.3048, inside: 0 });
  },
  "S15.weir_eta0p7_dry": through(0.7, 0),
  "S15.full_eta1p1_dry": through(1.1, 0),
  "S15.partial_eta1p1_hi0p65": through(1.1, 0.65),
  "S15.drowned_eta1p1_hi0p95": through(1.1, 0.95),
  "S15.weir_drowned_eta0p7_hi0p6": through(0.7, 0.6),
  "S15.fill_t_0p7": (i) => filledThroughSlot(i, 0.7),
  "S15.fill_t_1p0": (i) => filledThroughSlot(i, 1.0),
});
