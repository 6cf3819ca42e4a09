import { InputError, printGiven, type Fault } from "#base";
import type {
  FixedVessel,
  FloatingVessel,
  HullForm,
  Opening,
  PlacedOpening,
  PlacedPump,
  PumpDelivery,
} from "#flooding";
import type { z } from "zod";
import type { Assumption } from "./assumptions.ts";
import type { compartmentIn, floodPumpIn, hullIn, openingIn, placedOpeningIn, prismIn } from "./casualty-fields.ts";

type Faults = Fault[];

function wrong(field: string, got: unknown, allowed: string, remedy: string): Fault {
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
  const size = { ...given, depth: given.depth ?? (given.form === "wigley" ? given.draught : 1.6 * given.draught) };
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

/** An opening as flooding needs it. */
export function resolveOpening(given: z.output<typeof openingIn>, field: string, faults: Faults): Opening {
  if (given.kind === "slot" && given.top <= given.sill) {
    faults.push(wrong(`${field}.top`, given.top, "above the sill", "Give upper and lower edge above the keel."));
  }
  if (given.kind !== "hole") return withHeight(given);
  const { diameter, area, ...rest } = given;
  if ((diameter === undefined) === (area === undefined)) {
    faults.push(wrong(`${field}.diameter`, diameter, "diameter or area, one of them", "Give the one you know."));
  }
  return {
    ...omitMissing(rest),
    area: area ?? (Math.PI / 4) * (diameter ?? 0) ** 2,
    height: given.height ?? 0,
  } as Opening;
}

function withHeight(given: Exclude<z.output<typeof openingIn>, { kind: "hole" }>): Opening {
  const known = omitMissing(given);
  return (given.kind === "pipe" ? { ...known, height: given.height ?? 0 } : known) as Opening;
}

/** Drops fields that were not given, so that "absent" and "undefined" are one thing further down. */
export function omitMissing<T extends object>(given: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as never;
}

/** Openings in their places, named where they were not. */
export function resolveOpenings(
  given: readonly z.output<typeof placedOpeningIn>[],
  names: readonly string[],
  faults: Faults,
): PlacedOpening[] {
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
      opening: resolveOpening(opening as z.output<typeof openingIn>, field, faults),
      into,
      ...omitMissing({ from, x, y }),
    };
  });
}

function checkName(name: string | undefined, names: readonly string[], field: string, faults: Faults): void {
  if (name === undefined || names.includes(name)) return;
  faults.push(wrong(field, name, names.join(", "), "Use the name of a compartment."));
}

/** Pumps in their places, named where they were not. */
export function resolvePumps(
  given: readonly z.output<typeof floodPumpIn>[],
  names: readonly string[],
  faults: Faults,
): PlacedPump[] {
  return given.map((one, i) => {
    const field = `pumps[${i}]`;
    checkName(one.compartment, names, `${field}.compartment`, faults);
    if (one.until !== undefined && one.until <= (one.from ?? 0)) {
      faults.push(wrong(`${field}.until`, one.until, "later than from", "Check the times."));
    }
    return {
      name: one.name ?? `pump ${i + 1}`,
      compartment: one.compartment ?? names[0]!,
      delivery: resolveDelivery(one, field, faults),
      ...omitMissing({ suctionHeight: one.suctionHeight, from: one.from, until: one.until }),
      ...(one.runtime === undefined ? {} : { refuel: { runtime: one.runtime, pause: one.refuelling ?? 300 } }),
    };
  });
}

function resolveDelivery(pump: z.output<typeof floodPumpIn>, field: string, faults: Faults): PumpDelivery {
  const { flow, curve } = pump;
  if ((flow === undefined) === (curve === undefined)) {
    faults.push(wrong(`${field}.flow`, flow, "flow or curve, one of them", "Give the one you know."));
  }
  if (curve === undefined) return { kind: "steady", flow: flow ?? 0 };
  if (pump.dischargeHeight === undefined) {
    faults.push(wrong(`${field}.dischargeHeight`, undefined, "a height above the keel", "A curve needs the lift."));
  }
  const dischargeHeight = pump.dischargeHeight ?? 0;
  if (Array.isArray(curve)) {
    const points = curve.map((point) => ({ lift: point.head, flow: point.flow })).sort((a, b) => a.lift - b.lift);
    if (points.some((point, k) => k > 0 && point.lift === points[k - 1]!.lift)) {
      faults.push(wrong(`${field}.curve`, "two points at one head", "each head once", "Leave one out."));
    }
    return { kind: "table", points, dischargeHeight };
  }
  if (curve.head >= curve.shutOffHead) {
    faults.push(wrong(`${field}.curve.head`, curve.head, "below shutOffHead", "Give a duty point with flow."));
  }
  const bend = (curve.shutOffHead - curve.head) / curve.flow ** 2;
  return { kind: "parabola", shutOffHead: curve.shutOffHead, bend: Math.max(bend, 1e-9), dischargeHeight };
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
  checkUnique(compartments, faults);
  return { kind: "fixed", outsideLevel: given.outsideLevel, compartments };
}

function checkUnique(compartments: readonly { readonly name: string }[], faults: Faults): void {
  const names = compartments.map((one) => one.name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined) faults.push(wrong("vessel.compartments", twice, "each name once", "Rename one of them."));
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
): FloatingVessel {
  const hull = resolveHull(given.hull, faults, assumptions);
  const compartments = given.compartments.map((one, i) => resolveCompartment(one, i, faults, assumptions));
  checkUnique(compartments, faults);
  if (given.kg === undefined) assumptions.push(GRAVITY);
  checkFloats(hull, given.draught, faults);
  checkWithin(hull, compartments, faults);
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

/** Keel to deck edge. */
function depthOf(hull: HullForm): number {
  if (hull.form !== "offsets") return hull.depth;
  return Math.max(...hull.stations.flatMap((one) => one.offsets.map(({ z }) => z)));
}

/** A draught beyond the deck edge is no draught: she is under. */
export function checkDraught(hull: HullForm, draught: number | undefined, faults: Faults): void {
  const depth = depthOf(hull);
  if (draught === undefined || draught <= depth * (1 + 1e-9)) return;
  faults.push(wrong("draught", draught, `at most the depth, ${depth} m`, "Her deck edge would be under: check both."));
}

function checkFloats(hull: HullForm, draught: number | undefined, faults: Faults): void {
  const depth = depthOf(hull);
  const floats = draught ?? hull.draught ?? depth / 2;
  if (floats >= depth && hull.form !== "wigley") {
    faults.push(
      wrong("vessel.draught", floats, `less than the depth, ${depth} m`, "She would float with her deck awash."),
    );
  }
}

function checkWithin(hull: HullForm, compartments: FloatingVessel["compartments"], faults: Faults): void {
  const length = hull.form === "offsets" ? hull.stations.at(-1)!.x - hull.stations[0]!.x : hull.length;
  compartments.forEach((one, i) => {
    if (one.to <= length * (1 + 1e-9)) return;
    faults.push(
      wrong(`vessel.compartments[${i}].to`, one.to, `at most the length, ${length} m`, "Count from the after end."),
    );
  });
}

function resolveCompartment(
  given: z.output<typeof compartmentIn>,
  index: number,
  faults: Faults,
  assumptions: Assumption[],
): FloatingVessel["compartments"][number] {
  const field = `vessel.compartments[${index}]`;
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
