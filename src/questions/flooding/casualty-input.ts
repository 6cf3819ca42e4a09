import { InputError, printGiven, type Fault } from "#base";
import type { FixedVessel, FloatingVessel, HullForm, Opening, PlacedOpening, Vessel } from "#flooding";
import type { z } from "zod";
import type { Assumption } from "../assumptions.ts";
import { depthOf, depthOfGiven, floorOf, lengthOf, namedTwice } from "../guards/places.ts";
import type { compartmentIn, hullIn, openingIn, placedOpeningIn, prismIn } from "./casualty-fields.ts";

type Faults = Fault[];

export function wrong(field: string, got: unknown, allowed: string, remedy: string): Fault {
  return { code: "QU-130", field, got: printGiven(got), allowed, remedy };
}

export function throwAny(faults: readonly Fault[]): void {
  if (faults.length > 0) throw new InputError(faults);
}

/** The hull as flooding needs it; what was left out is added to the assumptions. */
export function resolveHull(given: z.output<typeof hullIn>, faults: Faults, assumptions: Assumption[]): HullForm {
  if (given.form === "offsets") return checkedOffsets(given, faults);
  if (given.depth === undefined) {
    assumptions.push({
      what: "A depth of 1.6 draughts.",
      effect: "Freeboard, and so the time to loss, follows from it.",
    });
  }
  const size = { ...given, depth: depthOfGiven(given) };
  if (size.depth < given.draught) {
    faults.push(
      wrong("hull.depth", given.depth, "at least the draught", "Give the height of the deck edge above the keel."),
    );
  }
  if (size.beam > 2 * size.length)
    faults.push(wrong("hull.beam", size.beam, "at most twice the length", "Check beam and length."));
  return size;
}

function rises(values: readonly number[]): boolean {
  return values.every((value, i) => i === 0 || value > values[i - 1]!);
}

function checkedOffsets(given: Extract<z.output<typeof hullIn>, { form: "offsets" }>, faults: Faults): HullForm {
  if (!rises(given.stations.map((one) => one.x))) {
    faults.push(
      wrong("hull.stations", "stations out of order", "x rising from station to station", "Sort them from aft."),
    );
  }
  given.stations.forEach((station, i) => {
    if (rises(station.offsets.map((point) => point.z))) return;
    faults.push(
      wrong(`hull.stations[${i}].offsets`, "heights out of order", "z rising", "Sort them from the keel up."),
    );
  });
  if (!given.stations.some((one) => one.offsets.some((point) => point.halfBreadth > 0))) {
    faults.push(wrong("hull.stations", "no breadth anywhere", "some half-breadth above 0", "Check the offsets."));
  }
  const { draught, ...rest } = given;
  return draught === undefined ? rest : { ...rest, draught };
}

/** An opening as flooding needs it; one whose height is left out is at the floor. */
export function resolveOpening(
  given: z.output<typeof openingIn>,
  field: string,
  faults: Faults,
  floor: number = 0,
): Opening {
  if (given.kind === "slot" && given.top <= given.sill) {
    faults.push(wrong(`${field}.top`, given.top, "above the sill", "Give upper and lower edge above the keel."));
  }
  if (given.kind !== "hole") return withHeight(given, floor);
  const { diameter, area, ...rest } = given;
  if ((diameter === undefined) === (area === undefined)) {
    faults.push(wrong(`${field}.diameter`, diameter, "diameter or area, one of them", "Give the one you know."));
  }
  return {
    ...omitMissing(rest),
    area: area ?? (Math.PI / 4) * (diameter ?? 0) ** 2,
    height: given.height ?? floor,
  } as Opening;
}

function withHeight(given: Exclude<z.output<typeof openingIn>, { kind: "hole" }>, floor: number): Opening {
  const known = omitMissing(given);
  return (given.kind === "pipe" ? { ...known, height: given.height ?? floor } : known) as Opening;
}

/** Drops fields that were not given, so that "absent" and "undefined" are one thing further down. */
export function omitMissing<T extends object>(given: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as never;
}

/** Openings in their places, named where they were not. */
export function resolveOpenings(
  given: readonly z.output<typeof placedOpeningIn>[],
  vessel: Vessel,
  faults: Faults,
): PlacedOpening[] {
  const names = vessel.compartments.map((one) => one.name);
  return given.map((one, i) => {
    const { name, compartment, from, x, y, ...opening } = one;
    const field = `openings[${i}]`;
    checkName(compartment, names, `${field}.compartment`, faults);
    checkName(from, names, `${field}.from`, faults);
    const into = compartment ?? names[0]!;
    if (from === into)
      faults.push(wrong(`${field}.from`, from, "another compartment, or left out for the sea", "Name both sides."));
    return {
      name: name ?? `${one.kind} ${i + 1}`,
      opening: resolveOpening(opening as z.output<typeof openingIn>, field, faults, floorBetween(vessel, into, from)),
      into,
      ...omitMissing({ from, x, y }),
    };
  });
}

function floorBetween(vessel: Vessel, into: string, from: string | undefined): number {
  const floor = floorOf(vessel, into);
  return from === undefined ? floor : Math.max(floor, floorOf(vessel, from));
}

export function checkName(name: string | undefined, names: readonly string[], field: string, faults: Faults): void {
  if (name === undefined || names.includes(name)) return;
  faults.push(wrong(field, name, names.join(", "), "Use the name of a compartment."));
}

export function resolveFixed(
  given: { readonly outsideLevel: number; readonly compartments: readonly z.output<typeof prismIn>[] },
  faults: Faults,
): FixedVessel {
  const compartments = given.compartments.map((one, i) => {
    if (one.top !== undefined && one.top <= (one.floor ?? 0)) {
      faults.push(wrong(`vessel.compartments[${i}].top`, one.top, "above the floor", "Check floor and top."));
    }
    return { ...omitMissing(one), name: one.name ?? `compartment ${i + 1}` };
  });
  faults.push(...namedTwice(compartments, "vessel.compartments"));
  return { kind: "fixed", outsideLevel: given.outsideLevel, compartments };
}

export function resolveFloating(
  given: {
    readonly hull: z.output<typeof hullIn>;
    readonly draught?: number | undefined;
    readonly trim?: number | undefined;
    readonly kg?: number | undefined;
    readonly compartments: readonly z.output<typeof compartmentIn>[];
    readonly lostWhen?: FloatingVessel["lostWhen"] | undefined;
  },
  faults: Faults,
  assumptions: Assumption[],
  within: "vessel." | "" = "vessel.",
): FloatingVessel {
  const hull = resolveHull(given.hull, faults, assumptions);
  const compartments = given.compartments.map((one, i) =>
    resolveCompartment(one, { index: i, field: `${within}compartments[${i}]` }, faults, assumptions),
  );
  faults.push(...namedTwice(compartments, `${within}compartments`));
  if (given.kg === undefined) assumptions.push(GRAVITY);
  checkFloats(hull, given.draught, `${within}draught`, faults);
  checkWithin(hull, compartments, `${within}compartments`, faults);
  return {
    kind: "floating",
    hull,
    compartments,
    ...omitMissing({ draught: given.draught, trim: given.trim, kg: given.kg, lostWhen: given.lostWhen }),
  };
}

const GRAVITY: Assumption = {
  what: "A centre of gravity at 0.8 of the depth, lower where less than 0.35 m of GM would be left.",
  effect: "Heel, list and righting levers are guesses; a measured roll period is better.",
};

/** A draught beyond the deck edge is no draught: she is under. */
export function checkDraught(hull: HullForm, draught: number | undefined, faults: Faults): void {
  const depth = depthOf(hull);
  if (draught === undefined || draught <= depth * (1 + 1e-9)) return;
  faults.push(wrong("draught", draught, `at most the depth, ${depth} m`, "Her deck edge would be under: check both."));
}

function checkFloats(hull: HullForm, draught: number | undefined, field: string, faults: Faults): void {
  const depth = depthOf(hull);
  const floats = draught ?? hull.draught ?? depth / 2;
  if (floats >= depth && hull.form !== "wigley") {
    faults.push(wrong(field, floats, `less than the depth, ${depth} m`, "She would float with her deck awash."));
  }
}

function checkWithin(
  hull: HullForm,
  compartments: FloatingVessel["compartments"],
  field: string,
  faults: Faults,
): void {
  const length = lengthOf(hull);
  compartments.forEach((one, i) => {
    if (one.to <= length * (1 + 1e-9)) return;
    faults.push(wrong(`${field}[${i}].to`, one.to, `at most the length, ${length} m`, "Count from the after end."));
  });
}

function resolveCompartment(
  given: z.output<typeof compartmentIn>,
  { index, field }: { readonly index: number; readonly field: string },
  faults: Faults,
  assumptions: Assumption[],
): FloatingVessel["compartments"][number] {
  if (given.to <= given.from)
    faults.push(wrong(`${field}.to`, given.to, "forward of from", "Give both from the after end."));
  if (given.sideFrom !== undefined && given.sideTo !== undefined && given.sideTo <= given.sideFrom) {
    faults.push(wrong(`${field}.sideTo`, given.sideTo, "to starboard of sideFrom", "Port is negative."));
  }
  if (given.top !== undefined && given.top <= (given.floor ?? 0)) {
    faults.push(wrong(`${field}.top`, given.top, "above the floor", "Check floor and top."));
  }
  if (given.permeability === undefined) {
    assumptions.push({ what: "Permeability 0.85, an engine room's.", effect: "A cabin (0.95) takes in a ninth more." });
  }
  return {
    ...omitMissing(given),
    name: given.name ?? `compartment ${index + 1}`,
    permeability: given.permeability ?? 0.85,
  };
}
