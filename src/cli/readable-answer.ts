import { findCaution, formatNumber, formatQuantity, type Dimension } from "#base";

interface Schema {
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly additionalProperties?: Schema | boolean;
}

/** Most lines of one list that a terminal is given; --json has them all. */
const LIST_LINES = 24;

/**
 * An answer as lines for a terminal: each field by name, with the unit its schema gives.
 *
 * @param answer - what the question answered
 * @param schema - JSON Schema of the answer
 */
export function readableAnswer(answer: unknown, schema: object): string[] {
  return linesOf("", answer, schema as Schema, "");
}

function linesOf(name: string, value: unknown, schema: Schema | undefined, indent: string): string[] {
  if (value === null || typeof value !== "object") return [`${indent}${label(name)}${scalar(value, schema)}`];
  const inner = name === "" ? indent : `${indent}  `;
  const heading = name === "" ? [] : [`${indent}${name}:`];
  return [...heading, ...(Array.isArray(value) ? listLines(value, schema, inner) : fieldLines(value, schema, inner))];
}

function fieldLines(value: object, schema: Schema | undefined, indent: string): string[] {
  return Object.entries(value).flatMap(([field, one]) => linesOf(field, one, fieldSchema(schema, field), indent));
}

function listLines(list: readonly unknown[], schema: Schema | undefined, indent: string): string[] {
  if (list.length === 0) return [`${indent}none`];
  const shown = list.slice(0, LIST_LINES).map((one) => `${indent}- ${cautionWords(one) ?? inline(one, schema?.items)}`);
  return list.length > LIST_LINES
    ? [...shown, `${indent}... ${list.length - LIST_LINES} more; --json gives all`]
    : shown;
}

function inline(value: unknown, schema: Schema | undefined): string {
  if (value === null || typeof value !== "object") return scalar(value, schema);
  if (Array.isArray(value)) return value.map((one) => inline(one, schema?.items)).join(", ");
  return Object.entries(value)
    .map(([field, one]) => `${field} ${inline(one, fieldSchema(schema, field))}`)
    .join(", ");
}

function scalar(value: unknown, schema: Schema | undefined): string {
  if (typeof value !== "number") return String(value);
  const unit = unitOf(schema);
  return `${printNumber(value)}${unit === "" ? "" : ` ${unit}`}${everyday(value, unit)}`;
}

/** A caution by its signal word and hazard; undefined for anything else. */
function cautionWords(value: unknown): string | undefined {
  const caution = typeof value === "string" ? findCaution(value) : undefined;
  return caution && `${caution.signal} ${caution.hazard}: ${caution.avoid}`;
}

/** Units that nobody reads a gauge in, with what they measure. */
const LABORATORY: Readonly<Record<string, Dimension>> = { "m³/s": "flow", K: "temperature", Pa: "pressure" };

/** The same in the unit that people use, where it is another: " (845 L/min)". */
function everyday(value: number, unit: string): string {
  const dimension = LABORATORY[unit];
  return dimension === undefined ? "" : ` (${formatQuantity(value, dimension)})`;
}

function printNumber(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1e7) return String(value);
  const size = Math.abs(value);
  return size !== 0 && (size < 1e-4 || size >= 1e7) ? value.toExponential(4) : formatNumber(value, 5);
}

/** The unit stands in the description in square brackets; a bare ratio has none, nor what has now one, now another. */
function unitOf(schema: Schema | undefined): string {
  const unit = /\[([^\]]+)\]/.exec(schema?.description ?? "")?.[1];
  return unit === undefined || unit === "1" || unit.includes(";") ? "" : unit;
}

/** Schema of a field, looked for in every branch where an answer has several forms. */
function fieldSchema(schema: Schema | undefined, field: string): Schema | undefined {
  if (schema === undefined) return undefined;
  const branches = [schema, ...(schema.anyOf ?? []), ...(schema.oneOf ?? [])];
  const found = branches.map((branch) => branch.properties?.[field]).find(Boolean);
  return found ?? (typeof schema.additionalProperties === "object" ? schema.additionalProperties : undefined);
}

function label(name: string): string {
  return name === "" ? "" : `${name}: `;
}
