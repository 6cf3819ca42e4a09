import { parseQuantity, type UnitSystem } from "#base";
import { HYDRAULIC_LIMITS, deliveryTable, type DeliveryCase, type DeliveryRow } from "#hydraulics";
import { z } from "zod";
import { assumptionsOut } from "../assumptions.ts";
import { bandOut } from "../on-scene/band-out.ts";
import { cautionsOut } from "../cautions-out.ts";
import { pumpingCautions } from "./delivery.ts";
import { deliveryIn, resolveDelivery } from "./delivery-input.ts";
import { answered, quantity } from "../quantity-field.ts";
import { defineQuestion } from "../question.ts";

/** Lifts of a table, round in the reader's own units [m]. */
export const TABLE_LIFTS: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [1, 2, 3, 4, 5, 6, 7],
  us: [3, 6, 9, 12, 15, 18, 21, 24].map((feet) => parseQuantity(`${feet} ft`, "length")),
};

export const deliveryTableOut = z.strictObject({
  rows: z.array(
    z.strictObject({
      lift: answered("length", "Suction lift; for a pump that stands in the water, its hose's end above the water"),
      kind: z.enum(["delivers", "cannot-lift", "suction-limited", "hose-too-short"]),
      flow: answered("flow", "Flow of all pumps together; 0 where nothing comes"),
      band: bandOut,
      because: z.string().describe("What binds, or why nothing comes"),
    }),
  ),
  assumptions: assumptionsOut,
  cautions: cautionsOut,
});

export const deliveryTableQuestion = defineQuestion({
  name: "delivery-table",
  summary: "Flow a rigged pump moves at one lift after another, for a table on a wall or a card.",
  input: deliveryIn.extend({
    lifts: z
      .array(quantity("length", "A lift", HYDRAULIC_LIMITS.lift))
      .min(1)
      .max(50)
      .optional()
      .describe("Lifts in place of the rig's own; 1 to 7 m if left out"),
  }),
  output: deliveryTableOut,
  example: {
    pump: { curve: [{ flow: "480 L/min", head: "26 m" }], greatestLift: "7.6 m" },
    suction: { lift: "3 m", bore: "76 mm", length: "9 m", roughness: "0.3 mm", fittings: 3 },
    discharge: { rise: "2 m", bore: "65 mm", length: "15 m", roughness: "0.1 mm", fittings: 1 },
    lifts: ["2 m", "4 m", "6 m"],
  },
  answer: ({ lifts = [...TABLE_LIFTS.metric], ...input }, context) => {
    const { rig, electric, assumptions } = resolveDelivery(input, context);
    const rows = deliveryTable(onlyLift(rig), lifts).map((row) => asAnswered(rig, row));
    return { rows, assumptions: [...assumptions], cautions: pumpingCautions(electric) };
  },
});

/** For a pump that stands in the water a row's lift is the whole height, so the rig's own rise does not count. */
function onlyLift(rig: DeliveryCase): DeliveryCase {
  return rig.suction ? rig : { ...rig, rise: 0 };
}

type Row = z.input<typeof deliveryTableOut>["rows"][number];

function asAnswered({ suction }: DeliveryCase, row: DeliveryRow): Row {
  if (!suction || row.lift <= suction.length) return { ...row, because: BECAUSE[row.kind] };
  const kind = "hose-too-short";
  return { lift: row.lift, kind, flow: 0, band: { low: 0, high: 0, uncertainty: 0 }, because: BECAUSE[kind] };
}

const BECAUSE: Readonly<Record<Row["kind"], string>> = {
  delivers: "pump, height and hoses",
  "suction-limited": "the suction side feeds no more",
  "cannot-lift": "too high: no water comes",
  "hose-too-short": "the suction hose does not reach",
};
