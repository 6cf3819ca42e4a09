import { isInputError } from "#base";
import { expect } from "vitest";
import { ask, exampleOf } from "../ask.ts";

/* What the tests of guards are given, and how they are told of faults. */

/** Code and field of each fault; every one says what to do. */
export function faultsOf(name: string, given: unknown): readonly string[] {
  try {
    ask(name, given);
  } catch (thrown) {
    if (!isInputError(thrown)) throw thrown;
    for (const fault of thrown.faults) expect(fault.remedy.length, fault.code).toBeGreaterThan(10);
    return thrown.faults.map((fault) => `${fault.code} ${fault.field}`);
  }
  return [];
}

export const HULL = { form: "box", length: "9 m", beam: "2.6 m", depth: "1.4 m", draught: "0.7 m" };
export const HOLD = { name: "hold", from: "1 m", to: "4 m", permeability: 0.9 };
export const READINGS = [
  { at: "10 min", level: "0.5 m" },
  { at: "15 min", level: "0.58 m" },
];
export const AREA = { area: "12 m²", outsideLevel: "1.2 m", lossLevel: "1.1 m" };

/** The example of `kits-needed`, otherwise in this. */
export function kits(more: object): object {
  return { ...(exampleOf("kits-needed") as object), ...more };
}

/** A sheet with two soundings, otherwise in this. */
export function sheet(more: object): object {
  return {
    boat: { kind: "fishing boat", length: 12 },
    spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
    readings: READINGS,
    pumping: [],
    now: "20 min",
    ...more,
  };
}
