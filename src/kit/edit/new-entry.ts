import { valueAt } from "../file/file-faults.ts";
import type { FilePath } from "../file/yaml-source.ts";
import type { BlockField, FieldBlock, FormField } from "./form-fields.ts";
import type { PlainValue } from "./pattern-edit.ts";
import { freeId } from "./uses.ts";

/**
 * A new entry for a list, with the fields that it must have, still to be written: the lint names each that is empty. No
 * figure and no choice stands in it as if somebody had told it.
 *
 * @param value - the file's values, for an id that is free
 */
export function newEntry(field: FormField, value: unknown, name = "new"): PlainValue {
  switch (field.kind) {
    case "block":
      return newBlock(field, value, name);
    case "choice":
      return field.of[0] === undefined ? "" : newBlock(field.of[0], value, name);
    case "list":
      return field.least === 0 ? [] : [newEntry(field.of, value, name)];
    case "yes-no":
      return true;
    case "word":
      return field.words.length === 1 ? (field.words[0] ?? "") : "";
    case "number":
    case "quantity":
      return "";
    case "by-word":
      return {};
    case "text":
      return field.isId && field.names === undefined ? freeId(value, name) : "";
  }
}

function newBlock(block: FieldBlock, value: unknown, name: string): PlainValue {
  const needed = block.fields.filter(({ isNeeded }) => isNeeded);
  return Object.fromEntries(needed.map((one) => [one.name, newEntry(one.field, value, nameFor(one, name))]));
}

function nameFor({ name, field }: BlockField, outer: string): string {
  return field.kind === "text" ? outer : name;
}

/** A copy of the entry at a path, its ids changed to such as are free. */
export function copyOf(value: unknown, path: FilePath): PlainValue | undefined {
  const entry = valueAt(value, path);
  return entry === undefined ? undefined : withFreeIds(entry, value, new Set());
}

function withFreeIds(entry: unknown, value: unknown, given: Set<string>): PlainValue {
  if (Array.isArray(entry)) return entry.map((one) => withFreeIds(one, value, given));
  if (typeof entry !== "object" || entry === null) return entry as PlainValue;
  const fields = Object.entries(entry).map(([name, one]): [string, PlainValue] => {
    if (name !== "id" || typeof one !== "string") return [name, withFreeIds(one, value, given)];
    return [name, freshId(one, value, given)];
  });
  return Object.fromEntries(fields);
}

function freshId(id: string, value: unknown, given: Set<string>): string {
  const fresh = given.has(id) ? id : freeId(value, id);
  given.add(fresh);
  return fresh;
}

/** A block changed to another of its choice: fields of the same name stay, the others are new. */
export function changedKind(value: unknown, path: FilePath, to: FieldBlock): PlainValue {
  const before = valueAt(value, path);
  const fresh = newEntry(to, value) as { readonly [field: string]: PlainValue };
  const kept = to.fields.flatMap(({ name }): readonly [string, PlainValue][] => {
    const held = valueAt(before, [name]);
    return held === undefined || name === "kind" ? [] : [[name, held as PlainValue]];
  });
  return { ...fresh, ...Object.fromEntries(kept) };
}
