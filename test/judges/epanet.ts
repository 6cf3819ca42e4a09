import { CountType, LinkProperty, NodeProperty, Project, Workspace } from "epanet-js";
import { SWAMEE_JAIN, type DeliveryCase, type Formulae, type Hose } from "#hydraulics";

/**
 * The open EPA network model as an independent judge of `#hydraulics`: the same rig written as its network file,
 * and the constants it computes with.
 */

const FOOT = 0.3048;

/** g 32.2 ft/s², Swamee-Jain, and h = 4.727 L Q^1.852/(C^1.852 d^4.871) in ft and ft³/s. */
export const EPANET_FORMULAE: Formulae = {
  gravity: 32.2 * FOOT,
  turbulent: SWAMEE_JAIN,
  hazenWilliams: { coefficient: 4.727 * FOOT ** (4.871 - 3 * 1.852), boreExponent: 4.871 },
};

/** Kinematic viscosity its relative figure 1 stands for [m²/s]. */
export const EPANET_VISCOSITY = 1.1e-5 * FOOT ** 2;

/** What the judge solved: flow of all pumps [m³/s], and of each; heads [m] at the first pump. */
export interface JudgedDuty {
  readonly flow: number;
  readonly flowPerPump: number;
  readonly head: number;
}

/** Starts the engine once; it may then judge any number of networks. */
export async function startJudge(): Promise<Workspace> {
  const workspace = new Workspace();
  await workspace.loadModule();
  return workspace;
}

/** Opens the network, solves it once and closes it again. */
export function judge(workspace: Workspace, rig: DeliveryCase): JudgedDuty {
  const project = openNetwork(workspace, rig);
  project.solveH();
  const duty = dutyOf(project, rig.pumps);
  project.close();
  return duty;
}

/** Opens a network and leaves it open, for solving again and again. */
export function openNetwork(workspace: Workspace, rig: DeliveryCase): Project {
  workspace.writeFile("rig.inp", networkFile(rig));
  const project = new Project(workspace);
  project.open("rig.inp", "rig.rpt", "rig.out");
  return project;
}

/** Flows and heads of an open, solved network. */
export function dutyOf(project: Project, pumps: number): JudgedDuty {
  const flows = Array.from({ length: pumps }, (_, i) => linkFlow(project, `P${i + 1}`));
  const flow = flows.reduce((sum, one) => sum + one, 0);
  const head = nodeHead(project, "OUT") - nodeHead(project, "IN1");
  return { flow, flowPerPump: flow / pumps, head };
}

/** Number of links, to check that the whole network arrived. */
export function linkCount(project: Project): number {
  return project.getCount(CountType.LinkCount);
}

function linkFlow(project: Project, id: string): number {
  return project.getLinkValue(project.getLinkIndex(id), LinkProperty.Flow) / 1000;
}

function nodeHead(project: Project, id: string): number {
  return project.getNodeValue(project.getNodeIndex(id), NodeProperty.Head);
}

function networkFile(rig: DeliveryCase): string {
  const pumps = Array.from({ length: rig.pumps }, (_, i) => i + 1);
  const suction = rig.suction ?? rig.discharge;
  return [
    "[JUNCTIONS]",
    ...pumps.map((i) => `IN${i} 0`),
    "OUT 0",
    "[RESERVOIRS]",
    `SOURCE ${-rig.lift}`,
    `TARGET ${rig.rise}`,
    "[PIPES]",
    ...pumps.map((i) => pipe(`S${i}`, "SOURCE", `IN${i}`, suction, 0)),
    pipe("D", "OUT", "TARGET", rig.discharge, rig.exitLoss ? 1 : 0),
    "[PUMPS]",
    ...pumps.map((i) => `P${i} IN${i} OUT HEAD C SPEED ${rig.speedRatio}`),
    "[CURVES]",
    ...rig.pump.curve.map(({ flow, head }) => `C ${flow * 1000} ${head}`),
    ...optionLines(rig),
    "[END]",
  ].join("\n");
}

function pipe(id: string, from: string, to: string, hose: Hose, exit: number): string {
  const resistance =
    hose.resistance.kind === "roughness" ? hose.resistance.roughness * 1000 : hose.resistance.coefficient;
  return `${id} ${from} ${to} ${hose.length} ${hose.bore * 1000} ${resistance} ${hose.fittings + exit} OPEN`;
}

function optionLines(rig: DeliveryCase): string[] {
  const law = rig.discharge.resistance.kind === "roughness" ? "D-W" : "H-W";
  const viscosity = rig.water.viscosity / rig.water.density / EPANET_VISCOSITY;
  return [
    "[OPTIONS]",
    "UNITS LPS",
    `HEADLOSS ${law}`,
    `VISCOSITY ${viscosity}`,
    "TRIALS 200",
    "ACCURACY 0.00001",
    "HEADERROR 0.00000001",
    "FLOWCHANGE 0.00000001",
    "[TIMES]",
    "DURATION 0",
    "[REPORT]",
    "STATUS NO",
    "SUMMARY NO",
    "MESSAGES NO",
  ];
}
