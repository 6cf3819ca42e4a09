import type { Check, Pattern, Step } from "#kit";
import type { Answer, Mark, Turnaround, Value } from "#readiness";

/** A small invented pattern and turnaround for the tests of these pages. */
export const SAMPLE: Pattern = {
  id: "trial-pump",
  version: 1,
  name: "Trial pump",
  summary: "A small pattern to test screens with",
  container: {
    name: "drum",
    mass: 50,
    lifters: 2,
    places: [{ id: "lid", name: "under the lid" }],
    markings: [],
  },
  policy: {},
  items: [
    item("torch", "Torch", { kind: "none" }),
    item("cells", "Torch cells", { kind: "printed" }),
    item("desiccant", "Desiccant", { kind: "single-use" }),
  ],
  modes: [
    { id: "torch-dark", item: "torch", name: "Torch does not light", effect: "limits", limit: "daylight only" },
    { id: "torch-cracked", item: "torch", name: "Lens cracked", effect: "notes" },
    { id: "cells-old", item: "cells", name: "Cells past their date", effect: "grounds" },
  ],
  checks: [
    look("torch-lights", "torch", ["torch-dark", "torch-cracked"]),
    { ...look("cells-date", "cells", ["cells-old"]), kind: "date" },
    { ...look("cord", "torch", []), kind: "measure", dimension: "length", unit: "cm", atLeast: 0.5, atMost: 0.6 },
    { ...look("bands", "torch", []), kind: "count", of: "bands", exactly: 4 },
    { ...look("number", "torch", []), kind: "match", first: "card", second: "container" },
    { ...look("seal", "torch", []), kind: "match", first: "the seal", second: "the record", against: "recorded-seal" },
  ],
  stages: [
    { id: "open", name: "Open", steps: [step(1, "vent", []), step(2, "torch", ["torch-lights", "cells-date"])] },
    {
      id: "restow",
      name: "Restow",
      steps: [
        { ...step(3, "spare", []), optional: true },
        { ...step(4, "desiccant", []), renews: ["desiccant"], stows: ["torch"] },
      ],
    },
  ],
};

function item(id: string, name: string, life: Pattern["items"][number]["life"]): Pattern["items"][number] {
  return { id, name, place: "lid", quantity: 1, life, lapse: "limits", extendable: false };
}

function look(id: string, of: string, finds: readonly string[]): Check & { readonly kind: "look" } {
  return { id, item: of, kind: "look", ask: `Look at ${id}`, expect: `The ${id} is right.`, finds };
}

function step(line: number, id: string, checks: readonly string[]): Step {
  return {
    id,
    line,
    text: `Do ${id}`,
    checks,
    stows: [],
    renews: [],
    hazards: [],
    cautions: [],
    measuresDelivery: false,
    needs: { people: 1, minutes: 1, tools: [] },
    optional: false,
  };
}

/** Check of the sample by its id. */
export function sampleCheck(id: string): Check {
  return SAMPLE.checks.find((check) => check.id === id)!;
}

/** A mark made at a minute of one morning, on a device. */
export function sampleMark(minute: number, device = "phone"): Mark {
  const at = `2026-03-14T09:${String(minute).padStart(2, "0")}:00+00:00`;
  return { entry: `entry-${device}-${minute}`, at, by: "ada", device };
}

/** One answer of a sample turnaround. */
export interface SampleAnswer {
  readonly key: string;
  readonly answer?: Answer;
  readonly device?: string;
  readonly value?: Value;
}

/** A turnaround of the sample with the given answers, in the order given, one a minute. */
export function sampleTurnaround(...given: SampleAnswer[]): Turnaround {
  const answers = given.map(({ key, answer = "seen", device, value }, minute) => {
    const [step, check] = key.split("/");
    const body = { turnaround: "t1", step: step!, answer, ...(check ? { check } : {}), ...(value ? { value } : {}) };
    return [key, { ...body, mark: sampleMark(minute + 1, device) }] as const;
  });
  return {
    id: "t1",
    because: "routine",
    opened: { ...sampleMark(0), sealSeen: "00417" },
    answers: Object.fromEntries(answers),
    timers: {},
    measured: [],
  };
}
