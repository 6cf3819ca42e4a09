import { parse } from "yaml";
import type { PlainValue } from "./pattern-edit.ts";

/* How a value is written into a pattern file: as the shipped patterns write theirs. */

/** Longest list or block that is written in one line, in characters. */
const ONE_LINE = 90;
const ORDINARY = /^[A-Za-z][A-Za-z0-9 .'()/-]*[A-Za-z0-9.)]$/;

/** A text or number as it stands behind a field's name. @param isInline - inside braces or brackets */
export function writeScalar(value: string | number | boolean | null, isInline: boolean): string {
  if (typeof value !== "string") return String(value);
  return isPlain(value, isInline) ? value : JSON.stringify(value);
}

/** A value in one line, in braces and brackets where it has parts. */
export function writeInline(value: PlainValue): string {
  if (isList(value)) return `[${value.map(writeInline).join(", ")}]`;
  if (typeof value !== "object" || value === null) return writeScalar(value, true);
  const fields = Object.entries(value).map(([name, one]) => `${writeScalar(name, true)}: ${writeInline(one)}`);
  return fields.length === 0 ? "{}" : `{ ${fields.join(", ")} }`;
}

/** A value in lines, the first to stand behind a dash or, where it is one line only, behind a field's name. */
export function writeLines(value: PlainValue): readonly string[] {
  if (isList(value)) return listLines(value);
  if (typeof value !== "object" || value === null) return [writeScalar(value, false)];
  const fields = Object.entries(value).flatMap(([name, one]) => fieldLines(name, one));
  return fields.length === 0 ? ["{}"] : fields;
}

/** A field with its value, in lines. */
export function fieldLines(name: string, value: PlainValue): readonly string[] {
  const key = writeScalar(name, false);
  const lines = writeLines(value);
  const isShort = lines.length === 1 && (typeof value !== "object" || value === null || /^[[{]/.test(lines[0] ?? ""));
  return isShort ? [`${key}: ${lines.join("")}`] : [`${key}:`, ...lines.map((line) => `  ${line}`)];
}

/** A text folded over lines, as under ">-". @param width - most characters of a line */
export function foldedLines(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

function listLines(list: readonly PlainValue[]): readonly string[] {
  const inline = writeInline(list);
  const isOfWords = list.every((one) => typeof one !== "object" && !String(one).includes(" "));
  if (list.length === 0 || (isOfWords && inline.length <= ONE_LINE)) return [inline];
  return list.flatMap((one) => writeLines(one).map((line, at) => `${at === 0 ? "- " : "  "}${line}`));
}

function isList(value: PlainValue): value is readonly PlainValue[] {
  return Array.isArray(value);
}

/** True where the text may stand without quotes: read again it is the same text. */
function isPlain(text: string, isInline: boolean): boolean {
  const isReserved = /^(true|false|null)$/i.test(text);
  if (ORDINARY.test(text)) return !isReserved;
  if (text === "" || isReserved || /[\n\r\t]|^\s|\s$/.test(text)) return false;
  return isReadBack(isInline ? `[ ${text} ]` : `- ${text}`, text) && isReadBack(`a: ${text}`, text);
}

function isReadBack(written: string, text: string): boolean {
  try {
    const read: unknown = parse(written, { logLevel: "error" });
    const values = Array.isArray(read) ? read : Object.values(read ?? {});
    return values.length === 1 && values[0] === text;
  } catch {
    return false;
  }
}
