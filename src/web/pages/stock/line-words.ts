import type { StockLine } from "#readiness";
import type { StationView } from "#web/device/index.ts";

/** What a line did to the shelf of a place, in words: "2 received, lot L1". */
export function sayChange(line: StockLine, { places }: Pick<StationView, "places">, place: string): string {
  const nameOf = (id: string) => places.find((one) => one.id === id)?.name ?? id;
  if (line.what === "counted") {
    const lots = line.found.map(({ lot, count }) => (lot === undefined ? `${count}` : `${count} of lot ${lot}`));
    return `counted: ${lots.length === 0 ? "none" : lots.join(", ")}`;
  }
  const lot = line.lot === undefined ? "" : `, lot ${line.lot}`;
  if (line.what === "received") return `${line.count} received${lot}`;
  if (line.what === "moved") {
    const way = line.to === place ? `from ${nameOf(line.place)}` : `to ${nameOf(line.to)}`;
    return `${line.count} moved ${way}${lot}`;
  }
  if (line.kit !== undefined) return `${line.count} fitted${lot}, in`;
  return `${line.count} ${line.what}${lot}: ${line.because}`;
}
