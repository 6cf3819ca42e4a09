import { valueAt, type DraftFault, type FilePath, type FormField } from "#kit";

/** Names of fields that say little by themselves, in a person's words. */
const WORDS: Readonly<Record<string, string>> = {
  id: "Id",
  atLeast: "At least",
  ask: "What to do",
  expect: "What right looks like",
  finds: "Modes it can find",
  provedBy: "Proved gone by",
  partOf: "Fixed to",
  text: "Instruction",
  why: "Why it matters",
  stows: "Puts back",
  renews: "Renews",
  does: "Work it does",
  lapse: "When its life ends",
  unread: "When its date cannot be read",
  npshRequired: "NPSH required",
  oneLook: "Shown by one look",
  withNext: "Done with the next line",
  met: "What it met",
  stranger: "Card for a stranger",
  afterUse: "After use",
  hydraulics: "Pump and hoses",
  stages: "Stages and steps",
  policy: "How long things hold",
  troubles: "When it fails at work",
};

/** A field's name as a label: "lapseLimit" is "Lapse limit". */
export function sayField(name: string): string {
  const spaced = name.replaceAll(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
  return WORDS[name] ?? spaced.slice(0, 1).toUpperCase() + spaced.slice(1);
}

/** One of several, for a button: "modes" is "a mode". */
export function sayOne(name: string): string {
  const one = name === "causes" ? "cause" : name === "tries" ? "try" : name.replace(/s$/, "");
  const spaced = one.replaceAll(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
  return `${/^[aeiou]/.test(spaced) ? "an" : "a"} ${spaced}`;
}

/** What an entry of a list is called: by its name, its instruction, or its place. */
export function sayEntry(value: unknown, path: FilePath): string {
  const told = ["name", "says", "ask", "text", "does", "what", "sign", "id", "item"].map((field) =>
    valueAt(value, [...path, field]),
  );
  const found = told.find((one): one is string => typeof one === "string" && one.trim() !== "");
  const whole = valueAt(value, path);
  return found ?? (typeof whole === "string" && whole !== "" ? whole : `Number ${Number(path.at(-1)) + 1}`);
}

/** What the schema says of a field, with its limits. */
export function sayHint(field: FormField): string {
  if (field.kind === "number")
    return `${field.about} ${field.isWhole ? "A whole number from" : "From"} ${field.least} to ${field.most}.`;
  if (field.kind === "text" && !field.isId) return `${field.about} At most ${field.most} characters.`;
  if (field.kind === "quantity") return `${field.about} Such as ${field.examples.join(", ")}.`;
  return field.about;
}

/** Where a fault is, in a person's words: "Item: Hose", "Hose: life", "Container: mass". */
export function sayPlace(value: unknown, { path, where, rule }: DraftFault): string {
  if (path.length === 0) return rule === "loads" ? where : begun(where.replaceAll(/\w+(\.\w+)+/g, sayDotted));
  const at = path.findLastIndex((key) => typeof key === "number");
  const fields = path.slice(at + 1).map((key) => sayField(String(key)));
  if (at === -1) return sayFields(fields);
  const entry = sayEntry(value, path.slice(0, at + 1));
  if (fields.length > 0) return `${entry}: ${fields.join(": ").toLowerCase()}`;
  return `${begun(sayOne(String(path[at - 1])).replace(/^an? /, ""))}: ${entry}`;
}

function sayDotted(name: string): string {
  return sayFields(name.split(".").map(sayField)).toLowerCase();
}

function sayFields([first = "", ...rest]: readonly string[]): string {
  return [first, ...rest.map((one) => one.toLowerCase())].join(": ");
}

function begun(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** "2 errors, 1 warning, no notes" */
export function sayCounts(faults: readonly DraftFault[]): string {
  const many = (weight: DraftFault["weight"], word: string) => {
    const count = faults.filter((one) => one.weight === weight).length;
    return `${count === 0 ? "no" : count} ${word}${count === 1 ? "" : "s"}`;
  };
  const all = [many("error", "error"), many("warning", "warning"), many("note", "note")].join(", ");
  return all.slice(0, 1).toUpperCase() + all.slice(1);
}
