import { plainName } from "#base";
import { newestOfEach, patternKey, type Pattern } from "#kit";
import type { DateRead } from "#readiness";
import { enrolKit, tellTurnaround, type ActContext, type Draft } from "#station";
import type { SheetField } from "./fields.ts";
import type { RowIn } from "./row-in.ts";

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

/** One date that an item may bear: one column, however many patterns have a thing of that name. */
export interface DateField extends SheetField {
  readonly of: DateRead["of"];
  /** Id of the item by the id of its pattern. */
  readonly itemIn: ReadonlyMap<string, string>;
}

/** Dates that items of these patterns go by, each once. */
export function dateFields(patterns: Iterable<Pattern>): readonly DateField[] {
  const fields = new Map<string, DateField>();
  for (const { id: pattern, items } of newestOfEach([...patterns]))
    for (const { id, name, life } of items)
      for (const of of datesBorne(life.kind)) {
        const isTaken = fields.get(labelOf(name, of))?.itemIn.has(pattern) === true;
        addField(fields, { name: isTaken ? `${name} (${id})` : name, of, pattern, id });
      }
  return [...fields.values()];
}

function datesBorne(life: Pattern["items"][number]["life"]["kind"]): readonly DateRead["of"][] {
  if (life === "printed") return ["printed"];
  return life === "fitted" ? ["fitted", "made"] : [];
}

function labelOf(name: string, of: DateRead["of"]): string {
  return `${name}, ${DATE_WORDS[of]}`;
}

interface Dated extends Pick<DateField, "of"> {
  readonly name: string;
  readonly pattern: string;
  readonly id: string;
}

function addField(fields: Map<string, DateField>, { name, of, pattern, id }: Dated): void {
  const label = labelOf(name, of);
  const itemIn = new Map([...(fields.get(label)?.itemIn ?? []), [pattern, id]]);
  const also = [...(of === "made" ? [] : [name]), ...DATE_ALSO[of].map((word) => `${name} ${word}`)];
  fields.set(label, { key: `date ${label}`, label, also, of, itemIn });
}

/** What columns of a list of kits may be. */
export function kitFields(patterns: Iterable<Pattern>): readonly SheetField[] {
  return [...ABOUT_KITS, ...dateFields(patterns)];
}

/** A kit taken on charge as the sheet tells it. Dates that it does not have are read at the first turnaround. */
export function readKit(row: RowIn, doing: ActContext, newId: () => string): readonly Draft[] {
  const [name, serial, seal] = [row.needed("name"), row.needed("serial"), row.text("seal")];
  const newest = newestOfEach([...doing.patterns.values()]);
  const pattern = row.oneOf("pattern", newest, (one) => [one.name, one.id, patternKey(one)]);
  const open = doing.places.filter(({ closed }) => !closed);
  const place = row.oneOf("place", open, (one) => [one.name, one.id]);
  if (!pattern || !place || name === "" || serial === "") return [];
  const found = readDates(row, pattern, doing);
  const read = found.map((one) => one.read);
  const body = {
    name,
    serial,
    ...(seal !== "" && { seal }),
    items: [],
    ...(read.length > 0 && { read }),
    sheet: row.sheet,
  };
  const wanted = { kit: newId(), place: place.id, pattern: patternKey(pattern), body };
  const dates = Object.fromEntries(found.map(({ key }, at) => [`body.read.${at}.date`, key]));
  return row.take(enrolKit(doing, wanted), { ...KIT_KEYS, ...dates });
}

const KIT_KEYS = { place: "place", "body.name": "name", "body.serial": "serial", "body.seal": "seal" };

function readDates(row: RowIn, pattern: Pattern, doing: ActContext): readonly DateInRow[] {
  return dateFields(doing.patterns.values()).flatMap(({ key, itemIn, of, label }) => {
    const date = row.date(key);
    if (date === undefined) return [];
    const item = itemIn.get(pattern.id);
    if (item !== undefined && pattern.items.some(({ id }) => id === item)) return [{ key, read: { item, of, date } }];
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

interface DateInRow {
  /** Of its column. */
  readonly key: string;
  readonly read: DateRead;
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
  const keys = { "body.day": "day", "body.doneBy": "doneBy", "body.result": "result", "body.note": "note" };
  return row.take(tellTurnaround(doing, kit, { day, ...said, sheet: row.sheet }), keys);
}
