import type { FilePath } from "../file/yaml-source.ts";

/** What a pattern file can hold, before it is read into SI. */
export type PlainValue =
  string | number | boolean | null | readonly PlainValue[] | { readonly [field: string]: PlainValue };

/** One small act on a pattern's file. Paths count entries of lists from 0. */
export type PatternEdit =
  /** Writes a value where one stands, or adds the field. */
  | { readonly kind: "set"; readonly path: FilePath; readonly value: PlainValue }
  /** Takes a field, or an entry of a list, out. */
  | { readonly kind: "remove"; readonly path: FilePath }
  /** Puts an entry into the list at the path, before the one that has this number; a list that is not there is begun. */
  | { readonly kind: "insert"; readonly path: FilePath; readonly at: number; readonly value: PlainValue }
  /** Moves the entry at the path to this number of its list. */
  | { readonly kind: "move"; readonly path: FilePath; readonly to: number };

type Holder = Record<string, unknown> | unknown[];

/**
 * What the plain values of a file are after an edit: what the edit means, without regard to how it is written.
 *
 * @returns new values, or nothing where the edit has no place in these
 */
export function editValue(value: unknown, edit: PatternEdit): unknown {
  const copy: unknown = structuredClone(value);
  const isDone = edit.kind === "insert" ? insertInto(copy, edit) : editEntry(copy, edit);
  return isDone ? copy : undefined;
}

function editEntry(root: unknown, edit: Exclude<PatternEdit, { kind: "insert" }>): boolean {
  const holder = holderAt(root, edit.path.slice(0, -1));
  const last = edit.path.at(-1);
  if (holder === undefined || last === undefined) return false;
  if (edit.kind === "move") return moveIn(holder, last, edit.to);
  if (edit.kind === "set") return setIn(holder, last, edit.value);
  return removeFrom(holder, last);
}

function insertInto(root: unknown, { path, at, value }: PatternEdit & { kind: "insert" }): boolean {
  const list = holderAt(root, path);
  if (Array.isArray(list)) return at >= 0 && at <= list.length && list.splice(at, 0, value).length === 0;
  const holder = holderAt(root, path.slice(0, -1));
  const last = path.at(-1);
  if (list !== undefined || holder === undefined || typeof last !== "string" || at !== 0) return false;
  return !Object.hasOwn(holder, last) && setIn(holder, last, [value]);
}

function setIn(holder: Holder, last: string | number, value: PlainValue): boolean {
  if (Array.isArray(holder)) {
    if (typeof last !== "number" || !(last in holder)) return false;
    holder[last] = value;
    return true;
  }
  if (typeof last !== "string" || last === "__proto__") return false;
  holder[last] = value;
  return true;
}

function removeFrom(holder: Holder, last: string | number): boolean {
  if (!Object.hasOwn(holder, last)) return false;
  if (Array.isArray(holder)) return typeof last === "number" && holder.splice(last, 1).length === 1;
  return delete holder[last];
}

function moveIn(holder: Holder, last: string | number, to: number): boolean {
  if (!Array.isArray(holder) || typeof last !== "number") return false;
  if (!(last in holder) || !(to in holder)) return false;
  holder.splice(to, 0, ...holder.splice(last, 1));
  return true;
}

function holderAt(root: unknown, path: FilePath): Holder | undefined {
  let here: unknown = root;
  for (const part of path) {
    if (typeof here !== "object" || here === null || !Object.hasOwn(here, part)) return undefined;
    here = (here as Record<string | number, unknown>)[part];
  }
  return typeof here === "object" && here !== null ? (here as Holder) : undefined;
}

/** True where two plain values say the same; the order of fields says nothing. */
export function sameValue(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== "object" || typeof other !== "object" || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const keys = Object.keys(one);
  if (keys.length !== Object.keys(other).length) return false;
  return keys.every((key) => Object.hasOwn(other, key) && sameValue(fieldOf(one, key), fieldOf(other, key)));
}

function fieldOf(holder: object, key: string): unknown {
  return (holder as Record<string, unknown>)[key];
}
