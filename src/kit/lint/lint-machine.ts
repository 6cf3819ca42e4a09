import { dimensions, formatNumber, isQuantity, type Dimension } from "#base";
import { hit, type LintHit } from "./lint-fault.ts";
import { allSteps } from "../look-ups.ts";
import type { Check, HoseRun, Pattern, Step } from "../pattern.ts";

/** Are the quantities such as such a kit can have, and the curves such as a pump can have? */
export function machineLint(pattern: Pattern): readonly LintHit[] {
  return [
    ...pattern.checks.flatMap((check) => checkHits(check, pattern)),
    ...allSteps(pattern).flatMap(stepHits),
    ...containerRanges(pattern).flatMap(rangeHits),
    ...hydraulicRanges(pattern).flatMap(rangeHits),
    ...curveHits(pattern),
  ];
}

interface Range {
  readonly where: string;
  readonly value: number | undefined;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
}

// A lift of more than 23 kg a person is over the ideal of NIOSH's lifting equation (NIOSH 94-110, 1994).
const LIFT_PER_PERSON = 23;
// A column of water higher than this boils at its top before it rises: 101 325 Pa / (1000 kg/m³ × 9.80665 m/s²).
const HIGHEST_SUCTION = 10.33;
const LONGEST_TIMER = 4 * 3600;
const LONGEST_LEFT_ALONE = 7 * 24 * 3600;

function containerRanges({ container, engine }: Pattern): readonly Range[] {
  const each = container.mass / container.lifters;
  return [
    range("container.mass", container.mass, [1, 300], "kg"),
    ...(container.machines
      ? []
      : [range("container.mass over container.lifters", each, [0, LIFT_PER_PERSON], "kg a person")]),
    range("engine.tank", engine?.tank, [1e-4, 0.1], "m³"),
    range("engine.power", engine?.power, [100, 50_000], "W"),
    ...(engine?.burn ?? []).map((point, index) =>
      range(`engine.burn[${index}]`, point.burn * 3.6e6, [0.01, 30], "L/h"),
    ),
  ];
}

function hydraulicRanges({ hydraulics }: Pattern): readonly Range[] {
  if (!hydraulics) return [];
  const { pump, primer, suction, discharge, proof } = hydraulics;
  const flows = [...pump.curve, ...(pump.npshRequired ?? [])];
  return [
    ...flows.map((point) => range("hydraulics.pump flow", point.flow, [0, 0.2], "m³/s")),
    ...flows.map((point) => range("hydraulics.pump head", point.head, [0, 150], "m")),
    range("hydraulics.pump.greatestLift", pump.greatestLift, [0.1, HIGHEST_SUCTION], "m"),
    ...hoseRanges("hydraulics.suction", suction),
    ...hoseRanges("hydraulics.discharge", discharge),
    range("hydraulics.primer.stroke", primer?.stroke, [1e-5, 0.01], "m³"),
    range("hydraulics.primer.deadVolume", primer?.deadVolume, [0, 0.1], "m³"),
    range("hydraulics.proof.grounds", proof.grounds, [0.3, proof.notes], "of the expected flow"),
  ];
}

function hoseRanges(where: string, hose: HoseRun | undefined): readonly Range[] {
  return [
    range(`${where}.length`, hose?.length, [0.3, 100], "m"),
    range(`${where}.bore`, hose?.bore, [0.01, 0.2], "m"),
    range(`${where}.roughness`, hose?.roughness, [1e-7, 5e-3], "m"),
  ];
}

function range(
  where: string,
  value: number | undefined,
  [least, most]: readonly [number, number],
  unit: string,
): Range {
  return { where, value, least, most, unit };
}

function rangeHits({ where, value, least, most, unit }: Range): readonly LintHit[] {
  if (value === undefined || (value >= least && value <= most)) return [];
  const what = `${formatNumber(value)} ${unit} is not between ${formatNumber(least)} and ${formatNumber(most)}.`;
  return [{ rule: "out-of-range", where, what, remedy: "Look at the number and its unit again." }];
}

function curveHits({ hydraulics, engine }: Pattern): readonly LintHit[] {
  const curve = hydraulics?.pump.curve ?? [];
  const npsh = hydraulics?.pump.npshRequired ?? [];
  const burn = engine?.burn ?? [];
  return [
    ...order(
      "hydraulics.pump.curve flow",
      curve.map((point) => point.flow),
      "rise",
    ),
    ...order(
      "hydraulics.pump.curve head",
      curve.map((point) => -point.head),
      "fall",
    ),
    ...order(
      "hydraulics.pump.npshRequired flow",
      npsh.map((point) => point.flow),
      "rise",
    ),
    ...order(
      "hydraulics.pump.npshRequired head",
      npsh.map((point) => point.head),
      "rise",
    ),
    ...order(
      "engine.burn throttle",
      burn.map((point) => point.throttle),
      "rise",
    ),
    ...order(
      "engine.burn burn",
      burn.map((point) => point.burn),
      "rise",
    ),
  ];
}

function order(where: string, values: readonly number[], way: "rise" | "fall"): readonly LintHit[] {
  const broken = values.some((value, index) => index > 0 && value <= values[index - 1]!);
  const told = { what: `Each value must ${way} from the one before.`, remedy: "Put the points in order of flow." };
  return broken ? [{ rule: "curve-not-monotone", where, ...told }] : [];
}

function checkHits(check: Check, { engine }: Pattern): readonly LintHit[] {
  const of = { what: "check", id: check.id } as const;
  if (check.kind !== "measure" && check.kind !== "timed") return [];
  const least = check.atLeast ?? -Infinity;
  const most = check.atMost ?? Infinity;
  const none = check.atLeast === undefined && check.atMost === undefined;
  const crossed = { what: "Its least value is above its greatest.", remedy: "Exchange or correct the limits." };
  return [
    ...(none && check.kind === "timed" ? [hit("time-missing", of, NO_TIME)] : []),
    ...(none && check.kind === "measure" ? [hit("out-of-range", of, NO_LIMIT)] : []),
    ...(least > most ? [hit("out-of-range", of, crossed)] : []),
    ...(check.kind === "measure" && check.trend && check.dimension !== "volume"
      ? [hit("out-of-range", of, NO_VOLUME)]
      : []),
    ...(check.kind === "measure" && check.trend === "fuel-left" && !engine ? [hit("out-of-range", of, NO_TANK)] : []),
    ...(check.kind === "measure" && !isUnit(check) ? [hit("unit-unknown", of, unknownUnit(check))] : []),
  ];
}

const NO_TIME = { what: "It is timed and says no time.", remedy: "Add `atLeast` or `atMost`." };
const NO_TANK = { what: "It tells what is left of a tank, and there is none.", remedy: "Give `engine` its `tank`." };
const NO_VOLUME = { what: "It tells of a trend and is no volume.", remedy: "Measure a volume, or leave `trend` out." };
const NO_LIMIT = { what: "It has no limit: no value could be wrong.", remedy: "Add `atLeast` or `atMost`." };

function isUnit({ dimension, unit }: { readonly dimension: string; readonly unit: string }): boolean {
  return dimensions().some((one: Dimension) => one === dimension && isQuantity(`1 ${unit}`, one));
}

function unknownUnit({ dimension, unit }: { readonly dimension: string; readonly unit: string }) {
  return { what: `"${unit}" is not a known unit of ${dimension}.`, remedy: "Write a unit the program knows." };
}

function stepHits(step: Step): readonly LintHit[] {
  const { timer } = step;
  if (!timer || timer.kind === "pulls") return [];
  const seconds = timer.kind === "prime" ? timer.atMost : timer.atLeast;
  const isLeft = timer.kind === "wait" && timer.unattended === true;
  if (seconds > 0 && seconds <= (isLeft ? LONGEST_LEFT_ALONE : LONGEST_TIMER)) return [];
  const told = {
    what: `${seconds} s is no time to ${isLeft ? "leave a kit hanging" : "stand by a kit"}.`,
    remedy: `Give more than nothing and at most ${isLeft ? "7 days" : "4 h, or say that it is unattended"}.`,
  };
  return [hit("out-of-range", { what: "step", id: step.id }, told)];
}
