import { valueAt, type DraftFault, type FilePath, type FormField } from "#kit";
import type { Words } from "#words";

/** What the form of a pattern speaks from. */
export interface FormWords {
  readonly form: Words["patternForm"];
  /** By the name of a field in the file. */
  readonly fields: Words["patternFields"];
  /** By the name of a list in the file. */
  readonly entries: Words["patternEntries"];
}

/** A field's name as a label: "lapseLimit" is "Lapse limit". What no pattern has is called as it stands in the file. */
export function sayField(name: string, { fields }: FormWords): string {
  return isKeyOf(fields, name) ? fields[name]() : begun(spaced(name));
}

/** One of several, for a button: "modes" is "a mode"; or as a head, "Mode". */
export function sayOne(name: string, { entries }: FormWords, how: "head" | "one" = "one"): string {
  return isKeyOf(entries, name) ? entries[name]({ how }) : spaced(name);
}

function isKeyOf<Of extends object>(words: Of, name: string): name is Extract<keyof Of, string> {
  return Object.hasOwn(words, name);
}

function spaced(name: string): string {
  return name.replaceAll(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
}

/** What an entry of a list is called: by its name, its instruction, or its place. */
export function sayEntry(value: unknown, path: FilePath, { form }: FormWords): string {
  const told = ["name", "says", "ask", "text", "does", "what", "sign", "id", "item"].map((field) =>
    valueAt(value, [...path, field]),
  );
  const found = told.find((one): one is string => typeof one === "string" && one.trim() !== "");
  const whole = valueAt(value, path);
  return (
    found ?? (typeof whole === "string" && whole !== "" ? whole : form.number({ number: Number(path.at(-1)) + 1 }))
  );
}

/** What the schema says of a field, with its limits. */
export function sayHint(field: FormField, { form }: FormWords): string {
  const limits = sayLimits(field, form);
  return limits === undefined ? field.about : `${field.about} ${limits}`;
}

function sayLimits(field: FormField, form: FormWords["form"]): string | undefined {
  if (field.kind === "number") {
    const { least, most } = field;
    return field.isWhole ? form.wholeFromTo({ least, most }) : form.fromTo({ least, most });
  }
  if (field.kind === "text" && !field.isId) return form.atMost({ most: field.most });
  return field.kind === "quantity" ? form.suchAs({ examples: field.examples.join(", ") }) : undefined;
}

/** Where a fault is, in a person's words: "Item: Hose", "Hose: life", "Container: mass". */
export function sayPlace(value: unknown, { path, where, rule }: DraftFault, words: FormWords): string {
  if (path.length === 0) return rule === "loads" ? where : begun(sayDotted(where, words));
  const at = path.findLastIndex((key) => typeof key === "number");
  const fields = path.slice(at + 1).map((key) => sayField(String(key), words));
  if (at === -1) return sayUnder(fields, words);
  const entry = sayEntry(value, path.slice(0, at + 1), words);
  if (fields.length > 0) return sayUnder([entry, ...fields], words);
  return words.form.under({ over: begun(sayOne(String(path[at - 1]), words, "head")), field: entry });
}

function sayDotted(where: string, words: FormWords): string {
  const say = (name: string) =>
    sayUnder(
      name.split(".").map((one) => sayField(one, words)),
      words,
    ).toLowerCase();
  return where.replaceAll(/\w+(\.\w+)+/g, say);
}

function sayUnder([first = "", ...rest]: readonly string[], { form }: FormWords): string {
  return rest.reduce((over, field) => form.under({ over, field: field.toLowerCase() }), first);
}

function begun(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** "2 errors, 1 warning, no notes" */
export function sayCounts(faults: readonly DraftFault[], { form }: FormWords): string {
  const count = (weight: DraftFault["weight"]) => faults.filter((one) => one.weight === weight).length;
  return form.counts({ errors: count("error"), warnings: count("warning"), notes: count("note") });
}
