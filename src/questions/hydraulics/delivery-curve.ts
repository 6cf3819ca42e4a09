import { curveAtSpeed, deliveryCurve } from "#hydraulics";
import { z } from "zod";
import { bandOut } from "../on-scene/band-out.ts";
import { deliveryIn, resolveDelivery } from "./delivery-input.ts";
import { answered } from "../quantity-field.ts";
import { defineQuestion } from "../question.ts";

export const deliveryCurveOut = z.strictObject({
  points: z.array(
    z.strictObject({
      flow: answered("flow", "Flow of all pumps together"),
      pumpHead: answered("length", "Head each pump gives"),
      rigHead: answered("length", "Head that height and hoses need"),
      npshAvailable: answered("length", "Net positive suction head at the pump's inlet"),
      npshRequired: answered("length", "What the pump needs there"),
    }),
  ),
  operating: z
    .array(
      z.strictObject({
        flow: answered("flow", "Flow of all pumps together"),
        head: answered("length", "Head there"),
        stable: z.boolean(),
      }),
    )
    .describe("Where pump curve and hoses meet, greatest flow first"),
  flow: answered("flow", "Flow really moved: at the suction limit where that binds"),
  head: answered("length", "Head of each pump there; at no flow, its shut-off head"),
  band: bandOut,
  suctionLimit: answered("flow", "Flow the suction can feed at most, where it lies in the picture").optional(),
});

export const deliveryCurveQuestion = defineQuestion({
  name: "delivery-curve",
  summary: "Pump curve, what height and hoses need, operating points and suction limit, as points for a picture.",
  input: deliveryIn.extend({
    count: z.int().min(2).max(400).optional().describe("Points from no flow to the picture's end; 60 if left out"),
  }),
  output: deliveryCurveOut,
  example: {
    pump: { curve: [{ flow: "480 L/min", head: "26 m" }], greatestLift: "7.6 m" },
    suction: { lift: "3 m", bore: "76 mm", length: "6 m", roughness: "0.3 mm", fittings: 3 },
    discharge: { rise: "2 m", bore: "65 mm", length: "15 m", roughness: "0.1 mm", fittings: 1 },
    count: 5,
  },
  answer: ({ count = 60, ...input }, context) => {
    const { rig } = resolveDelivery(input, context);
    const { points, delivery, band, suctionLimit } = deliveryCurve(rig, count);
    const pump = curveAtSpeed(rig.pump.curve, rig.speedRatio, rig.pump.between);
    return {
      points: [...points],
      operating: delivery.points.map(({ flow, stable }) => ({
        flow: flow * rig.pumps,
        head: pump.head(flow),
        stable,
      })),
      flow: delivery.flow,
      head: delivery.head,
      band,
      ...(suctionLimit === undefined ? {} : { suctionLimit }),
    };
  },
});
