import { valueAt, type DraftFault, type FilePath, type FormField, type Use } from "#kit";
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

/** Where a fault is, in a person's words: "Item: Hose", "Hose: life", "Container: mass", "Rig, line 3: checks". */
export function sayPlace(value: unknown, { path, where, rule }: DraftFault, words: FormWords): string {
  if (path.length === 0) return rule === "loads" ? words.form.wholeFile() : begun(sayDotted(where, words));
  if (isAtStep(path)) return sayAtStep(value, path, words);
  const at = path.findLastIndex((key) => typeof key === "number");
  const fields = path.slice(at + 1).map((key) => sayField(String(key), words));
  if (at === -1) return sayUnder(fields, words);
  const entry = sayEntry(value, path.slice(0, at + 1), words);
  if (fields.length > 0) return sayUnder([...partOver(value, path, words), entry, ...fields], words);
  return words.form.under({ over: begun(sayOne(String(path[at - 1]), words, "head")), field: entry });
}

/** What points at a thing, by where in the form it stands. */
export function sayUse(value: unknown, { path }: Pick<Use, "path">, words: FormWords): string {
  return sayPlace(value, { path, where: "", rule: "vague", what: "", remedy: "", weight: "note" }, words);
}

function isAtStep(path: FilePath): boolean {
  return path[0] === "stages" && path[2] === "steps" && typeof path[3] === "number";
}

/** A line by its stage and its number, as card and screen count it through the whole pattern. */
function sayAtStep(value: unknown, path: FilePath, words: FormWords): string {
  const [, stage, , step] = path as readonly [string, number, string, number, ...unknown[]];
  const lengths = Array.from({ length: stage }, (_, at) => stepsIn(value, at));
  const line = lengths.reduce((sum, one) => sum + one, step + 1);
  const over = words.form.lineOf({ stage: sayEntry(value, ["stages", stage], words), line });
  if (path.length === 4) return words.form.under({ over, field: sayEntry(value, path, words) });
  const fields = path.slice(4).map((key) => (typeof key === "number" ? sayNumber(key, words) : sayField(key, words)));
  return sayUnder([over, ...fields], words);
}

function stepsIn(value: unknown, stage: number): number {
  const steps = valueAt(value, ["stages", stage, "steps"]);
  return Array.isArray(steps) ? steps.length : 0;
}

function sayNumber(at: number, { form }: FormWords): string {
  return form.number({ number: at + 1 });
}

/** What an entry of a list belongs to, where its own name does not tell: an item, or a part of the pattern. */
function partOver(value: unknown, path: FilePath, words: FormWords): readonly string[] {
  if (path[0] !== "items") return [sayField(String(path[0]), words)];
  return path.filter((key) => typeof key === "number").length > 1 ? [sayEntry(value, path.slice(0, 2), words)] : [];
}

/** What the lint says, the fields it names called by their labels. */
export function sayLint(text: string, words: FormWords): string {
  return text.replaceAll(/`(\w+)`/g, (_, name: string) => words.form.quoted({ field: sayField(name, words) }));
}

/** A fault beside its field: what is wrong, and what to do. */
export function sayFault(fault: DraftFault, words: FormWords): string {
  return `${sayWhat(fault, words)} ${sayLint(fault.remedy, words)}`;
}

/** What is wrong: where it does not load, what is written and what may be; else what the lint says. */
export function sayWhat({ given, what }: DraftFault, words: FormWords): string {
  if (given === undefined) return sayLint(what, words);
  const allowed = sayLint(given.allowed, words);
  const isEmpty = given.got === "nothing" || given.got === '""';
  return isEmpty ? words.form.nothingWritten({ allowed }) : words.form.writtenIs({ got: given.got, allowed });
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
