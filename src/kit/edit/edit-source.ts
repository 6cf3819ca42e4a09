import {
  isMap,
  isNode,
  isPair,
  isScalar,
  isSeq,
  type Document,
  type Node,
  type Pair,
  type YAMLMap,
  type YAMLSeq,
} from "yaml";
import type { FilePath } from "../file/yaml-source.ts";

/* Where the parts of a YAML file stand in its text. Offsets count characters from 0. */

/** A stretch of the text, from the first character to behind the last. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A text that takes the place of a stretch. */
export interface Splice extends Stretch {
  readonly put: string;
}

export type Holder = YAMLMap | YAMLSeq;

/** The node at a path, not through aliases; nothing where there is none. */
export function nodeAt(document: Document, path: FilePath): Node | undefined {
  let node: unknown = document.contents;
  for (const part of path) {
    if (isSeq(node)) node = node.items[Number(part)];
    else node = isMap(node) ? pairOf(node, String(part))?.value : undefined;
  }
  return isNode(node) ? node : undefined;
}

/** The field of a map. */
export function pairOf(map: YAMLMap, name: string): Pair | undefined {
  return map.items.find((pair) => isScalar(pair.key) && String(pair.key.value) === name);
}

/** Where a line begins that the offset is in. */
export function lineStart(text: string, offset: number): number {
  return text.lastIndexOf("\n", offset - 1) + 1;
}

/** Where a line ends that the offset is in, before its line break. */
export function lineEnd(text: string, offset: number): number {
  const at = text.indexOf("\n", offset);
  if (at === -1) return text.length;
  return text[at - 1] === "\r" && at > offset ? at - 1 : at;
}

/** How far in a line the offset stands. */
export function columnOf(text: string, offset: number): number {
  return offset - lineStart(text, offset);
}

/** Where a node's own first character stands. */
export function startOf(node: unknown): number {
  if (isPair(node)) return startOf(node.key);
  return isNode(node) ? (node.range?.[0] ?? 0) : 0;
}

/** Behind a node's last character, without comments, spaces and line breaks that follow. */
export function endOf(text: string, node: unknown): number {
  if (isPair(node)) return endOf(text, node.value) || endOf(text, node.key);
  if ((isMap(node) || isSeq(node)) && node.flow !== true && node.items.length > 0)
    return endOf(text, node.items.at(-1));
  let end = isNode(node) ? (node.range?.[1] ?? 0) : 0;
  while (end > 0 && /\s/.test(text[end - 1] ?? "")) end -= 1;
  return end;
}

/** Where an entry of a block begins: its dash, or its field's name. */
export function entryOffset(holder: Holder, at: number): number {
  const item = holder.items[at];
  if (isMap(holder)) return startOf(item);
  const token = holder.srcToken;
  const starts = token?.type === "block-seq" ? token.items[at]?.start : undefined;
  return starts?.find(({ type }) => type === "seq-item-ind")?.offset ?? startOf(item);
}

/** True where nothing but spaces stands before it in its line. */
export function isFirstInLine(text: string, offset: number): boolean {
  return text.slice(lineStart(text, offset), offset).trim() === "";
}

/** The whole lines of an entry of a block, with the comments that are its own; without the last line break. */
export function entryLines(text: string, holder: Holder, at: number): Stretch {
  const offset = entryOffset(holder, at);
  const to = lineEnd(text, endOf(text, holder.items[at]));
  return { from: ownComments(text, lineStart(text, offset), columnOf(text, offset)), to };
}

/** A comment right above an entry, as far in, is its own; one that is a ruled line heads a group and stays. */
function ownComments(text: string, from: number, column: number): number {
  let start = from;
  while (start > 0) {
    const above = lineStart(text, start - 1);
    const line = text.slice(above, start - 1).trimEnd();
    if (line.search(/\S/) !== column || line[column] !== "#" || line.includes("---")) return start;
    start = above;
  }
  return start;
}
