import { describe, expect, it } from "vitest";
import {
  FIRE_HOSE_COEFFICIENTS,
  FITTING_LOSSES,
  PETROL_DENSITY,
  PRACTICE_LIFT,
  burnOfPower,
  colebrookFriction,
  equivalentLengthLoss,
  findOperation,
  fuelPlan,
  greatestPumpHeight,
  hoseLoss,
  narrowingLoss,
  npshAvailable,
  powerCorrection,
  powerExponent,
  pressureAfterStrokes,
  primingOf,
  pumpCurve,
  pumpingOf,
  scaleDuty,
  shaftPower,
  strokesToPressure,
  swameeJainFriction,
  wideningLoss,
  type DeliveryCase,
  type Hose,
  type PreparedCase,
  type PumpCurve,
} from "#hydraulics";
import { findRoot, straightSegments } from "#numerics";
import {
  KELVIN_OF_ICE,
  STANDARD_GRAVITY,
  densityOnIpts68,
  geopotentialAltitude,
  pureWaterViscosity,
  saturationPressure,
  saturationTemperature,
  seaWaterViscosity,
  standardPressure,
  vapourPressureRatio,
  waterAt,
  waterDensity,
  waterVapourPressure,
  waterViscosity,
} from "#water";
import { EPANET_FORMULAE } from "../judges/epanet.ts";
import rows from "./hydraulics.json" with { type: "json" };

interface Row {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: unknown;
  readonly tolerance: number;
  readonly tolerance_kind: string;
  readonly source: string;
  readonly confirmed: string;
}

/** A published value against ours: pairs of got and want. */
type Check = (row: Row) => readonly (readonly [number, number])[];

const ROWS = rows as readonly Row[];

/** Rows no method of ours answers, each with its reason. */
const NOT_OURS: Readonly<Record<string, string>> = {
  "VAP-25": "Weiss and Price 1980 is not used: sea water is IF97 lowered by Sharqawy's ratio",
  "VAP-27": "Weiss and Price 1980 is not used",
  "VAP-28": "Weiss and Price 1980 is not used",
  "VIS-01": "the full IAPWS 2008 equation in density and temperature is not used, only its form for 0.1 MPa",
  "VIS-02": "the full IAPWS 2008 equation is not used",
  "VIS-04": "steam; the full IAPWS 2008 equation is not used",
  "VIS-28": "Millero 1974 is another correlation; the value used, Sharqawy's, is 0.45 % higher",
  "FRI-13": "Churchill 1977 is not used: laminar and Colebrook-White are joined instead",
  "FRI-15": "Churchill 1977 is not used",
  "FRI-16": "Churchill 1977 is not used",
  "MIN-24": "a published spread of check valves, quoted in docs/methods/hose-loss.md; nothing computes it",
  "MIN-25": "no value was found for cam couplings, and none is given",
  "PMP-14": "a table without a result; PMP-16 is computed from it",
  "PMP-21": "a rule without a number; every EPA row with a reduced speed follows it",
  "ENG-10": "heating values are not used: fuel goes by volume or by brake specific consumption",
  "ENG-12": "heating values are not used",
  "ENG-14": "best-point consumption from memory; nothing is assumed where no burn is given",
  "ENG-18": "ISO 3046-1 is not used; its row says not to test on it",
};

const number = (row: Row, name: string): number => {
  const value = row.inputs[name];
  if (typeof value !== "number") throw new Error(`${row.id} has no number ${name}`);
  return value;
};
const want = (row: Row): number => {
  if (typeof row.expected !== "number") throw new Error(`${row.id} expects no single number`);
  return row.expected;
};
const one =
  (got: (row: Row) => number): Check =>
  (row) => [[got(row), want(row)]];
const wanted = (row: Row, name: string): number => (row.expected as Record<string, number>)[name]!;
const kelvin = (row: Row): number => KELVIN_OF_ICE + number(row, "temp_C");
const temperature = (row: Row): number => ("T_K" in row.inputs ? number(row, "T_K") : kelvin(row));

const kinematic = (t: number, s: number): number => waterViscosity(t, s) / waterDensity(t, s);

const FITTING_OF_ROW: Readonly<Record<string, string>> = {
  "MIN-01": "swing-check-valve",
  "MIN-02": "short-elbow",
  "MIN-04": "elbow-45",
  "MIN-05": "square-entrance",
  "MIN-06": "exit",
  "MIN-08": "projecting-entrance",
  "MIN-09": "rounded-entrance",
  "MIN-11": "flanged-elbow",
  "MIN-12": "long-flanged-elbow",
  "MIN-14": "foot-valve-hinged",
};
const fittingLoss: Check = one((row) => FITTING_LOSSES.find((loss) => loss.id === FITTING_OF_ROW[row.id])!.k);

const STROKES: Check = one((row) => {
  const lift = number(row, "lift_m");
  const outcome = primingOf({
    lift,
    hose: { bore: number(row, "bore_m"), length: lift },
    deadVolume: number(row, "dead_volume_m3"),
    stroke: number(row, "stroke_m3"),
    strokeRate: 1,
    airLeak: 0,
    water: { density: number(row, "rho_kg_m3"), vapourPressure: 0, viscosity: 1e-3 },
    airPressure: number(row, "p0_Pa"),
  });
  return outcome.kind === "primes" ? outcome.wholeStrokes : Number.NaN;
});

/** A rig whose losses are given outright. */
function plainRig(curve: Pick<PumpCurve, "head" | "lastFlow">, staticHead: number, loss: (flow: number) => number) {
  const rig: PreparedCase = {
    curve: { form: "segments", shutOff: curve.head(0), knots: [0, curve.lastFlow], firstFlow: 0, drooping: false, ...curve },
    pumps: 1,
    staticHead,
    suctionLoss: loss,
    dischargeLoss: () => 0,
    excess: (flow) => curve.head(flow) - staticHead - loss(flow),
    npshRequired: () => 0,
    surfaceHead: 10,
    hasSuction: false,
  };
  const operation = findOperation(rig);
  return operation.kind === "operates" ? operation.points[0].flow : Number.NaN;
}

const parabola = (h0: number, k: number) => ({ head: (q: number) => h0 - k * q * q, lastFlow: Math.sqrt(h0 / k) });

interface PipeOfRow {
  readonly D_m: number;
  readonly L_m: number;
  readonly f: number;
}
const fixedFriction = ({ D_m: d, L_m: l, f }: PipeOfRow): number => (8 * f * l) / (STANDARD_GRAVITY * Math.PI ** 2 * d ** 5);

const fixedFrictionDuty: Check = one((row) => {
  const pumps = number(row, "pumps");
  const k =
    fixedFriction(row.inputs["suction"] as PipeOfRow) + fixedFriction(row.inputs["discharge"] as PipeOfRow);
  const curve = parabola(pumps * number(row, "pump_H0_m"), pumps * number(row, "pump_k_s2_m5"));
  return plainRig(curve, number(row, "static_m"), (q) => k * q * q);
});

const tablePower: Check = one((row) => {
  const table = ROWS.find((other) => other.id === row.inputs["table"])!.inputs as Record<string, number[]>;
  const curve = pumpCurve(table["Q_m3_s"]!.map((flow, i) => ({ flow, head: table["H_m"]![i]! })));
  const efficiency = straightSegments(table["Q_m3_s"]!.map((x, i) => ({ x, y: table["eta"]![i]! })));
  const flow = plainRig(curve, 1.8 + 1.4, (q) => 5206 * q * q);
  return shaftPower(flow, curve.head(flow), number(row, "rho_kg_m3"), number(row, "g_m_s2"), efficiency.value(flow));
});

interface EpaHose {
  readonly length_m: number;
  readonly diameter_m: number;
  readonly K: number;
  readonly roughness_m?: number;
  readonly hazen_C?: number;
}
const epaHose = (hose: EpaHose): Hose => ({
  bore: hose.diameter_m,
  length: hose.length_m,
  fittings: hose.K,
  resistance:
    hose.roughness_m === undefined
      ? { kind: "hazen-williams", coefficient: hose.hazen_C! }
      : { kind: "roughness", roughness: hose.roughness_m },
});
function epaCase(inputs: Readonly<Record<string, unknown>>): DeliveryCase {
  const points = inputs["pump_curve"] as readonly { readonly Q_m3_s: number; readonly H_m: number }[];
  const viscosity = 1000 * ((inputs["kinematic_viscosity_m2_s"] as number | undefined) ?? 1e-6);
  return {
    water: { density: 1000, viscosity, vapourPressure: 0 },
    airPressure: 101_325,
    pump: { curve: points.map(({ Q_m3_s: flow, H_m: head }) => ({ flow, head })) },
    speedRatio: inputs["relative_speed"] as number,
    lift: -(inputs["source_level_m"] as number),
    suction: epaHose(inputs["suction"] as EpaHose),
    rise: inputs["target_level_m"] as number,
    discharge: epaHose(inputs["discharge"] as EpaHose),
    exitLoss: false,
    pumps: inputs["pumps_in_parallel"] as number,
  };
}
const epaDuty: Check = (row) => {
  const duty = pumpingOf(epaCase(row.inputs));
  return [
    [duty.flow, wanted(row, "total_flow_m3_s")],
    [duty.flowPerPump, wanted(row, "pump_flow_m3_s")],
  ];
};

const hoseOfRow = (row: Row, resistance: Hose["resistance"]): Hose => ({
  bore: Number(row.inputs["D_m"] ?? row.inputs["nominal_diameter_m"]),
  length: number(row, "L_m"),
  fittings: 0,
  resistance,
});
const FRESH = waterAt(288.15, 0);

const diameterFor: Check = one((row) => {
  const water = { density: 1000, viscosity: 1000 * number(row, "nu_m2_s"), vapourPressure: 0 };
  const resistance = { kind: "roughness", roughness: number(row, "roughness_m") } as const;
  const loss = (bore: number): number =>
    hoseLoss({ bore, length: number(row, "L_m"), fittings: 0, resistance }, number(row, "Q_m3_s"), water).headLoss;
  const found = findRoot((bore) => loss(bore) - number(row, "hf_m"), 0.1, 1);
  return found.kind === "found" ? found.root : Number.NaN;
});

const gravityFlow: Check = one((row) => {
  const k = row.inputs["K_list"] as Record<string, number>;
  const sum = k["entrance"]! + k["exit"]! + 6 * k["six_elbows_each"]! + k["ball_valve"]!;
  const d = number(row, "D_m");
  const factor = ((number(row, "f_assumed") * number(row, "L_m")) / d + sum) * 8;
  const perFlow = factor / (number(row, "g_m_s2") * Math.PI ** 2 * d ** 4);
  return plainRig({ head: () => number(row, "static_head_m"), lastFlow: 0.05 }, 0, (q) => perFlow * q * q);
});

const duty = (row: Row) => {
  const value = number(row, "value1");
  return scaleDuty({ flow: value, head: value, power: value }, number(row, "n2_rpm") / number(row, "n1_rpm"));
};
const exponentOf: Check = one((row) =>
  powerExponent(
    number(row, "shutoff_head_m"),
    { flow: number(row, "Q1_L_s"), head: number(row, "H1_m") },
    { flow: number(row, "Q2_L_s"), head: number(row, "H2_m") },
  ),
);
const onePoint: Check = (row) => {
  const curve = pumpCurve([{ flow: number(row, "Q_L_s") / 1000, head: number(row, "H_m") }]);
  return [
    [curve.shutOff, wanted(row, "shutoff_head_m")],
    [1000 * curve.lastFlow, wanted(row, "max_flow_L_s")],
    [curve.head(wanted(row, "max_flow_L_s") / 1000) + 1, 1],
  ];
};

const npsh = (row: Row, pressure: string, vapour: string, lift: string): number =>
  npshAvailable(
    number(row, pressure),
    { density: number(row, "rho_kg_m3"), vapourPressure: number(row, vapour) },
    number(row, lift),
    number(row, "suction_loss_m"),
    number(row, "g_m_s2"),
  );
/** Heads given outright: water of unit weight. */
const npshOfHeads: Check = one((row) =>
  npshAvailable(
    number(row, "atm_head_m"),
    { density: 1, vapourPressure: number(row, "vapour_head_m") },
    -number(row, "static_head_m"),
    number(row, "friction_m") + number(row, "inlet_loss_m"),
    1,
  ),
);
const heightOfPump: Check = one((row) => {
  const velocity = (4 * number(row, "Q_m3_s")) / (Math.PI * number(row, "D_m") ** 2);
  const loss = (number(row, "K_total") * velocity ** 2) / (2 * STANDARD_GRAVITY);
  const water = { density: number(row, "gamma_N_m3"), vapourPressure: number(row, "vapour_pressure_Pa") };
  return greatestPumpHeight(number(row, "p_atm_Pa"), water, loss, number(row, "npsh_required_m"), 1);
});

const endurance: Check = one((row) => {
  const burn = burnOfPower(number(row, "shaft_power_W"), number(row, "bsfc_kg_per_J"), number(row, "fuel_density_kg_m3"));
  return fuelPlan({ tank: number(row, "fuel_m3"), cans: 0, burn, reserve: 0 }).runtime;
});

/** Which check answers a row, by what the row is about. */
const CHECK_OF: readonly (readonly [RegExp, Check])[] = [
  [/^DEN-16/, one((row) => waterDensity(KELVIN_OF_ICE + number(row, "temp_C_its90"), 0))],
  [/^DEN/, one((row) => densityOnIpts68(number(row, "temp_C_ipts68"), number(row, "salinity_pss78")))],
  [/^VAP.*saturation temperature/, one((row) => saturationTemperature(number(row, "p_Pa")))],
  [/^VAP.*ratio sea/, one((row) => vapourPressureRatio(number(row, "salinity_g_per_kg")))],
  [/^VAP/, one((row) => saturationPressure(temperature(row)))],
  [/^VIS-29/, one((row) => kinematic(kelvin(row), 0))],
  [/^VIS-30/, one((row) => kinematic(kelvin(row), number(row, "salinity_g_per_kg")))],
  [/^VIS.*sea water/, one((row) => seaWaterViscosity(kelvin(row), number(row, "salinity_g_per_kg")))],
  [/^VIS/, one((row) => pureWaterViscosity(temperature(row)))],
  [/^ATM.*geometric/, one((row) => standardPressure(geopotentialAltitude(number(row, "geometric_altitude_m"))))],
  [/^ATM.*geopotential/, one((row) => standardPressure(number(row, "geopotential_altitude_m")))],
  [/^ATM/, one((row) => standardPressure(number(row, "altitude_m")))],
  [/^FRI-17/, one((row) => colebrookFriction(reynoldsOf(row), 0))],
  [/^FRI-19/, diameterFor],
  [/^FRI-21/, gravityFlow],
  [/^FRI.*Colebrook/, one((row) => colebrookFriction(number(row, "Re"), number(row, "rel_roughness")))],
  [/^FRI.*Swamee/, one((row) => swameeJainFriction(number(row, "Re"), number(row, "rel_roughness")))],
  [/^FRI.*Hazen/, one((row) => hazenOf(row))],
  [/^HOS-13/, (row) => Object.entries(row.expected as Record<string, number>).map(([d, c]) => [FIRE_HOSE_COEFFICIENTS[d]!, c])],
  [/^HOS/, one((row) => fireHoseOf(row))],
  [/^MIN.*Crane/, one((row) => equivalentLengthLoss(number(row, "N"), number(row, "fT")))],
  [/^MIN.*expansion/, one((row) => wideningLoss(number(row, "D1_m"), number(row, "D2_m")))],
  [/^MIN.*contraction/, one((row) => narrowingLoss(number(row, "area_ratio_A2_A1")))],
  [/^MIN.*loss coefficient/, fittingLoss],
  [/^PMP.*affinity laws, flow/, one((row) => duty(row).flow)],
  [/^PMP.*affinity laws, head/, one((row) => duty(row).head)],
  [/^PMP.*affinity laws, power/, one((row) => duty(row).power)],
  [/^PMP.*brake power/, one((row) => shaftPower(number(row, "Q_m3_s"), number(row, "head_m"), number(row, "rho_kg_m3"), number(row, "g_m_s2"), number(row, "efficiency")))],
  [/^PMP.*quadratic/, one((row) => plainRig(parabola(number(row, "pump_H0_m"), number(row, "pump_k_s2_m5")), number(row, "static_m"), (q) => number(row, "system_k_s2_m5") * q * q))],
  [/^PMP.*fixed friction/, fixedFrictionDuty],
  [/^PMP.*shaft power/, tablePower],
  [/^PMP.*exponent/, exponentOf],
  [/^PMP.*one-point/, onePoint],
  [/^NPS-01/, one((row) => npsh(row, "surface_pressure_Pa", "vapour_pressure_Pa", "static_lift_m"))],
  [/^NPS-03/, npshOfHeads],
  [/^NPS.*maximum height/, heightOfPump],
  [/^NPS/, one((row) => npsh(row, "p_surface_Pa", "p_vapour_Pa", "lift_m"))],
  [/^PRI.*pressure after/, one((row) => pressureAfterStrokes(number(row, "p0_Pa"), number(row, "volume_m3"), number(row, "stroke_m3"), number(row, "strokes")))],
  [/^PRI.*real number/, one((row) => strokesToPressure(number(row, "p0_Pa"), number(row, "target_Pa"), number(row, "volume_m3"), number(row, "stroke_m3")))],
  [/^PRI.*whole strokes/, STROKES],
  [/^PRI.*theoretical maximum/, one((row) => npshAvailable(number(row, "p_atm_psi") * 6894.757293168, { density: 1000, vapourPressure: 0 }, 0, 0))],
  [/^PRI.*lift limits/, (row) => [[Math.round(PRACTICE_LIFT.notBeyond * 10) / 10, Math.round(wanted(row, "max_lift_m") * 10) / 10]]],
  [/^ENG.*with humidity/, one((row) => powerCorrection(dryPressure(row), KELVIN_OF_ICE + number(row, "air_temp_C")))],
  [/^ENG.*SAE/, one((row) => powerCorrection(number(row, "dry_pressure_Pa"), KELVIN_OF_ICE + number(row, "air_temp_C")))],
  [/^ENG.*petrol density/, (row) => [[Math.round(want(row)), PETROL_DENSITY]]],
  [/^ENG.*specific gravity/, (row) => [[clampTo(row.expected as number[], PETROL_DENSITY / 1000), PETROL_DENSITY / 1000]]],
  [/^ENG.*endurance/, endurance],
  [/^EPA-15/, (row) => [[pumpingOf({ ...epaCase(ROWS.find((other) => other.id === row.inputs["copy_of"])!.inputs), rise: number(row, "target_level_m") }).flow, wanted(row, "total_flow_m3_s")]]],
  [/^EPA/, epaDuty],
];

function reynoldsOf(row: Row): number {
  const water = waterAt(kelvin(row), 0);
  return (4 * number(row, "Q_m3_s") * water.density) / (Math.PI * number(row, "D_m") * water.viscosity);
}
function hazenOf(row: Row): number {
  const hose = hoseOfRow(row, { kind: "hazen-williams", coefficient: number(row, "C") });
  return hoseLoss(hose, number(row, "Q_m3_s"), FRESH).headLoss;
}
function fireHoseOf(row: Row): number {
  const hose = hoseOfRow(row, { kind: "fire-hose", coefficient: number(row, "C") });
  return hoseLoss(hose, number(row, "Q_m3_s"), FRESH).pressureLoss;
}
function dryPressure(row: Row): number {
  return number(row, "pressure_Pa") - number(row, "relative_humidity") * waterVapourPressure(KELVIN_OF_ICE + number(row, "air_temp_C"), 0);
}
function clampTo([low, high]: readonly number[], value: number): number {
  return Math.min(high!, Math.max(low!, value));
}
function checkOf(row: Row): Check | undefined {
  return CHECK_OF.find(([pattern]) => pattern.test(`${row.id} ${row.quantity}`))?.[1];
}
function near(got: number, wantedValue: number, row: Row): boolean {
  const off = Math.abs(got - wantedValue);
  return off <= (row.tolerance_kind === "rel" ? row.tolerance * Math.abs(wantedValue) : row.tolerance);
}

const OURS = ROWS.filter((row) => !(row.id in NOT_OURS));
const title = (row: Row): string =>
  `${row.id} ${row.quantity}: ${row.source}${row.confirmed === "from memory" ? " (from memory, unconfirmed)" : ""}`;

describe("published values of hydraulics", () => {
  it.each(OURS.map((row) => [title(row), row] as const))("%s", (_, row) => {
    const pairs = checkOf(row)!(row);
    expect(pairs.length).toBeGreaterThan(0);
    for (const [got, wantedValue] of pairs) {
      expect(near(got, wantedValue, row), `got ${got}, published ${wantedValue}, allowed ${row.tolerance}`).toBe(true);
    }
  });

  it("has a check or a reason for every row, and not both", () => {
    const unanswered = ROWS.filter((row) => !(row.id in NOT_OURS) && checkOf(row) === undefined).map((row) => row.id);
    expect(unanswered).toEqual([]);
    const known = new Set(ROWS.map((row) => row.id));
    expect(Object.keys(NOT_OURS).filter((id) => !known.has(id))).toEqual([]);
  });

  it.each(ROWS.filter((row) => /^EPA-(?!15)/.test(row.id)).map((row) => [title(row), row] as const))(
    "with the judge's own constants within 0.01 %%: %s",
    (_, row) => {
      const got = pumpingOf(epaCase(row.inputs), EPANET_FORMULAE);
      const deviation = (flow: number, name: string): number => Math.abs(flow / wanted(row, name) - 1);
      expect(deviation(got.flow, "total_flow_m3_s")).toBeLessThan(1e-4);
      expect(Math.abs(got.suctionLoss - wanted(row, "suction_loss_m"))).toBeLessThan(1e-3);
      expect(Math.abs(got.dischargeLoss - wanted(row, "discharge_loss_m"))).toBeLessThan(1e-3);
    },
  );
});
