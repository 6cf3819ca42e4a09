import { isMap, isScalar, isSeq, type Document, type Node, type Pair, type YAMLMap, type YAMLSeq } from "yaml";
import type { FilePath } from "../file/yaml-source.ts";
import {
  columnOf,
  endOf,
  entryLines,
  entryOffset,
  isFirstInLine,
  lineEnd,
  lineStart,
  nodeAt,
  pairOf,
  startOf,
  type Holder,
  type Splice,
} from "./edit-source.ts";
import type { PatternEdit, PlainValue } from "./pattern-edit.ts";
import { fieldLines, foldedLines, writeInline, writeLines, writeScalar } from "./write-value.ts";

/** A parsed file, and the order in which the fields of a block are written. */
export interface Spliced {
  readonly text: string;
  readonly document: Document;
  readonly orderAt: (path: FilePath) => readonly string[];
}

/** Longest line of folded text, in characters. */
const WIDTH = 118;

/** What an edit puts where; nothing where the file has no such place. */
export function spliceOf(file: Spliced, edit: PatternEdit): Splice | undefined {
  if (edit.kind === "insert") return insertion(file, edit);
  const holder = holderOf(file.document, edit.path);
  if (holder === undefined) return undefined;
  if (edit.kind === "set") return setting(file, holder, edit);
  if (edit.kind === "move") return isSeq(holder) ? moving(file, holder, edit) : undefined;
  return removal(file, holder, edit);
}

function holderOf(document: Document, path: FilePath): Holder | undefined {
  const holder = nodeAt(document, path.slice(0, -1));
  return isMap(holder) || isSeq(holder) ? holder : undefined;
}

function setting(file: Spliced, holder: Holder, edit: PatternEdit & { kind: "set" }): Splice | undefined {
  const last = edit.path.at(-1);
  if (isSeq(holder)) {
    const node = nodeAt(file.document, edit.path);
    return node && replacement(file.text, node, holder.flow === true, edit.value);
  }
  const pair = pairOf(holder, String(last));
  if (pair === undefined) return newField(file, holder, edit);
  return fieldReplacement(file.text, holder, pair, edit.value);
}

function fieldReplacement(text: string, map: YAMLMap, pair: Pair, value: PlainValue): Splice | undefined {
  const node = pair.value;
  const isInline = map.flow === true;
  if (isScalar(node) && node.type !== "BLOCK_LITERAL" && (isInline || isSimple(value)) && node.source !== "") {
    return replacement(text, node, isInline, value);
  }
  const [from, to] = [startOf(pair), endOf(text, pair)];
  const name = isScalar(pair.key) ? String(pair.key.value) : "";
  if (isInline) return { from, to, put: `${writeScalar(name, true)}: ${writeInline(value)}` };
  return { from, to, put: indented(text, fieldLines(name, value), columnOf(text, from)) };
}

function replacement(text: string, node: Node, isInline: boolean, value: PlainValue): Splice {
  const [from, to] = [startOf(node), endOf(text, node)];
  if (isInline) return { from, to, put: writeInline(value) };
  if (isScalar(node) && node.type === "BLOCK_FOLDED" && typeof value === "string") {
    return { from, to, put: folded(text, from, value) };
  }
  return { from, to, put: indented(text, writeLines(value), columnOf(text, from)) };
}

/** Text that was folded stays folded. */
function folded(text: string, from: number, value: string): string {
  if (/[\n\r]|^\s|\s$| {2}|^$/.test(value)) return writeScalar(value, false);
  const indent = text.slice(lineStart(text, from)).search(/[^\s]/) + 2;
  const dash = /^\s*- /.test(text.slice(lineStart(text, from), from)) ? 2 : 0;
  return indented(text, [">-", ...foldedLines(value, WIDTH - indent - dash)], indent + dash);
}

function isSimple(value: PlainValue): boolean {
  return typeof value !== "object" || value === null;
}

/** A field that is not there goes behind the nearest one that the published order puts before it. */
function newField(file: Spliced, map: YAMLMap, edit: PatternEdit & { kind: "set" }): Splice | undefined {
  const name = String(edit.path.at(-1));
  const order = file.orderAt(edit.path.slice(0, -1));
  const before = order.slice(0, Math.max(0, order.indexOf(name)));
  const behind =
    before.reduce<Pair | undefined>((last, one) => pairOf(map, one) ?? last, undefined) ?? map.items.at(-1);
  if (map.flow === true)
    return newInlineField(file.text, map, behind, `${writeScalar(name, true)}: ${writeInline(edit.value)}`);
  if (behind === undefined) return undefined;
  const at = lineEnd(file.text, endOf(file.text, behind));
  const column = columnOf(file.text, startOf(behind));
  return { from: at, to: at, put: newLines(file.text, fieldLines(name, edit.value), column) };
}

function newInlineField(text: string, map: YAMLMap, behind: Pair | undefined, put: string): Splice {
  if (behind === undefined) return { from: startOf(map), to: endOf(text, map), put: `{ ${put} }` };
  const at = endOf(text, behind);
  return { from: at, to: at, put: `, ${put}` };
}

function insertion(file: Spliced, edit: PatternEdit & { kind: "insert" }): Splice | undefined {
  const list = nodeAt(file.document, edit.path);
  const isNew = !isSeq(list) || list.items.length === 0;
  if (isNew) return spliceOf(file, { kind: "set", path: edit.path, value: [edit.value] });
  if (list.flow === true) return inlineInsertion(file.text, list, edit);
  return blockInsertion(file.text, list, edit);
}

function inlineInsertion(text: string, list: YAMLSeq, { at, value }: PatternEdit & { kind: "insert" }): Splice {
  const written = writeInline(value);
  const from = at < list.items.length ? startOf(list.items[at]) : endOf(text, list.items.at(-1));
  return { from, to: from, put: at < list.items.length ? `${written}, ` : `, ${written}` };
}

function blockInsertion(
  text: string,
  list: YAMLSeq,
  { at, value }: PatternEdit & { kind: "insert" },
): Splice | undefined {
  const last = list.items.length - 1;
  const offset = entryOffset(list, Math.min(at, last));
  if (!isFirstInLine(text, offset)) return undefined;
  const column = columnOf(text, offset);
  const lines = writeLines(value).map((line, row) => `${row === 0 ? "- " : "  "}${line}`);
  const gap = last > 0 && isBlankAbove(text, entryLines(text, list, last).from) ? eolOf(text) : "";
  if (at > last) {
    const end = entryLines(text, list, last).to;
    return { from: end, to: end, put: gap + newLines(text, lines, column) };
  }
  const { from } = entryLines(text, list, at);
  return { from, to: from, put: " ".repeat(column) + indented(text, lines, column) + eolOf(text) + gap };
}

function moving({ text }: Spliced, list: YAMLSeq, { path, to }: PatternEdit & { kind: "move" }): Splice | undefined {
  const at = Number(path.at(-1));
  const [low, high] = [Math.min(at, to), Math.max(at, to)];
  const numbers = Array.from({ length: high - low + 1 }, (_, offset) => low + offset);
  const isInline = list.flow === true;
  if (!isInline && !numbers.every((one) => isFirstInLine(text, entryOffset(list, one)))) return undefined;
  const places = numbers.map((one) =>
    isInline ? { from: startOf(list.items[one]), to: endOf(text, list.items[one]) } : entryLines(text, list, one),
  );
  const pieces = places.map(({ from, to: end }) => text.slice(from, end));
  pieces.splice(to - low, 0, ...pieces.splice(at - low, 1));
  const between = places.slice(1).map(({ from }, row) => text.slice(places[row]?.to, from));
  const put = pieces.flatMap((piece, row) => [piece, between[row] ?? ""]).join("");
  return { from: places[0]?.from ?? 0, to: places.at(-1)?.to ?? 0, put };
}

function removal(file: Spliced, holder: Holder, { path }: PatternEdit & { kind: "remove" }): Splice | undefined {
  const { text } = file;
  const at = indexIn(holder, path.at(-1));
  if (!(at in holder.items)) return undefined;
  if (holder.items.length === 1) return emptied(file, holder, path);
  if (holder.flow === true) return inlineRemoval(text, holder, at);
  const offset = entryOffset(holder, at);
  if (!isFirstInLine(text, offset)) return firstRemoval(holder, at);
  return blockRemoval(text, holder, at);
}

/** Which of the holder's items a path ends at; -1 where it has no such field. */
function indexIn(holder: Holder, last: FilePath[number] | undefined): number {
  if (isSeq(holder)) return Number(last);
  const pair = pairOf(holder, String(last));
  return pair === undefined ? -1 : holder.items.indexOf(pair);
}

function emptied(file: Spliced, holder: Holder, path: FilePath): Splice | undefined {
  return spliceOf(file, { kind: "set", path: path.slice(0, -1), value: isSeq(holder) ? [] : {} });
}

function inlineRemoval(text: string, holder: Holder, at: number): Splice {
  if (at === 0) return { from: startOf(holder.items[0]), to: startOf(holder.items[1]), put: "" };
  return { from: endOf(text, holder.items[at - 1]), to: endOf(text, holder.items[at]), put: "" };
}

/** The first field behind a dash: the next one takes its place. */
function firstRemoval(holder: Holder, at: number): Splice | undefined {
  if (at !== 0 || !isMap(holder)) return undefined;
  return { from: startOf(holder.items[0]), to: startOf(holder.items[1]), put: "" };
}

function blockRemoval(text: string, holder: Holder, at: number): Splice {
  const { from, to } = entryLines(text, holder, at);
  const next = lineBreakEnd(text, to);
  if (next === to) return { from: text[from - 2] === "\r" ? from - 2 : from - 1, to, put: "" };
  const isGapTwice =
    isBlankAbove(text, from) && text.slice(next, lineEnd(text, next)).trim() === "" && next < text.length;
  return { from, to: isGapTwice ? lineBreakEnd(text, lineEnd(text, next)) : next, put: "" };
}

function lineBreakEnd(text: string, end: number): number {
  const at = text.indexOf("\n", end);
  return at === -1 ? end : at + 1;
}

function isBlankAbove(text: string, from: number): boolean {
  return from > 0 && text.slice(lineStart(text, from - 1), from).trim() === "";
}

/** Lines, the first as it stands, the others so far in. */
function indented(text: string, lines: readonly string[], column: number): string {
  return lines.join(eolOf(text) + " ".repeat(column));
}

function newLines(text: string, lines: readonly string[], column: number): string {
  return eolOf(text) + " ".repeat(column) + indented(text, lines, column);
}

function eolOf(text: string): string {
  return text.includes("\r\n") ? "\r\n" : "\n";
}
