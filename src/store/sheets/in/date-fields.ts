import { newestOfEach, type Pattern } from "#kit";
import type { DateRead } from "#readiness";
import type { SheetField } from "./fields.ts";

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

/** A date in a row, under its column. */
export interface DateInRow {
  /** Of its column. */
  readonly key: string;
  readonly read: DateRead;
}
