import { describe, expect, it } from "vitest";
import { deliveryQuestion } from "#questions";
import { cardDelivery } from "./card-delivery.ts";
import { readPatternFolders } from "#store/patterns";

const { patterns } = readPatternFolders(["patterns"]);
const petrol = patterns.find(({ engine }) => engine !== undefined)!;
const electric = patterns.find(({ engine }) => engine === undefined)!;

describe("the delivery table of a card", () => {
  it("prints what the question delivery gives at each lift, and where the hose does not reach", () => {
    const { rows } = cardDelivery(petrol, "metric")!;
    expect(rows.map(({ lift }) => lift)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    const alone = deliveryQuestion.answer(
      { kit: petrol.id, water: { temperature: "12 °C", salinity: 35 }, suction: { lift: 3 }, discharge: { rise: 1 } },
      { patterns: () => petrol },
    );
    expect(rows[2]?.flow).toBeCloseTo(alone.flow, 12);
    expect(rows[4]).toEqual({ lift: 5, because: "the suction hose does not reach" });
  });

  it("says how the kit stands, in the reader's units", () => {
    expect(cardDelivery(petrol, "metric")!.setting).toBe(
      "Full throttle, sea water of 12\u00a0°C, sea level, hoses as packed: discharge hose 7.6\u00a0m, " +
        "suction hose 4.6\u00a0m, the hose's end 1.0\u00a0m above the pump.",
    );
    expect(cardDelivery(electric, "us")!.setting).toContain("the lift is the height of the hose's end above the water");
  });

  it("prints none for a pattern that does not say what its pump does", () => {
    const { hydraulics: _, ...silent } = petrol;
    expect(cardDelivery(silent, "metric")).toBeUndefined();
  });
});
