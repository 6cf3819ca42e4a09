import { allCautions } from "#base";
import { patternJsonSchema } from "../file/load-pattern.ts";
import { valueAt } from "../file/file-faults.ts";
import { namesIn } from "../file/file-names.ts";
import type { FilePath } from "../file/yaml-source.ts";

/*
 * The fields of a pattern as a form shows them, read from the one schema: a field that is new in it appears by itself.
 */

/** What a field can name by id. */
export type Named = "place" | "item" | "mode" | "check" | "step" | "caution";

/** A field of a form. `about` is what the schema says of it. */
export type FormField = { readonly about: string } & (
  | { readonly kind: "text"; readonly most: number; readonly isId: boolean; readonly names?: Named }
  /** Text with its unit, or a span: `examples` show how. */
  | { readonly kind: "quantity"; readonly examples: readonly string[] }
  | { readonly kind: "number"; readonly least: number; readonly most: number; readonly isWhole: boolean }
  | { readonly kind: "yes-no" }
  | { readonly kind: "word"; readonly words: readonly string[] }
  | { readonly kind: "list"; readonly of: FormField; readonly least: number }
  | FieldBlock
  /** One of several blocks, told apart by their field `kind`. */
  | { readonly kind: "choice"; readonly of: readonly FieldBlock[] }
  /** Values by word: languages, causes. */
  | { readonly kind: "by-word"; readonly words?: readonly string[]; readonly of: FormField }
);

export interface FieldBlock {
  readonly kind: "block";
  readonly about: string;
  readonly fields: readonly BlockField[];
  /** Of a block in a choice: its word. */
  readonly word?: string;
}

export interface BlockField {
  readonly name: string;
  readonly isNeeded: boolean;
  /** What holds where the field is left out. */
  readonly otherwise?: unknown;
  readonly field: FormField;
}

interface Json {
  readonly [key: string]: unknown;
}

const NAMES: Readonly<Record<string, Named>> = {
  place: "place",
  partOf: "item",
  item: "item",
  fuelItem: "item",
  stows: "item",
  renews: "item",
  mode: "mode",
  missing: "mode",
  finds: "mode",
  behind: "mode",
  provedBy: "check",
  checks: "check",
  oneLook: "check",
  flushedBy: "step",
  cautions: "caution",
};

/** The whole form: what a pattern's file may hold. */
export function patternForm(): FieldBlock {
  return readBlock(patternJsonSchema() as Json);
}

/** The field at a path of a pattern's file; nothing where the schema has none there. */
export function fieldAt(path: FilePath, form: FieldBlock = patternForm()): FormField | undefined {
  return path.reduce<FormField | undefined>((field, part) => field && childOf(field, part), form);
}

function childOf(field: FormField, part: string | number): FormField | undefined {
  if (field.kind === "list") return field.of;
  if (field.kind === "by-word") return field.of;
  const fields =
    field.kind === "block" ? field.fields : field.kind === "choice" ? field.of.flatMap((one) => one.fields) : [];
  return fields.find(({ name }) => name === part)?.field;
}

/** The ids that stand in the file, or are known, for a field that names one. */
export function namedIn(value: unknown, what: Named): readonly { readonly id: string; readonly name: string }[] {
  if (what === "caution") return allCautions().map(({ id, hazard }) => ({ id, name: hazard }));
  return namesIn(value)[what].map(({ id, path }) => ({ id, name: nameBeside(value, path.slice(0, -1)) ?? id }));
}

function nameBeside(value: unknown, path: FilePath): string | undefined {
  const told = ["name", "ask", "text"].map((field) => valueAt(value, [...path, field]));
  return told.find((one): one is string => typeof one === "string");
}

function readField(schema: Json, name: string): FormField {
  const about = String(schema["description"] ?? "");
  const options = schema["oneOf"] ?? schema["anyOf"];
  if (Array.isArray(options)) return { kind: "choice", about, of: (options as Json[]).map(readBlock) };
  if (Array.isArray(schema["enum"])) return { kind: "word", about, words: schema["enum"].map(String) };
  if (schema["const"] !== undefined) return { kind: "word", about, words: [String(schema["const"])] };
  if (schema["type"] === "array") return readList(schema, name, about);
  if (schema["type"] === "object") return schema["properties"] ? readBlock(schema) : readByWord(schema, about);
  return readSingle(schema, name, about);
}

function readSingle(schema: Json, name: string, about: string): FormField {
  const { type } = schema;
  if (type === "boolean") return { kind: "yes-no", about };
  if (type === "integer" || type === "number") {
    const limit = (key: string, none: number) => Number(schema[key] ?? none);
    return {
      kind: "number",
      about,
      least: limit("minimum", -1e9),
      most: limit("maximum", 1e9),
      isWhole: type === "integer",
    };
  }
  if (Array.isArray(schema["examples"])) return { kind: "quantity", about, examples: schema["examples"].map(String) };
  const isId = schema["pattern"] !== undefined;
  const names = isId ? NAMES[name] : undefined;
  return { kind: "text", about, most: Number(schema["maxLength"] ?? 400), isId, ...(names && { names }) };
}

function readList(schema: Json, name: string, about: string): FormField {
  return { kind: "list", about, least: Number(schema["minItems"] ?? 0), of: readField(schema["items"] as Json, name) };
}

function readByWord(schema: Json, about: string): FormField {
  const words = (schema["propertyNames"] as Json | undefined)?.["enum"];
  const of = readField((schema["additionalProperties"] ?? {}) as Json, "");
  return { kind: "by-word", about, of, ...(Array.isArray(words) && { words: words.map(String) }) };
}

function readBlock(schema: Json): FieldBlock {
  const needed = new Set((schema["required"] ?? []) as readonly string[]);
  const fields = Object.entries((schema["properties"] ?? {}) as Record<string, Json>).map(
    ([name, one]): BlockField => ({
      name,
      isNeeded: needed.has(name),
      ...("default" in one && { otherwise: one["default"] }),
      field: readField(one, name),
    }),
  );
  const kind = fields.find(({ name }) => name === "kind")?.field;
  const word = kind?.kind === "word" && kind.words.length === 1 ? kind.words[0] : undefined;
  return { kind: "block", about: String(schema["description"] ?? ""), fields, ...(word !== undefined && { word }) };
}
