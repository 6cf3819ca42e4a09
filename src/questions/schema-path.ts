import type { z } from "zod";

interface Definition {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.ZodType>>;
  readonly element?: z.ZodType;
  readonly innerType?: z.ZodType;
  readonly in?: z.ZodType;
  readonly options?: readonly z.ZodType[];
  readonly valueType?: z.ZodType;
  readonly values?: readonly unknown[];
}

type Path = readonly PropertyKey[];

/** The schema that judges the value at this path, or undefined where the schema says nothing about it. */
export function schemaAt(schema: z.ZodType, path: Path): z.ZodType | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return schema;
  const options = unwrap(schema).map((inner) => child(inner, step));
  const found = options.find((option) => option !== undefined && schemaAt(option, rest) !== undefined);
  return found && schemaAt(found, rest);
}

/** Names of the fields allowed at this path, in the order they are declared. */
export function fieldsAt(schema: z.ZodType, path: Path): readonly string[] {
  const there = schemaAt(schema, path);
  if (!there) return [];
  return [...new Set(unwrap(there).flatMap((inner) => Object.keys(definitionOf(inner).shape ?? {})))];
}

/** What the field is, as its schema describes it. */
export function descriptionAt(schema: z.ZodType, path: Path): string | undefined {
  const there = schemaAt(schema, path);
  if (!there) return undefined;
  return layers(there).find((inner) => inner.description !== undefined)?.description;
}

/** The schema, what it wraps, and so on inward: words stand at any of them. */
function layers(schema: z.ZodType): readonly z.ZodType[] {
  const { innerType, in: inward, options } = definitionOf(schema);
  const inside = innerType ?? inward;
  return [schema, ...(inside ? layers(inside) : (options ?? []).flatMap(layers))];
}

/** The words allowed at this path, where each of several things that may stand there has its own. */
export function wordsAt(schema: z.ZodType, path: Path): readonly unknown[] {
  const above = schemaAt(schema, path.slice(0, -1));
  const step = path.at(-1);
  if (above === undefined || step === undefined) return [];
  const words = unwrap(above).flatMap((inner) => {
    const there = child(inner, step);
    return there === undefined ? [] : (definitionOf(there).values ?? []);
  });
  return [...new Set(words)];
}

/** Looks through optional, default and transform wrappers and into unions. */
function unwrap(schema: z.ZodType): readonly z.ZodType[] {
  const { innerType, in: inward, options } = definitionOf(schema);
  const inside = innerType ?? inward;
  if (inside) return unwrap(inside);
  return options ? options.flatMap(unwrap) : [schema];
}

function child(schema: z.ZodType, step: PropertyKey): z.ZodType | undefined {
  const { shape, element, valueType } = definitionOf(schema);
  if (typeof step === "number") return element;
  return shape?.[String(step)] ?? valueType;
}

function definitionOf(schema: z.ZodType): Definition {
  return schema.def as unknown as Definition;
}
