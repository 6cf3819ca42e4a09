import { inUnit } from "#base";
import { flowUnit, levelUnit, volumeIn } from "#words";
import { describe, expect, it } from "vitest";
import { placeDelivery, type DeliveryDrawn } from "./delivery-scales.ts";
import { placeSoundings } from "./sounding-chart-scales.ts";
import { placeTrend, type Tick } from "./trend-scales.ts";

/* Every plot whose readings have a unit that depends on the reader. The others are over months, years, counts and shares. */

const FRAME = { left: 50, right: 690, top: 10, bottom: 230 };
const SYSTEMS = ["metric", "us"] as const;

/** Figures apart by one, two, five or two and a half of a power of ten, as people count. */
function isRound(ticks: readonly Tick[]): boolean {
  const figures = ticks.map(({ label }) => Number(label.replaceAll(",", "")));
  const step = figures[1]! - figures[0]!;
  const lead = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
  const isStep = [1, 2, 2.5, 5].some((one) => Math.abs(lead - one) < 1e-6);
  return isStep && figures.every((figure) => Math.abs(figure / step - Math.round(figure / step)) < 1e-6);
}

/** Figures evenly apart on the paper too: a label that was rounded is not where it stands. */
function isWhereItSays(ticks: readonly Tick[], near = 0.5): boolean {
  const figures = ticks.map(({ label }) => Number(label.replaceAll(",", "")));
  const slope = (ticks.at(-1)!.place - ticks[0]!.place) / (figures.at(-1)! - figures[0]!);
  return ticks.every(({ place }, i) => Math.abs(ticks[0]!.place + slope * (figures[i]! - figures[0]!) - place) < near);
}

function expectRound(ticks: readonly Tick[]): void {
  const labels = ticks.map(({ label }) => label).join(" ");
  expect(ticks.length, labels).toBeGreaterThan(1);
  expect(isRound(ticks), labels).toBe(true);
  expect(isWhereItSays(ticks), labels).toBe(true);
}

describe.each(SYSTEMS)("figures at an axis are round in the reader's own unit, %s", (units) => {
  it.each([
    ["fuel", [0.0009, 0.0011, 0.00105]],
    ["fuel", [0.0031, 0.0042]],
    ["drops", [0.00003, 0.0001]],
    ["drops", [0.00042]],
  ] as const)("of %s in a trend", (style, values) => {
    const points = values.map((value, i) => ({ at: `202${i + 4}-01-10T10:00:00Z`, value }));
    const limits = [{ value: 1.2 * values[0], label: "at most" }];
    const reader = { language: "en-GB", inUnit: (value: number) => volumeIn(value, style, units) };
    expectRound(placeTrend(points, limits, FRAME, reader).up);
  });

  it("of flow and head in a delivery", () => {
    const flows = [0, 0.002, 0.004, 0.006, 0.0083];
    const drawn: DeliveryDrawn = {
      points: flows.map((flow) => ({ flow, pumpHead: 23 - 2e5 * flow ** 2, rigHead: 5 + 1.75e5 * flow ** 2 })),
      operating: [],
      flow: 0,
      head: 23,
      band: { low: 0, high: 0 },
    };
    const length = units === "us" ? "ft" : "m";
    const axes = {
      flow: { symbol: flowUnit(units), of: (si: number) => inUnit(si, flowUnit(units), "flow") },
      head: { symbol: length, of: (si: number) => inUnit(si, length, "length") },
    };
    const { up, across } = placeDelivery(drawn, axes, FRAME);
    for (const ticks of [up, across]) expectRound(ticks);
  });

  it.each([0.31, 0.74, 1.62])("of a level of %d m in the soundings", (level) => {
    const at = Date.parse("2026-03-14T14:00:00Z");
    const drawn = { readings: [0, 5, 10].map((i) => ({ at: at + i * 60_000, level })), fan: [], runs: [] };
    expectRound(placeSoundings(drawn, levelUnit(units), FRAME, String).up);
  });
});
