import { plainName } from "#base";
import { tellTurnaround, type ActContext, type Draft } from "#station";
import type { SheetField } from "./fields.ts";
import type { RowIn } from "./row-in.ts";
import { refuseDouble } from "./turnaround-here.ts";

export const TURNAROUND_FIELDS: readonly SheetField[] = [
  {
    key: "kit",
    label: "Kit",
    also: ["serial", "serial no", "serial number", "pump", "kit name", "name"],
    isNeeded: true,
  },
  { key: "day", label: "Day", also: ["date", "done", "done on", "when", "closed"], isNeeded: true },
  { key: "doneBy", label: "Done by", also: ["by", "who", "person", "initials", "signed", "closed by"] },
  { key: "result", label: "Result", also: ["outcome", "how it went", "state", "pass fail"] },
  { key: "note", label: "Note", also: ["notes", "remarks", "comment", "comments"] },
];

/** A turnaround before this log, of a kit on charge: a statement, which proves nothing. */
export function readTurnaround(row: RowIn, doing: ActContext): readonly Draft[] {
  const kits = doing.kits.filter(({ retired }) => retired === undefined);
  const given = row.needed("kit");
  const kit =
    kits.find(({ serial }) => plainName(serial) === plainName(given)) ??
    kits.find(({ name }) => plainName(name) === plainName(given));
  if (given !== "" && kit === undefined) {
    row.fault("ST-227", "kit", given, "the serial or the name of a kit on charge", "Take the kits in first.");
  }
  if (row.needed("day") === "") return [];
  const day = row.date("day");
  const said = Object.fromEntries(
    (["doneBy", "result", "note"] as const).map((key) => [key, row.text(key)]).filter(([, text]) => text !== ""),
  );
  if (!kit || day === undefined) return [];
  refuseDouble(row, kit, { day, ...said }, doing);
  const keys = { "body.day": "day", "body.doneBy": "doneBy", "body.result": "result", "body.note": "note" };
  return row.take(tellTurnaround(doing, kit, { day, ...said, sheet: row.sheet }), keys);
}
