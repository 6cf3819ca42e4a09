import { findCaution } from "#base";
import { dayWords, estimateWords, exactWords, spreadWords, type Spread } from "./readable-figures.ts";

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

/** What is told, by which schema, and whether its figures are estimates. */
interface Told {
  readonly value: unknown;
  readonly schema: Schema | undefined;
  readonly isEstimate: boolean;
  readonly own: OwnTimes;
}

/** What an answer says of its own times: for figures whose schema gives no unit but "unit", and for its instants. */
interface OwnTimes {
  readonly unit?: string;
  /** Day that instants are counted from. */
  readonly countedFrom?: string;
}

/**
 * An answer as lines for a terminal: each field by name, with the unit its schema gives. Figures of an answer that calls
 * itself an estimate are told as estimates: two figures, with what they lie between.
 *
 * @param answer - what the question answered
 * @param schema - JSON Schema of the answer
 */
export function readableAnswer(answer: unknown, schema: object): string[] {
  const own = ownTimes(answer);
  return linesOf("", { value: answer, schema: schema as Schema, isEstimate: isEstimate(answer), own }, "");
}

function ownTimes(answer: unknown): OwnTimes {
  const { unit, countedFrom } = (answer ?? {}) as Readonly<Record<keyof OwnTimes, unknown>>;
  return {
    ...(typeof unit === "string" ? { unit } : {}),
    ...(typeof countedFrom === "string" ? { countedFrom } : {}),
  };
}

function isEstimate(answer: unknown): boolean {
  const { cautions } = (answer ?? {}) as { readonly cautions?: unknown };
  return Array.isArray(cautions) && cautions.includes("estimate");
}

function linesOf(name: string, told: Told, indent: string): string[] {
  const { value } = told;
  if (isScalar(value)) return [`${indent}${label(name)}${scalar(told)}`];
  if (isSpread(value) && Object.keys(value).every(isQuantile)) return [`${indent}${label(name)}${spread(told)}`];
  const inner = name === "" ? indent : `${indent}  `;
  const heading = name === "" ? [] : [`${indent}${name}:`];
  return [...heading, ...(Array.isArray(value) ? listLines(told, value, inner) : fieldLines(told, inner))];
}

function fieldLines(told: Told, indent: string): string[] {
  return fieldsOf(told).flatMap(([field, one]) => linesOf(field, one, indent));
}

function fieldsOf(told: Told): [string, Told][] {
  return Object.entries(told.value as object).map(([field, one]) => [
    field,
    { ...told, value: one as unknown, schema: fieldSchema(told.schema, field) },
  ]);
}

function listLines(told: Told, list: readonly unknown[], indent: string): string[] {
  if (list.length === 0) return [`${indent}none`];
  const items = list.slice(0, LIST_LINES).map((value) => itemOf(told, value));
  const shown = items.map((one) => `${indent}- ${cautionWords(one.value) ?? inline(one)}`);
  return list.length > LIST_LINES
    ? [...shown, `${indent}... ${list.length - LIST_LINES} more; --json gives all`]
    : shown;
}

/** One of a list; what the list says of its unit holds for each. */
function itemOf(told: Told, value: unknown): Told {
  return { ...told, value, schema: withUnitOf(told.schema, told.schema?.items) };
}

function inline(told: Told): string {
  const { value } = told;
  if (isScalar(value)) return scalar(told);
  if (Array.isArray(value)) return value.map((one) => inline(itemOf(told, one))).join(", ");
  if (isSpread(value)) return [...inlineFields(told, (field) => !isQuantile(field)), spread(told)].join(", ");
  return inlineFields(told, () => true).join(", ");
}

function inlineFields(told: Told, isShown: (field: string) => boolean): string[] {
  return fieldsOf(told)
    .filter(([field]) => isShown(field))
    .map(([field, one]) => `${field} ${inline(one)}`);
}

function isScalar(value: unknown): boolean {
  return value === null || typeof value !== "object";
}

const QUANTILES: readonly string[] = ["p05", "p25", "p50", "p75", "p95"];

function isQuantile(field: string): boolean {
  return QUANTILES.includes(field);
}

function isSpread(value: unknown): value is Spread {
  return !isScalar(value) && ["p05", "p50", "p95"].every((field) => field in (value as object));
}

function spread(told: Told): string {
  return spreadWords(told.value as Spread, unitIn(told));
}

function scalar(told: Told): string {
  const { value, isEstimate: isDoubtful } = told;
  if (value === null) return "none";
  if (typeof value !== "number") return String(value);
  const { countedFrom } = told.own;
  if (countedFrom !== undefined && unitOf(told.schema) === INSTANT) return dayWords(value, countedFrom);
  return (isDoubtful ? estimateWords : exactWords)(value, unitIn(told));
}

/** What a schema says of a figure that is an instant: counted in the answer's own unit, from a day of its own where it has one. */
const INSTANT = "instant";

/** "unit" in a schema stands for the one that the answer says of itself. */
function unitIn({ schema, own }: Told): string {
  const unit = unitOf(schema).replace(INSTANT, "unit");
  return own.unit === undefined ? unit : unit.replace(/\bunit$/, own.unit);
}

/** A caution by its signal word and hazard; undefined for anything else. */
function cautionWords(value: unknown): string | undefined {
  const caution = typeof value === "string" ? findCaution(value) : undefined;
  return caution && `${caution.signal} ${caution.hazard}: ${caution.avoid}`;
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
  if (found !== undefined) return found;
  return typeof schema.additionalProperties === "object" ? namedSchema(schema, field) : undefined;
}

/** Where fields go by name alone, the description says units after names: "holeArea [m²], inflow [m³/s]". */
function namedSchema(schema: Schema, field: string): Schema {
  const own = new RegExp(`\\b${field}\\b[^[\\]]*\\[[^\\]]+\\]`).exec(schema.description ?? "")?.[0];
  return withUnitOf(own === undefined ? undefined : { description: own }, schema.additionalProperties as Schema)!;
}

/** The inner schema, with the outer's description where it has no unit of its own. */
function withUnitOf(outer: Schema | undefined, inner: Schema | undefined): Schema | undefined {
  if (inner === undefined || outer?.description === undefined || unitOf(inner) !== "") return inner;
  return { ...inner, description: outer.description };
}

function label(name: string): string {
  return name === "" ? "" : `${name}: `;
}
