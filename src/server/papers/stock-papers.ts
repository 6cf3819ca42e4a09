import { dayIn } from "#base";
import type { Label } from "#paper";
import { orderList, stockOf, type Place } from "#readiness";
import { labelCode, musterOrder, type LabelSheetId, type StationReading } from "#station";
import type { WholeLog } from "../log/whole-log.ts";
import type { Parts } from "../parts.ts";

/** How far the list looks ahead [day]; as on the screen. */
const DAYS = 182;

/** What must be ordered, as a PDF. */
export async function printOrders(parts: Parts, log: WholeLog): Promise<Uint8Array> {
  const reading = (await log.read()).read();
  const now = parts.ambient.now();
  const today = dayIn(reading.places[0]?.zone ?? "UTC", now);
  const stock = stockOf(reading.parts, reading.kits);
  const { renderOrderSheet } = await import("#paper");
  return renderOrderSheet({
    stationName: reading.stationName,
    ...(reading.policy.currency !== undefined && { currency: reading.policy.currency }),
    lines: orderList({ ...reading, stock, today, days: DAYS }),
    places: new Map(reading.places.map(({ id, name }) => [id, name])),
    now,
  });
}

/** Which labels are wanted. */
export interface WantedLabels {
  readonly place: string;
  readonly of: "kits" | "shelves";
  readonly sheet: LabelSheetId;
  readonly skip: number;
}

/** Labels of the kits or shelves of a place, in the order of its shelves; undefined for no such place. */
export async function printLabels(parts: Parts, log: WholeLog, wanted: WantedLabels): Promise<Uint8Array | undefined> {
  const reading = (await log.read()).read();
  const place = reading.places.find(({ id, closed }) => id === wanted.place && !closed);
  if (place === undefined) return undefined;
  const { renderLabels } = await import("#paper");
  const labels = wanted.of === "kits" ? kitLabels(reading, place) : shelfLabels(place);
  return renderLabels({ labels, sheet: wanted.sheet, skip: wanted.skip, now: parts.ambient.now() });
}

function kitLabels({ kits }: StationReading, place: Place): readonly Label[] {
  const here = kits.filter((kit) => kit.place === place.id && kit.retired === undefined);
  return musterOrder(here, place).map(({ kit: { id, name, serial } }) => ({
    title: name,
    line: serial,
    code: labelCode({ kind: "kit", kit: id }),
  }));
}

function shelfLabels(place: Place): readonly Label[] {
  return (place.shelves ?? []).map(({ id, name }) => ({
    title: name,
    line: place.name,
    code: labelCode({ kind: "shelf", place: place.id, shelf: id }),
  }));
}
