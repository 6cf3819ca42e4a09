import { findRoot } from "#numerics";
import { prepareCase, type DeliveryCase, type PreparedCase } from "./delivery-case.ts";
import type { Formulae } from "./formulae.ts";
import { findOperation } from "./operating-point.ts";
import { pumpingOfPrepared, type Pumping } from "./pumping.ts";

/** Something a person can change about a rig. */
export type ChangeKind =
  | "lower-pump"
  | "shorten-suction"
  | "shorten-discharge"
  | "lower-outlet"
  | "widen-suction"
  | "widen-discharge"
  | "open-throttle"
  | "throttle-back";

/** One change and what it brings. */
export interface Advice {
  readonly kind: ChangeKind;
  /** As an instruction, with metric figures. */
  readonly what: string;
  /** How much of it [m for heights, lengths and bores; speed ratio for throttle]. */
  readonly by: number;
  /** Flow of all pumps after it [m³/s]. */
  readonly flow: number;
  /** Flow gained [m³/s]; none for throttling back, which only spares the pump. */
  readonly gain: number;
}

interface Change {
  readonly kind: ChangeKind;
  readonly what: string;
  readonly by: number;
  readonly rig: DeliveryCase;
}

/** A gain smaller than this share of the flow is not worth the hands [1]. */
const WORTH_IT = 0.01;

/**
 * What to change about a rig, the change that gains most first.
 *
 * Each change is made alone and the whole case solved again. Where the suction binds, the least throttle that still
 * moves the same flow is found too: it stops the cavitation and saves fuel.
 *
 * @param given - the rig
 * @param now - its answer
 * @param formulae - as for the answer
 * @returns changes worth making, by gain [m³/s]
 * @range as the answer
 * @source DERIVED: differences of two answers
 */
export function adviceFor(given: DeliveryCase, now: Pumping, formulae: Formulae): readonly Advice[] {
  const gains = changesOf(given)
    .map((change) => weigh(change, now, formulae))
    .filter((advice) => advice.gain > Math.max(WORTH_IT * now.flow, 1e-6))
    .sort((one, other) => other.gain - one.gain);
  const back = now.kind === "suction-limited" ? throttleBack(given, now, formulae) : undefined;
  return back ? [...gains, back] : gains;
}

function weigh({ kind, what, by, rig }: Change, now: Pumping, formulae: Formulae): Advice {
  const { flow } = pumpingOfPrepared(prepareCase(rig, formulae));
  return { kind, what, by, flow, gain: flow - now.flow };
}

function changesOf(given: DeliveryCase): readonly Change[] {
  return [...suctionChanges(given), ...dischargeChanges(given), ...throttleChange(given)];
}

function suctionChanges(given: DeliveryCase): readonly Change[] {
  const { suction, lift, rise } = given;
  if (!suction) return [];
  const down = Math.min(0.5, Math.max(0, lift));
  const shorter = Math.min(2, suction.length - Math.max(lift, 0.5));
  const wider = Math.min(1, 1.25 * suction.bore);
  return [
    ...when(down >= 0.1, "lower-pump", `Lower the pump by ${down.toFixed(1)} m`, down, {
      ...given,
      lift: lift - down,
      rise: Math.min(300, rise + down),
    }),
    ...when(shorter >= 0.5, "shorten-suction", `Shorten the suction hose by ${shorter.toFixed(1)} m`, shorter, {
      ...given,
      suction: { ...suction, length: suction.length - shorter },
    }),
    ...when(true, "widen-suction", `Use a suction hose of ${mm(wider)} mm`, wider - suction.bore, {
      ...given,
      suction: { ...suction, bore: wider },
    }),
  ];
}

function dischargeChanges(given: DeliveryCase): readonly Change[] {
  const { discharge, rise } = given;
  const shorter = discharge.length / 4;
  const wider = Math.min(1, 1.25 * discharge.bore);
  const down = Math.min(0.5, Math.max(0, rise));
  return [
    ...when(down >= 0.1, "lower-outlet", `Hang the outlet ${down.toFixed(1)} m lower`, down, {
      ...given,
      rise: rise - down,
    }),
    ...when(shorter >= 1, "shorten-discharge", `Shorten the discharge hose by ${shorter.toFixed(1)} m`, shorter, {
      ...given,
      discharge: { ...discharge, length: discharge.length - shorter },
    }),
    ...when(true, "widen-discharge", `Use a discharge hose of ${mm(wider)} mm`, wider - discharge.bore, {
      ...given,
      discharge: { ...discharge, bore: wider },
    }),
  ];
}

function throttleChange(given: DeliveryCase): readonly Change[] {
  const by = 1 - given.speedRatio;
  return when(by > 0.01, "open-throttle", "Open the throttle fully", by, { ...given, speedRatio: 1 });
}

function when(worth: boolean, kind: ChangeKind, what: string, by: number, rig: DeliveryCase): readonly Change[] {
  return worth ? [{ kind, what, by, rig }] : [];
}

function mm(metres: number): string {
  return (metres * 1000).toFixed(0);
}

/** The least throttle at which the curve alone moves what the suction feeds. */
function throttleBack(given: DeliveryCase, now: Pumping, formulae: Formulae): Advice | undefined {
  const beyond = (speedRatio: number): number => curveFlow(prepareCase({ ...given, speedRatio }, formulae)) - now.flow;
  const least = findRoot(beyond, 0.05, given.speedRatio, { rootTolerance: 1e-4 });
  if (least.kind !== "found" || least.root > 0.99 * given.speedRatio) return undefined;
  const what = `Throttle back to ${(100 * least.root).toFixed(0)} % of full speed: the same flow, less fuel, no cavitation`;
  return { kind: "throttle-back", what, by: given.speedRatio - least.root, flow: now.flow, gain: 0 };
}

function curveFlow(rig: PreparedCase): number {
  const operation = findOperation(rig);
  return operation.kind === "operates" ? operation.points[0].flow * rig.pumps : 0;
}
