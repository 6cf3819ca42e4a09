import { newestOfEach, patternKey, type Pattern } from "#kit";
import type { DateRead } from "#readiness";
import { enrolKit, tellTurnaround, type Doing, type Draft } from "#station";
import type { SheetField } from "./fields.ts";
import { plain, type RowIn } from "./row-in.ts";

const ABOUT_KITS: readonly SheetField[] = [
  { key: "name", label: "Name", also: ["kit", "kit name", "pump", "pump name"], isNeeded: true },
  { key: "serial", label: "Serial", also: ["serial number", "serial no", "s n", "plate"], isNeeded: true },
  {
    key: "pattern",
    label: "Pattern",
    also: ["type", "model", "pump type", "kit type", "built to"],
    isNeeded: true,
    mayBeFixed: true,
  },
  { key: "place", label: "Place", also: ["location", "station", "kept at", "where"], isNeeded: true, mayBeFixed: true },
  { key: "seal", label: "Seal", also: ["seal no", "seal number"] },
];

const DATE_WORDS: Readonly<Record<DateRead["of"], string>> = { printed: "good until", fitted: "fitted", made: "made" };
const DATE_ALSO: Readonly<Record<DateRead["of"], readonly string[]>> = {
  printed: ["expiry", "expires", "use by", "best before", "printed", "date"],
  fitted: ["date", "filled", "replaced", "changed"],
  made: ["manufactured", "year made"],
};

/** One date that an item of some pattern may bear. */
export interface DateField extends SheetField {
  readonly item: string;
  readonly of: DateRead["of"];
}

/** Dates that items of these patterns go by, each once. */
export function dateFields(patterns: Iterable<Pattern>): readonly DateField[] {
  const fields = new Map<string, DateField>();
  for (const { items } of newestOfEach([...patterns])) {
    for (const { id, name, life } of items) {
      const kinds = life.kind === "printed" ? ["printed" as const] : life.kind === "fitted" ? FITTED : [];
      for (const of of kinds) {
        const key = `date ${of} ${id}`;
        const also = [...(of === "made" ? [] : [name]), ...DATE_ALSO[of].map((word) => `${name} ${word}`)];
        if (!fields.has(key)) fields.set(key, { key, label: `${name}, ${DATE_WORDS[of]}`, also, item: id, of });
      }
    }
  }
  return [...fields.values()];
}

const FITTED = ["fitted", "made"] as const;

/** What columns of a list of kits may be. */
export function kitFields(patterns: Iterable<Pattern>): readonly SheetField[] {
  return [...ABOUT_KITS, ...dateFields(patterns)];
}

/** A kit taken on charge as the sheet tells it. Dates that it does not have are read at the first turnaround. */
export function readKit(row: RowIn, doing: Doing, newId: () => string): readonly Draft[] {
  const [name, serial, seal] = [row.needed("name"), row.needed("serial"), row.text("seal")];
  const newest = newestOfEach([...doing.patterns.values()]);
  const pattern = row.oneOf("pattern", newest, (one) => [one.name, one.id, patternKey(one)]);
  const open = doing.places.filter(({ closed }) => !closed);
  const place = row.oneOf("place", open, (one) => [one.name, one.id]);
  if (!pattern || !place || name === "" || serial === "") return [];
  const read = readDates(row, pattern, doing);
  const body = {
    name,
    serial,
    ...(seal !== "" && { seal }),
    items: [],
    ...(read.length > 0 && { read }),
    sheet: row.sheet,
  };
  const wanted = { kit: newId(), place: place.id, pattern: patternKey(pattern), body };
  const dates = Object.fromEntries(read.map(({ item, of }, at) => [`body.read.${at}.date`, `date ${of} ${item}`]));
  return row.take(enrolKit(doing, wanted), { ...KIT_KEYS, ...dates });
}

const KIT_KEYS = { place: "place", "body.name": "name", "body.serial": "serial", "body.seal": "seal" };

function readDates(row: RowIn, pattern: Pattern, doing: Doing): readonly DateRead[] {
  return dateFields(doing.patterns.values()).flatMap(({ key, item, of, label }) => {
    const date = row.date(key);
    if (date === undefined) return [];
    if (pattern.items.some(({ id }) => id === item)) return [{ item, of, date }];
    row.fault(
      "ST-228",
      key,
      label,
      `a date of an item of ${pattern.name}`,
      "Leave the cell empty: this kit has no such item.",
    );
    return [];
  });
}

export const TURNAROUND_FIELDS: readonly SheetField[] = [
  {
    key: "kit",
    label: "Kit",
    also: ["serial", "serial no", "serial number", "pump", "kit name", "name"],
    isNeeded: true,
  },
  { key: "day", label: "Day", also: ["date", "done", "done on", "when"], isNeeded: true },
  { key: "doneBy", label: "Done by", also: ["by", "who", "person", "initials", "signed"] },
  { key: "result", label: "Result", also: ["outcome", "how it went", "state", "pass fail"] },
  { key: "note", label: "Note", also: ["notes", "remarks", "comment", "comments"] },
];

/** A turnaround before this log, of a kit on charge: a statement, which proves nothing. */
export function readTurnaround(row: RowIn, doing: Doing): readonly Draft[] {
  const kits = doing.kits.filter(({ retired }) => retired === undefined);
  const given = row.needed("kit");
  const kit =
    kits.find(({ serial }) => plain(serial) === plain(given)) ?? kits.find(({ name }) => plain(name) === plain(given));
  if (given !== "" && kit === undefined) {
    row.fault("ST-227", "kit", given, "the serial or the name of a kit on charge", "Take the kits in first.");
  }
  if (row.needed("day") === "") return [];
  const day = row.date("day");
  const said = Object.fromEntries(
    (["doneBy", "result", "note"] as const).map((key) => [key, row.text(key)]).filter(([, text]) => text !== ""),
  );
  if (!kit || day === undefined) return [];
  const keys = { "body.day": "day", "body.doneBy": "doneBy", "body.result": "result", "body.note": "note" };
  return row.take(tellTurnaround(doing, kit, { day, ...said, sheet: row.sheet }), keys);
}
