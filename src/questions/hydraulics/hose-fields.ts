import type { Fault } from "#base";
import { HYDRAULIC_LIMITS, type Hose, type Resistance } from "#hydraulics";
import { quantity } from "../quantity-field.ts";

const LIMITS = HYDRAULIC_LIMITS;

/** Fields of a hose in a question; which are needed is for the question to say. */
export const hoseFields = {
  bore: quantity("length", "Inner diameter of the hose", LIMITS.bore).optional(),
  length: quantity("length", "Length of the hose", LIMITS.length).optional(),
  roughness: quantity(
    "length",
    "Roughness inside (Darcy-Weisbach); one of roughness, hazenWilliams, fireHoseCoefficient",
    LIMITS.roughness,
  ).optional(),
  hazenWilliams: quantity("ratio", "Hazen-Williams C; about 140 smooth", LIMITS.hazenWilliams).optional(),
  fireHoseCoefficient: quantity(
    "ratio",
    "Fire service C, psi for each 100 ft at 100 US gpm; lined delivery hose only",
    LIMITS.fireHoseCoefficient,
  ).optional(),
  fittings: quantity(
    "ratio",
    "Sum of the loss coefficients K of the fittings; none if left out",
    LIMITS.fittings,
  ).optional(),
};

/** A hose as given, some of it perhaps left out. */
export interface GivenHose {
  readonly bore?: number | undefined;
  readonly length?: number | undefined;
  readonly roughness?: number | undefined;
  readonly hazenWilliams?: number | undefined;
  readonly fireHoseCoefficient?: number | undefined;
  readonly fittings?: number | undefined;
}

const NO_HOSE: Hose = { bore: 1, length: 0, resistance: { kind: "roughness", roughness: 0 }, fittings: 0 };

/**
 * The hose a question means: what was given, and for the rest the pattern's.
 *
 * Adds QU-101 for each thing neither gives, QU-108 where more than one resistance is given.
 */
export function resolveHose(given: GivenHose, pattern: Hose | undefined, path: string, faults: Fault[]): Hose {
  const at = (field: string): string => (path === "" ? field : `${path}.${field}`);
  const before = faults.length;
  const resistance = givenResistance(given, path, faults) ?? pattern?.resistance;
  if (resistance === undefined && faults.length === before) {
    faults.push(leftOut(at("roughness"), "one of roughness, hazenWilliams, fireHoseCoefficient"));
  }
  const bore = given.bore ?? pattern?.bore;
  const length = given.length ?? pattern?.length;
  if (bore === undefined) faults.push(leftOut(at("bore"), "the inner diameter of the hose [m]"));
  if (length === undefined) faults.push(leftOut(at("length"), "the length of the hose [m]"));
  if (bore === undefined || length === undefined || resistance === undefined) return NO_HOSE;
  return { bore, length, resistance, fittings: given.fittings ?? pattern?.fittings ?? 0 };
}

/** A fault for something a question needs and nobody gave. */
export function leftOut(field: string, allowed: string): Fault {
  return { code: "QU-101", field, got: "nothing", allowed, remedy: `Give ${field}, or a kit whose pattern has it.` };
}

function givenResistance(given: GivenHose, path: string, faults: Fault[]): Resistance | undefined {
  const all: Resistance[] = [];
  const { roughness, hazenWilliams, fireHoseCoefficient } = given;
  if (roughness !== undefined) all.push({ kind: "roughness", roughness });
  if (hazenWilliams !== undefined) all.push({ kind: "hazen-williams", coefficient: hazenWilliams });
  if (fireHoseCoefficient !== undefined) all.push({ kind: "fire-hose", coefficient: fireHoseCoefficient });
  if (all.length > 1) {
    const allowed = "exactly one of roughness, hazenWilliams, fireHoseCoefficient";
    const got = all.map((one) => one.kind).join(" and ");
    faults.push({ code: "QU-108", field: path || "input", got, allowed, remedy: "Keep the one you know best." });
  }
  return all[0];
}
