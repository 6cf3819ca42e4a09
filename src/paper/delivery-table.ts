import { flowFigure, flowUnit, sayFlow, sayLength } from "#words";
import type { UnitSystem } from "#base";
import { writeCautions } from "./caution-panel.ts";
import { writeTable } from "./rows.ts";
import type { Sheet } from "./sheet.ts";

/** What a kit moves at one suction lift, or a submersible at one height of its hose's end. */
export interface PaperDeliveryRow {
  /** Suction lift or height [m]. */
  readonly lift: number;
  /** Delivery [m³/s]; absent where nothing is delivered. */
  readonly flow?: number;
  /** Likely range of it [m³/s]. */
  readonly low?: number;
  readonly high?: number;
  /** What binds, or why nothing comes. */
  readonly because: string;
}

/** "At this lift it moves so much", for the wall and the boat. */
export function writeDeliveryTable(
  sheet: Sheet,
  rows: readonly PaperDeliveryRow[],
  setting: string,
  units: UnitSystem,
  height: "Suction lift" | "Height of hose end",
): void {
  sheet.heading("What it delivers");
  writeCautions(sheet, ["estimate"]);
  sheet.paragraph(setting);
  sheet.gap(4);
  const columns = [
    { name: height, part: 0.18 },
    { name: "Delivers about", part: 0.2 },
    { name: "Likely between", part: 0.27 },
    { name: "What binds", part: 0.35 },
  ];
  const cells = rows.map(({ lift, flow: best, low, high, because }) => [
    sayLength(lift, units),
    best === undefined ? "nothing" : sayFlow(best, units),
    low === undefined || high === undefined
      ? ""
      : `${flowFigure(low, units, Math.floor)} and ${flowFigure(high, units, Math.ceil)} ${flowUnit(units)}`,
    because,
  ]);
  writeTable(
    sheet,
    columns,
    cells.map((row) => ({ cells: row })),
  );
}
