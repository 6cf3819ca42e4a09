// One-hour floods of one space: three by hand and one of each such family of test/references/flooding.json, with what
// is asked of LSODA about the same.
import type { FloodCase, FloodRun, PlacedPump } from "#flooding";
import published from "../../test/references/flooding.json" with { type: "json" };

type Inputs = Readonly<Record<string, number>>;

/** A flood and its peer: the answer is the level or water at half time, or the time of an event. */
export interface Flood {
  readonly name: string;
  readonly family: "held" | "sinks" | "is-lost" | "pumped-out";
  readonly inputs: Inputs;
  readonly given: FloodCase;
  answerOf(run: FloodRun): number;
}

const HOUR = { duration: 3600, step: 1800 } as const;
const round = (diameter: number) => ({ kind: "hole", area: (Math.PI / 4) * diameter ** 2, height: 0 }) as const;
const inputsOf = (id: string): Inputs =>
  published.find((row) => row.id.startsWith(`${id}.`))!.inputs as unknown as Inputs;

function steady(flow: number | undefined, from = 0): PlacedPump[] {
  return flow ? [{ name: "pump", compartment: "hold", delivery: { kind: "steady", flow }, from }] : [];
}

function held(name: string, inputs: Inputs): Flood {
  const { H, Ap, d, h0, Qp } = inputs;
  const given: FloodCase = {
    vessel: { kind: "fixed", outsideLevel: H!, compartments: [{ name: "hold", area: Ap!, level: h0 ?? 0 }] },
    openings: [{ name: "hole", into: "hold", opening: round(d!) }],
    pumps: steady(Qp),
    ...HOUR,
  };
  return { name, family: "held", inputs, given, answerOf: (run) => run.series[1]!.levels.hold! };
}

function box(inputs: Inputs): FloodCase {
  const { L, B, T0, D, comp_length, mu, d, Qp, pump_starts } = inputs;
  const [from, to] = [(L! - comp_length!) / 2, (L! + comp_length!) / 2];
  return {
    vessel: {
      kind: "floating",
      hull: { form: "box", length: L!, beam: B!, depth: D ?? 2 * T0!, draught: T0! },
      kg: 0.4,
      compartments: [{ name: "hold", from, to, permeability: mu! }],
    },
    openings: [{ name: "hole", into: "hold", opening: round(d!) }],
    pumps: steady(Qp, pump_starts),
    ...HOUR,
  };
}

function sinks(name: string, inputs: Inputs): Flood {
  return { name, family: "sinks", inputs, given: box(inputs), answerOf: (run) => run.series[1]!.water.hold! };
}

function isLost(name: string, inputs: Inputs): Flood {
  return { name, family: "is-lost", inputs, given: box(inputs), answerOf: (run) => timeOf(run, "lost") };
}

function pumpedOut(name: string, inputs: Inputs): Flood {
  const { Ap, h0, h1, shutoff_head, lift_ref, Q_at_7m, discharge_z } = inputs;
  const bend = (shutoff_head! - lift_ref!) / Q_at_7m! ** 2;
  const delivery = { kind: "parabola", shutOffHead: shutoff_head!, bend, dischargeHeight: discharge_z! } as const;
  const given: FloodCase = {
    vessel: { kind: "fixed", outsideLevel: 0, compartments: [{ name: "hold", area: Ap!, level: h0! }] },
    openings: [],
    pumps: [{ name: "pump", compartment: "hold", delivery, suctionHeight: h1! }],
    ...HOUR,
  };
  return { name, family: "pumped-out", inputs, given, answerOf: (run) => timeOf(run, "suction-dry") };
}

function timeOf(run: FloodRun, kind: string): number {
  return run.events.find((event) => event.kind === kind)!.at;
}

const HAND = { H: 1.6, Ap: 20, d: 0.15 };

export const FLOODS: readonly Flood[] = [
  held("fills", HAND),
  held("rises to rest against a pump", { ...HAND, Qp: 0.03 }),
  held("falls to rest", { ...HAND, Qp: 0.03, h0: 1.55 }),
  held("S01 fills", inputsOf("S01")),
  held("S03 rises against a pump", inputsOf("S03")),
  held("S04 falls to rest", inputsOf("S04")),
  sinks("S06 a box sinks", inputsOf("S06")),
  sinks("S07 a box sinks, pumped", inputsOf("S07")),
  isLost("S08 a box is lost, pump late", inputsOf("S08")),
  pumpedOut("S13 pumped out on a curve", inputsOf("S13")),
];
