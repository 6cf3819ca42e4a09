import type { Fault } from "#base";
import type { PlacedPump, PumpDelivery, Vessel } from "#flooding";
import type { z } from "zod";
import type { Assumption } from "../assumptions.ts";
import type { floodPumpIn } from "./casualty-fields.ts";
import { checkName, omitMissing, wrong } from "./casualty-input.ts";
import { floodKit, oneOfThree, type FloodKit } from "./flood-kit.ts";
import { depthOf } from "../guards/places.ts";
import { sayCounted } from "../guards/one-clock.ts";
import { endsBeforeItBegins } from "../guards/times.ts";
import type { QuestionContext } from "../question.ts";

type FloodPump = z.output<typeof floodPumpIn>;

interface Told {
  readonly faults: Fault[];
  readonly assumptions: Assumption[];
  readonly context: QuestionContext;
}

/** Pumps in their places, named where they were not. */
export function resolvePumps(given: readonly FloodPump[], vessel: Vessel, told: Told): PlacedPump[] {
  const { faults } = told;
  const names = vessel.compartments.map((one) => one.name);
  const deck = vessel.kind === "floating" ? depthOf(vessel.hull) : undefined;
  const hours = given.map(({ from, until }) => ({ from, to: until }));
  faults.push(...endsBeforeItBegins(hours, "pumps", "until", sayCounted));
  return given.map((one, i) => {
    const field = `pumps[${i}]`;
    checkName(one.compartment, names, `${field}.compartment`, faults);
    const kit = one.kit === undefined ? undefined : resolveOneKit(one, field, deck, told);
    const runtime = one.runtime ?? kit?.runtime;
    return {
      name: one.name ?? `pump ${i + 1}`,
      compartment: one.compartment ?? names[0]!,
      delivery: kit?.delivery ?? resolveDelivery(one, field, faults),
      ...omitMissing({ suctionHeight: one.suctionHeight, from: one.from, until: one.until }),
      ...(runtime === undefined ? {} : { refuel: { runtime, pause: one.refuelling ?? 300 } }),
    };
  });
}

/** Where a kit discharges that nobody told: over her deck edge. A vessel without one must be told. */
function resolveOneKit(one: FloodPump, field: string, deck: number | undefined, told: Told): FloodKit | undefined {
  const dischargeHeight = one.dischargeHeight ?? deck;
  told.faults.push(...oneOfThree(one, field));
  if (dischargeHeight === undefined)
    told.faults.push(wrong(`${field}.dischargeHeight`, undefined, "a height above the keel", "A kit needs the lift."));
  const asked = { kit: one.kit!, field: `${field}.kit`, dischargeHeight: dischargeHeight ?? 0 };
  return floodKit(asked, told.context, told.assumptions);
}

function resolveDelivery(pump: FloodPump, field: string, faults: Fault[]): PumpDelivery {
  const { flow, curve } = pump;
  faults.push(...oneOfThree(pump, field));
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
    if (points.some((point, k) => k > 0 && point.flow > points[k - 1]!.flow))
      faults.push(
        wrong(`${field}.curve`, "more flow at more head", "less flow the higher it lifts", "Check the points."),
      );
    return { kind: "table", points, dischargeHeight };
  }
  if (curve.head >= curve.shutOffHead) {
    faults.push(wrong(`${field}.curve.head`, curve.head, "below shutOffHead", "Give a duty point with flow."));
  }
  const bend = (curve.shutOffHead - curve.head) / curve.flow ** 2;
  return { kind: "parabola", shutOffHead: curve.shutOffHead, bend: Math.max(bend, 1e-9), dischargeHeight };
}
